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

    /// <summary>The scalar product with another point, both taken as arrows from the origin, in square millimetres.</summary>
    public double Dot(Point other) => (X * other.X) + (Y * other.Y);

    /// <summary>
    /// The vector product with another point, both taken as arrows from the origin, in square millimetres: positive when
    /// the other arrow lies clockwise of this one as seen on the page.
    /// </summary>
    public double Cross(Point other) => (X * other.Y) - (Y * other.X);

    /// <summary>The point half way to another.</summary>
    public Point MidwayTo(Point other) => new((X + other.X) / 2, (Y + other.Y) / 2);

    public static Point operator +(Point a, Point b) => new(a.X + b.X, a.Y + b.Y);

    public static Point operator -(Point a, Point b) => new(a.X - b.X, a.Y - b.Y);

    public static Point operator *(Point a, double times) => new(a.X * times, a.Y * times);
}
