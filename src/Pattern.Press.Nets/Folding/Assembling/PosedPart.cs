namespace Pattern.Press.Nets.Folding;

/// <summary>One copy of a piece, or the item, where it stands in the assembled thing.</summary>
/// <param name="Part">Its entry in the assembly.</param>
/// <param name="Copy">Which copy, from 0.</param>
/// <param name="Pose">The folded piece; null for the item.</param>
/// <param name="Item">The item; null for a piece.</param>
/// <param name="Foot">For the item, the middle of its underside.</param>
public sealed record PosedPart(AssembledPart Part, int Copy, Pose? Pose, ItemBody? Item, Vector3d Foot)
{
    /// <summary>Its highest point.</summary>
    public double Top => Pose is null ? Foot.Z + Item!.Height : Pose.Panels.Max(panel => panel.Corners.Max(corner => corner.Z));

    /// <summary>Its lowest point.</summary>
    public double Bottom => Pose is null ? Foot.Z : Pose.Panels.Min(panel => panel.Corners.Min(corner => corner.Z));

    /// <summary>The same, moved.</summary>
    public PosedPart Moved(Vector3d by) => this with { Pose = Pose?.Moved(RigidMotion.By(by)), Foot = Foot + by };

    /// <summary>Its outermost corners.</summary>
    public IEnumerable<Vector3d> Corners
    {
        get
        {
            if (Pose is not null)
                return Pose.Panels.SelectMany(panel => panel.Corners);
            var (x, y, z) = (Item!.Width / 2, Item.Depth / 2, Item.Height);
            return [.. from dx in new[] { -x, x } from dy in new[] { -y, y } from dz in new[] { 0, z } select Foot + new Vector3d(dx, dy, dz)];
        }
    }
}
