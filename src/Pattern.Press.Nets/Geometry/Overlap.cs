namespace Pattern.Press.Nets;

/// <summary>How much of the page two regions share.</summary>
public static class Overlap
{
    /// <summary>How far straight lines may stray from an arc while areas are compared, in millimetres.</summary>
    private const double Flatness = 0.01;

    /// <summary>
    /// The area in square millimetres that two outlines have in common. Regions that only share a border have none, up to
    /// rounding. Arcs are followed within 0.01 mm.
    /// </summary>
    public static double Area(Outline a, Outline b) => Area([a], [b]);

    /// <summary>The area in common of two regions, each given by its outlines clockwise and its holes anticlockwise.</summary>
    /// <remarks>
    /// A region is the signed sum of the triangles between one fixed point and each of its sides, so the common area is the
    /// signed sum of the common areas of triangles, which are convex. That holds for any shape, with holes or without.
    /// </remarks>
    internal static double Area(IReadOnlyList<Outline> a, IReadOnlyList<Outline> b)
    {
        var (first, second) = (Fan(a), Fan(b));
        Span<Point> shape = stackalloc Point[8];
        Span<Point> spare = stackalloc Point[8];
        var sum = 0.0;
        foreach (var p in first)
        {
            foreach (var q in second)
            {
                if (p.Bounds.Overlaps(q.Bounds))
                    sum += p.Sign * q.Sign * p.CommonWith(q, shape, spare);
            }
        }

        return sum;
    }

    /// <summary>The area that may seem to be shared where two regions only touch.</summary>
    internal static double Slack(IReadOnlyList<Outline> a, IReadOnlyList<Outline> b) =>
        Round(a, LineWork.Tolerance) + Round(b, LineWork.Tolerance);

    private static double Round(IEnumerable<Outline> outlines, double straight) =>
        outlines.SelectMany(outline => outline.Edges).Sum(edge => edge.Length * (edge.IsArc ? Flatness : straight));

    private static List<Triangle> Fan(IReadOnlyList<Outline> outlines)
    {
        var hub = outlines[0].Edges[0].From;
        var fan = new List<Triangle>();
        foreach (var outline in outlines)
        {
            var corners = outline.Flattened(Flatness);
            for (var i = 0; i < corners.Count; i++)
            {
                var (from, to) = (corners[i], corners[(i + 1) % corners.Count]);
                var side = (from - hub).Cross(to - hub);
                if (side > 0)
                    fan.Add(new Triangle(hub, from, to, 1));
                else if (side < 0)
                    fan.Add(new Triangle(hub, to, from, -1));
            }
        }

        return fan;
    }

    private readonly record struct Triangle(Point A, Point B, Point C, int Sign)
    {
        public Bounds Bounds { get; } = new(
            Math.Min(A.X, Math.Min(B.X, C.X)), Math.Min(A.Y, Math.Min(B.Y, C.Y)),
            Math.Max(A.X, Math.Max(B.X, C.X)), Math.Max(A.Y, Math.Max(B.Y, C.Y)));

        // Clips this triangle by each side of the other in turn; three cuts leave at most six corners.
        public double CommonWith(Triangle other, Span<Point> shape, Span<Point> spare)
        {
            (shape[0], shape[1], shape[2]) = (A, B, C);
            var count = 3;
            count = Clip(shape[..count], other.A, other.B, spare);
            count = Clip(spare[..count], other.B, other.C, shape);
            count = Clip(shape[..count], other.C, other.A, spare);
            var twice = 0.0;
            for (var i = 2; i < count; i++)
                twice += (spare[i - 1] - spare[0]).Cross(spare[i] - spare[0]);
            return twice / 2;
        }

        private static int Clip(ReadOnlySpan<Point> shape, Point from, Point to, Span<Point> result)
        {
            var along = to - from;
            var count = 0;
            for (var i = 0; i < shape.Length; i++)
            {
                var (here, next) = (shape[i], shape[(i + 1) % shape.Length]);
                var (insideHere, insideNext) = (along.Cross(here - from), along.Cross(next - from));
                if (insideHere >= 0)
                    result[count++] = here;
                if ((insideHere > 0 && insideNext < 0) || (insideHere < 0 && insideNext > 0))
                    result[count++] = here + ((next - here) * (insideHere / (insideHere - insideNext)));
            }

            return count;
        }
    }
}
