using Pattern.Press.Nets;

namespace Pattern.Press.Acceptance.Printed;

/// <summary>A line drawn on a page, in millimetres from its top-left corner.</summary>
/// <param name="Width">How thick it is.</param>
/// <param name="Dash">Its dashes and gaps; empty for a continuous line.</param>
/// <param name="Lines">Its straight stretches.</param>
/// <param name="Curves">Its Bézier curves.</param>
public sealed record PrintedStroke(double Width, IReadOnlyList<double> Dash, IReadOnlyList<PrintedLine> Lines, IReadOnlyList<PrintedCurve> Curves)
{
    public IEnumerable<Point> Points =>
        Lines.SelectMany(line => new[] { line.From, line.To }).Concat(Curves.SelectMany(curve => new[] { curve.From, curve.First, curve.Second, curve.To }));
}

/// <summary>A straight stretch.</summary>
public readonly record struct PrintedLine(Point From, Point To)
{
    public double Length => From.DistanceTo(To);

    public bool IsLevel(double tolerance = 0.001) => Math.Abs(From.Y - To.Y) <= tolerance;

    public bool IsUpright(double tolerance = 0.001) => Math.Abs(From.X - To.X) <= tolerance;
}

/// <summary>A Bézier curve with its two control points.</summary>
public readonly record struct PrintedCurve(Point From, Point First, Point Second, Point To);

/// <summary>A filled area: all the corners and control points of its edge.</summary>
public sealed record PrintedFill(IReadOnlyList<Point> Points)
{
    public double Left => Points.Min(point => point.X);

    public double Top => Points.Min(point => point.Y);

    public double Right => Points.Max(point => point.X);

    public double Bottom => Points.Max(point => point.Y);
}
