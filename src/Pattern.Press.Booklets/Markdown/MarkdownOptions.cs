using System.Globalization;
using Pattern.Press.Booklets.Content;
using Pattern.Press.Booklets.Phrases;

namespace Pattern.Press.Booklets.Markdown;

/// <summary>How a text's Markdown becomes blocks.</summary>
public sealed record MarkdownOptions
{
    /// <summary>For the body of <c>booklet.md</c>, which stands under a heading of level 1.</summary>
    public static MarkdownOptions ForIntroduction(PhraseBook phrases) => ForOneLine(phrases) with { TopHeading = 2, Bookmarks = true };

    /// <summary>For the body of a step, which stands under a heading of level 2.</summary>
    public static MarkdownOptions ForStep(PhraseBook phrases, StepSource step) => ForOneLine(phrases) with
    {
        Piece = step.Piece,
        DestinationPrefix = string.Create(CultureInfo.InvariantCulture, $"step-{step.Number}-"),
    };

    /// <summary>For words in front matter, such as a caution or a caption.</summary>
    public static MarkdownOptions ForOneLine(PhraseBook phrases)
    {
        ArgumentNullException.ThrowIfNull(phrases);
        return new MarkdownOptions { TipTitle = phrases["callout.tip"], CautionTitle = phrases["callout.caution"] };
    }

    /// <summary>
    /// The level of the text's own topmost headings, 1 to 4, whatever level they are written at. A step stands under a
    /// heading of level 2, so its text starts at 3.
    /// </summary>
    public int TopHeading { get; init; } = 3;

    /// <summary>Whether headings get a bookmark and so stand in the contents.</summary>
    public bool Bookmarks { get; init; }

    /// <summary>Put before the names of headings that links lead to, so that equal headings of two steps differ.</summary>
    public string DestinationPrefix { get; init; } = "";

    /// <summary>The title of a tip that has none of its own.</summary>
    public required string TipTitle { get; init; }

    /// <summary>The title of a caution that has none of its own.</summary>
    public required string CautionTitle { get; init; }

    /// <summary>The part that figures show when they name none; null when they have to.</summary>
    public string? Piece { get; init; }

    /// <summary>
    /// The destinations elsewhere in the booklet that links <c>#name</c> may lead to; null leaves such links unchecked.
    /// </summary>
    public IReadOnlyCollection<string>? Destinations { get; init; }

    /// <summary>
    /// The destination of each file that links may name: <c>steps/03-score-the-base.md</c> leads to <c>step-3</c>.
    /// </summary>
    public IReadOnlyDictionary<string, string> Files { get; init; } = new SortedDictionary<string, string>(StringComparer.Ordinal);
}
