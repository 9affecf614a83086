using Pattern.Press.Booklets.Figures.Drafting;
using Pattern.Press.Nets;

namespace Pattern.Press.Booklets.Figures;

/// <summary>A mat on the panel it is glued on.</summary>
/// <param name="Part">The mat.</param>
/// <param name="Panel">The panel.</param>
/// <param name="Corners">The mat's corners on the piece's sheet, in millimetres.</param>
public sealed record PlacedMat(Part Part, Panel Panel, IReadOnlyList<Point> Corners);

/// <summary>
/// Finds the panels that mats are glued on: those whose kind the mat names or, failing that, those it fits with the same
/// border all round.
/// </summary>
public static class MatPlacing
{
    private const double Close = 1e-4;

    /// <summary>Places as many of each mat as the kit takes, each on a panel of its own.</summary>
    public static IReadOnlyList<PlacedMat> On(Piece piece, IReadOnlyList<Part> parts)
    {
        ArgumentNullException.ThrowIfNull(piece);
        ArgumentNullException.ThrowIfNull(parts);
        var free = new List<Panel>(piece.Panels);
        var placed = new List<PlacedMat>();
        foreach (var part in parts.Where(part => part.Kind == PartKind.Mat && part.Goes == piece.Id))
        {
            var found = new List<PlacedMat>();
            // A kind that holds another in its words ("wall", "long wall") counts only where nothing longer is meant.
            foreach (var panel in free.OrderByDescending(panel => Named(part, panel)))
            {
                if (found.Count < part.Quantity && Place(part, panel) is { } mat)
                    found.Add(mat);
            }

            foreach (var mat in found)
                free.Remove(mat.Panel);
            placed.AddRange(found);
        }

        return placed;
    }

    private static int Named(Part part, Panel panel) =>
        part.For is { } words && words.Contains(panel.Kind, StringComparison.OrdinalIgnoreCase) ? panel.Kind.Length : 0;

    private static PlacedMat? Place(Part part, Panel panel)
    {
        var room = Shape.Of(panel.Outline, Placing.None);
        var mat = Shape.Of(part.Piece.Outline, Placing.None);
        PlacedMat? best = null;
        var bestEven = double.MaxValue;
        for (var quarter = 0; quarter < 4; quarter++)
        {
            var turned = new Shape([.. mat.Corners.Select(corner => Turn(corner, quarter))]);
            var (dx, dy) = (room.Bounds.Width - turned.Bounds.Width, room.Bounds.Height - turned.Bounds.Height);
            var move = new Point(room.Bounds.CentreX - turned.Bounds.CentreX, room.Bounds.CentreY - turned.Bounds.CentreY);
            var corners = turned.Corners.Select(corner => corner + move).ToArray();
            var even = Math.Abs(dx - dy);
            if (dx < -Close || dy < -Close || even >= bestEven || !corners.All(corner => Inside(room, corner)))
                continue;
            best = new PlacedMat(part, panel, corners);
            bestEven = even;
        }

        // Without a name, only a border that is even all round tells that the mat belongs here.
        return best is not null && (Named(part, panel) > 0 || bestEven < Close) ? best : null;
    }

    private static bool Inside(Shape shape, Point point) =>
        shape.Holds(point) || shape.Sides.Any(side => Distance(side, point) < Close);

    private static double Distance(Segment side, Point point)
    {
        var (d, v) = (side.To - side.From, point - side.From);
        var t = Math.Clamp(((v.X * d.X) + (v.Y * d.Y)) / ((d.X * d.X) + (d.Y * d.Y)), 0, 1);
        return side.At(t).DistanceTo(point);
    }

    private static Point Turn(Point p, int quarters) => quarters switch
    {
        0 => p,
        1 => new Point(-p.Y, p.X),
        2 => new Point(-p.X, -p.Y),
        _ => new Point(p.Y, -p.X),
    };
}
