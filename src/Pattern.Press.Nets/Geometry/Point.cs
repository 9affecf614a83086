using Pattern.Press.Measure;

namespace Pattern.Press.Nets;

/// <summary>A point on a flat sheet, in millimetres from its top-left corner: x to the right, y down.</summary>
public readonly record struct Point(double X, double Y)
{
    /// <summary>A point from two exact lengths.</summary>
    public Point(Length x, Length y)
        : this(x.Millimetres, y.Millimetres)
    {
    }

    /// <summary>The distance to another point, in millimetres.</summary>
    public double DistanceTo(Point other) => Math.Sqrt(((X - other.X) * (X - other.X)) + ((Y - other.Y) * (Y - other.Y)));

    public static Point operator +(Point a, Point b) => new(a.X + b.X, a.Y + b.Y);

    public static Point operator -(Point a, Point b) => new(a.X - b.X, a.Y - b.Y);

    public static Point operator *(Point a, double times) => new(a.X * times, a.Y * times);
}
