namespace Pattern.Press.Nets.Folding;

/// <summary>The middle of a ring that stands on its rim, such as a shade with five sides, whose box has another one.</summary>
internal static class RingMiddle
{
    /// <summary>
    /// The point on its ground that is as far from all panels as can be, by least squares; null where they do not surround
    /// anything.
    /// </summary>
    public static Vector3d? Of(Pose pose)
    {
        // A panel with the level normal n through p is n·p − n·c away from c; that is the same distance for all.
        double xx = 0, xy = 0, yy = 0, x = 0, y = 0, count = 0, xs = 0, ys = 0, sum = 0;
        foreach (var panel in pose.Panels.Where(panel => panel.Panel.Role == PanelRole.Panel))
        {
            var level = panel.Facing with { Z = 0 };
            if (level.Length < 0.1)
                continue;
            var (n, at) = (level.Unit, panel.At(panel.Panel.Outline.Centroid));
            var away = n.Dot(at);
            (xx, xy, yy) = (xx + (n.X * n.X), xy + (n.X * n.Y), yy + (n.Y * n.Y));
            (x, y, count) = (x + n.X, y + n.Y, count + 1);
            (xs, ys, sum) = (xs + (n.X * away), ys + (n.Y * away), sum + away);
        }

        var whole = Three(xx, xy, x, xy, yy, y, x, y, count);
        if (count < 3 || Math.Abs(whole) < 1e-6)
            return null;
        return new Vector3d(
            Three(xs, xy, x, ys, yy, y, sum, y, count) / whole,
            Three(xx, xs, x, xy, ys, y, x, sum, count) / whole,
            pose.Panels.Min(panel => panel.Corners.Min(corner => corner.Z)));
    }

    // The determinant of three rows.
    private static double Three(double a, double b, double c, double d, double e, double f, double g, double h, double i) =>
        (a * ((e * i) - (f * h))) - (b * ((d * i) - (f * g))) + (c * ((d * h) - (e * g)));
}
