namespace Pattern.Press.Nets;

/// <summary>
/// Lines that meet at shared corners. Edges of neighbouring regions are split wherever a corner of either lies on them, so
/// that what two regions share is the same stretch walked both ways; cancelling those pairs leaves the border of the union.
/// </summary>
internal sealed class LineWork
{
    /// <summary>Points nearer to each other than this are one point, in millimetres: a nanometre, the grain of a length.</summary>
    public const double Tolerance = 1e-6;

    private readonly List<Point> corners = [];
    private readonly List<Stretch> stretches = [];

    /// <summary>A stretch of an edge between two neighbouring corners.</summary>
    public readonly record struct Stretch(int From, int To, double Bulge)
    {
        public bool IsReverseOf(Stretch other) =>
            From == other.To && To == other.From && Math.Abs(Bulge + other.Bulge) < Tolerance;
    }

    public LineWork(IEnumerable<Edge> edges, IEnumerable<Point> furtherCorners)
    {
        var all = edges.ToList();
        foreach (var edge in all)
        {
            Corner(edge.From);
            Corner(edge.To);
        }

        foreach (var corner in furtherCorners)
            Corner(corner);
        foreach (var edge in all)
            Split(edge);
    }

    /// <summary>Every stretch, in the order of the edges given.</summary>
    public IReadOnlyList<Stretch> Stretches => stretches;

    /// <summary>The border of the union of regions whose insides do not overlap: loops that touch themselves nowhere,
    /// clockwise around the union and anticlockwise around holes in it.</summary>
    public static IReadOnlyList<Outline> Border(IEnumerable<Edge> edges, params IEnumerable<Point> furtherCorners)
    {
        var work = new LineWork(edges, furtherCorners);
        return work.Loops(work.Uncancelled());
    }

    /// <summary>The stretch as an edge.</summary>
    public Edge EdgeOf(Stretch stretch) => new(corners[stretch.From], corners[stretch.To], stretch.Bulge);

    /// <summary>The stretches that no other walks the other way.</summary>
    public List<Stretch> Uncancelled()
    {
        var left = new List<Stretch>();
        var between = new Dictionary<(int, int), List<Stretch>>();
        foreach (var stretch in stretches)
        {
            if (between.TryGetValue((stretch.To, stretch.From), out var opposite))
            {
                var match = opposite.FindIndex(other => other.IsReverseOf(stretch));
                if (match >= 0)
                {
                    opposite.RemoveAt(match);
                    continue;
                }
            }

            if (!between.TryGetValue((stretch.From, stretch.To), out var same))
                between.Add((stretch.From, stretch.To), same = []);
            same.Add(stretch);
        }

        foreach (var stretch in stretches)
        {
            if (between.TryGetValue((stretch.From, stretch.To), out var kept) && kept.Remove(stretch))
                left.Add(stretch);
        }

        return left;
    }

    /// <summary>
    /// Joins neighbouring edges where a line runs on: two straight ones in one line, two arcs of one circle up to a half
    /// circle together.
    /// </summary>
    public static Edge? Joined(Edge first, Edge second)
    {
        if (first.IsArc != second.IsArc)
            return null;
        if (!first.IsArc)
        {
            var (a, b) = (first.To - first.From, second.To - second.From);

            // Twice the triangle over its longest side is how far the middle corner lies off the line.
            var off = Math.Abs(a.Cross(b)) / first.From.DistanceTo(second.To);
            return a.Dot(b) > 0 && off < Tolerance ? new Edge(first.From, second.To) : null;
        }

        var sweep = first.Sweep + second.Sweep;
        return first.Bulge * second.Bulge > 0
            && first.Centre.DistanceTo(second.Centre) < Tolerance
            && Math.Abs(sweep) <= Math.PI + Tolerance
            ? new Edge(first.From, second.To, Math.Tan(sweep / 4))
            : null;
    }

