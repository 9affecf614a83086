using Pattern.Press.Measure;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Booklets.Content;

/// <summary>What booklets ask of YAML values beyond what every file does.</summary>
internal static class YamlWords
{
    /// <summary>The shortest thing that can be made of card by hand.</summary>
    public static readonly Length Shortest = Length.Millimetre;

    /// <summary>The longest thing that a booklet of templates is any use for.</summary>
    public static readonly Length Longest = Length.FromMillimetres(1000);

    /// <summary>The value as words without spaces around them.</summary>
    public static string? AsWords(this YamlItem item, Problems problems)
    {
        if (!item.IsMap)
            return item.AsText()?.Trim();
        // In a list in brackets, the pair has no place of its own, but its name has.
        var place = item.AsMap()?.Entries is [var (_, key, _), ..] ? key : item.Place;
        problems.Error(place, "A colon makes these words a “name: value” pair.", "Put the words in quotation marks.");
        return null;
    }

    /// <summary>The value as a list of words; a single value counts as a list of one.</summary>
    public static IReadOnlyList<string> AsWordsList(this YamlItem item, Problems problems) =>
        [.. item.AsList().Select(entry => entry.AsWords(problems)).OfType<string>()];

    /// <summary>The value as a length between two bounds.</summary>
    /// <param name="item">The value.</param>
    /// <param name="what">What is measured, as the start of a sentence: <c>A height</c>.</param>
    /// <param name="least">The least it may be.</param>
    /// <param name="most">The most it may be.</param>
    /// <param name="problems">Where problems go.</param>
    public static Length? AsLengthBetween(this YamlItem item, string what, Length least, Length most, Problems problems)
    {
        if (item.AsLength() is not { } length)
            return null;
        if (LengthRange.Wrong(what, length, item.Scalar ?? "", least, most) is not var (message, advice))
            return length;
        problems.Error(item.Place, message, advice);
        return null;
    }
}
