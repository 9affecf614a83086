using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Typesetting.Layout.Text;

/// <summary>What is special about a stretch of text.</summary>
internal enum SpanKind
{
    Words,
    Measurement,
    PageNumber,
}

/// <summary>A stretch of a paragraph's text in one style.</summary>
/// <param name="Start">Its first character.</param>
/// <param name="End">The one after its last.</param>
/// <param name="Style">How it is set.</param>
/// <param name="Part">Which of the paragraph's parts it belongs to.</param>
/// <param name="Kind">What is special about it.</param>
/// <param name="Destination">For a page number: of which destination.</param>
internal readonly record struct TextSpan(int Start, int End, TextStyle Style, int Part, SpanKind Kind, string Destination);

/// <summary>A paragraph's inlines as one text, so that breaks can be found across their borders.</summary>
/// <param name="text">The text.</param>
/// <param name="spans">Its stretches, in order.</param>
/// <param name="parts">What its spans belong to.</param>
internal sealed class InlineText(string text, TextSpan[] spans, InlinePart[] parts)
{
    /// <summary>The text.</summary>
    public string Text => text;

    /// <summary>Its stretches, in order.</summary>
    public ReadOnlySpan<TextSpan> Spans => spans;

    /// <summary>What its spans belong to.</summary>
    public IReadOnlyList<InlinePart> Parts => parts;
}
