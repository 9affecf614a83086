namespace Pattern.Press.Nets;

/// <summary>A closed line around a region: each edge starts where the one before it ends, the last ends at the first.</summary>
/// <param name="Edges">At least three edges, or two when one is an arc, clockwise as seen on the page (x right, y down).</param>
public sealed record Outline(IReadOnlyList<Edge> Edges)
{
    // What is asked most often goes through the edges by their number: an enumerator for each question adds up.

    /// <summary>An outline with straight sides through the given corners, in order.</summary>
    public static Outline Through(params ReadOnlySpan<Point> corners)
    {
        var edges = new Edge[corners.Length];
        for (var i = 0; i < corners.Length; i++)
            edges[i] = new Edge(corners[i], corners[(i + 1) % corners.Length]);
        return new Outline(edges);
    }

    /// <summary>An upright rectangle, clockwise from its top-left corner.</summary>
    public static Outline Rectangle(double left, double top, double right, double bottom) =>
        Through(new(left, top), new(right, top), new(right, bottom), new(left, bottom));

    /// <summary>The starting point of each edge.</summary>
    public IEnumerable<Point> Corners => Edges.Select(edge => edge.From);

    /// <summary>
    /// The area inside, in square millimetres, arcs counted exactly; negative when it runs anticlockwise. Straight sides by
    /// the shoelace formula, each arc by its circular segment r²(θ − sin θ)/2.
    /// </summary>
    public double Area
    {
        get
        {
            // Measured from one of its own corners, so that little is lost far from the origin.
            var start = Edges[0].From;
            var twice = 0.0;
            for (var i = 0; i < Edges.Count; i++)
            {
                var edge = Edges[i];
                twice += (edge.From - start).Cross(edge.To - start);
                if (edge.IsArc)
                    twice += edge.Radius * edge.Radius * (edge.Sweep - Math.Sin(edge.Sweep));
            }

            return twice / 2;
        }
    }

    /// <summary>Whether it runs clockwise as seen on the page.</summary>
    public bool IsClockwise => Area > 0;

    /// <summary>The length all round, in millimetres.</summary>
    public double Perimeter => Edges.Sum(edge => edge.Length);

    /// <summary>The least upright rectangle around it.</summary>
    public Bounds Bounds
    {
        get
        {
            var bounds = Edges[0].Bounds;
            for (var i = 1; i < Edges.Count; i++)
                bounds = bounds.With(Edges[i].Bounds);
            return bounds;
        }
    }

    /// <summary>The centre of gravity of the region inside; arcs are taken as their chords.</summary>
    public Point Centroid
    {
        get
        {
            var start = Edges[0].From;
            var (twice, sum) = (0.0, default(Point));
            for (var i = 0; i < Edges.Count; i++)
            {
                var (a, b) = (Edges[i].From - start, Edges[i].To - start);
                var part = a.Cross(b);
                twice += part;
                sum += (a + b) * part;
            }

            return twice == 0 ? Bounds.Centre : start + (sum * (1 / (3 * twice)));
        }
    }

    /// <summary>The same line, walked the other way.</summary>
    public Outline Reversed => new([.. Edges.Reverse().Select(edge => edge.Reversed)]);

    /// <summary>Its mirror image in the vertical line at <paramref name="x"/>, clockwise again.</summary>
    public Outline MirroredAt(double x) =>
        new([.. Edges.Reverse().Select(edge => new Edge(
            new Point((2 * x) - edge.To.X, edge.To.Y), new Point((2 * x) - edge.From.X, edge.From.Y), edge.Bulge))]);

    /// <summary>Whether a point lies inside; on the line itself either answer may come.</summary>
    public bool Contains(Point point)
    {
        var inside = false;
        for (var i = 0; i < Edges.Count; i++)
        {
            var edge = Edges[i];
            var (a, b) = (edge.From, edge.To);
            if ((a.Y > point.Y) != (b.Y > point.Y)
                && point.X < a.X + ((point.Y - a.Y) / (b.Y - a.Y) * (b.X - a.X)))
            {
                inside = !inside;
            }

            // Between an arc and its chord the chord's answer is the wrong way round.
            if (edge.IsArc && LiesBetweenArcAndChord(edge, point))
                inside = !inside;
        }

        return inside;
    }

    /// <summary>The shortest distance from a point to the line, in millimetres.</summary>
    public double DistanceTo(Point point) => Edges.Min(edge => edge.DistanceTo(point));

    /// <summary>Corners of a polygon that stays within a distance of the outline; its own corners when no edge is an arc.</summary>
    /// <param name="tolerance">The distance in millimetres; above 0.</param>
    public IReadOnlyList<Point> Flattened(double tolerance)
    {
        var corners = new List<Point>(Edges.Count);
        for (var i = 0; i < Edges.Count; i++)
        {
            if (Edges[i].IsArc)
                corners.AddRange(Edges[i].Flattened(tolerance));
            else
                corners.Add(Edges[i].From);
        }

        return corners;
    }

    /// <summary>Its corners, for debugging.</summary>
    // What a record writes by itself would go into Reversed, and from there never end.
    public override string ToString() => string.Join(" ", Edges);

    private static bool LiesBetweenArcAndChord(Edge arc, Point point)
    {
        if (point.DistanceTo(arc.Centre) >= arc.Radius)
            return false;
        var along = arc.To - arc.From;

        // The arc bulges to the left of its chord when it turns clockwise, which is where the vector product is negative.
        var side = along.Cross(point - arc.From);
        return arc.Bulge > 0 ? side < 0 : side > 0;
    }
}
