using Pattern.Press.Nets;

namespace Pattern.Press.Booklets.Figures.Drafting;

/// <summary>A straight line between two points, in millimetres.</summary>
internal readonly record struct Segment(Point From, Point To)
{
    public double Length => From.DistanceTo(To);

    public Point At(double part) => From + ((To - From) * part);

    /// <summary>The shortest distance from a point to it, in millimetres.</summary>
    public double DistanceTo(Point point)
    {
        var along = To - From;
        var part = along.Dot(along) < 1e-12 ? 0 : Math.Clamp((point - From).Dot(along) / along.Dot(along), 0, 1);
        return point.DistanceTo(At(part));
    }

    /// <summary>The part of it inside a box (Liang and Barsky's parametric clipping), or null if there is none.</summary>
    public Segment? Within(Box box)
    {
        var (start, end) = (0.0, 1.0);
        var (dx, dy) = (To.X - From.X, To.Y - From.Y);
        if (!Narrow(-dx, From.X - box.Left, ref start, ref end) || !Narrow(dx, box.Right - From.X, ref start, ref end) ||
            !Narrow(-dy, From.Y - box.Top, ref start, ref end) || !Narrow(dy, box.Bottom - From.Y, ref start, ref end))
            return null;
        // Ends that were not cut off keep their exact coordinates.
        return new Segment(start == 0 ? From : At(start), end == 1 ? To : At(end));
    }

    /// <summary>Whether it passes through the inside of a box; touching its edge does not count.</summary>
    public bool Crosses(Box box) =>
        Math.Max(From.X, To.X) > box.Left && Math.Min(From.X, To.X) < box.Right &&
        Math.Max(From.Y, To.Y) > box.Top && Math.Min(From.Y, To.Y) < box.Bottom &&
        Within(box) is { } inside && (inside.Length > 1e-9 || Length <= 1e-9);

    private static bool Narrow(double direction, double distance, ref double start, ref double end)
    {
        if (direction == 0)
            return distance >= 0;
        var at = distance / direction;
        if (direction < 0)
            start = Math.Max(start, at);
        else
            end = Math.Min(end, at);
        return start <= end;
    }
}
