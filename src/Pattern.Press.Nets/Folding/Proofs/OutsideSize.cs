namespace Pattern.Press.Nets.Folding.Proofs;

/// <summary>How large a finished thing is outside, its card and mats as thick as they are.</summary>
public static class OutsideSize
{
    /// <summary>
    /// The box around the closed thing in millimetres: across, deep, high. What is inside does not count where pieces are
    /// around it.
    /// </summary>
    /// <param name="kit">The kit, fitted.</param>
    public static (double Width, double Depth, double Height) Of(KitToProve kit)
    {
        ArgumentNullException.ThrowIfNull(kit);
        var work = new KitProofs.Working(kit);
        var pieces = work.Thing.Closed.Where(part => part.Pose is not null).ToList();
        var points = pieces.Count == 0
            ? [.. work.Thing.Closed.SelectMany(part => part.Corners)]
            : pieces.SelectMany(part => work.Slabs(part)[0]).SelectMany(Surface).ToList();
        return (Extent(points, Vector3d.UnitX), Extent(points, Vector3d.UnitY), Extent(points, Vector3d.UnitZ));
    }

    private static IEnumerable<Vector3d> Surface(Slab slab) => slab.Panel.Corners.SelectMany(corner => new[]
    {
        corner + (slab.Panel.Facing * slab.Facing),
        corner - (slab.Panel.Facing * slab.Away),
    });

    private static double Extent(List<Vector3d> points, Vector3d way) =>
        points.Count == 0 ? 0 : points.Max(way.Dot) - points.Min(way.Dot);
}
