using System.Globalization;
using System.Numerics;
using Pattern.Press.Measure;
using Pattern.Press.Structures.Fitting;

namespace Pattern.Press.Acceptance.Booklets;

/// <summary>
/// How sizes must read in a booklet in English, worked out here from whole nanometres: 1 in is 25.4 mm exactly
/// (NIST SP 811, 2008, appendix B.8).
/// </summary>
public static class Sizes
{
    public static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);

    public static string Number(Length length, Ruler ruler)
    {
        ArgumentNullException.ThrowIfNull(ruler);
        var nanometres = length.Nanometres;
        if (ruler.System == UnitSystem.Metric)
            return nanometres % 1_000_000 == 0
                ? (nanometres / 1_000_000).ToString(CultureInfo.InvariantCulture)
                : Math.Round(nanometres / 1e6m, 1, MidpointRounding.AwayFromZero).ToString("0.#", CultureInfo.InvariantCulture);

        // Between two marks of sixteenths the eye judges the middle.
        if (nanometres * 16 % 25_400_000 != 0)
            nanometres = (long)Math.Round(nanometres / 793_750m, MidpointRounding.AwayFromZero) * 793_750;
        var (whole, rest) = (nanometres / 25_400_000, nanometres % 25_400_000);
        if (rest == 0)
            return whole.ToString(CultureInfo.InvariantCulture);
        var common = (long)BigInteger.GreatestCommonDivisor(rest, 25_400_000);
        var fraction = string.Create(CultureInfo.InvariantCulture, $"{rest / common}/{25_400_000 / common}");
        return whole == 0 ? fraction : string.Create(CultureInfo.InvariantCulture, $"{whole} {fraction}");
    }

    public static string Text(Length length, Ruler ruler) => $"{Number(length, ruler)} {Unit(ruler)}";

    public static string Text(Size size, Ruler ruler) => $"{Number(size.Width, ruler)} × {Number(size.Height, ruler)} {Unit(ruler)}";

    public static string Text(IReadOnlyList<Length> lengths, Ruler ruler) => lengths.Count switch
    {
        0 => "none",
        1 => Text(lengths[0], ruler),
        _ => $"{string.Join(", ", lengths.SkipLast(1).Select(length => Number(length, ruler)))} and {Text(lengths[^1], ruler)}",
    };

    public static string Text(Value value, Ruler ruler) => value switch
    {
        LengthValue length => Text(length.Length, ruler),
        SizeValue size => Text(size.Size, ruler),
        LengthListValue list => Text(list.Lengths, ruler),
        NumberValue number => number.Number.ToString("0.###", CultureInfo.InvariantCulture),
        WordValue word => word.Word,
        _ => throw new ArgumentException("A yes or no is no size.", nameof(value)),
    };

    private static string Unit(Ruler ruler) => ruler.System == UnitSystem.Metric ? "mm" : "in";
}
