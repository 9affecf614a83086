using Pattern.Press.Nets;

namespace Pattern.Press.Booklets.Svg;

/// <summary>A line that a blade can follow without being lifted.</summary>
/// <param name="Edges">Its edges, each starting where the one before it ends.</param>
/// <param name="IsClosed">Whether the last edge ends where the first starts.</param>
internal sealed record CutPath(IReadOnlyList<Edge> Edges, bool IsClosed);

/// <summary>Joins cuts end to end, so that a cutting machine goes round a piece rather than from side to side.</summary>
internal static class CutPaths
{
    // A nanometre, the grain of a length.
    private const double Tolerance = 1e-6;

    /// <summary>The cuts in as few paths as following them one after the other gives; every cut is in one path, once.</summary>
    public static IReadOnlyList<CutPath> Of(IReadOnlyList<Edge> cuts)
    {
        var left = new LinkedList<Edge>(cuts);
        var paths = new List<CutPath>();
        while (left.First is { } first)
        {
            left.RemoveFirst();
            var path = new LinkedList<Edge>([first.Value]);
            while (!IsClosed(path) && Take(left, path.Last!.Value.To) is { } next)
                path.AddLast(next);
            while (!IsClosed(path) && Take(left, path.First!.Value.From) is { } previous)
                path.AddFirst(previous.Reversed);
            paths.Add(new CutPath([.. path], IsClosed(path)));
        }

        return paths;
    }

    private static bool IsClosed(LinkedList<Edge> path) =>
        path.Count > 1 && path.First!.Value.From.DistanceTo(path.Last!.Value.To) < Tolerance;

    /// <summary>An edge that begins or ends at a point, walked away from it.</summary>
    private static Edge? Take(LinkedList<Edge> left, Point at)
    {
        for (var node = left.First; node is not null; node = node.Next)
        {
            var edge = node.Value.From.DistanceTo(at) < Tolerance ? node.Value
                : node.Value.To.DistanceTo(at) < Tolerance ? node.Value.Reversed
                : (Edge?)null;
            if (edge is null)
                continue;
            left.Remove(node);
            return edge;
        }

        return null;
    }
}
