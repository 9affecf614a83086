namespace Pattern.Press.Nets.Folding.Proofs;

/// <summary>The room that an item has in a folded box: beside it, above it, and on its way out.</summary>
/// <param name="Room">In millimetres; below 0 it does not fit.</param>
/// <param name="Panel">The panel that is nearest, by name.</param>
internal sealed record ItemRoom(double Room, string Panel)
{
    private const double Hair = 1e-6;

    // A circle is taken as the polygon around it with so many sides.
    private const int RoundSides = 24;

    /// <summary>
    /// The shortest distance sideways from a standing item to any panel beside it, thickness taken off; null when nothing
    /// is beside it.
    /// </summary>
    public static ItemRoom? Around(ItemBody item, Vector3d foot, IEnumerable<Slab> slabs)
    {
        if (item.RollsOnItsSide)
            return LyingRoom.Around(item, foot, slabs);
        var section = item.Seen(Leaving.Up);
        ItemRoom? least = null;
        foreach (var slab in slabs)
        {
            var corners = slab.Panel.Corners.Select(corner => corner - foot).ToList();
            corners = ConvexClip.Keep(corners, Vector3d.UnitZ, Hair);
            corners = ConvexClip.Keep(corners, -Vector3d.UnitZ, Hair - item.Height);
            least = Nearer(least, section, corners, slab, true);
        }

        return least;
    }

    /// <summary>The distance from the top of an item to the lowest panel above it; null when there is none.</summary>
    public static ItemRoom? Above(ItemBody item, Vector3d foot, IEnumerable<Slab> slabs)
    {
        if (item.RollsOnItsSide)
            return LyingRoom.Above(item, foot, slabs);
        ItemRoom? least = null;

        // Upright panels are beside the item, or in its way; neither is told here.
        foreach (var slab in slabs.Where(slab => Math.Abs(slab.Panel.Facing.Z) > 0.1))
        {
            var corners = slab.Panel.Corners.Select(corner => corner - foot).ToList();
            foreach (var (way, half) in new[] { (Vector3d.UnitX, item.Width / 2), (Vector3d.UnitY, item.Depth / 2) })
            {
                corners = ConvexClip.Keep(corners, way, Hair - half);
                corners = ConvexClip.Keep(corners, -way, Hair - half);
            }

            for (var i = 0; item.IsRound && i < RoundSides; i++)
            {
                var (sine, cosine) = Math.SinCos(i * 2 * Math.PI / RoundSides);
                corners = ConvexClip.Keep(corners, new Vector3d(cosine, sine, 0), Hair - (item.Width / 2));
            }

            if (corners.Count == 0)
                continue;
            var lowest = corners.Min(corner => corner.Z);
            if (lowest <= item.Height / 2)
                continue;
            var room = lowest - slab.Towards(-Vector3d.UnitZ) - item.Height;
            if (least is null || room < least.Room)
                least = new ItemRoom(room, slab.Panel.Panel.Name);
        }

        return least;
    }

    /// <summary>
    /// The room beside an item all the way out along a direction; below 0 where something is in its way. Null when nothing
    /// is beside its way at all.
    /// </summary>
    public static ItemRoom? Passing(ItemBody item, Vector3d foot, Leaving leaving, IEnumerable<Slab> slabs)
    {
        var way = AssembledThing.Direction(leaving);
        var (across, up) = leaving switch
        {
            Leaving.Up => (Vector3d.UnitX, Vector3d.UnitY),
            Leaving.Right or Leaving.Left => (Vector3d.UnitY, Vector3d.UnitZ),
            _ => (Vector3d.UnitX, Vector3d.UnitZ),
        };
        var middle = foot + (leaving == Leaving.Up ? default : Vector3d.UnitZ * (item.Height / 2));

        // What is round goes ahead with its widest part; what lies behind that is only as wide as where it stands now.
        var rear = leaving switch
        {
            Leaving.Up => 0,
            _ when item.IsRound && !item.RollsOnItsSide => 0,
            Leaving.Right or Leaving.Left => item.Width / 2,
            _ => item.Depth / 2,
        };
        var section = item.Seen(leaving);
        ItemRoom? least = null;
        foreach (var slab in slabs)
        {
            var corners = ConvexClip.Keep([.. slab.Panel.Corners.Select(corner => corner - middle)], way, Hair - rear);
            var seen = corners.Select(corner => new Vector3d(across.Dot(corner), up.Dot(corner), 0)).ToList();
            if (Covers(seen))
                return new ItemRoom(-Math.Min(Math.Min(item.Width, item.Depth), item.Height) / 2, slab.Panel.Panel.Name);

            // Seen along its way, a wall beside it is a line; the thickness is taken on the side that faces the item.
            least = Nearer(least, section, seen, slab, false, across, up);
        }

        return least;
    }

