using Pattern.Press.Booklets.Figures.Drafting;
using Pattern.Press.Nets;
using Pattern.Press.Typesetting.Pages;

namespace Pattern.Press.Booklets.Templates;

/// <summary>The parts of an edge, straight or round, that lie inside a box, and the curves that draw them.</summary>
internal static class Stretches
{
    // A stretch shorter than this, in millimetres, is no more than a touch.
    private const double Shortest = 1e-6;

    // An arc of 45 degrees drawn as one Bézier curve is off by four millionths of its radius.
    private const double WidestCurve = Math.PI / 4;

    /// <summary>The stretches inside the box, in the edge's order.</summary>
    public static IEnumerable<Edge> Within(Edge edge, Box box)
    {
        if (!edge.IsArc)
        {
            if (new Segment(edge.From, edge.To).Within(box) is { Length: > Shortest } seen)
                yield return new Edge(seen.From, seen.To);
            yield break;
        }

        double[] ends = [0, .. Crossings(edge, box).Where(part => part is > 0 and < 1).Order(), 1];
        double? open = null;
        for (var i = 0; i + 1 < ends.Length; i++)
        {
            var middle = edge.At((ends[i] + ends[i + 1]) / 2);
            var inside = middle.X >= box.Left && middle.X <= box.Right && middle.Y >= box.Top && middle.Y <= box.Bottom;
            if (inside)
                open ??= ends[i];
            if (open is { } start && (!inside || i + 2 == ends.Length))
            {
                var end = inside ? ends[i + 1] : ends[i];
                open = null;
                if ((end - start) * edge.Length > Shortest)
                    yield return edge.Between(start, end);
            }
        }
    }

    /// <summary>The edge as a path.</summary>
    public static VectorPath Path(Edge edge)
    {
        var builder = new PathBuilder().MoveTo(edge.From.X, edge.From.Y);
        if (!edge.IsArc)
            return builder.LineTo(edge.To.X, edge.To.Y).Build();
        var parts = edge.PartsOf(WidestCurve);
        var (centre, turn) = (edge.Centre, edge.Sweep / parts);
        var reach = 4.0 / 3 * Math.Tan(turn / 4);
        for (var i = 0; i < parts; i++)
        {
            var (from, to) = (edge.At((double)i / parts), edge.At((double)(i + 1) / parts));
            var (first, second) = (from + (Across(from - centre) * reach), to - (Across(to - centre) * reach));
            builder.CurveTo(first.X, first.Y, second.X, second.Y, to.X, to.Y);
        }

        return builder.Build();

        static Point Across(Point arm) => new(-arm.Y, arm.X);
    }

    // Where, as parts of the way along, an arc may pass through the lines that the box's sides lie on.
    private static IEnumerable<double> Crossings(Edge edge, Box box)
    {
        var (centre, radius, sweep) = (edge.Centre, edge.Radius, edge.Sweep);
        var start = Math.Atan2(edge.From.Y - centre.Y, edge.From.X - centre.X);
        foreach (var (reach, quarter) in new[] { (box.Left - centre.X, 0), (box.Right - centre.X, 0), (box.Top - centre.Y, Math.PI / 2), (box.Bottom - centre.Y, Math.PI / 2) })
        {
            if (Math.Abs(reach) >= radius)
                continue;
            var away = Math.Acos(reach / radius);
            foreach (var angle in new[] { quarter + away, quarter - away })
            {
                var turn = (angle - start) * Math.Sign(sweep);
                turn -= Math.Floor(turn / (2 * Math.PI)) * 2 * Math.PI;
                yield return turn / Math.Abs(sweep);
            }
        }
    }
}
