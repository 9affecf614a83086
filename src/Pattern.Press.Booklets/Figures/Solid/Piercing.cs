using Pattern.Press.Nets.Folding;

namespace Pattern.Press.Booklets.Figures.Solid;

/// <summary>
/// Whether panels of a piece that is part of the way folded go through each other: card bends out of the way there, but drawn as
/// it is posed it would show the edge of a tab in the middle of a face.
/// </summary>
internal static class Piercing
{
    /// <summary>What goes in by less than this, in millimetres, is not seen.</summary>
    private const double Seen = 0.5;

    /// <summary>Whether the edge of a panel goes through another one that no fold joins to it.</summary>
    public static bool Of(Pose pose)
    {
        ArgumentNullException.ThrowIfNull(pose);
        var joined = pose.Piece.Folds.SelectMany(fold => new[] { (fold.Parent, fold.Child), (fold.Child, fold.Parent) }).ToHashSet();
        return pose.Panels.Any(panel => pose.Panels.Any(other =>
            panel != other && !joined.Contains((panel.Panel.Name, other.Panel.Name)) && Pierces(panel.Corners, other)));
    }

    private static bool Pierces(IReadOnlyList<Vector3d> corners, PosedPanel other)
    {
        for (var i = 0; i < corners.Count; i++)
        {
            var (from, to) = (corners[i], corners[(i + 1) % corners.Count]);
            var (before, behind) = (other.Facing.Dot(from - other.Corners[0]), other.Facing.Dot(to - other.Corners[0]));
            if (Math.Min(before, behind) > -Seen || Math.Max(before, behind) < Seen)
                continue;
            var at = other.Motion.Inverse.Apply(from + ((to - from) * (before / (before - behind))));
            var place = new Nets.Point(at.X, -at.Y);
            if (other.Panel.Contains(place) && other.Panel.Outline.DistanceTo(place) > Seen)
                return true;
        }

        return false;
    }
}
