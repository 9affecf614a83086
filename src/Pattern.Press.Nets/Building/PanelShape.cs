using Pattern.Press.Measure;

namespace Pattern.Press.Nets.Building;

/// <summary>A side of a panel as it lies on the sheet.</summary>
public enum SheetEdge
{
    /// <summary>The upper side.</summary>
    Top,

    /// <summary>The right side.</summary>
    Right,

    /// <summary>The lower side.</summary>
    Bottom,

    /// <summary>The left side.</summary>
    Left,
}

/// <summary>A bow cut into the middle of a side, to get hold of something with a thumb.</summary>
/// <param name="Side">The side as the panel lies on the sheet; it must be a cut, not a fold.</param>
/// <param name="Width">Along the side; above 0.</param>
/// <param name="Depth">Into the panel; above 0 and at most half the width.</param>
public sealed record CellNotch(SheetEdge Side, Length Width, Length Depth);

/// <summary>A hole with round ends in the middle of a panel, to put a hand or a ribbon through.</summary>
/// <param name="Width">From end to end.</param>
/// <param name="Height">Above 0 and at most the width.</param>
/// <param name="Up">How far above the middle; below it when negative.</param>
public sealed record CellHole(Length Width, Length Height, Length Up = default);

/// <summary>What is done to a panel's outline once it is in place.</summary>
public sealed record PanelShape
{
    /// <summary>Nothing at all.</summary>
    public static PanelShape Plain { get; } = new();

    /// <summary>The radius that its free corners are rounded with; 0 for none.</summary>
    public Length Rounded { get; init; }

    /// <summary>Thumb notches.</summary>
    public IReadOnlyList<CellNotch> Notches { get; init; } = [];

    /// <summary>Holes.</summary>
    public IReadOnlyList<CellHole> Holes { get; init; } = [];

    /// <summary>The outline after all of it, and the holes. Adds the reasons when there is no room.</summary>
    /// <param name="outline">The outline as the panel lies.</param>
    /// <param name="hinge">The fold it hangs on, whose ends stay as they are.</param>
    /// <param name="name">What the panel is called in the reasons.</param>
    /// <param name="reasons">Where they go.</param>
    public (Outline Outline, IReadOnlyList<Outline> Holes) Applied(Outline outline, Edge? hinge, string name, ICollection<string> reasons)
    {
        ArgumentNullException.ThrowIfNull(outline);
        ArgumentNullException.ThrowIfNull(reasons);
        if (this == Plain)
            return (outline, []);
        var holes = new List<Outline>();
        foreach (var hole in Holes)
        {
            if (hole.Height <= Length.Zero || hole.Width < hole.Height)
                reasons.Add($"{name} has a hole that is {Words(hole.Width)} wide and {Words(hole.Height)} high; it must be higher than nothing and no higher than wide.");
            else
                holes.Add(Shaping.Hole(outline.Bounds.Centre + new Point(0, -hole.Up.Millimetres), hole.Width.Millimetres, hole.Height.Millimetres));
        }

        foreach (var notch in Notches)
        {
            Point way = notch.Side switch
            {
                SheetEdge.Top => new(0, -1),
                SheetEdge.Right => new(1, 0),
                SheetEdge.Bottom => new(0, 1),
                _ => new(-1, 0),
            };
            var side = Shaping.SideTowards(outline, way);
            if (side < 0 || Shaping.Notched(outline, side, notch.Width.Millimetres, notch.Depth.Millimetres) is not { } notched)
                reasons.Add($"{name} has no straight side there with room for a notch {Words(notch.Width)} wide and {Words(notch.Depth)} deep; it may be half as deep as wide.");
            else
                outline = notched;
        }

        if (Rounded > Length.Zero)
            outline = Shaping.Rounded(outline, hinge, Rounded.Millimetres);
        return (outline, holes);
    }

    private static string Words(Length length) => LengthFormat.Format(length, Ruler.WholeMillimetres);
}
