using Pattern.Press.Nets.Folding;

namespace Pattern.Press.Booklets.Figures.Solid;

/// <summary>A convex surface as it appears: its corners in the drawing, and how near its plane is at each place.</summary>
internal sealed class SeenFace
{
    /// <summary>What leads away behind a face by less than this, as a part of its way, lies along it.</summary>
    private const double Steep = 0.05;

    private readonly Seen[] corners;
    private readonly double slopeX;
    private readonly double slopeY;
    private readonly double level;
    private readonly double turned;
    private readonly Vector3d towards;

    public SeenFace(Face face, Axonometry view)
    {
        Face = face;
        corners = [.. face.Corners.Select(view.See)];

        // The plane n·p = c, with p put together from what is seen along the three axes of the view.
        var (right, down, near) = (face.Normal.Dot(view.Right), -face.Normal.Dot(view.Up), face.Normal.Dot(view.Viewer));
        turned = Math.Abs(near);
        level = face.Normal.Dot(face.Corners[0]) / near;
        (slopeX, slopeY) = (-right / near, -down / near);
        towards = face.Normal * (near < 0 ? -1 : 1);
        if (near < 0)
            Array.Reverse(corners);
        (Left, Right) = (corners.Min(c => c.X), corners.Max(c => c.X));
        (Top, Bottom) = (corners.Min(c => c.Y), corners.Max(c => c.Y));
    }

    public Face Face { get; }

    public double Left { get; }

    public double Right { get; }

    public double Top { get; }

    public double Bottom { get; }

    public double NearAt(double x, double y) => level + (slopeX * x) + (slopeY * y);

    public bool Covers(double x, double y)
    {
        if (x < Left || x > Right || y < Top || y > Bottom)
            return false;
        for (var i = 0; i < corners.Length; i++)
        {
            if (Inside(i, x, y) < 0)
                return false;
        }

        return true;
    }

    /// <summary>The stretch of a line that lies behind the face, as parts from 0 to 1; empty when it does not.</summary>
    /// <param name="from">The line's start.</param>
    /// <param name="to">Its end.</param>
    /// <param name="slack">
    /// A line counts as behind when it is farther than this from the plane of the face, measured square to it: a face seen
    /// almost from its edge would otherwise hide its own edges by rounding.
    /// </param>
    /// <param name="margin">How far inside the edges of the face it has to be to count, in millimetres.</param>
    public (double From, double To) Hides(Seen from, Seen to, double slack, double margin = 0)
    {
        if (Math.Max(from.X, to.X) < Left || Math.Min(from.X, to.X) > Right || Math.Max(from.Y, to.Y) < Top || Math.Min(from.Y, to.Y) > Bottom)
            return (0, 0);
        var (start, end) = (0.0, 1.0);
        Narrow(Before(from) - slack, Before(to) - slack, ref start, ref end);
        for (var i = 0; i < corners.Length && end > start; i++)
        {
            var least = margin == 0 ? 0 : margin * Length(i);
            Narrow(Inside(i, from.X, from.Y) - least, Inside(i, to.X, to.Y) - least, ref start, ref end);
        }

        return end > start ? (start, end) : (0, 0);
    }

    /// <summary>Whether arrows all lead away behind it, as seen.</summary>
    public bool IsBefore(IReadOnlyList<Vector3d> arrows)
    {
        for (var i = 0; i < arrows.Count; i++)
        {
            if (arrows[i].Dot(towards) > -Steep)
                return false;
        }

        return true;
    }

    private double Length(int edge)
    {
        var (a, b) = (corners[edge], corners[(edge + 1) % corners.Length]);
        return Math.Sqrt(((b.X - a.X) * (b.X - a.X)) + ((b.Y - a.Y) * (b.Y - a.Y)));
    }

    private double Before(Seen point) => (NearAt(point.X, point.Y) - point.Near) * turned;

    // Keeps the parts of a line where a quantity that changes evenly along it is above 0.
    private static void Narrow(double atStart, double atEnd, ref double start, ref double end)
    {
        if (atStart <= 0 && atEnd <= 0)
            end = start;
        else if (atStart < 0)
            start = Math.Max(start, atStart / (atStart - atEnd));
        else if (atEnd < 0)
            end = Math.Min(end, atStart / (atStart - atEnd));
    }

    // Above 0 on the inner side of an edge. The corners run anticlockwise as seen, and y counts downwards.
    private double Inside(int edge, double x, double y)
    {
        var (a, b) = (corners[edge], corners[(edge + 1) % corners.Length]);
        return ((b.Y - a.Y) * (x - a.X)) - ((b.X - a.X) * (y - a.Y));
    }
}
