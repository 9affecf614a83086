using System.Text.RegularExpressions;

namespace Pattern.Press.Measure;

/// <summary>Reads the two sides of a rectangle: <c>305 x 305 mm</c>, <c>12 × 12 in</c>, <c>8 1/2 in x 13 in</c>.</summary>
public static partial class SizeParser
{
    /// <summary>Reads a size.</summary>
    /// <param name="text">What the maker wrote: the first side across, the second down.</param>
    /// <param name="size">The size as written, or nothing if it could not be read.</param>
    /// <param name="problem">What is wrong with one of the sides; empty when there are not two or nothing is wrong.</param>
    /// <returns>Whether it could be read.</returns>
    public static bool TryParse(string text, out Size size, out string problem)
    {
        ArgumentNullException.ThrowIfNull(text);
        size = default;
        problem = "";
        var sides = Cross().Split(text.Trim());
        if (sides.Length != 2 || sides[0].Length == 0 || sides[1].Length == 0)
            return false;
        var unit = Unit().Match(sides[1].Trim()).Value;
        if (unit.Length == 0 && LengthParser.TryParse(sides[1] + " mm", out _, out _))
        {
            problem = $"“{text.Trim()}” has no unit; write {text.Trim()} mm or {text.Trim()} in.";
            return false;
        }

        // The unit after the second side holds for both, unless the first has its own.
        if (!LengthParser.TryParse(sides[1], out var height, out problem))
            return false;
        if (!LengthParser.TryParse(sides[0], out var width, out problem))
        {
            if (!LengthParser.TryParse(sides[0] + " " + unit, out width, out problem))
                return false;
        }

        size = new Size(width, height);
        return true;
    }

    [GeneratedRegex(@"\s*[x×X]\s*", RegexOptions.CultureInvariant)]
    private static partial Regex Cross();

    [GeneratedRegex("""(mm|cm|m|inches|inch|in\.?|["″”])$""", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Unit();
}
