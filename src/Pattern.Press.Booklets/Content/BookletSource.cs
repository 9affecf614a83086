using Pattern.Press.Measure;
using Pattern.Press.Structures.Fitting;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Booklets.Content;

/// <summary>A booklet's folder, read and checked as far as can be without its model.</summary>
public sealed record BookletSource
{
    /// <summary>The folder's name, which names the files that are written: <c>tea-tin-box</c>.</summary>
    public required string Name { get; init; }

    /// <summary>The folder.</summary>
    public required string Folder { get; init; }

    /// <summary>The title.</summary>
    public required string Title { get; init; }

    /// <summary>A line below the title; empty for none.</summary>
    public string Subtitle { get; init; } = "";

    /// <summary>Who made it; empty if nobody is named.</summary>
    public string Maker { get; init; } = "";

    /// <summary>Where the title is written.</summary>
    public Place TitlePlace { get; init; }

    /// <summary>Where the subtitle is written.</summary>
    public Place SubtitlePlace { get; init; }

    /// <summary>Where the maker is named.</summary>
    public Place MakerPlace { get; init; }

    /// <summary>The date the content gives, or null.</summary>
    public DateOnly? Date { get; init; }

    /// <summary>A BCP 47 tag: <c>en-GB</c>.</summary>
    public string Language { get; init; } = "en-GB";

    /// <summary>Where the language is named, or the whole file when it is left to the usual one.</summary>
    public Place LanguagePlace { get; init; }

    /// <summary>What readers may do with the booklet, a sentence or two; empty for none.</summary>
    public string Licence { get; init; } = "";

    /// <summary>Thanks and sources, one line each.</summary>
    public IReadOnlyList<string> Credits { get; init; } = [];

    /// <summary>
    /// Whether structure, item, sizes and stocks could all be read. When not, they are not worth fitting, but the rest can
    /// still be checked.
    /// </summary>
    public bool CanBeFitted { get; init; } = true;

    /// <summary>What goes inside; null when the sizes are given outright.</summary>
    public Item? Item { get; init; }

    /// <summary>Where the item is written.</summary>
    public Place ItemPlace { get; init; }

    /// <summary>The structure's id.</summary>
    public required string Structure { get; init; }

    /// <summary>Where the structure is named.</summary>
    public Place StructurePlace { get; init; }

    /// <summary>
    /// The maker's own settings of the structure's parameters, as written: the names and kinds are checked by the
    /// structure.
    /// </summary>
    public required IReadOnlyList<(string Name, Place Place, YamlItem Value)> Sizes { get; init; }

    /// <summary>The stocks by their use in the structure.</summary>
    public required IReadOnlyDictionary<string, Stock> Stocks { get; init; }

    /// <summary>Where each stock is written.</summary>
    public required IReadOnlyDictionary<string, Place> StockPlaces { get; init; }

    /// <summary>The ruler of the metric column.</summary>
    public Ruler MetricRuler { get; init; } = Ruler.WholeMillimetres;

    /// <summary>The ruler of the imperial column.</summary>
    public Ruler ImperialRuler { get; init; } = Ruler.SixteenthInches;

    /// <summary>The column that templates and figures are drawn from.</summary>
    public UnitSystem Primary { get; init; }

    /// <summary>The papers to print on, one file each.</summary>
    public required IReadOnlyList<PaperSize> Papers { get; init; }

    /// <summary>The theme's name.</summary>
    public string Theme { get; init; } = "handout";

    /// <summary>Where the theme is named, or the whole file when it is left to the usual one.</summary>
    public Place ThemePlace { get; init; }

    /// <summary>For how many finished things materials are counted; 1 or more.</summary>
    public int Kits { get; init; } = 1;

    /// <summary>What the templates leave free at the page's edges.</summary>
    public Length PrinterMargin { get; init; } = Length.FromMillimetres(10);

    /// <summary>Where the printer margin is set, or the whole file when it is left to the usual one.</summary>
    public Place PrinterMarginPlace { get; init; }

    /// <summary>How far neighbouring tiles of a template lap; 0 for edges that meet.</summary>
    public Length Lap { get; init; } = Length.FromMillimetres(10);

    /// <summary>Where the lap is set, or the whole file when it is left to the usual one.</summary>
    public Place LapPlace { get; init; }

    /// <summary>Parts of the booklet that the maker switched off.</summary>
    public required IReadOnlySet<BookletPart> Without { get; init; }

    /// <summary>Tools the maker names, beside those of the steps.</summary>
    public IReadOnlyList<string> Tools { get; init; } = [];

    /// <summary>Materials the maker names, beside the stocks: ribbon, beads.</summary>
    public IReadOnlyList<ExtraSource> Extras { get; init; } = [];

    /// <summary>The adhesive, or null when the maker names none.</summary>
    public AdhesiveSource? Adhesive { get; init; }

    /// <summary>The part of every stock that is bought in addition, such as 0.1 for a tenth.</summary>
    public decimal Spare { get; init; }

    /// <summary>What prices are in, as it is written before or behind them: <c>£</c>, <c>EUR</c>; empty without prices.</summary>
    public string Currency { get; init; } = "";

    /// <summary>When the class begins, or null.</summary>
    public TimeOnly? Starts { get; init; }

    /// <summary>
    /// Figures that the maker has been using, as written, by the names of the model’s values: they are compared with the
    /// model and never printed.
    /// </summary>
    public IReadOnlyList<(string Name, Place Place, YamlItem Value)> Figures { get; init; } = [];

    /// <summary>Words of caution of the maker's own, beside the usual ones.</summary>
    public IReadOnlyList<string> Cautions { get; init; } = [];

    /// <summary>The body of <c>booklet.md</c>.</summary>
    public required MarkdownText Introduction { get; init; }

