namespace Pattern.Press.Nets.Folding;

/// <summary>Tells apart panels that lie on each other in a folded piece.</summary>
public static class Layers
{
    /// <summary>
    /// Moves panels that lie on others off them, each to the side where it lies: panels folded all the way over, by twice
    /// the distance, so that tabs between have room; panels that take glue, away from what they are glued to, by the
    /// distance; panels pressed back to back around a fold that closes a loop, by half of it each. What hangs on a panel
    /// moves with it. Of what is rolled, the end that takes glue goes below the other. Flaps that are only tucked in, or folded
    /// in below a lid, go to the facing side of the panel that they lie against, the inside.
    /// </summary>
    /// <param name="pose">The folded piece.</param>
    /// <param name="distance">The distance in millimetres, such as the card's caliper; 0 or more.</param>
    public static Pose Apart(Pose pose, double distance)
    {
        ArgumentNullException.ThrowIfNull(pose);
        ArgumentOutOfRangeException.ThrowIfNegative(distance);
        if (distance == 0)
            return pose;
        var tree = HingeTree.Of(pose.Strips);
        var shifts = new Vector3d[pose.Panels.Count];
        var own = new Vector3d[pose.Panels.Count];
        var carriers = tree.Outwards.Select(hinge => hinge.Fixed).ToHashSet();
        foreach (var hinge in tree.Outwards)
        {
            var (carrier, panel) = (pose.Panels[hinge.Fixed], pose.Panels[hinge.Turning]);
            shifts[hinge.Turning] = shifts[hinge.Fixed];

            // From strip to strip of what is rolled, each is as far off what it lies on as the others, its own way.
            if (pose.Strips.Rulings.Contains(hinge.Fold))
                shifts[hinge.Turning] -= own[hinge.Fixed];
            if (pose.Angles[hinge.Fold] > Fold.LaysOver)
                shifts[hinge.Turning] += carrier.Facing * (hinge.Fold.Direction == FoldDirection.Valley ? 2 * distance : -2 * distance);
            else if (GlueSide(pose.Piece, panel.Panel.Name) is { } side && (panel.Panel.Role == PanelRole.Tab || IsRolledUnder(panel)))
                shifts[hinge.Turning] += own[hinge.Turning] = panel.Facing * (side == SheetSide.Away ? distance : -distance);
            else if (IsFlap(hinge.Turning) && GlueSide(pose.Piece, panel.Panel.Name) is null && Over(panel) is { } over)
                shifts[hinge.Turning] += over.Facing * distance;
        }

        foreach (var loop in tree.Loops.Where(loop => pose.Angles[loop.Fold] > Fold.LaysOver))
        {
            var half = loop.Fold.Direction == FoldDirection.Mountain ? distance / 2 : -distance / 2;
            shifts[loop.Fixed] += pose.Panels[loop.Fixed].Facing * half;
            shifts[loop.Turning] += pose.Panels[loop.Turning].Facing * half;
        }

        return pose with
        {
            Panels = [.. pose.Panels.Select((panel, i) =>
                new PosedPanel(panel.Panel, panel.Motion with { Shift = panel.Motion.Shift + shifts[i] }))],
        };

        // A tab, or a panel that nothing hangs on; strips of a bent panel follow one another.
        bool IsFlap(int panel) => pose.Panels[panel].Panel.Role == PanelRole.Tab || (pose.Strips.Rulings.Count == 0 && !carriers.Contains(panel));

        // A strip at the end of what is rolled that the other end covers.
        bool IsRolledUnder(PosedPanel strip) => pose.Strips.Rulings.Count > 0 && pose.Panels.Any(panel => panel != strip && panel.Panel.Kind == strip.Panel.Kind && LieTogether(strip, panel));

        // What such a flap lies against: a panel that something hangs on, or any if the flap is a tab.
        PosedPanel? Over(PosedPanel flap) => pose.Panels.Where((panel, i) => panel != flap && panel.Panel.Role == PanelRole.Panel
            && (flap.Panel.Role == PanelRole.Tab || carriers.Contains(i)) && LieTogether(flap, panel)).FirstOrDefault();
    }

    /// <summary>Whether two panels lie in one plane and over each other.</summary>
    internal static bool LieTogether(PosedPanel one, PosedPanel other) =>
        Math.Abs(one.Facing.Dot(other.Facing)) > 1 - 1e-6
        && one.Corners.All(corner => Math.Abs(other.Facing.Dot(corner - other.Corners[0])) < 0.01)
        && Overlap.Area(Proofs.SeamFinding.OnSheetOf(one, other), other.Panel.Outline) > 0.02 * one.Panel.Outline.Area;

    private static SheetSide? GlueSide(Piece piece, string panel)
    {
        foreach (var glue in piece.GlueAreas)
        {
            if (glue.Panel == panel)
                return glue.Side;
        }

        return null;
    }
}
