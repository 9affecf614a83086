namespace Pattern.Press.Nets;

/// <summary>A closed line around a region: each edge starts where the one before it ends, the last ends at the first.</summary>
/// <param name="Edges">At least three edges, or two when one is an arc, clockwise as seen on the page (x right, y down).</param>
public sealed record Outline(IReadOnlyList<Edge> Edges)
{
    /// <summary>An outline with straight sides through the given corners, in order.</summary>
    public static Outline Through(params ReadOnlySpan<Point> corners)
    {
        var edges = new Edge[corners.Length];
        for (var i = 0; i < corners.Length; i++)
            edges[i] = new Edge(corners[i], corners[(i + 1) % corners.Length]);
        return new Outline(edges);
    }

    /// <summary>The starting point of each edge.</summary>
    public IEnumerable<Point> Corners => Edges.Select(edge => edge.From);
}