    /// <summary>The steps in order.</summary>
    public required IReadOnlyList<StepSource> Steps { get; init; }

    /// <summary>Files of steps that could not be read, with their numbers: links to them are no mistakes of their own.</summary>
    public IReadOnlyList<(string File, int Number)> UnreadSteps { get; init; } = [];
}

/// <summary>The parts of a booklet, in order.</summary>
public enum BookletPart
{
    /// <summary>The cover.</summary>
    Cover,

    /// <summary>The list of contents.</summary>
    Contents,

    /// <summary>How to print, and what to be careful with.</summary>
    Before,

    /// <summary>What is needed.</summary>
    Materials,

    /// <summary>All sizes in both systems.</summary>
    Measurements,

    /// <summary>How each piece is scored and cut, one action at a time.</summary>
    Scoring,

    /// <summary>What everything costs.</summary>
    Costs,

    /// <summary>How the sheets are cut up.</summary>
    Sheets,

    /// <summary>The steps.</summary>
    Steps,

    /// <summary>The templates.</summary>
    Templates,

    /// <summary>The key to the lines.</summary>
    Key,

    /// <summary>What was proven before the booklet was made.</summary>
    Proofs,

    /// <summary>Licence and credits.</summary>
    Licence,

    /// <summary>What an instructor needs for several kits.</summary>
    Class,
}

/// <summary>A material beside the stocks.</summary>
/// <param name="Name">What it is, in the maker's words.</param>
/// <param name="PerKit">How many of it one kit takes; 1 unless the maker says otherwise.</param>
/// <param name="Pack">How many are sold together and for how much; null when that is not said.</param>
public sealed record ExtraSource(string Name, decimal PerKit = 1, Pack? Pack = null);

/// <summary>The adhesive.</summary>
/// <param name="Name">What it is, in the maker's words.</param>
/// <param name="Pack">How long a roll is, in millimetres, and what it costs; null when that is not said.</param>
public sealed record AdhesiveSource(string Name, Pack? Pack = null);

/// <summary>One step file.</summary>
public sealed record StepSource
{
    /// <summary>The file, relative to the booklet's folder: <c>steps/03-score-the-base.md</c>.</summary>
    public required string File { get; init; }

    /// <summary>Its number, from its name.</summary>
    public required int Number { get; init; }

    /// <summary>The title.</summary>
    public required string Title { get; init; }

    /// <summary>The part it is about, by id, or null.</summary>
    public string? Piece { get; init; }

    /// <summary>Where the piece is named.</summary>
    public Place PiecePlace { get; init; }

    /// <summary>The step's figure, or null for none.</summary>
    public FigureSource? Figure { get; init; }

    /// <summary>Where the step's front matter starts.</summary>
    public Place Place => new(File, 1);

    /// <summary>How long it takes, in minutes, or null.</summary>
    public int? Minutes { get; init; }

    /// <summary>Tools it takes.</summary>
    public IReadOnlyList<string> Tools { get; init; } = [];

    /// <summary>A caution; empty for none.</summary>
    public string Caution { get; init; } = "";

    /// <summary>The words.</summary>
    public required MarkdownText Body { get; init; }
}

/// <summary>What a figure shows of a piece.</summary>
public enum FigureShow
{
    /// <summary>Everything with its dimensions.</summary>
    Flat,

    /// <summary>The sheet to cut, with its two sides.</summary>
    Sheet,

    /// <summary>The lines to score, dimensioned from the edges.</summary>
    Scores,

    /// <summary>The diagonals to score, from point to point.</summary>
    Diagonals,

    /// <summary>What is cut away.</summary>
    Waste,

    /// <summary>Which lines fold which way.</summary>
    Folds,

    /// <summary>Where glue goes.</summary>
    Glue,

    /// <summary>The moment when glued seams of a piece are closed, in perspective, with arrows for what goes where.</summary>
    Gluing,

    /// <summary>The mats of a piece on their faces.</summary>
    Mats,

    /// <summary>The folded piece, in perspective.</summary>
    Folded,

    /// <summary>The finished thing, open and closed.</summary>
    Finished,

    /// <summary>The finished thing, closed.</summary>
    Closed,

    /// <summary>The finished thing, open, with arrows for what comes off.</summary>
    Open,

    /// <summary>Everything taken apart, with arrows for how it goes together.</summary>
    Exploded,

    /// <summary>A piece or the item on its way to its place.</summary>
    Insert,
}

/// <summary>A figure as asked for in the content.</summary>
/// <param name="Subject">The part it shows, by id, or <c>item</c> where that goes in; empty for the finished thing.</param>
/// <param name="Show">What of it.</param>
/// <param name="Emphasise">Kinds of panels to point out: <c>gusset</c>.</param>
/// <param name="Caption">The caption as Markdown in one line; empty for the computed one.</param>
/// <param name="Place">Where it is asked for.</param>
public sealed record FigureSource(string Subject, FigureShow Show, IReadOnlyList<string> Emphasise, string Caption, Place Place)
{
    /// <summary>What links call it: <c>waste</c> for <c>#figure-waste</c>; empty for a figure that nothing refers to.</summary>
    public string Name { get; init; } = "";

    /// <summary>Whether the step's kind decides what is shown, so that what the model knows may decide on something better.</summary>
    public bool IsByKind { get; init; }

    /// <summary>For <see cref="FigureShow.Folded"/>: how far it is folded, above 0 to 1.</summary>
    public double Folded { get; init; } = 1;

    /// <summary>For <see cref="FigureShow.Folded"/>: whether its mats are on it.</summary>
    public bool HasMats { get; init; }
}

/// <summary>Markdown text with the place it starts at.</summary>
public sealed record MarkdownText(string Text, Place Start);
