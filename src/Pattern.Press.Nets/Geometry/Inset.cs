namespace Pattern.Press.Nets;

/// <summary>What is left of a region when a border of the same width is taken off along all of its outline.</summary>
/// <remarks>
/// Every side moves inwards, square to itself, and runs to where it meets its neighbours there; a side that the others close
/// over before it gets so far falls away, the first to vanish first. Arcs keep their centre.
/// </remarks>
public static class Inset
{
    // Corners at which a side runs on smoothly are moved, not cut anew: nearly parallel lines meet anywhere.
    private const double Smooth = 1e-4;

    private const double Close = 1e-6;

    /// <summary>The line that lies inside an outline, everywhere at least so far from it; null if nothing is left.</summary>
    /// <param name="outline">The outline, clockwise on the page.</param>
    /// <param name="border">How far inside, in millimetres; 0 or more.</param>
    public static Outline? Of(Outline outline, double border)
    {
        ArgumentNullException.ThrowIfNull(outline);
        ArgumentOutOfRangeException.ThrowIfNegative(border);
        List<Edge> sides = [.. LineWork.Tidied(outline.Edges).Edges];
        if (border == 0)
            return new Outline(sides);
        while (sides.Count >= 2)
        {
            // The one that vanishes first gives its neighbours new ones.
            var gone = Enumerable.Range(0, sides.Count).Where(i => !IsLeft(sides, i, border)).ToList();
            if (gone.Count == 0)
                return Closed(sides, border) is { } inside && IsInside(inside, outline, border) ? inside : null;
            sides.RemoveAt(gone.MinBy(i => Vanishes(sides, i, border)));
        }

        return null;
    }

    /// <summary>Whether two outlines are the same but for where they lie and how they are turned; mirror images are not.</summary>
    /// <param name="one">The one.</param>
    /// <param name="other">The other.</param>
    /// <param name="tolerance">How far lengths may differ, in millimetres.</param>
    public static bool IsSameShape(Outline one, Outline other, double tolerance = 1e-3)
    {
        ArgumentNullException.ThrowIfNull(one);
        ArgumentNullException.ThrowIfNull(other);
        var count = one.Edges.Count;
        if (other.Edges.Count != count || Math.Abs(one.Perimeter - other.Perimeter) > tolerance * count)
            return false;
        for (var shift = 0; shift < count; shift++)
        {
            var same = true;
            for (var i = 0; same && i < count; i++)
            {
                // Sides, and what lies across each corner: together they leave nothing to turn.
                var (a, b) = (one.Edges[i], other.Edges[(i + shift) % count]);
                var (after, afterOther) = (one.Edges[(i + 1) % count], other.Edges[(i + 1 + shift) % count]);
                same = Math.Abs(a.Chord - b.Chord) < tolerance
                    && Math.Abs((a.Bulge - b.Bulge) * a.Chord) < 2 * tolerance
                    && Math.Abs(Across(a, after) - Across(b, afterOther)) < tolerance;
            }

            if (same)
                return true;
        }

        return false;

        // How far the next side's far end lies to the right of this one.
        static double Across(Edge side, Edge next) => (side.To - side.From).Cross(next.To - side.From) / side.Chord;
    }

    private static bool IsLeft(List<Edge> sides, int i, double border) => Moved(sides, i, border) is not null;

    // Between nothing and the border, the least by which it is gone.
    private static double Vanishes(List<Edge> sides, int i, double border)
    {
        var (low, high) = (0.0, border);
        for (var step = 0; step < 50; step++)
        {
            var middle = (low + high) / 2;
            if (IsLeft(sides, i, middle))
                low = middle;
            else
                high = middle;
        }

        return high;
    }

    private static Outline? Closed(List<Edge> sides, double border)
    {
        var moved = new Edge[sides.Count];
        for (var i = 0; i < sides.Count; i++)
        {
            if (Moved(sides, i, border) is not { } edge)
                return null;
            moved[i] = edge;
        }

        return moved.Length < 3 && !moved.Any(edge => edge.IsArc) ? null : LineWork.Tidied(moved);
    }