    /// <summary>
    /// The room of an item in a flat pocket: what holds it there is the folds that go all the way over. Null when there
    /// are none beside it.
    /// </summary>
    /// <param name="item">The item.</param>
    /// <param name="foot">Where it lies.</param>
    /// <param name="pocket">The flat piece.</param>
    /// <param name="card">The thickness of its card.</param>
    /// <param name="leaving">The way it leaves, to look at what lies ahead of it only; null for all round.</param>
    /// <param name="open">Panels that are folded open, by kind.</param>
    public static ItemRoom? InPocket(ItemBody item, Vector3d foot, Pose pocket, double card, Leaving? leaving, IReadOnlyCollection<string> open)
    {
        var section = item.Seen(Leaving.Up);
        ItemRoom? least = null;
        foreach (var fold in pocket.Piece.Folds.Where(fold => pocket.Angles[fold] > Fold.LaysOver))
        {
            if (open.Contains(pocket.Panel(fold.Child).Panel.Kind))
                continue;
            var panel = pocket.Panel(fold.Parent);
            List<Vector3d> line = [panel.At(fold.From) - foot, panel.At(fold.To) - foot];
            if (leaving is { } way)
            {
                var ahead = AssembledThing.Direction(way);
                var rear = way is Leaving.Right or Leaving.Left ? item.Width / 2 : item.Depth / 2;
                line = ConvexClip.Keep(line, ahead, Hair - rear);
            }

            if (line.Count < 2)
                continue;

            // A pocket that holds something thick is as much narrower: what goes up its side is lost across.
            var away = leaving is { } outwards ? Beside(item, line, outwards) : section.LeastDistance(line[0] with { Z = 0 }, line[1] with { Z = 0 });
            var room = away - card - (item.Height / 2);
            if (least is null || room < least.Room)
                least = new ItemRoom(room, fold.Child);
        }

        return least;
    }

    // How far beside the way of an item a line ahead of it lies; below 0 where it lies across that way.
    private static double Beside(ItemBody item, List<Vector3d> line, Leaving leaving)
    {
        var (across, half) = leaving is Leaving.Right or Leaving.Left ? (Vector3d.UnitY, item.Depth / 2) : (Vector3d.UnitX, item.Width / 2);
        var (one, other) = (across.Dot(line[0]), across.Dot(line[1]));
        return one * other <= 0 ? -half : Math.Min(Math.Abs(one), Math.Abs(other)) - half;
    }

    private static ItemRoom? Nearer(
        ItemRoom? least, ItemSection section, List<Vector3d> corners, Slab slab, bool plan, Vector3d across = default, Vector3d up = default)
    {
        if (corners.Count == 0)
            return least;
        var centre = corners.Aggregate(default(Vector3d), (sum, corner) => sum + corner) * (1.0 / corners.Count);
        var inwards = plan ? new Vector3d(-centre.X, -centre.Y, 0) : -((across * centre.X) + (up * centre.Y));
        var thick = inwards.Length < 1e-9 ? 0 : slab.Towards(inwards.Unit);
        for (var i = 0; i < corners.Count; i++)
        {
            var room = section.LeastDistance(corners[i], corners[(i + 1) % corners.Count]) - thick;
            if (least is null || room < least.Room)
                least = new ItemRoom(room, slab.Panel.Panel.Name);
        }

        return least;
    }

    // Whether a shape lies over the origin.
    private static bool Covers(List<Vector3d> corners)
    {
        var (inside, twice) = (false, 0.0);
        for (var i = 0; i < corners.Count; i++)
        {
            var (a, b) = (corners[i], corners[(i + 1) % corners.Count]);
            twice += (a.X * b.Y) - (b.X * a.Y);
            if (a.Y > 0 != b.Y > 0 && 0 < a.X - (a.Y / (b.Y - a.Y) * (b.X - a.X)))
                inside = !inside;
        }

        return inside && Math.Abs(twice) > 1e-3;
    }
}
