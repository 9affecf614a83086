namespace Pattern.Press.Typesetting.Blocks;

/// <summary>How words are set.</summary>
[Flags]
public enum Emphasis
{
    /// <summary>As the text around.</summary>
    None = 0,

    /// <summary>Italic.</summary>
    Italic = 1,

    /// <summary>Bold.</summary>
    Bold = 2,

    /// <summary>Literal text, such as something to type.</summary>
    Literal = 4,
}

/// <summary>A part of a paragraph.</summary>
public abstract record Inline;

/// <summary>Words.</summary>
/// <param name="Text">The words; spaces at the ends count, line breaks are spaces.</param>
/// <param name="Emphasis">How they are set.</param>
public sealed record TextInline(string Text, Emphasis Emphasis = Emphasis.None) : Inline;

/// <summary>
/// A measurement: a number with its unit, such as <c>58 mm</c>, <c>2 1/4 in</c> or <c>225 × 215 mm</c>. It is never broken
/// across lines; fractions in it are set as real fractions, the space before a fraction is narrow, and text extraction
/// gives the text as written here.
/// </summary>
public sealed record MeasureInline(string Text, Emphasis Emphasis = Emphasis.None) : Inline;

/// <summary>A break that starts a new line in the same paragraph.</summary>
public sealed record BreakInline : Inline;

/// <summary>Words that lead somewhere.</summary>
/// <param name="Content">The words.</param>
/// <param name="Target">A web address, or the name of a destination in the document.</param>
/// <param name="IsAddress">Whether the target is a web address.</param>
public sealed record LinkInline(IReadOnlyList<Inline> Content, string Target, bool IsAddress) : Inline;

/// <summary>The number of the page where a destination is, set in the second pass of layout.</summary>
public sealed record PageNumberInline(string Destination) : Inline;
