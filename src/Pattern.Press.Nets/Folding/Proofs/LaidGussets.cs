namespace Pattern.Press.Nets.Folding.Proofs;

/// <summary>
/// The ways in which gussets can lie in a finished box. Two halves pressed together turn about the corner where they hang:
/// they stand into the box at a slant, or lie flat against one wall or the other.
/// </summary>
internal static class LaidGussets
{
    /// <summary>The finished pose first, then those with the gussets flat against the walls of one way and of the other, if any.</summary>
    public static IReadOnlyList<Pose> Of(Pose finished)
    {
        if (finished.Gaps.Count == 0)
            return [finished];
        var ways = new List<Pose> { finished };
        foreach (var along in (ReadOnlySpan<bool>)[true, false])
        {
            if (Laid(finished, along) is { } laid)
                ways.Add(laid);
        }

        return ways;
    }

    private static Pose? Laid(Pose finished, bool alongX)
    {
        var piece = finished.Piece;
        var tree = HingeTree.Of(finished.Strips);
        var angles = tree.Outwards.ToDictionary(hinge => hinge.Fold, hinge => hinge.Fold.Angle);
        var any = false;
        foreach (var loop in tree.Loops.Where(loop => loop.Fold.GoesOver))
        {
            if (tree.HingeOf[loop.Fixed] is not { } first || tree.HingeOf[loop.Turning] is not { } second)
                continue;
            var facing = finished.Panels[first.Fixed].Facing;
            var (flat, other) = Math.Abs(facing.X) > Math.Abs(facing.Y) == alongX ? (first, second) : (second, first);
            var rest = first.Fold.Angle + second.Fold.Angle - 180;
            if (rest <= 0)
                continue;
            (angles[flat.Fold], angles[other.Fold]) = (180, rest);
            any = true;
        }

        if (!any)
            return null;
        var pose = Folder.Pose(finished.Strips, fold => angles.GetValueOrDefault(fold, fold.Angle));
        if (pose.WidestGap > PieceProofs.WidestGap * Math.Max(piece.Sheet.Width.Millimetres, piece.Sheet.Height.Millimetres))
            return null;
        return pose.Moved(finished.Root.Motion);
    }
}
