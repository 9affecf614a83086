using Pattern.Press.Nets;
using Pattern.Press.Typesetting.Pages;

namespace Pattern.Press.Booklets.Figures.Drafting;

/// <summary>A closed line of straight sides, in millimetres; arcs are followed closely.</summary>
internal sealed class Shape
{
    // A chord strays this far from its arc at most: less than any printer's dot.
    private const double ArcTolerance = 0.004;

    // Gone through far more often than asked for.
    private readonly Point[] _corners;

    public Shape(IReadOnlyList<Point> corners)
    {
        _corners = corners as Point[] ?? [.. corners];
        var box = new Box(double.MaxValue, double.MaxValue, double.MinValue, double.MinValue);
        foreach (var corner in _corners)
        {
            box = new Box(
                Math.Min(box.Left, corner.X), Math.Min(box.Top, corner.Y), Math.Max(box.Right, corner.X), Math.Max(box.Bottom, corner.Y));
        }

        Bounds = box;
        IsUpright = IsWhole(_corners, box);
    }

    public IReadOnlyList<Point> Corners => _corners;

    public Box Bounds { get; }

    /// <summary>Whether it fills its bounds, as most panels do: then nothing needs to be held against its sides.</summary>
    public bool IsUpright { get; }

    /// <summary>An arc as the straight strokes of a dashed line; a gap is half as long as a dash.</summary>
    public static IEnumerable<(Point From, Point To)> Dashed(Edge arc, double dash)
    {
        const int Chords = 4;
        var length = arc.Length;
        for (var at = 0.0; at < length; at += 1.5 * dash)
        {
            var end = Math.Min(at + dash, length);
            for (var i = 0; i < Chords; i++)
                yield return (arc.At((at + ((end - at) * i / Chords)) / length), arc.At((at + ((end - at) * (i + 1) / Chords)) / length));
        }
    }

    /// <summary>The middle of its area.</summary>
    public Point Middle
    {
        get
        {
            double area = 0, x = 0, y = 0;
            for (var i = 0; i < Corners.Count; i++)
            {
                var (a, b) = (Corners[i] - Corners[0], Corners[(i + 1) % Corners.Count] - Corners[0]);
                var cross = (a.X * b.Y) - (b.X * a.Y);
                area += cross;
                x += (a.X + b.X) * cross;
                y += (a.Y + b.Y) * cross;
            }

            return Math.Abs(area) < 1e-12
                ? new Point(Bounds.CentreX, Bounds.CentreY)
                : Corners[0] + new Point(x / (3 * area), y / (3 * area));
        }
    }

    /// <summary>Its area, in square millimetres.</summary>
    public double Area => Math.Abs(Sides.Sum(side => (side.From - Corners[0]).Cross(side.To - Corners[0]))) / 2;

    public IEnumerable<Segment> Sides
    {
        get
        {
            for (var i = 0; i < Corners.Count; i++)
                yield return new Segment(Corners[i], Corners[(i + 1) % Corners.Count]);
        }
    }

    public static Shape Of(Outline outline, Placing placing)
    {
        var edges = outline.Edges;
        var straight = new Point[edges.Count];
        for (var i = 0; i < straight.Length; i++)
        {
            if (edges[i].IsArc)
                return Curved(outline, placing);
            straight[i] = placing.Put(edges[i].From);
        }

        return new Shape(straight);
    }

    private static Shape Curved(Outline outline, Placing placing)
    {
        var corners = new List<Point>(outline.Edges.Count);
        foreach (var edge in outline.Edges)
        {
            if (!edge.IsArc)
            {
                corners.Add(placing.Put(edge.From));
                continue;
            }

            var line = Line(edge);
            for (var i = 0; i < line.Count - 1; i++)
                corners.Add(placing.Put(line[i]));
        }

        return new Shape(corners);
    }

    /// <summary>The points along an edge, both ends included.</summary>
    public static IReadOnlyList<Point> Line(Edge edge)
    {
        if (!edge.IsArc)
            return [edge.From, edge.To];
        // A bulge b is the tangent of a quarter of the angle: the centre lies right of the chord for b > 0.
        var (b, chord) = (edge.Bulge, edge.From.DistanceTo(edge.To));
        var across = new Point(-(edge.To.Y - edge.From.Y), edge.To.X - edge.From.X) * (1 / chord);
        var centre = ((edge.From + edge.To) * 0.5) + (across * (chord / 2 * (1 - (b * b)) / (2 * b)));
        var radius = centre.DistanceTo(edge.From);
        var sweep = 4 * Math.Atan(b);
        var start = Math.Atan2(edge.From.Y - centre.Y, edge.From.X - centre.X);
        var step = 2 * Math.Acos(Math.Max(0, 1 - (ArcTolerance / radius)));
        var parts = Math.Max(2, (int)Math.Ceiling(Math.Abs(sweep) / Math.Max(step, 0.01)));
        var points = new Point[parts + 1];
        for (var i = 0; i <= parts; i++)
        {
            var (s, c) = Math.SinCos(start + (sweep * i / parts));
            points[i] = new Point(centre.X + (radius * c), centre.Y + (radius * s));
        }

        points[0] = edge.From;
        points[^1] = edge.To;
        return points;
    }

