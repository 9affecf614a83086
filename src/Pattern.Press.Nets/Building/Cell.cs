using Pattern.Press.Measure;

namespace Pattern.Press.Nets.Building;

/// <summary>What the cells of one letter are.</summary>
public sealed record Cell
{
    /// <summary>What panels made of it are called: <c>long wall</c>, <c>glue tab</c>.</summary>
    public required string Kind { get; init; }

    /// <summary>What such panels do.</summary>
    public PanelRole Role { get; init; } = PanelRole.Panel;

    /// <summary>Where a tab or gusset goes, in words.</summary>
    public string? Note { get; init; }

    /// <summary>The fold to the panel it hangs from; null only for the root's letter.</summary>
    public CellFold? Fold { get; init; }

    /// <summary>Which neighbour it hangs from.</summary>
    public HangsFrom HangsFrom { get; init; } = HangsFrom.Inward;

    /// <summary>
    /// For a tab: how much its two ends lean inwards from the fold it hangs on, in degrees, 0 to below 90. What is cut off
    /// is waste.
    /// </summary>
    public double Taper { get; init; }

    /// <summary>
    /// The ruler on which a taper ends at a mark: its ends lean by the taper or a little more. Null keeps the angle as it is.
    /// </summary>
    public Ruler? TaperRuler { get; init; }

    /// <summary>How much is cut off at both ends, beside the fold it hangs on, so that it folds in freely; 0 or more.</summary>
    public Length Relief { get; init; }

    /// <summary>Rounded corners, notches and holes.</summary>
    public PanelShape Shape { get; init; } = PanelShape.Plain;

    /// <summary>Set when cells of this letter are split along a diagonal.</summary>
    public CellDiagonal? Diagonal { get; init; }

    /// <summary>The side of the sheet that takes glue, if any.</summary>
    public SheetSide? Glue { get; init; }
}

/// <summary>A fold's direction and how far it goes, in degrees.</summary>
public sealed record CellFold(FoldDirection Direction, double Angle);

/// <summary>Which neighbour a panel hangs from.</summary>
public enum HangsFrom
{
    /// <summary>The one nearest to the root, counted in panels; when two are equally near the description is refused.</summary>
    Inward,

    /// <summary>A neighbour to the left or right.</summary>
    Beside,

    /// <summary>A neighbour above or below.</summary>
    AboveOrBelow,
}

/// <summary>Which way a diagonal runs.</summary>
public enum DiagonalDirection
{
    /// <summary>From top left to bottom right.</summary>
    Falling,

    /// <summary>From bottom left to top right.</summary>
    Rising,
}

/// <summary>
/// A cell split in two triangles along a diagonal. Each triangle becomes part of the neighbouring panel whose letter is
/// <paramref name="Joins"/>; the diagonal is a fold between those two panels. <paramref name="Direction"/> null means the
/// diagonal that starts at the corner nearest to the root panel.
/// </summary>
public sealed record CellDiagonal(char Joins, CellFold Fold, DiagonalDirection? Direction = null);
