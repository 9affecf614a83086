using Pattern.Press.Typesetting.Pages;

namespace Pattern.Press.Typesetting.Blocks;

/// <summary>Where a block came from, so that a problem can name it.</summary>
public readonly record struct BlockSource(string File, int Line);

/// <summary>A part of the text that is set below the one before it.</summary>
public abstract record Block
{
    /// <summary>Where it came from, if it was written by a maker.</summary>
    public BlockSource? Source { get; init; }

    /// <summary>A name that links and bookmarks can lead to; null for none.</summary>
    public string? Destination { get; init; }

    /// <summary>
    /// Whether it stays on a page with the end of the block above it, as a note to a table does; then some of that block
    /// goes to the next page with it rather than none.
    /// </summary>
    public bool KeepsWithPrevious { get; init; }
}

/// <summary>A heading. It keeps with what follows.</summary>
/// <param name="Level">1 to 4.</param>
/// <param name="Content">Its words.</param>
/// <param name="Bookmark">What the document's outline says for it; null leaves it out.</param>
public sealed record HeadingBlock(int Level, IReadOnlyList<Inline> Content, string? Bookmark = null) : Block
{
    /// <summary>A few words in small type above the heading, such as <c>Step 3</c>; empty for none.</summary>
    public string Overline { get; init; } = "";
}

/// <summary>What kind of paragraph it is.</summary>
public enum ParagraphKind
{
    /// <summary>Running text.</summary>
    Body,

    /// <summary>The opening of the booklet or of a part, set larger.</summary>
    Lead,

    /// <summary>Small print.</summary>
    Small,
}

/// <summary>A paragraph.</summary>
public sealed record ParagraphBlock(IReadOnlyList<Inline> Content, ParagraphKind Kind = ParagraphKind.Body) : Block;

/// <summary>What stands before the items of a list.</summary>
public enum ListKind
{
    /// <summary>Bullets.</summary>
    Bulleted,

    /// <summary>Numbers.</summary>
    Numbered,

    /// <summary>Boxes to tick.</summary>
    Checklist,
}

/// <summary>A list.</summary>
/// <param name="Kind">What stands before its items.</param>
/// <param name="Start">The number of the first item of a numbered list.</param>
/// <param name="Items">The items, each of one or more blocks.</param>
public sealed record ListBlock(ListKind Kind, int Start, IReadOnlyList<IReadOnlyList<Block>> Items) : Block;

/// <summary>How the cells of a column stand.</summary>
public enum ColumnAlignment
{
    /// <summary>Words, to the left.</summary>
    Left,

    /// <summary>In the middle.</summary>
    Centre,

    /// <summary>Numbers and measurements, to the right, in figures of equal width.</summary>
    Right,
}

/// <summary>A cell of a table.</summary>
/// <param name="Content">Its words.</param>
/// <param name="IsHeader">Whether it heads its row (in body rows; header rows head their columns anyway).</param>
/// <param name="ColumnSpan">How many columns it takes.</param>
public sealed record TableCell(IReadOnlyList<Inline> Content, bool IsHeader = false, int ColumnSpan = 1);

/// <summary>A row of a table.</summary>
/// <param name="Cells">Its cells.</param>
/// <param name="StartsGroup">Whether a line and some room set it off from the rows above.</param>
public sealed record TableRow(IReadOnlyList<TableCell> Cells, bool StartsGroup = false)
{
    /// <summary>Where it came from, if it was written by a maker and has a line of its own there.</summary>
    public BlockSource? Source { get; init; }
}

/// <summary>A table. Its header rows repeat on every page it reaches.</summary>
public sealed record TableBlock(
    IReadOnlyList<ColumnAlignment> Columns,
    IReadOnlyList<TableRow> Header,
    IReadOnlyList<TableRow> Rows) : Block
{
    /// <summary>A sentence above the table; empty for none.</summary>
    public IReadOnlyList<Inline> Caption { get; init; } = [];
}

/// <summary>How wide a figure may be.</summary>
public enum FigureWidth
{
    /// <summary>As wide as the text.</summary>
    Full,

