namespace Pattern.Press.Nets.Folding.Proofs;

/// <summary>The room that one body has inside another, sideways.</summary>
/// <param name="Room">How much it can move to and fro where it is tightest, in millimetres; below 0 it does not go in.</param>
/// <param name="Outer">The panel of the outer body there, by name.</param>
/// <param name="Inner">The panel of the inner body there.</param>
internal sealed record Nesting(double Room, string Outer, string Inner)
{
    /// <summary>Walls that lean over more than this are tops or floors.</summary>
    private const double Level = 0.7;

    /// <summary>Measures the room; null when no wall of the outer body is beside the inner one.</summary>
    /// <param name="outer">The outer body, such as a lid.</param>
    /// <param name="inner">The inner one, such as its box.</param>
    /// <param name="along">The way one comes off the other.</param>
    public static Nesting? Of(IReadOnlyList<Slab> outer, IReadOnlyList<Slab> inner, Vector3d along)
    {
        var corners = outer.SelectMany(slab => slab.Panel.Corners).ToList();
        var middle = new Vector3d(
            (corners.Min(c => c.X) + corners.Max(c => c.X)) / 2, (corners.Min(c => c.Y) + corners.Max(c => c.Y)) / 2, (corners.Min(c => c.Z) + corners.Max(c => c.Z)) / 2);
        var gaps = new List<(Vector3d Way, double Gap, string Outer, string Inner)>();
        foreach (var wall in outer)
        {
            if (Math.Abs(wall.Panel.Facing.Dot(along)) > Level || wall.Panel.Panel.Role == PanelRole.Gusset)
                continue;
            if (Gap(wall, inner, along, middle) is { } gap)
                Add(gaps, gap);
        }

        Nesting? tightest = null;
        foreach (var (way, gap, here, there) in gaps)
        {
            var opposite = gaps.FindIndex(other => other.Way.Dot(way) < -0.999);
            var room = opposite < 0 ? 2 * gap : gap + gaps[opposite].Gap;
            if (tightest is null || room < tightest.Room - 1e-9)
                tightest = new Nesting(room, here, there);
        }

        return tightest;
    }

    /// <summary>
    /// The room beside gussets that lie flat against the walls of the outer body, or null when there are none: the same,
    /// but gussets that lie along a wall count as walls.
    /// </summary>
    public static Nesting? BesideGussets(IReadOnlyList<Slab> outer, IReadOnlyList<Slab> inner, Vector3d along)
    {
        var walls = outer.Where(slab => slab.Panel.Panel.Role == PanelRole.Panel && Math.Abs(slab.Panel.Facing.Dot(along)) < Level).ToList();
        var all = outer.Select(slab => slab.Panel.Panel.Role == PanelRole.Gusset && walls.Any(wall => Math.Abs(wall.Panel.Facing.Dot(slab.Panel.Facing)) > 0.999)
            ? slab with { Panel = new PosedPanel(slab.Panel.Panel with { Role = PanelRole.Panel }, slab.Panel.Motion) }
            : slab);
        return Of([.. all], inner, along);
    }

    private static void Add(List<(Vector3d Way, double Gap, string Outer, string Inner)> gaps, (Vector3d Way, double Gap, string Outer, string Inner) gap)
    {
        var same = gaps.FindIndex(other => other.Way.Dot(gap.Way) > 0.999);
        if (same < 0)
            gaps.Add(gap);
        else if (gap.Gap < gaps[same].Gap)
            gaps[same] = gap;
    }

    private static (Vector3d Way, double Gap, string Outer, string Inner)? Gap(Slab wall, IReadOnlyList<Slab> inner, Vector3d along, Vector3d middle)
    {
        var centre = wall.Panel.At(wall.Panel.Panel.Outline.Centroid);
        var outwards = wall.Panel.Facing.Dot(centre - middle) > 0 ? wall.Panel.Facing : -wall.Panel.Facing;
        var surface = outwards.Dot(wall.Panel.Corners[0]) - wall.Towards(-outwards);

        // Only what is beside the wall counts, seen along the way it comes off and across it.
        var across = along.Cross(outwards).Unit;
        var (low, high) = Range(wall.Panel.Corners, along);
        var (left, right) = Range(wall.Panel.Corners, across);
        var (reach, panel) = (double.NegativeInfinity, "");
        foreach (var slab in inner)
        {
            var part = ConvexClip.Keep([.. slab.Panel.Corners], along, low);
            part = ConvexClip.Keep(part, -along, -high);
            part = ConvexClip.Keep(part, across, left);
            part = ConvexClip.Keep(part, -across, -right);
            foreach (var corner in part)
            {
                // Panels at a slant end at folds, whose other panel has its thickness the way that is measured.
                var there = outwards.Dot(corner) + (Math.Abs(slab.Panel.Facing.Dot(outwards)) > 0.99 ? slab.Towards(outwards) : 0);
                if (there > reach)
                    (reach, panel) = (there, slab.Panel.Panel.Name);
            }
        }

        return panel.Length == 0 ? null : (outwards, surface - reach, wall.Panel.Panel.Name, panel);
    }

    private static (double Low, double High) Range(IReadOnlyList<Vector3d> corners, Vector3d way)
    {
        var (low, high) = (double.PositiveInfinity, double.NegativeInfinity);
        foreach (var corner in corners)
            (low, high) = (Math.Min(low, way.Dot(corner)), Math.Max(high, way.Dot(corner)));
        return (low, high);
    }
}
