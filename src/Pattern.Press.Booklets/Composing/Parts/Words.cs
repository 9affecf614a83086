using Pattern.Press.Booklets.Phrases;
using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Booklets.Composing.Parts;

/// <summary>Short ways to make blocks of words.</summary>
internal static class Words
{
    /// <summary>Plain words as a paragraph's content.</summary>
    public static IReadOnlyList<Inline> Plain(string text) => [new TextInline(text)];

    /// <summary>A paragraph of plain words.</summary>
    public static ParagraphBlock Paragraph(string text, ParagraphKind kind = ParagraphKind.Body) => new(Plain(text), kind);

    /// <summary>A phrase as a paragraph, with its emphasis and its measurements set.</summary>
    public static ParagraphBlock Phrase(
        PhraseBook phrases,
        string key,
        ParagraphKind kind = ParagraphKind.Body,
        params ReadOnlySpan<(string Name, IReadOnlyList<Inline> Value)> values) =>
        new(phrases.Inlines(key, values), kind);

    /// <summary>A bulleted list, an item for each content.</summary>
    public static ListBlock Bullets(IEnumerable<IReadOnlyList<Inline>> items) => List(ListKind.Bulleted, items);

    /// <summary>A list with boxes to tick, an item for each content.</summary>
    public static ListBlock Ticks(IEnumerable<IReadOnlyList<Inline>> items) => List(ListKind.Checklist, items);

    /// <summary>Blocks in as many columns as the theme has for them.</summary>
    public static ColumnsBlock InColumns(int count, IReadOnlyList<Block> blocks) => new(blocks, count);

    /// <summary>A heading that is also a bookmark and a destination.</summary>
    public static HeadingBlock Heading(int level, string text, string destination, string overline = "") =>
        new(level, Plain(text), overline.Length > 0 ? $"{overline}: {text}" : text) { Destination = destination, Overline = overline };

    /// <summary>A heading inside a part, which the contents leave out.</summary>
    public static HeadingBlock Subheading(int level, string text, string? destination = null) =>
        new(level, Plain(text)) { Destination = destination };

    /// <summary>A cell that heads a column or a row.</summary>
    public static TableCell Head(string text, int columns = 1) => new(Plain(text), IsHeader: true, columns);

    /// <summary>A row that says what the rows below it are about.</summary>
    public static TableRow Group(string text, int columns) =>
        new([new TableCell([new TextInline(text, Emphasis.Bold)], IsHeader: true, columns)], StartsGroup: true);

    /// <summary>A cell of plain words.</summary>
    public static TableCell Cell(string text) => new(Plain(text));

    private static ListBlock List(ListKind kind, IEnumerable<IReadOnlyList<Inline>> items) =>
        new(kind, 1, [.. items.Select(item => (IReadOnlyList<Block>)[new ParagraphBlock(item)])]);
}
