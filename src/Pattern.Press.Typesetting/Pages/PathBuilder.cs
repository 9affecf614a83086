namespace Pattern.Press.Typesetting.Pages;

/// <summary>Builds a <see cref="VectorPath"/> step by step.</summary>
public sealed class PathBuilder
{
    private static readonly PathVerb[] OneLine = [PathVerb.Move, PathVerb.Line];

    private readonly List<PathVerb> _verbs = [];
    private readonly List<PagePoint> _points = [];

    /// <summary>A path of one straight line.</summary>
    public static VectorPath Line(double x1, double y1, double x2, double y2) =>
        new(OneLine, new[] { new PagePoint(x1, y1), new PagePoint(x2, y2) });

    /// <summary>A rectangle.</summary>
    public static VectorPath Rectangle(double x, double y, double width, double height) =>
        Polygon(new(x, y), new(x + width, y), new(x + width, y + height), new(x, y + height));

    /// <summary>A closed polygon.</summary>
    public static VectorPath Polygon(params PagePoint[] corners)
    {
        ArgumentNullException.ThrowIfNull(corners);
        if (corners.Length == 0)
            throw new ArgumentException("A polygon has corners.", nameof(corners));
        var verbs = new PathVerb[corners.Length + 1];
        Array.Fill(verbs, PathVerb.Line);
        (verbs[0], verbs[^1]) = (PathVerb.Move, PathVerb.Close);
        return new VectorPath(verbs, corners);
    }

    /// <summary>A circle, of four Bézier curves that stay within 0.03 % of the radius.</summary>
    public static VectorPath Circle(double x, double y, double radius)
    {
        var k = radius * 0.5522847498;
        return new PathBuilder()
            .MoveTo(x + radius, y)
            .CurveTo(x + radius, y + k, x + k, y + radius, x, y + radius)
            .CurveTo(x - k, y + radius, x - radius, y + k, x - radius, y)
            .CurveTo(x - radius, y - k, x - k, y - radius, x, y - radius)
            .CurveTo(x + k, y - radius, x + radius, y - k, x + radius, y)
            .Close()
            .Build();
    }

    public PathBuilder MoveTo(double x, double y) => Add(PathVerb.Move, new PagePoint(x, y));

    public PathBuilder LineTo(double x, double y) => Add(PathVerb.Line, new PagePoint(x, y));

    public PathBuilder CurveTo(double x1, double y1, double x2, double y2, double x, double y) =>
        Add(PathVerb.Curve, new PagePoint(x1, y1), new PagePoint(x2, y2), new PagePoint(x, y));

    public PathBuilder Close() => Add(PathVerb.Close);

    public VectorPath Build() => new(_verbs.ToArray(), _points.ToArray());

    private PathBuilder Add(PathVerb verb, params ReadOnlySpan<PagePoint> points)
    {
        _verbs.Add(verb);
        foreach (var point in points)
            _points.Add(point);
        return this;
    }
}
