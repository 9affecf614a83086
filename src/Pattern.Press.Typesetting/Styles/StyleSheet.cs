using Pattern.Press.Typesetting.Pages;

namespace Pattern.Press.Typesetting.Styles;

/// <summary>How a booklet looks: what a theme file says, with its fonts open.</summary>
public sealed record StyleSheet
{
    /// <summary>The theme's name, for messages.</summary>
    public required string Name { get; init; }

    /// <summary>Running text, tables and captions.</summary>
    public required FontFamily Text { get; init; }

    /// <summary>Titles and headings.</summary>
    public required FontFamily Display { get; init; }

    /// <summary>Sizes of type.</summary>
    public required TypeScale Scale { get; init; }

    /// <summary>Colours.</summary>
    public required Palette Palette { get; init; }

    /// <summary>Margins and distances.</summary>
    public required Spacing Spacing { get; init; }

    /// <summary>Lines of drawings.</summary>
    public required LineStyles Lines { get; init; }

    /// <summary>Whether paragraphs are justified; otherwise they are ragged on the right.</summary>
    public bool Justified { get; init; }

    /// <summary>How many columns some parts are set in where the paper is wide enough.</summary>
    public ColumnCounts Columns { get; init; } = new(1, 1, 1, 1);

    /// <summary>How the cover is laid out.</summary>
    public CoverStyle Cover { get; init; }

    /// <summary>A BCP 47 tag of the language of the text.</summary>
    public required string Language { get; init; }
}

/// <summary>How the cover is laid out.</summary>
public enum CoverStyle
{
    /// <summary>Title above, drawing below, on white.</summary>
    Plain,

    /// <summary>A field of colour with the title reversed out of it.</summary>
    Field,
}

/// <summary>How many columns some parts are set in.</summary>
/// <param name="Contents">The contents.</param>
/// <param name="Materials">Lists of materials and tools.</param>
/// <param name="Credits">The credits.</param>
/// <param name="Key">The key to the lines.</param>
public sealed record ColumnCounts(int Contents, int Materials, int Credits, int Key);

/// <summary>Sizes of type in points, and the distance between baselines.</summary>
/// <param name="Body">Running text.</param>
/// <param name="Leading">The distance of its baselines, in points.</param>
/// <param name="Lead">Opening paragraphs.</param>
/// <param name="Small">Small print, captions, running heads.</param>
/// <param name="Table">Tables.</param>
/// <param name="Heading1">Parts.</param>
/// <param name="Heading2">Steps and sections.</param>
/// <param name="Heading3">Sections inside them.</param>
/// <param name="Title">The title on the cover.</param>
/// <param name="Drawing">Lettering in drawings; 6 or more.</param>
public sealed record TypeScale(
    double Body,
    double Leading,
    double Lead,
    double Small,
    double Table,
    double Heading1,
    double Heading2,
    double Heading3,
    double Title,
    double Drawing);

/// <summary>Colours.</summary>
/// <param name="Text">Running text.</param>
/// <param name="Heading">Headings.</param>
/// <param name="Accent">Overlines, bullets, step numbers.</param>
/// <param name="Muted">Running heads, captions.</param>
/// <param name="Rule">Rules and table lines.</param>
/// <param name="Tint">A light ground behind callouts and heads of tables.</param>
/// <param name="Caution">The mark of a caution.</param>
/// <param name="CoverGround">The ground of the cover.</param>
/// <param name="CoverText">Text on the cover's ground.</param>
public sealed record Palette(
    Colour Text,
    Colour Heading,
    Colour Accent,
    Colour Muted,
    Colour Rule,
    Colour Tint,
    Colour Caution,
    Colour CoverGround,
    Colour CoverText);

/// <summary>Margins and distances, in millimetres.</summary>
/// <param name="Top">From the page's top to the text.</param>
/// <param name="Bottom">From the text to the page's bottom.</param>
/// <param name="Left">From the page's left to the text.</param>
/// <param name="Right">From the text to the page's right.</param>
/// <param name="Paragraph">Between two paragraphs.</param>
/// <param name="Block">Above and below figures, tables and callouts.</param>
/// <param name="Gutter">Between text and a figure beside it.</param>
public sealed record Spacing(double Top, double Bottom, double Left, double Right, double Paragraph, double Block, double Gutter);

/// <summary>
/// Lines of drawings. Patterns follow ISO 128-2 (from memory): in line widths d, a dash is 12 d, a gap 3 d, a long dash
/// 24 d and a dot at most 0.5 d. Meaning is carried by pattern and weight; colour comes second.
/// </summary>
public sealed class LineStyles(
    double cutWidth,
    double foldWidth,
    double thinWidth,
    Colour cut,
    Colour valley,
    Colour mountain,
    Colour glue,
    Colour waste,
    Colour dimension,
    Colour faded,
    Colour card,
    Colour cardAway)
{
    /// <summary>The width of lines to cut, in millimetres.</summary>
    public double CutWidth => cutWidth;

    /// <summary>The width of lines to score, in millimetres.</summary>
    public double FoldWidth => foldWidth;

    /// <summary>The width of dimension lines, hatching and hidden edges, in millimetres.</summary>
    public double ThinWidth => thinWidth;

    /// <summary>The colour of lines to cut.</summary>
    public Colour Cut => cut;

    /// <summary>The colour of valley folds.</summary>
    public Colour Valley => valley;

    /// <summary>The colour of mountain folds.</summary>
    public Colour Mountain => mountain;

    /// <summary>The colour of the hatching of glue areas.</summary>
    public Colour Glue => glue;

    /// <summary>The colour of the hatching of waste.</summary>
    public Colour Waste => waste;

    /// <summary>The colour of dimension lines.</summary>
    public Colour Dimension => dimension;

    /// <summary>The colour of lines that are not what a figure is about; still at least 3:1 on white.</summary>
    public Colour Faded => faded;

    /// <summary>The tint of card in drawings.</summary>
    public Colour Card => card;

    /// <summary>The tint of the card's other side.</summary>
    public Colour CardAway => cardAway;

    /// <summary>A line to cut: continuous, wide.</summary>
    public Stroke CutStroke { get; } = new(cut, cutWidth);

    /// <summary>A valley fold: dashed.</summary>
    public Stroke ValleyStroke { get; } = new(valley, foldWidth, [12 * foldWidth, 3 * foldWidth]);

    /// <summary>A mountain fold: long dashes and dots.</summary>
    public Stroke MountainStroke { get; } = new(mountain, foldWidth, [24 * foldWidth, 3 * foldWidth, 0.5 * foldWidth, 3 * foldWidth]);
}
