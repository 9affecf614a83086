using System.Globalization;
using System.Text.RegularExpressions;
using Pattern.Press.Measure;
using Pattern.Press.Structures.Reading;
using Pattern.Press.Typesetting.Pages;

namespace Pattern.Press.Booklets.Themes;

/// <summary>A colour with the place it is written at.</summary>
internal readonly record struct Paint(string Name, Colour Colour, Place Place);

/// <summary>
/// A mapping of a theme file. What is wrong is noted, and a value that can be gone on with is returned, so that all
/// problems come to light in one go.
/// </summary>
internal sealed partial class ThemeMap(YamlMap map, string path, Problems problems)
{
    private const string PaintAdvice = "Write six hexadecimal digits after a #, in quotation marks: \"#1f6f5c\".";

    private readonly HashSet<string> _wrong = new(StringComparer.Ordinal);

    /// <summary>A mapping inside this one; null after noting that it is missing.</summary>
    public ThemeMap? Inner(string key, string advice) =>
        map.Need(key, advice)?.AsMap() is { } inner ? new ThemeMap(inner, path.Length == 0 ? key : path + "." + key, problems) : null;

    /// <summary>A size of type in points.</summary>
    /// <param name="key">Its key.</param>
    /// <param name="least">The least it can be.</param>
    /// <param name="most">The most it can be.</param>
    /// <param name="usual">What it may well be, for advice.</param>
    public double Points(string key, double least, double most, double usual)
    {
        var example = string.Create(CultureInfo.InvariantCulture, $"“{key}: {usual} pt”");
        if (map.Need(key, $"Write a size of type, such as {example}.") is not { } item)
            return Wrong(key, usual);
        if (PointPattern().Match(item.Scalar ?? "") is { Success: true } match)
        {
            var points = double.Parse(match.Groups[1].ValueSpan, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture);
            if (points >= least && points <= most)
                return points;
            problems.Error(item.Place, $"A {Full(key)} of {item.Scalar} cannot be.", string.Create(CultureInfo.InvariantCulture, $"It can be from {least} pt to {most} pt."));
            return Wrong(key, usual);
        }

        problems.Error(item.Place, $"{item.Written} is not a size of type.", $"Sizes of type are in points: {example}.");
        return Wrong(key, usual);
    }

    /// <summary>A distance, returned in millimetres.</summary>
    /// <inheritdoc cref="Points"/>
    public double Distance(string key, double least, double most, double usual)
    {
        var example = string.Create(CultureInfo.InvariantCulture, $"“{key}: {usual} mm”");
        if (map.Need(key, $"Write a distance, such as {example}.") is not { } item)
            return Wrong(key, usual);
        if (item.Scalar is null)
        {
            problems.Error(item.Place, $"{item.Written} is not a distance.", $"Write one with its unit: {example}.");
            return Wrong(key, usual);
        }

        if (item.AsLength() is not { } length)
            return Wrong(key, usual);
        if (length.Millimetres >= least && length.Millimetres <= most)
            return length.Millimetres;
        problems.Error(item.Place, $"A {Full(key)} of {item.Scalar} cannot be.", string.Create(CultureInfo.InvariantCulture, $"It can be from {least} mm to {most} mm."));
        return Wrong(key, usual);
    }

    /// <summary>Whether all these keys could be read, so that it makes sense to compare them.</summary>
    public bool AreRight(params ReadOnlySpan<string> keys)
    {
        foreach (var key in keys)
        {
            if (_wrong.Contains(key))
                return false;
        }

        return true;
    }

    /// <summary>A small number of things; 1 when it is left out.</summary>
    public int Count(string key, int most)
    {
        if (map.Find(key) is not { } item)
            return 1;
        if (int.TryParse(item.Scalar, NumberStyles.None, CultureInfo.InvariantCulture, out var count) && count >= 1 && count <= most)
            return count;
        problems.Error(item.Place, $"{item.Written} is not a number for {Full(key)}.", string.Create(CultureInfo.InvariantCulture, $"Write a whole number from 1 to {most}."));
        return 1;
    }

    /// <summary>A mapping inside this one that may be left out.</summary>
    public ThemeMap? InnerIfAny(string key) =>
        map.Find(key)?.AsMap() is { } inner ? new ThemeMap(inner, path.Length == 0 ? key : path + "." + key, problems) : null;

    /// <summary>A colour.</summary>
    public Paint? Paint(string key)
    {
        if (map.Need(key, $"{PaintAdvice} Without the marks, YAML takes all after the # for a comment.") is not { } item)
            return null;
        if (Colour.TryParse(item.Scalar, out var colour))
            return new Paint(Full(key), colour, item.Place);
        problems.Error(item.Place, $"{item.Written} is not a colour.", PaintAdvice);
        return null;
    }

    /// <summary>Words.</summary>
    public YamlItem? Words(string key, string advice) => map.Need(key, advice);

    /// <summary>Yes or no; no when it is left out.</summary>
    public bool YesNo(string key) => map.Find(key)?.AsYesNo() ?? false;

    /// <summary>One of a few words; the first when it is left out.</summary>
    public string Choice(string key, IReadOnlyList<string> choices) => map.Find(key)?.AsChoice(choices) ?? choices[0];

    /// <summary>Where a key's value stands.</summary>
    public Place PlaceOf(string key) => map.Find(key)?.Place ?? map.Place;

    /// <summary>Reports every key that was never asked for.</summary>
    public void RefuseTheRest() => map.RefuseTheRest();

    private double Wrong(string key, double usual)
    {
        _wrong.Add(key);
        return usual;
    }

    private string Full(string key) => path.Length == 0 ? key : path + "." + key;

    [GeneratedRegex(@"^\s*(\d{1,3}(?:\.\d{1,3})?)\s*pt\s*$", RegexOptions.CultureInvariant)]
    private static partial Regex PointPattern();
}
