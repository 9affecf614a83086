namespace Pattern.Press.Nets.Folding.Proofs;

/// <summary>The room between the walls of a folded box, measured from its pose.</summary>
/// <param name="Width">Across, along the sheet's x, where it is narrowest, in millimetres.</param>
/// <param name="Depth">The other way, along the sheet's y, where it is narrowest.</param>
/// <param name="Height">From the floor to the top of the lowest wall.</param>
public sealed record InsideRoom(double Width, double Depth, double Height)
{
    /// <summary>
    /// Measures the room above the root between the panels that are folded up from it; null when fewer than three stand up.
    /// The card's thickness is not taken off.
    /// </summary>
    public static InsideRoom? Of(Pose pose)
    {
        ArgumentNullException.ThrowIfNull(pose);
        var root = pose.Root;
        var home = root.Motion.Inverse;
        var walls = Walls(pose).ToArray();
        if (walls.Length < 3)
            return null;
        var height = walls.Min(wall => wall.Corners.Max(corner => home.Apply(corner).Z));
        var (width, depth) = (double.PositiveInfinity, double.PositiveInfinity);
        foreach (var level in (ReadOnlySpan<double>)[0, height])
        {
            var section = Section(root, walls, home, level);
            if (section.Count == 0)
                return new InsideRoom(0, 0, height);
            width = Math.Min(width, section.Max(p => p.X) - section.Min(p => p.X));
            depth = Math.Min(depth, section.Max(p => p.Y) - section.Min(p => p.Y));
        }

        return new InsideRoom(width, depth, height);
    }

    /// <summary>
    /// How much room an item has left sideways when it stands on the middle of the floor: the shortest distance from it to
    /// any other panel, gussets included, in millimetres. Below 0 it does not go in.
    /// </summary>
    /// <param name="pose">The folded box.</param>
    /// <param name="item">The item's section.</param>
    /// <param name="height">How tall the item is, in millimetres.</param>
    public static double RoomAround(Pose pose, ItemSection item, double height)
    {
        ArgumentNullException.ThrowIfNull(pose);
        ArgumentNullException.ThrowIfNull(item);
        var root = pose.Root;
        var home = root.Motion.Inverse;
        var middle = Vector3d.OnSheet(root.Panel.Outline.Centroid);
        var least = double.PositiveInfinity;
        foreach (var panel in pose.Panels.Where(panel => panel.Panel.Name != root.Panel.Name))
        {
            var corners = panel.Corners.Select(corner => home.Apply(corner) - middle).ToList();
            corners = ConvexClip.Keep(corners, Vector3d.UnitZ, 0);
            corners = ConvexClip.Keep(corners, -Vector3d.UnitZ, -height);
            for (var i = 0; i < corners.Count; i++)
                least = Math.Min(least, item.LeastDistance(corners[i], corners[(i + 1) % corners.Count]));
        }

        return least;
    }

    private static IEnumerable<PosedPanel> Walls(Pose pose) => pose.Piece.Folds
        .Where(fold => fold.Parent == pose.Piece.Root || fold.Child == pose.Piece.Root)
        .Where(fold => fold.Direction == FoldDirection.Valley && pose.Angles[fold] > 1)
        .Select(fold => pose.Panel(fold.Parent == pose.Piece.Root ? fold.Child : fold.Parent));

    private static List<Vector3d> Section(PosedPanel root, PosedPanel[] walls, RigidMotion home, double level)
    {
        // From a square around everything, so that walls that lean outwards are met where they are at this level.
        var floor = root.Corners.Select(corner => home.Apply(corner)).ToList();
        var (least, most) = (floor.Min(p => Math.Min(p.X, p.Y)) - (2 * level), floor.Max(p => Math.Max(p.X, p.Y)) + (2 * level));
        List<Vector3d> section =
        [
            new(least, least, level), new(most, least, level), new(most, most, level), new(least, most, level),
        ];
        foreach (var wall in walls)
        {
            var inwards = home.Turned(wall.Facing);
            section = ConvexClip.Keep(section, inwards, inwards.Dot(home.Apply(wall.Corners[0])));
        }

        return section;
    }
}
