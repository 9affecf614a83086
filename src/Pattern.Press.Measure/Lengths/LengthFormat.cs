using System.Globalization;
using System.Numerics;

namespace Pattern.Press.Measure;

/// <summary>Writes lengths the way a maker reads them off a ruler.</summary>
public static class LengthFormat
{
    private static readonly Ruler Finest = new(UnitSystem.Imperial, Length.Inch / 64);

    /// <summary>The length in the ruler's units with their symbol: <c>58 mm</c> or <c>2 1/4 in</c>.</summary>
    public static string Format(Length length, Ruler ruler) =>
        Number(length, ruler) + (ruler.System == UnitSystem.Metric ? " mm" : " in");

    /// <summary>Both sides of a rectangle, the unit said once: <c>225 × 215 mm</c>.</summary>
    public static string Format(Size size, Ruler ruler) => $"{Number(size.Width, ruler)} × {Format(size.Height, ruler)}";

    /// <summary>
    /// The length in the ruler's units without a symbol: <c>58</c> or <c>2 1/4</c>. What lies off the marks (a caliper, a
    /// paper size) has up to three decimals rather than look as if it were on them: <c>0.325</c> or <c>8.268</c>.
    /// </summary>
    public static string Number(Length length, Ruler ruler) =>
        ruler.System == UnitSystem.Metric ? Millimetres(length, ruler)
        : Finest.Marks(length) ? MixedInches(length)
        : Decimal((decimal)length.Nanometres / Length.Inch.Nanometres, 3);

    /// <summary>
    /// Inches as a mixed fraction in lowest terms, to the nearest 1/64: <c>2 1/4</c>, <c>3/8</c>, <c>2</c>, <c>0</c>,
    /// <c>-1/2</c>.
    /// </summary>
    public static string MixedInches(Length length)
    {
        var (whole, numerator, denominator) = Fraction(length.Abs());
        var text = (whole, numerator) switch
        {
            (_, 0) => whole.ToString(CultureInfo.InvariantCulture),
            (0, _) => $"{numerator}/{denominator}",
            _ => $"{whole} {numerator}/{denominator}",
        };
        return length.IsNegative && text != "0" ? "-" + text : text;
    }

    /// <summary>The whole inches and the fraction in lowest terms of a length of zero or more, to the nearest 1/64.</summary>
    public static (long Whole, int Numerator, int Denominator) Fraction(Length length)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(length, Length.Zero);
        var parts = Finest.Round(length, Rounding.Nearest).Nanometres / Finest.Step.Nanometres;
        var whole = Math.DivRem(parts, 64, out var rest);
        if (rest == 0)
            return (whole, 0, 1);
        var common = (int)BigInteger.GreatestCommonDivisor(rest, 64);
        return (whole, (int)rest / common, 64 / common);
    }

    // A ruler of whole millimetres shows none after the point, one of half millimetres one where it is needed.
    private static string Millimetres(Length length, Ruler ruler) =>
        Decimal((decimal)length.Nanometres / Length.Millimetre.Nanometres, ruler.Marks(length) ? 1 : 3);

    // Rounded before it is written, so that next to nothing below zero does not come out as -0.
    private static string Decimal(decimal value, int decimals) =>
        decimal.Round(value, decimals, MidpointRounding.AwayFromZero) is var rounded && rounded == 0
            ? "0"
            : rounded.ToString("0.###", CultureInfo.InvariantCulture);
}
