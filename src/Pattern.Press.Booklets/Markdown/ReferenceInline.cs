using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Booklets.Markdown;

/// <summary>What of the place that a link leads to its words say.</summary>
public enum ReferenceKind
{
    /// <summary>What it is, with its number: <c>Figure 3</c>, <c>Step 4</c>, or <c>page 7</c> for anything else.</summary>
    Name,

    /// <summary>The number alone: <c>3</c>.</summary>
    Number,
}

/// <summary>
/// Stands in a link for words that are known only when the whole booklet is composed. Composing replaces it; layout never
/// meets one.
/// </summary>
/// <param name="Target">The name of the place.</param>
/// <param name="Kind">What is said of it.</param>
/// <param name="Emphasis">How it is set.</param>
public sealed record ReferenceInline(string Target, ReferenceKind Kind, Emphasis Emphasis = Emphasis.None) : Inline;