    /// <summary>About six tenths of the text's width.</summary>
    Medium,

    /// <summary>About four tenths.</summary>
    Small,
}

/// <summary>A drawing with a caption.</summary>
/// <param name="Drawing">The drawing.</param>
/// <param name="AlternativeText">What it shows, in words.</param>
/// <param name="Caption">The caption; empty for none.</param>
/// <param name="Width">How wide it may be.</param>
public sealed record FigureBlock(IDrawing Drawing, string AlternativeText, IReadOnlyList<Inline> Caption, FigureWidth Width = FigureWidth.Full) : Block;

/// <summary>A picture with a caption.</summary>
public sealed record ImageBlock(ImageData Image, string AlternativeText, IReadOnlyList<Inline> Caption, FigureWidth Width = FigureWidth.Full) : Block;

/// <summary>What a callout is about.</summary>
public enum CalloutKind
{
    /// <summary>Something that makes the work easier.</summary>
    Tip,

    /// <summary>Something that can hurt.</summary>
    Caution,
}

/// <summary>A short text set apart from the rest.</summary>
public sealed record CalloutBlock(CalloutKind Kind, string Title, IReadOnlyList<Block> Content) : Block;

/// <summary>Somebody's words.</summary>
public sealed record QuoteBlock(IReadOnlyList<Block> Content) : Block;

/// <summary>Literal lines, set as they are.</summary>
public sealed record LiteralBlock(IReadOnlyList<string> Lines) : Block;

/// <summary>A line that separates.</summary>
public sealed record RuleBlock : Block;

/// <summary>Blocks that stay on one page together if they fit on one: a step with its figure.</summary>
public sealed record KeepTogetherBlock(IReadOnlyList<Block> Content) : Block
{
    /// <summary>
    /// Whether figures in it are made as large as the page then lets them be, because much is read from them. They do not
    /// give way to groups that follow.
    /// </summary>
    public bool HasLargeFigures { get; init; }
}

/// <summary>
/// Blocks that fill an equal part of the page, such as its upper or lower half: as high as that, with figures as large as it
/// lets them be. What needs more takes what it needs.
/// </summary>
/// <param name="Content">The blocks.</param>
/// <param name="Count">How many such parts a page has, 1 or more.</param>
public sealed record PageShareBlock(IReadOnlyList<Block> Content, int Count) : Block;

/// <summary>
/// Figures side by side, their tops level, each with its caption below it; one below the other where they would be too
/// narrow.
/// </summary>
/// <param name="Figures">Figures and pictures, from left to right. Their own widths do not count.</param>
public sealed record FigureRowBlock(IReadOnlyList<Block> Figures) : Block;

/// <summary>
/// Text beside a figure, the text to the left; where the page is too narrow, or the text much longer than the figure,
/// one below the other. If the figure is a row of figures, they stand beside the text one below the other, or side by
/// side below it, whichever is lower.
/// </summary>
public sealed record BesideBlock(IReadOnlyList<Block> Text, Block Figure) : Block
{
    /// <summary>
    /// Whether the figure is above the text and not below it where they are not beside each other: for long text that the
    /// figure's letters are read with.
    /// </summary>
    public bool FigureFirst { get; init; }
}

/// <summary>
/// Blocks in several columns of equal width, read one column after the other; in fewer, or in one, where the page is too
/// narrow or too low for that.
/// </summary>
/// <param name="Content">The blocks.</param>
/// <param name="Count">How many columns, 1 or more.</param>
public sealed record ColumnsBlock(IReadOnlyList<Block> Content, int Count) : Block
{
    /// <summary>Whether one column more is taken where the last few lines would otherwise run over to the next page.</summary>
    public bool MoreToFit { get; init; }
}

/// <summary>The contents: the document's headings that have a bookmark, with their pages.</summary>
/// <param name="Depth">Down to which heading level.</param>
public sealed record ContentsBlock(int Depth) : Block;

/// <summary>Starts a new page.</summary>
public sealed record PageBreakBlock : Block;
