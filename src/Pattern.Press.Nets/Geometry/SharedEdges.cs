namespace Pattern.Press.Nets;

/// <summary>Where two outlines lie edge to edge.</summary>
public static class SharedEdges
{
    /// <summary>
    /// The stretches along which two outlines touch from opposite sides, in the order and direction of the first outline's
    /// edges. Each is as long as it can be along one edge of either; points where they only touch are left out. Arcs are
    /// shared as a whole or not at all.
    /// </summary>
    public static IReadOnlyList<Edge> Between(Outline a, Outline b)
    {
        var shared = new List<Edge>();
        foreach (var side in a.Edges)
        {
            foreach (var other in b.Edges.Where(edge => edge.IsArc == side.IsArc))
            {
                if ((side.IsArc ? CommonArc(side, other) : Common(side, other)) is { } common)
                    shared.Add(common);
            }
        }

        return shared;
    }

    private static Edge? CommonArc(Edge side, Edge other) =>
        side.From.DistanceTo(other.To) < LineWork.Tolerance && side.To.DistanceTo(other.From) < LineWork.Tolerance
            && side.Middle.DistanceTo(other.Middle) < LineWork.Tolerance
            ? side
            : null;

    private static Edge? Common(Edge side, Edge other)
    {
        var length = side.Chord;
        var along = (side.To - side.From) * (1 / length);
        var (start, end) = (other.To - side.From, other.From - side.From);

        // Measured at the ends of what they may share, not of the whole other edge, so that a long edge is not held to a
        // finer angle than a short one.
        var (from, to) = (Math.Max(0, along.Dot(start)), Math.Min(length, along.Dot(end)));
        if (to - from < LineWork.Tolerance)
            return null;
        var (first, last) = (side.From + (along * from), side.From + (along * to));
        if (other.DistanceTo(first) > LineWork.Tolerance || other.DistanceTo(last) > LineWork.Tolerance)
            return null;

        // The corners themselves, where the stretch ends at one, so that no rounding creeps in.
        return new Edge(Corner(first, side, other), Corner(last, side, other));
    }

    private static Point Corner(Point point, Edge side, Edge other)
    {
        foreach (var corner in new[] { side.From, side.To, other.From, other.To })
        {
            if (corner.DistanceTo(point) < LineWork.Tolerance)
                return corner;
        }

        return point;
    }
}
