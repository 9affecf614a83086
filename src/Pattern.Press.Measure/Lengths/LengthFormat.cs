using System.Globalization;
using System.Numerics;

namespace Pattern.Press.Measure;

/// <summary>Writes lengths the way a maker reads them off a ruler.</summary>
public static class LengthFormat
{
    /// <summary>The length in the ruler's units with their symbol: <c>58 mm</c> or <c>2 1/4 in</c>.</summary>
    public static string Format(Length length, Ruler ruler) =>
        Number(length, ruler) + (ruler.System == UnitSystem.Metric ? " mm" : " in");

    /// <summary>The length in the ruler's units without a symbol: <c>58</c> or <c>2 1/4</c>.</summary>
    public static string Number(Length length, Ruler ruler) =>
        ruler.System == UnitSystem.Metric ? Millimetres(length, ruler) : MixedInches(length);

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
        var parts = new Ruler(UnitSystem.Imperial, Length.Inch / 64).Round(length, Rounding.Nearest) / (Length.Inch / 64);
        var whole = Math.DivRem((long)parts, 64, out var rest);
        if (rest == 0)
            return (whole, 0, 1);
        var common = (int)BigInteger.GreatestCommonDivisor(rest, 64);
        return (whole, (int)rest / common, 64 / common);
    }

    // A ruler of whole millimetres shows none after the point, one of half millimetres shows one, and so on. What lies
    // off the ruler (a caliper, a paper size) keeps up to three decimals rather than look as if it were on it.
    private static string Millimetres(Length length, Ruler ruler)
    {
        var value = (decimal)length.Nanometres / 1_000_000;
        if (!ruler.Marks(length))
            return value.ToString("0.###", CultureInfo.InvariantCulture);
        var decimals = ruler.Step.Nanometres % 1_000_000 == 0 ? 0 : 1;
        return value.ToString(decimals == 0 ? "0" : "0.#", CultureInfo.InvariantCulture);
    }
}
