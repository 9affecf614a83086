using System.Globalization;
using System.Text.RegularExpressions;
using Pattern.Press.Booklets.Content;
using Pattern.Press.Measure;
using Pattern.Press.Structures.Fitting;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Booklets.Composing;

/// <summary>A figure that the maker has been using, to be compared with the model.</summary>
/// <param name="Name">The name of the model's value.</param>
/// <param name="Place">Where it is written.</param>
/// <param name="Column">The column it belongs to, by the unit it is written in.</param>
/// <param name="Value">What the maker has, of the same kind as the model's value.</param>
internal sealed partial record OwnFigure(string Name, Place Place, UnitSystem Column, Value Value)
{
    /// <summary>Reads the figures of a booklet; what names nothing, or is of another kind, is a problem.</summary>
    public static IReadOnlyList<OwnFigure> ReadAll(BookletContext context, Problems problems)
    {
        var figures = new List<OwnFigure>();
        foreach (var (name, place, written) in context.Source.Figures)
        {
            if (!context.Primary.Values.TryGetValue(name, out var value) || value is FlagValue or WordValue)
            {
                var names = context.Primary.Values.Where(one => one.Value is not (FlagValue or WordValue)).Select(one => one.Key).ToList();
                problems.Error(place, $"“{name}” is not a size or a score position of this booklet.", Spelling.Advice(name, names));
                continue;
            }

            var text = string.Join(", ", written.AsList().Select(item => item.Scalar ?? ""));
            if (Read(value, text, written) is { } own)
                figures.Add(new OwnFigure(name, place, Inches().IsMatch(text) ? UnitSystem.Imperial : UnitSystem.Metric, own));
        }

        return figures;
    }

    private static Value? Read(Value like, string text, YamlItem written)
    {
        switch (like)
        {
            case LengthValue:
                if (LengthParser.TryParse(text, out var length, out var problem))
                    return new LengthValue(length);
                written.Refuse(problem);
                return null;
            case SizeValue:
                if (SheetSize.TryParse(text, out var size, out problem))
                    return new SizeValue(size);
                written.Refuse(problem);
                return null;
            case LengthListValue:
                return Lengths(text, written) is { } lengths ? new LengthListValue(lengths) : null;
            default:
                if (decimal.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number))
                    return new NumberValue(number);
                written.Refuse($"“{text}” should be a number.", $"Write figures only, such as “{written.Key}: 6”.");
                return null;
        }
    }

    // The unit after the last holds for all that have none: 80, 144 and 160 mm.
    private static List<Length>? Lengths(string text, YamlItem item)
    {
        var parts = Between().Split(text.Trim());
        var unit = Unit().Match(parts[^1]).Value;
        var lengths = new List<Length>();
        foreach (var part in parts)
        {
            var written = Unit().IsMatch(part) ? part : $"{part} {unit}";
            if (!LengthParser.TryParse(written, out var length, out var problem))
            {
                item.Refuse(problem, "Write marks as 80, 144 and 160 mm.");
                return null;
            }

            lengths.Add(length);
        }

        return lengths;
    }

    [GeneratedRegex("""(?<=[\d\s¼½¾⅛⅜⅝⅞])(in|inch|inches|["″”])\.?\s*$""", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Inches();

    [GeneratedRegex("""(mm|cm|m|inches|inch|in\.?|["″”])\s*$""", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Unit();

    [GeneratedRegex(@"\s*(?:,\s*and\s|,|;|\sand\s|&)\s*", RegexOptions.CultureInvariant)]
    private static partial Regex Between();
}
