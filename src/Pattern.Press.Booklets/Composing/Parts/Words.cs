using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Booklets.Composing.Parts;

/// <summary>Short ways to make blocks of plain words.</summary>
internal static class Words
{
    /// <summary>Plain words as a paragraph's content.</summary>
    public static IReadOnlyList<Inline> Plain(string text) => [new TextInline(text)];

    /// <summary>A paragraph of plain words.</summary>
    public static ParagraphBlock Paragraph(string text, ParagraphKind kind = ParagraphKind.Body) => new(Plain(text), kind);

    /// <summary>A bulleted list of plain words.</summary>
    public static ListBlock Bullets(IEnumerable<string> items) =>
        new(ListKind.Bulleted, 1, [.. items.Select(item => (IReadOnlyList<Block>)[Paragraph(item)])]);

    /// <summary>A list of plain words with boxes to tick.</summary>
    public static ListBlock Ticks(IEnumerable<string> items) =>
        new(ListKind.Checklist, 1, [.. items.Select(item => (IReadOnlyList<Block>)[Paragraph(item)])]);

    /// <summary>A heading that is also a bookmark and a destination.</summary>
    public static HeadingBlock Heading(int level, string text, string destination, string overline = "") =>
        new(level, Plain(text), overline.Length > 0 ? $"{overline}: {text}" : text) { Destination = destination, Overline = overline };
}
