using Pattern.Press.Nets;

namespace Pattern.Press.Booklets.Figures.Solid;

/// <summary>Makes one ring of an outline and the holes in it: each hole is reached along a bridge and left along the same.</summary>
internal static class BridgedRing
{
    /// <summary>How far straight lines may stray from an arc, in millimetres.</summary>
    private const double Flatness = 0.02;

    /// <summary>The corners of a panel with its holes, on the sheet.</summary>
    public static IReadOnlyList<Point> Of(Panel panel)
    {
        var ring = panel.Outline.Flattened(Flatness).ToList();
        var holes = panel.Holes.Select(hole => hole.Reversed.Flattened(Flatness).ToList()).ToList();

        // The nearest hole first, so that no bridge leads across another hole.
        while (holes.Count > 0)
        {
            var (from, hole, to) = Nearest(ring, holes);
            ring.InsertRange(from + 1, [.. hole.Skip(to), .. hole.Take(to + 1), ring[from]]);
            holes.Remove(hole);
        }

        return ring;
    }

    private static (int From, List<Point> Hole, int To) Nearest(List<Point> ring, List<List<Point>> holes)
    {
        var best = (From: 0, Hole: holes[0], To: 0);
        var least = double.PositiveInfinity;
        foreach (var hole in holes)
        {
            for (var i = 0; i < ring.Count; i++)
            {
                for (var j = 0; j < hole.Count; j++)
                {
                    if (ring[i].DistanceTo(hole[j]) is var far && far < least)
                        (best, least) = ((i, hole, j), far);
                }
            }
        }

        return best;
    }
}
