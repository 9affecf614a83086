using Pattern.Press.Booklets.Content;
using Pattern.Press.Booklets.Figures.Drafting;
using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Booklets.Figures;

/// <summary>
/// A piece laid flat, with what one step is about in full weight and the rest faded. Line weights, dashes and lettering
/// keep their size on paper; the piece is scaled to fit and never drawn larger than it is.
/// </summary>
public sealed class FlatDrawing : IDrawing
{
    private readonly Lazy<(IReadOnlyList<Station> Across, IReadOnlyList<Station> Down)> _stations;

    /// <summary>A drawing of what its properties say.</summary>
    public FlatDrawing() => _stations = new(() => (Measured(across: true), Measured(across: false)));

    /// <summary>The piece that is drawn.</summary>
    public required Piece Piece { get; init; }

    /// <summary>The ruler it was fitted on.</summary>
    public required Ruler Ruler { get; init; }

    /// <summary>The same piece fitted on the other ruler, for the second value of each dimension; null for none.</summary>
    public Piece? Other { get; init; }

    /// <summary>The ruler of the other fit.</summary>
    public Ruler? OtherRuler { get; init; }

    /// <summary>What is shown.</summary>
    public required FigureShow Show { get; init; }

    /// <summary>Whether it has its dimensions; without them it is drawn larger, for words that give them.</summary>
    public bool HasDimensions { get; init; } = true;

    /// <summary>Kinds of panels to point out.</summary>
    public IReadOnlyList<string> Emphasise { get; init; } = [];

    /// <summary>The parts of the kit, for mats on their faces.</summary>
    public IReadOnlyList<Part> Parts { get; init; } = [];

    /// <summary>The parts of the kit fitted on the other ruler, for the sizes of its mats.</summary>
    public IReadOnlyList<Part> OtherParts { get; init; } = [];

    /// <summary>The words for lettering.</summary>
    public required IFigureWords Words { get; init; }

    /// <summary>A sheet is a rectangle, however large.</summary>
    public bool GainsFromSize => Show != FigureShow.Sheet;

    /// <inheritdoc/>
    public DrawnFigure Draw(double maxWidth, double maxHeight, StyleSheet styles)
    {
        ArgumentNullException.ThrowIfNull(styles);
        return new FlatPainter(this, styles).Draw(maxWidth, maxHeight);
    }

    /// <summary>The places along a side that are measured.</summary>
    internal IReadOnlyList<Station> Stations(bool across) => across ? _stations.Value.Across : _stations.Value.Down;

    internal Station Side(bool across) => new Stations(Piece, Ruler, Other, OtherRuler, across, Words).Side;

    private IReadOnlyList<Station> Measured(bool across)
    {
        if (!HasDimensions)
            return [];
        var stations = new Stations(Piece, Ruler, Other, OtherRuler, across, Words);
        return Show switch
        {
            FigureShow.Flat => stations.AddFolds().AddCuts().AddSide().Found,
            FigureShow.Scores => stations.AddFolds().AddSide().Found,
            FigureShow.Waste => stations.AddCuts().AddSide().Found,
            _ => [],
        };
    }
}