    /// <summary>The outline without corners at which the line runs on, starting from its uppermost, then leftmost, corner.</summary>
    public static Outline Tidied(IReadOnlyList<Edge> edges)
    {
        var line = new List<Edge>();
        foreach (var edge in edges)
        {
            if (line.Count > 0 && Joined(line[^1], edge) is { } joined)
                line[^1] = joined;
            else
                line.Add(edge);
        }

        if (line.Count > 2 && Joined(line[^1], line[0]) is { } closing)
        {
            line[0] = closing;
            line.RemoveAt(line.Count - 1);
        }

        var start = 0;
        for (var i = 1; i < line.Count; i++)
        {
            var (here, best) = (line[i].From, line[start].From);
            if (here.Y < best.Y - Tolerance || (here.Y < best.Y + Tolerance && here.X < best.X))
                start = i;
        }

        return new Outline([.. line[start..], .. line[..start]]);
    }

    /// <summary>The loops that the stretches make, each keeping to the region on its right.</summary>
    public IReadOnlyList<Outline> Loops(IReadOnlyList<Stretch> border)
    {
        var leaving = new Dictionary<int, List<Stretch>>();
        foreach (var stretch in border)
        {
            if (!leaving.TryGetValue(stretch.From, out var list))
                leaving.Add(stretch.From, list = []);
            list.Add(stretch);
        }

        var loops = new List<Outline>();
        foreach (var first in border)
        {
            if (!leaving[first.From].Contains(first))
                continue;
            var walk = new List<Stretch>();
            for (Stretch? next = first; next is { } stretch; next = RightmostAfter(stretch, leaving.GetValueOrDefault(stretch.To, [])))
            {
                leaving[stretch.From].Remove(stretch);
                walk.Add(stretch);

                // A walk that comes back to a corner of its own closes a loop there, so that no loop touches itself.
                var back = walk.FindIndex(earlier => earlier.From == stretch.To);
                if (back < 0)
                    continue;
                loops.Add(Tidied([.. walk.Skip(back).Select(EdgeOf)]));
                walk.RemoveRange(back, walk.Count - back);
                if (walk.Count == 0)
                    break;
            }
        }

        return loops;
    }

    private Stretch? RightmostAfter(Stretch arriving, List<Stretch> choices)
    {
        Stretch? best = null;
        var (bestTurn, bestBend) = (0.0, 0.0);
        var heading = EdgeOf(arriving).HeadingAtEnd;
        foreach (var choice in choices)
        {
            var edge = EdgeOf(choice);
            var turn = Math.IEEERemainder(edge.HeadingAtStart - heading, 2 * Math.PI);
            var bend = edge.IsArc ? Math.Sign(edge.Bulge) / edge.Radius : 0;
            if (best is null || turn > bestTurn + 1e-9 || (turn > bestTurn - 1e-9 && bend > bestBend))
                (best, bestTurn, bestBend) = (choice, turn, bend);
        }

        return best;
    }

    private int Corner(Point point)
    {
        for (var i = 0; i < corners.Count; i++)
        {
            if (Math.Abs(corners[i].X - point.X) < Tolerance && Math.Abs(corners[i].Y - point.Y) < Tolerance)
                return i;
        }

        corners.Add(point);
        return corners.Count - 1;
    }

    private void Split(Edge edge)
    {
        var (start, end) = (Corner(edge.From), Corner(edge.To));
        if (start == end)
            return;
        var bounds = edge.Bounds;
        var stops = new List<(double Part, int Corner)> { (0, start) };
        for (var i = 0; i < corners.Count; i++)
        {
            var corner = corners[i];
            if (i != start && i != end
                && corner.X > bounds.Left - Tolerance && corner.X < bounds.Right + Tolerance
                && corner.Y > bounds.Top - Tolerance && corner.Y < bounds.Bottom + Tolerance
                && edge.DistanceTo(corner) < Tolerance)
            {
                stops.Add((edge.PartNearest(corner), i));
            }
        }

        stops.Add((1, end));
        stops.Sort();
        for (var i = 1; i < stops.Count; i++)
        {
            var bulge = edge.IsArc ? Math.Tan(edge.Sweep * (stops[i].Part - stops[i - 1].Part) / 4) : 0;
            stretches.Add(new Stretch(stops[i - 1].Corner, stops[i].Corner, bulge));
        }
    }
}
