using System.Globalization;

namespace Pattern.Press.Measure;

/// <summary>
/// A length held exactly, as a whole number of nanometres.
/// </summary>
/// <remarks>
/// One inch is 25 400 000 nm exactly (NIST SP 811, 2008, appendix B), and 1/64 in is 396 875 nm, so whole
/// millimetres, tenths of them, and every inch fraction down to 1/64 in are held without rounding and sums never
/// drift. The range is that of a <see cref="long"/>, about ±9.2 million kilometres; arithmetic that leaves it throws
/// <see cref="OverflowException"/>. Lengths may be zero or negative: a position or a difference often is.
/// </remarks>
public readonly record struct Length : IComparable<Length>
{
    private const long PerMillimetre = 1_000_000;
    private const long PerInch = 25_400_000;

    private Length(long nanometres) => Nanometres = nanometres;

    /// <summary>The length in whole nanometres.</summary>
    public long Nanometres { get; }

    /// <summary>No length at all.</summary>
    public static Length Zero => default;

    /// <summary>One inch, 25.4 mm exactly.</summary>
    public static Length Inch => new(PerInch);

    /// <summary>One millimetre.</summary>
    public static Length Millimetre => new(PerMillimetre);

    /// <summary>The length in millimetres, as near as a <see cref="double"/> comes to it.</summary>
    public double Millimetres => Nanometres / (double)PerMillimetre;

    /// <summary>The length in inches, as near as a <see cref="double"/> comes to it.</summary>
    public double Inches => Nanometres / (double)PerInch;

    /// <summary>The length in printer's points of 1/72 in.</summary>
    public double Points => Nanometres * 72.0 / PerInch;

    /// <summary>Whether this is less than nothing.</summary>
    public bool IsNegative => Nanometres < 0;

    /// <summary>A length of so many nanometres.</summary>
    public static Length FromNanometres(long nanometres) => new(nanometres);

    /// <summary>A length of so many millimetres, rounded to the nearest nanometre (halves away from zero).</summary>
    /// <exception cref="OverflowException">The length is out of range.</exception>
    public static Length FromMillimetres(decimal millimetres) =>
        new(decimal.ToInt64(decimal.Round(millimetres * PerMillimetre, MidpointRounding.AwayFromZero)));

    /// <summary>
    /// A length of so many millimetres, rounded to the nearest nanometre (halves away from zero). A length that came
    /// from a <see cref="Length"/> and went through <see cref="Millimetres"/> comes back unchanged, up to 4 km.
    /// </summary>
    /// <exception cref="OverflowException">The number is not finite, or out of range.</exception>
    public static Length FromMillimetres(double millimetres) =>
        new(checked((long)Math.Round(millimetres * PerMillimetre, MidpointRounding.AwayFromZero)));

    /// <summary>A length of so many millimetres.</summary>
    public static Length FromMillimetres(int millimetres) => new(millimetres * PerMillimetre);

    /// <summary>A length of so many inches, rounded to the nearest nanometre (halves away from zero).</summary>
    /// <exception cref="OverflowException">The length is out of range.</exception>
    public static Length FromInches(decimal inches) =>
        new(decimal.ToInt64(decimal.Round(inches * PerInch, MidpointRounding.AwayFromZero)));

    /// <summary>
    /// A whole number of inches and a fraction: <c>FromInches(2, 1, 4)</c> is 2 1/4 in. Fractions that no whole number
    /// of nanometres can hold, such as 1/3 in, are rounded to the nearest one.
    /// </summary>
    /// <param name="whole">Whole inches; 0 or more.</param>
    /// <param name="numerator">The number above the stroke; 0 or more.</param>
    /// <param name="denominator">The number below the stroke; 1 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is below its least value.</exception>
    public static Length FromInches(int whole, int numerator, int denominator)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(whole);
        ArgumentOutOfRangeException.ThrowIfNegative(numerator);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(denominator);
        return FromInches(whole + ((decimal)numerator / denominator));
    }

    /// <summary>The length without its sign.</summary>
    public Length Abs() => new(Math.Abs(Nanometres));

    /// <summary>The shorter of two lengths.</summary>
    public static Length Min(Length a, Length b) => a <= b ? a : b;

    /// <summary>The longer of two lengths.</summary>
    public static Length Max(Length a, Length b) => a >= b ? a : b;

    /// <inheritdoc/>
    public int CompareTo(Length other) => Nanometres.CompareTo(other.Nanometres);

    public static Length operator +(Length a, Length b) => new(checked(a.Nanometres + b.Nanometres));

    public static Length operator -(Length a, Length b) => new(checked(a.Nanometres - b.Nanometres));

    public static Length operator -(Length a) => new(checked(-a.Nanometres));

    public static Length operator *(Length a, int times) => new(checked(a.Nanometres * times));

    public static Length operator *(int times, Length a) => a * times;

    /// <summary>A multiple of a length, rounded to the nearest nanometre (halves away from zero).</summary>
    public static Length operator *(Length a, decimal times) =>
        new(decimal.ToInt64(decimal.Round(a.Nanometres * times, MidpointRounding.AwayFromZero)));

    /// <summary>A part of a length, rounded to the nearest nanometre (halves away from zero).</summary>
    public static Length operator /(Length a, int parts) =>
        new(decimal.ToInt64(decimal.Round((decimal)a.Nanometres / parts, MidpointRounding.AwayFromZero)));

    /// <summary>How many times one length goes into another.</summary>
    public static decimal operator /(Length a, Length b) => (decimal)a.Nanometres / b.Nanometres;

    public static bool operator <(Length a, Length b) => a.Nanometres < b.Nanometres;

    public static bool operator >(Length a, Length b) => a.Nanometres > b.Nanometres;

    public static bool operator <=(Length a, Length b) => a.Nanometres <= b.Nanometres;

    public static bool operator >=(Length a, Length b) => a.Nanometres >= b.Nanometres;

    /// <summary>The length in millimetres with all its decimals, for debugging: <c>57.15 mm</c>.</summary>
    public override string ToString() =>
        ((decimal)Nanometres / PerMillimetre).ToString("0.######", CultureInfo.InvariantCulture) + " mm";
}
