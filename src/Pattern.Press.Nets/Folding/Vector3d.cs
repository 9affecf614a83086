namespace Pattern.Press.Nets.Folding;

/// <summary>
/// A point or an arrow in space, in millimetres: x to the right of the sheet, y up the sheet (away from its lower edge), z
/// towards the maker. The three axes are right-handed.
/// </summary>
public readonly record struct Vector3d(double X, double Y, double Z)
{
    /// <summary>The arrow to the right.</summary>
    public static Vector3d UnitX => new(1, 0, 0);

    /// <summary>The arrow up the sheet.</summary>
    public static Vector3d UnitY => new(0, 1, 0);

    /// <summary>The arrow towards the maker.</summary>
    public static Vector3d UnitZ => new(0, 0, 1);

    /// <summary>Where a point of the flat sheet lies in space. The sheet counts y downwards, space counts it upwards.</summary>
    public static Vector3d OnSheet(Point point) => new(point.X, -point.Y, 0);

    /// <summary>The length in millimetres.</summary>
    public double Length => Math.Sqrt(Dot(this));

    /// <summary>The arrow of length 1 the same way; not defined for the arrow of no length.</summary>
    public Vector3d Unit => this * (1 / Length);

    /// <summary>The scalar product.</summary>
    public double Dot(Vector3d other) => (X * other.X) + (Y * other.Y) + (Z * other.Z);

    /// <summary>The vector product, by the right-hand rule.</summary>
    public Vector3d Cross(Vector3d other) =>
        new((Y * other.Z) - (Z * other.Y), (Z * other.X) - (X * other.Z), (X * other.Y) - (Y * other.X));

    /// <summary>The distance to another point, in millimetres.</summary>
    public double DistanceTo(Vector3d other) => (this - other).Length;

    /// <summary>The point a part of the way to another: 0 here, 1 there.</summary>
    public Vector3d Towards(Vector3d other, double part) => this + ((other - this) * part);

    /// <summary>The coordinates, as <c>(1, 2, 3)</c>.</summary>
    public override string ToString() => FormattableString.Invariant($"({X}, {Y}, {Z})");

    public static Vector3d operator +(Vector3d a, Vector3d b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    public static Vector3d operator -(Vector3d a, Vector3d b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    public static Vector3d operator -(Vector3d a) => new(-a.X, -a.Y, -a.Z);

    public static Vector3d operator *(Vector3d a, double times) => new(a.X * times, a.Y * times, a.Z * times);
}
