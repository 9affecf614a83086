namespace Pattern.Press.Nets.Folding;

/// <summary>A point inside a piece, away from every cut, where folds meet.</summary>
/// <param name="At">Where it is on the sheet.</param>
/// <param name="Folds">The folds that end there, clockwise on the page, starting from the right.</param>
/// <param name="Angles">The angle from each fold to the next, in degrees; together 360.</param>
public sealed record InteriorPoint(Point At, IReadOnlyList<Fold> Folds, IReadOnlyList<double> Angles)
{
    /// <summary>All such points of a piece, in the order of its folds.</summary>
    public static IReadOnlyList<InteriorPoint> Of(Piece piece)
    {
        ArgumentNullException.ThrowIfNull(piece);
        var points = new List<InteriorPoint>();
        foreach (var end in piece.Folds.SelectMany(fold => new[] { fold.From, fold.To }))
        {
            if (points.Any(point => Same(point.At, end)) || !IsInside(piece, end))
                continue;
            var rays = piece.Folds.Where(fold => Same(fold.From, end) || Same(fold.To, end))
                .Select(fold => (Fold: fold, Heading: Heading(end, Same(fold.From, end) ? fold.To : fold.From)))
                .OrderBy(ray => ray.Heading).ToArray();
            var angles = rays.Select((ray, i) =>
                i + 1 < rays.Length ? rays[i + 1].Heading - ray.Heading : 360 + rays[0].Heading - ray.Heading);
            points.Add(new InteriorPoint(end, [.. rays.Select(ray => ray.Fold)], [.. angles]));
        }

        return points;
    }

    // All around the point there are panels: the angles of their corners there make a full turn.
    private static bool IsInside(Piece piece, Point point)
    {
        var sum = 0.0;
        foreach (var panel in piece.Panels)
        {
            var edges = panel.Outline.Edges;
            for (var i = 0; i < edges.Count; i++)
            {
                var (edge, before) = (edges[i], edges[(i + edges.Count - 1) % edges.Count]);
                if (Same(edge.From, point))
                    sum += 180 - Turn(before.HeadingAtEnd, edge.HeadingAtStart);
                else if (!Same(edge.To, point) && edge.DistanceTo(point) < LineWork.Tolerance)
                    sum += 180;
            }
        }

        return Math.Abs(sum - 360) < 1e-6;
    }

    private static double Turn(double from, double to)
    {
        var turn = (to - from) * 180 / Math.PI;
        return turn - (Math.Round(turn / 360) * 360);
    }

    private static double Heading(Point from, Point to)
    {
        var angle = Math.Atan2(to.Y - from.Y, to.X - from.X) * 180 / Math.PI;
        return angle < 0 ? angle + 360 : angle;
    }

    private static bool Same(Point a, Point b) => a.DistanceTo(b) < LineWork.Tolerance;
}
