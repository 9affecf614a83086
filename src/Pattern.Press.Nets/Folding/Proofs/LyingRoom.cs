namespace Pattern.Press.Nets.Folding.Proofs;

/// <summary>The room that a round item has which lies on its side: round about it, and beyond its two ends.</summary>
internal static class LyingRoom
{
    private const double Hair = 1e-6;

    // Each trial leaves two thirds: from half a metre down to a ten thousandth of a millimetre.
    private const int Trials = 38;

    /// <summary>The shortest distance to any panel that rises above where it lies, thickness taken off; null when there is none.</summary>
    public static ItemRoom? Around(ItemBody item, Vector3d foot, IEnumerable<Slab> slabs) => Least(item, foot, slabs, Hair);

    /// <summary>The shortest distance to any panel above its middle that is not upright; null when there is none.</summary>
    public static ItemRoom? Above(ItemBody item, Vector3d foot, IEnumerable<Slab> slabs) =>
        Least(item, foot, slabs.Where(slab => Math.Abs(slab.Panel.Facing.Z) > 0.1), item.Height / 2);

    private static ItemRoom? Least(ItemBody item, Vector3d foot, IEnumerable<Slab> slabs, double from)
    {
        var middle = Vector3d.UnitZ * (item.Height / 2);
        var near = new List<(double AtLeast, Slab Slab, List<Vector3d> Corners)>();
        foreach (var slab in slabs)
        {
            List<Vector3d> corners = [.. ConvexClip.Keep([.. slab.Panel.Corners.Select(corner => corner - foot)], Vector3d.UnitZ, from).Select(corner => corner - middle)];
            if (corners.Count == 0)
                continue;

            // Nothing of a panel is nearer than its middle by more than it reaches from there.
            var centre = corners.Aggregate(default(Vector3d), (sum, corner) => sum + corner) * (1.0 / corners.Count);
            near.Add((item.Distance(centre) - corners.Max(centre.DistanceTo) - Math.Max(slab.Facing, slab.Away), slab, corners));
        }

        ItemRoom? least = null;
        foreach (var (atLeast, slab, corners) in near.OrderBy(one => one.AtLeast))
        {
            if (least is not null && atLeast > least.Room)
                break;
            var nearest = Nearest(item, corners, slab.Panel.Motion.XAxis, slab.Panel.Motion.YAxis);
            var room = item.Distance(nearest) - slab.Towards(item.Towards(nearest));
            if (least is null || room < least.Room)
                least = new ItemRoom(room, slab.Panel.Panel.Name);
        }

        return least;
    }

    // The distance from a convex body is a convex function on the plane of a panel, and so is its least along each of a row
    // of parallel lines: narrow down the line, and the place on it.
    private static Vector3d Nearest(ItemBody item, List<Vector3d> corners, Vector3d across, Vector3d down)
    {
        var best = Narrowed(corners.Min(across.Dot), corners.Max(across.Dot), at => OnLine(at).Distance);
        return OnLine(best).Place;

        (Vector3d Place, double Distance) OnLine(double at)
        {
            var (from, to) = Chord(corners, across, down, at);
            var place = from.Towards(to, Narrowed(0, 1, part => item.Distance(from.Towards(to, part))));
            return (place, item.Distance(place));
        }
    }

    private static double Narrowed(double low, double high, Func<double, double> value)
    {
        for (var i = 0; i < Trials; i++)
        {
            var (a, b) = (low + ((high - low) / 3), high - ((high - low) / 3));
            if (value(a) < value(b))
                high = b;
            else
                low = a;
        }

        return (low + high) / 2;
    }

    // Where a line at a distance across goes into a convex polygon and out of it.
    private static (Vector3d From, Vector3d To) Chord(List<Vector3d> corners, Vector3d across, Vector3d down, double at)
    {
        Vector3d? from = null, to = null;
        for (var i = 0; i < corners.Count; i++)
        {
            var (here, next) = (corners[i], corners[(i + 1) % corners.Count]);
            var (a, b) = (across.Dot(here) - at, across.Dot(next) - at);
            if ((a > 0 && b > 0) || (a < 0 && b < 0))
                continue;
            var place = Math.Abs(a - b) < 1e-12 ? here : here.Towards(next, a / (a - b));
            from = from is { } low && down.Dot(low) <= down.Dot(place) ? from : place;
            to = to is { } high && down.Dot(high) >= down.Dot(place) ? to : place;
        }

        // At the very ends of the polygon rounding may miss it.
        var end = corners.MinBy(corner => Math.Abs(across.Dot(corner) - at));
        return (from ?? end, to ?? end);
    }
}
