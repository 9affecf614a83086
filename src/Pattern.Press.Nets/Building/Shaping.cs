namespace Pattern.Press.Nets.Building;

/// <summary>Finishes the shape of a panel: rounds its free corners, cuts thumb notches and holes for a hand.</summary>
public static class Shaping
{
    /// <summary>
    /// The outline with its corners rounded that do not lie on the fold it hangs on and point outwards between two straight
    /// sides; a corner without room for the radius takes as much of it as there is.
    /// </summary>
    /// <param name="outline">The outline.</param>
    /// <param name="hinge">The fold it hangs on; null to round every corner.</param>
    /// <param name="radius">In millimetres, above 0.</param>
    public static Outline Rounded(Outline outline, Edge? hinge, double radius)
    {
        ArgumentNullException.ThrowIfNull(outline);
        var edges = outline.Edges;
        var cuts = new (double Length, double Bulge)[edges.Count];
        for (var i = 0; i < edges.Count; i++)
        {
            var (before, after) = (edges[(i + edges.Count - 1) % edges.Count], edges[i]);
            if (before.IsArc || after.IsArc || (hinge is { } line && line.DistanceTo(after.From) < LineWork.Tolerance))
                continue;
            var turn = Math.Atan2((before.To - before.From).Cross(after.To - after.From), (before.To - before.From).Dot(after.To - after.From));
            if (turn <= 1e-9)
                continue;

            // Half of each side at most, so that two rounded corners of one side leave each other room.
            var tangent = Math.Tan(turn / 2);
            cuts[i] = (Math.Min(radius * tangent, 0.45 * Math.Min(before.Chord, after.Chord)), Math.Tan(turn / 4));
        }

        var rounded = new List<Edge>();
        for (var i = 0; i < edges.Count; i++)
        {
            var (edge, next) = (edges[i], edges[(i + 1) % edges.Count]);
            var (start, end) = (cuts[i].Length, cuts[(i + 1) % edges.Count].Length);
            var kept = edge.IsArc ? edge : new Edge(edge.At(start / edge.Chord), edge.At(1 - (end / edge.Chord)));
            rounded.Add(kept);
            if (end > 0)
                rounded.Add(new Edge(kept.To, next.At(end / next.Chord), cuts[(i + 1) % edges.Count].Bulge));
        }

        return new Outline(rounded);
    }

    /// <summary>The outline with a bow cut into the middle of one of its straight sides.</summary>
    /// <param name="outline">The outline.</param>
    /// <param name="side">Which side, counted from 0.</param>
    /// <param name="width">How wide the notch is along the side, in millimetres, above 0.</param>
    /// <param name="depth">How deep it goes, at most half its width.</param>
    /// <returns>The outline, or null when the side is curved or has no room for the notch.</returns>
    public static Outline? Notched(Outline outline, int side, double width, double depth)
    {
        ArgumentNullException.ThrowIfNull(outline);
        var edge = outline.Edges[side];
        if (edge.IsArc || edge.Chord < width + LineWork.Tolerance || depth <= 0 || depth > (width / 2) + LineWork.Tolerance)
            return null;
        var (start, end) = (edge.At(0.5 - (width / 2 / edge.Chord)), edge.At(0.5 + (width / 2 / edge.Chord)));
        return new Outline(
        [
            .. outline.Edges.Take(side),
            new Edge(edge.From, start),
            new Edge(start, end, -2 * depth / width),
            new Edge(end, edge.To),
            .. outline.Edges.Skip(side + 1),
        ]);
    }

    /// <summary>A hole with round ends, lying level.</summary>
    /// <param name="centre">Its middle.</param>
    /// <param name="width">From end to end, in millimetres.</param>
    /// <param name="height">Its height, above 0 and at most its width.</param>
    public static Outline Hole(Point centre, double width, double height)
    {
        var (reach, half) = ((width - height) / 2, height / 2);
        Point topLeft = new(centre.X - reach, centre.Y - half);
        Point topRight = new(centre.X + reach, centre.Y - half);
        Point bottomRight = new(centre.X + reach, centre.Y + half);
        Point bottomLeft = new(centre.X - reach, centre.Y + half);
        return reach < LineWork.Tolerance
            ? new Outline([new Edge(topLeft, bottomLeft, 1), new Edge(bottomLeft, topLeft, 1)])
            : new Outline([new Edge(topLeft, topRight), new Edge(topRight, bottomRight, 1), new Edge(bottomRight, bottomLeft), new Edge(bottomLeft, topLeft, 1)]);
    }

    /// <summary>The straight side that lies furthest to one side of the sheet, the longest of several; -1 if there is none.</summary>
    internal static int SideTowards(Outline outline, Point way)
    {
        var (best, bestReach, bestLength) = (-1, double.NegativeInfinity, 0.0);
        for (var i = 0; i < outline.Edges.Count; i++)
        {
            var edge = outline.Edges[i];
            var along = edge.To - edge.From;
            if (edge.IsArc || Math.Abs(along.Dot(way)) > LineWork.Tolerance * 10)
                continue;
            var reach = edge.Middle.Dot(way);
            if (reach > bestReach + LineWork.Tolerance || (reach > bestReach - LineWork.Tolerance && edge.Chord > bestLength))
                (best, bestReach, bestLength) = (i, reach, edge.Chord);
        }

        return best;
    }
}
