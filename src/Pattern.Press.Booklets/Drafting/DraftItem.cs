using System.Text.RegularExpressions;
using Pattern.Press.Measure;
using Pattern.Press.Structures.Fitting;

namespace Pattern.Press.Booklets.Drafting;

/// <summary>Reads an item the way a maker says it: <c>60 mm round x 80 mm</c>, <c>80 x 50 x 30 mm</c>, <c>tin: 58 mm round x 64 mm</c>.</summary>
public static partial class DraftItem
{
    private const string Advice = "Write its sizes, such as \"60 mm round x 80 mm\" (across and height), \"80 x 50 x 30 mm\" (width, depth, height) or \"148 x 105 mm\" for something flat.";

    /// <summary>Reads an item.</summary>
    /// <param name="text">The item, with a name and a colon before its sizes if it is to have one.</param>
    /// <param name="item">The item.</param>
    /// <param name="problem">What is wrong and what to write instead.</param>
    public static bool TryRead(string text, out Item? item, out string problem)
    {
        ArgumentNullException.ThrowIfNull(text);
        item = null;
        var colon = text.IndexOf(':', StringComparison.Ordinal);
        var name = colon < 0 ? "gift" : text[..colon].Trim();
        var sizes = colon < 0 ? text : text[(colon + 1)..];
        var round = RoundPattern().IsMatch(sizes);
        string[] parts = [.. TimesPattern().Split(RoundPattern().Replace(sizes, " ")).Select(part => part.Trim()).Where(part => part.Length > 0)];
        problem = Advice;
        if (name.Length == 0 || parts.Length != (round ? 2 : Math.Clamp(parts.Length, 2, 3)))
            return false;

        // A unit behind the last size holds for those before it.
        var unit = UnitPattern().Match(parts[^1]).Value;
        var lengths = new List<Length>();
        foreach (var part in parts)
        {
            if (!LengthParser.TryParse(UnitPattern().IsMatch(part) ? part : $"{part} {unit}", out var length, out var wrong))
            {
                problem = $"{wrong} {Advice}";
                return false;
            }

            if (length < Length.FromMillimetres(1) || length > Length.FromMillimetres(1000))
            {
                problem = $"“{part}” is no size for something to put in a box; sizes here go from 1 mm to 1 m.";
                return false;
            }

            lengths.Add(length);
        }

        problem = "";
        item = round
            ? new Item(name, ItemShape.Round, lengths[0], lengths[0], lengths[1])
            : new Item(name, ItemShape.Rectangular, lengths[0], lengths[1], lengths.Count > 2 ? lengths[2] : Length.FromMillimetres(1));
        return true;
    }

    /// <summary>Whether its sizes are said in inches, so that the booklet is best drawn in them.</summary>
    /// <param name="text">The item as it was said.</param>
    public static bool IsInInches(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return InchPattern().IsMatch(text[(text.IndexOf(':', StringComparison.Ordinal) + 1)..]);
    }

    [GeneratedRegex(@"\d\s*(?:in\b|inch|""|″)", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex InchPattern();

    [GeneratedRegex(@"\b(round|across|diameter)\b", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex RoundPattern();

    [GeneratedRegex(@"\s+by\s+|\s*[x×]\s*", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant)]
    private static partial Regex TimesPattern();

    [GeneratedRegex("""(mm|cm|m|inches|inch|in|["”])\s*$""", RegexOptions.CultureInvariant)]
    private static partial Regex UnitPattern();
}