    // A side as it lies inside; null where its ends have met or passed each other.
    private static Edge? Moved(List<Edge> sides, int i, double border)
    {
        var side = sides[i];
        if (side is { IsArc: true, Bulge: > 0 } && side.Radius - border < Close)
            return null;
        if (Corner(sides[(i + sides.Count - 1) % sides.Count], side, border) is not { } from || Corner(side, sides[(i + 1) % sides.Count], border) is not { } to)
            return null;
        if (!side.IsArc)
            return (to - from).Dot(side.To - side.From) > Close * side.Chord ? new Edge(from, to) : null;
        var (start, end) = (from - side.Centre, to - side.Centre);
        var turn = Math.Atan2(start.Cross(end), start.Dot(end)) * Math.Sign(side.Sweep);
        if (turn < -Math.PI / 2)
            turn += 2 * Math.PI;
        return turn * side.Radius > Close ? new Edge(from, to, Math.Tan(turn * Math.Sign(side.Sweep) / 4)) : null;
    }

    // Where two neighbours meet once both have moved.
    private static Point? Corner(Edge side, Edge next, double border)
    {
        var along = Direction(next.HeadingAtStart);
        var meets = side.To.DistanceTo(next.From) < Close;
        if (meets && Math.Abs(Direction(side.HeadingAtEnd).Cross(along)) < Smooth && Direction(side.HeadingAtEnd).Dot(along) > 0)
            return next.From + (Inwards(along) * border);
        var found = (side.IsArc, next.IsArc) switch
        {
            (false, false) => Lines(side, next, border),
            (true, false) => LineAndCircle(next, side, border),
            (false, true) => LineAndCircle(side, next, border),
            _ => Circles(side, next, border),
        };

        // Of two the one on this side: nearest to where the corner was.
        var was = side.To.MidwayTo(next.From);
        return found.Count == 0 ? null : found.MinBy(point => point.DistanceTo(was));
    }

    private static Point Direction(double heading) => new(Math.Cos(heading), Math.Sin(heading));

    // To the right, where the inside of an outline lies that runs clockwise on the page.
    private static Point Inwards(Point along) => new(-along.Y, along.X);

    private static (Point At, Point Along) Line(Edge side, double border)
    {
        var along = (side.To - side.From) * (1 / side.Chord);
        return (side.From + (Inwards(along) * border), along);
    }

    private static double RadiusOf(Edge arc, double border) => arc.Radius + (arc.Bulge > 0 ? -border : border);

    private static List<Point> Lines(Edge side, Edge next, double border)
    {
        var ((a, u), (b, v)) = (Line(side, border), Line(next, border));
        var across = u.Cross(v);
        return Math.Abs(across) < Close ? [] : [a + (u * ((b - a).Cross(v) / across))];
    }

    private static List<Point> LineAndCircle(Edge side, Edge arc, double border)
    {
        var (at, along) = Line(side, border);
        var foot = at + (along * along.Dot(arc.Centre - at));
        return Chord(foot, along, foot.DistanceTo(arc.Centre), RadiusOf(arc, border));
    }

    private static List<Point> Circles(Edge side, Edge next, double border)
    {
        var (a, b) = (RadiusOf(side, border), RadiusOf(next, border));
        var arrow = next.Centre - side.Centre;
        var apart = side.Centre.DistanceTo(next.Centre);
        if (apart < Close)
            return [];
        var off = ((apart * apart) + (a * a) - (b * b)) / (2 * apart);
        return Chord(side.Centre + (arrow * (off / apart)), Inwards(arrow) * (1 / apart), Math.Abs(off), a);
    }

    private static List<Point> Chord(Point foot, Point along, double off, double radius)
    {
        if (radius < off)
            return [];
        var half = Math.Sqrt((radius * radius) - (off * off));
        return [foot + (along * half), foot - (along * half)];
    }

    private static bool IsInside(Outline inside, Outline outline, double border) =>
        inside.Area > Close
        && Checks.SimpleOutline.Problem(inside) is null
        && inside.Flattened(0.05).All(corner => outline.Contains(corner) && outline.DistanceTo(corner) > border - 1e-4);
}
