namespace Pattern.Press.Nets.Folding;

/// <summary>Two free edges of a folded piece that lie against each other.</summary>
/// <param name="First">One panel.</param>
/// <param name="FirstEdge">Its edge, on the sheet.</param>
/// <param name="Second">The other panel.</param>
/// <param name="SecondEdge">Its edge, on the sheet.</param>
/// <param name="Gap">The larger of the two distances between their ends, in millimetres.</param>
/// <param name="Dihedral">The angle between the two panels, measured on the facing side, in degrees from 0 to 360.</param>
public sealed record MatingEdge(PosedPanel First, Edge FirstEdge, PosedPanel Second, Edge SecondEdge, double Gap, double Dihedral);

/// <summary>Finds where free edges of folded pieces meet.</summary>
public static class MatingEdges
{
    /// <summary>
    /// The pairs of straight panel edges, none of them a fold, that run against each other within a distance. Each edge is
    /// in one pair at most, the nearest.
    /// </summary>
    /// <param name="pose">The folded piece.</param>
    /// <param name="tolerance">How far apart their ends may be, in millimetres.</param>
    public static IReadOnlyList<MatingEdge> Of(Pose pose, double tolerance)
    {
        ArgumentNullException.ThrowIfNull(pose);
        var free = Free(pose);
        var pairs = new List<MatingEdge>();
        var taken = new bool[free.Count];
        for (var i = 0; i < free.Count; i++)
        {
            var (best, nearest) = (-1, tolerance);
            for (var j = i + 1; j < free.Count && !taken[i]; j++)
            {
                var gap = Math.Max(free[i].From.DistanceTo(free[j].To), free[i].To.DistanceTo(free[j].From));
                if (!taken[j] && gap <= nearest)
                    (best, nearest) = (j, gap);
            }

            if (best < 0)
                continue;
            taken[i] = taken[best] = true;
            pairs.Add(new MatingEdge(
                free[i].Panel, free[i].Edge, free[best].Panel, free[best].Edge, nearest, Dihedral(free[i], free[best])));
        }

        return pairs;
    }

    /// <summary>How many straight edges of a piece's panels are no folds.</summary>
    public static int CountFree(Piece piece) =>
        piece.Panels.Sum(panel => panel.Outline.Edges.Count(edge => !edge.IsArc && !IsFold(piece, edge)));

    private static List<FreeEdge> Free(Pose pose)
    {
        var free = new List<FreeEdge>();
        foreach (var panel in pose.Panels)
        {
            foreach (var edge in panel.Panel.Outline.Edges)
            {
                if (!edge.IsArc && !IsFold(pose.Piece, edge))
                    free.Add(new FreeEdge(panel, edge, panel.At(edge.From), panel.At(edge.To)));
            }
        }

        return free;
    }

    private static bool IsFold(Piece piece, Edge edge) => piece.Folds.Any(fold =>
        edge.DistanceTo(fold.From) < LineWork.Tolerance && edge.DistanceTo(fold.To) < LineWork.Tolerance);

    private static double Dihedral(FreeEdge a, FreeEdge b)
    {
        // Outlines are clockwise as seen from the facing side: the inside of each panel lies to the right of its edge.
        var along = (a.To - a.From).Unit;
        var (inA, inB) = (along.Cross(a.Panel.Facing), (-along).Cross(b.Panel.Facing));
        var angle = Math.Atan2(inB.Dot(a.Panel.Facing), inA.Dot(inB)) * 180 / Math.PI;
        return angle < 0 ? angle + 360 : angle;
    }

    private readonly record struct FreeEdge(PosedPanel Panel, Edge Edge, Vector3d From, Vector3d To);
}