    public static Shape Of(Box box) =>
        new([new(box.Left, box.Top), new(box.Right, box.Top), new(box.Right, box.Bottom), new(box.Left, box.Bottom)]);

    /// <summary>Whether a point is inside (even–odd rule).</summary>
    public bool Holds(Point point)
    {
        var inside = false;
        var corners = _corners;
        for (int i = 0, j = corners.Length - 1; i < corners.Length; j = i++)
        {
            var (a, b) = (corners[i], corners[j]);
            if ((a.Y > point.Y) != (b.Y > point.Y) && point.X < ((b.X - a.X) * (point.Y - a.Y) / (b.Y - a.Y)) + a.X)
                inside = !inside;
        }

        return inside;
    }

    /// <summary>Whether a whole box is inside.</summary>
    public bool Holds(Box box)
    {
        if (!Bounds.Holds(box))
            return false;
        if (IsUpright && box.Width > 0 && box.Height > 0)
            return true;
        if (!Holds(new Point(box.CentreX, box.CentreY)))
            return false;
        var corners = _corners;
        for (int i = 0, j = corners.Length - 1; i < corners.Length; j = i++)
        {
            if (new Segment(corners[j], corners[i]).Crosses(box))
                return false;
        }

        return true;
    }

    /// <summary>Whether any part of a box is inside.</summary>
    public bool Meets(Box box) =>
        Bounds.Meets(box) && (Holds(new Point(box.CentreX, box.CentreY)) || Sides.Any(side => side.Crosses(box)));

    /// <summary>The part inside a box (Sutherland and Hodgman's clipping), or null if nothing is left.</summary>
    public Shape? Within(Box box)
    {
        IReadOnlyList<Point> corners = Corners;
        corners = Cut(corners, p => p.X - box.Left);
        corners = Cut(corners, p => box.Right - p.X);
        corners = Cut(corners, p => p.Y - box.Top);
        corners = Cut(corners, p => box.Bottom - p.Y);
        return corners.Count < 3 ? null : new Shape(corners);
    }

    public VectorPath Path()
    {
        var corners = new PagePoint[Corners.Count];
        for (var i = 0; i < corners.Length; i++)
            corners[i] = new PagePoint(Corners[i].X, Corners[i].Y);
        return PathBuilder.Polygon(corners);
    }

    public PathBuilder AddTo(PathBuilder builder)
    {
        builder.MoveTo(Corners[0].X, Corners[0].Y);
        for (var i = 1; i < Corners.Count; i++)
            builder.LineTo(Corners[i].X, Corners[i].Y);
        return builder.Close();
    }

    // Four corners, each at one of the bounds' own.
    private static bool IsWhole(IReadOnlyList<Point> corners, Box bounds)
    {
        if (corners.Count != 4 || bounds.Width <= 0 || bounds.Height <= 0)
            return false;
        for (var i = 0; i < 4; i++)
        {
            var (a, b) = (corners[i], corners[(i + 1) % 4]);
            if (a.X == b.X == (a.Y == b.Y) || !IsCorner(a))
                return false;
        }

        return true;

        bool IsCorner(Point p) => (p.X == bounds.Left || p.X == bounds.Right) && (p.Y == bounds.Top || p.Y == bounds.Bottom);
    }

    private static List<Point> Cut(IReadOnlyList<Point> corners, Func<Point, double> inside)
    {
        var kept = new List<Point>(corners.Count + 2);
        for (var i = 0; i < corners.Count; i++)
        {
            var (a, b) = (corners[i], corners[(i + 1) % corners.Count]);
            var (da, db) = (inside(a), inside(b));
            if (da >= 0)
                kept.Add(a);
            if ((da > 0 && db < 0) || (da < 0 && db > 0))
                kept.Add(a + ((b - a) * (da / (da - db))));
        }

        return kept;
    }
}
