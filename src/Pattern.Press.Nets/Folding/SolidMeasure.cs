namespace Pattern.Press.Nets.Folding;

/// <summary>What panels measure in space.</summary>
public static class SolidMeasure
{
    /// <summary>
    /// The volume in cubic millimetres inside panels that together close a solid, the facing side of each inside. Panels
    /// that lie on others (tabs, gussets) have to be left out. Where the panels do not close a solid the number means nothing.
    /// </summary>
    public static double Volume(IEnumerable<PosedPanel> panels)
    {
        var sum = 0.0;
        foreach (var panel in panels)
        {
            // Each panel as a fan of triangles, each the base of a pyramid on the origin (the divergence theorem).
            var corners = panel.Corners;
            for (var i = 2; i < corners.Count; i++)
                sum += corners[0].Dot(corners[i - 1].Cross(corners[i]));
        }

        return sum / 6;
    }

    /// <summary>The area of panels in square millimetres.</summary>
    public static double Surface(IEnumerable<PosedPanel> panels) => panels.Sum(panel => panel.Panel.Outline.Area);

    /// <summary>
    /// The angle between the two panels of a fold, measured on the facing side, in degrees: 180 flat, 90 in the corner of a
    /// box, 0 when they lie face to face, 360 when they lie back to back.
    /// </summary>
    public static double Dihedral(Pose pose, Fold fold) =>
        180 - (fold.Direction == FoldDirection.Valley ? pose.Angles[fold] : -pose.Angles[fold]);
}
