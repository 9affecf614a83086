namespace Pattern.Press.Nets;

/// <summary>A region of a piece, bounded by folds and cuts; flat when it is finished unless it bends.</summary>
/// <param name="Name">Unique in its piece, in words a maker reads: <c>long wall 1</c>.</param>
/// <param name="Kind">What several panels have in common, in a maker's words: <c>long wall</c>.</param>
/// <param name="Role">What it does.</param>
/// <param name="Outline">Its edge, in the sheet's millimetres.</param>
/// <param name="Note">For a tab or gusset, where it goes: <c>glued under the neighbouring wall</c>; else null.</param>
public sealed record Panel(string Name, string Kind, PanelRole Role, Outline Outline, string? Note = null)
{
    /// <summary>Where it is cut out inside, such as for a hand; each clockwise as seen on the page, mostly none.</summary>
    public IReadOnlyList<Outline> Holes { get; init; } = [];

    /// <summary>How it is bent when it is finished; null when it stays flat.</summary>
    public Bend? Bend { get; init; }

    /// <summary>Its area without its holes, in square millimetres.</summary>
    public double Area => Outline.Area - Holes.Sum(hole => hole.Area);

    /// <summary>Whether a point of the sheet lies inside and not in a hole; on an edge either answer may come.</summary>
    public bool Contains(Point point)
    {
        if (!Outline.Contains(point))
            return false;
        for (var i = 0; i < Holes.Count; i++)
        {
            if (Holes[i].Contains(point))
                return false;
        }

        return true;
    }

    /// <summary>Its outline, then its holes the other way round: the lines that it keeps to the right of.</summary>
    internal IReadOnlyList<Outline> Loops => [Outline, .. Holes.Select(hole => hole.Reversed)];
}
