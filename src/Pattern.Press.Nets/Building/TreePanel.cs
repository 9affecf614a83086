namespace Pattern.Press.Nets.Building;

/// <summary>A panel of a <see cref="PanelTree"/>, in coordinates of its own.</summary>
/// <param name="Name">Unique in its piece, in words a maker reads.</param>
/// <param name="Outline">Its edge in millimetres, clockwise as seen on the page; it may lie anywhere and turned any way.</param>
public sealed record TreePanel(string Name, Outline Outline)
{
    /// <summary>What several panels have in common; null when it is the name.</summary>
    public string? Kind { get; init; }

    /// <summary>What it does.</summary>
    public PanelRole Role { get; init; } = PanelRole.Panel;

    /// <summary>Where a tab or gusset goes, in words.</summary>
    public string? Note { get; init; }

    /// <summary>The side of the sheet that takes glue, if any.</summary>
    public SheetSide? Glue { get; init; }

    /// <summary>The part of it that takes glue, in its own coordinates; null for all of it.</summary>
    public Outline? GlueOutline { get; init; }

    /// <summary>Holes in it, in its own coordinates, each clockwise.</summary>
    public IReadOnlyList<Outline> Holes { get; init; } = [];

    /// <summary>How it bends, in its own coordinates.</summary>
    public Bend? Bend { get; init; }
}

/// <summary>A panel of a <see cref="PanelTree"/> with what it hangs from.</summary>
/// <param name="Panel">The panel.</param>
/// <param name="ByEdge">Which of its own edges it hangs by, counted from 0.</param>
/// <param name="On">The panel it hangs from, by name.</param>
/// <param name="OnEdge">Which edge of that panel, counted from 0; as long as its own within 10⁻⁶ mm, and curved the same way.</param>
/// <param name="Fold">The fold between them.</param>
public sealed record HangingPanel(TreePanel Panel, int ByEdge, string On, int OnEdge, CellFold Fold);

/// <summary>
/// A fold between panels that do not hang from each other but come to lie side by side, as a gusset does between two walls.
/// It holds for every two panels of the two kinds.
/// </summary>
/// <param name="Kind">What the one panel is called.</param>
/// <param name="OtherKind">What the other is called.</param>
/// <param name="Fold">The fold between them.</param>
public sealed record TreeJoin(string Kind, string OtherKind, CellFold Fold);
