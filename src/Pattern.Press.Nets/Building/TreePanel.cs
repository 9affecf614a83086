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

    /// <summary>The side of the sheet that takes glue, if any; the whole panel does.</summary>
    public SheetSide? Glue { get; init; }
}

/// <summary>A panel of a <see cref="PanelTree"/> with what it hangs from.</summary>
/// <param name="Panel">The panel.</param>
/// <param name="ByEdge">Which of its own edges it hangs by, counted from 0.</param>
/// <param name="On">The panel it hangs from, by name.</param>
/// <param name="OnEdge">Which edge of that panel, counted from 0; straight, and as long as its own within 10⁻⁶ mm.</param>
/// <param name="Fold">The fold between them.</param>
public sealed record HangingPanel(TreePanel Panel, int ByEdge, string On, int OnEdge, CellFold Fold);
