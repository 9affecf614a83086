namespace Pattern.Press.Nets.Folding.Proofs;

/// <summary>An upright item seen from above, its middle at the origin.</summary>
public sealed class ItemSection
{
    private readonly double _halfWidth;
    private readonly double _halfDepth;
    private readonly double _radius;

    private ItemSection(double halfWidth, double halfDepth, double radius) =>
        (_halfWidth, _halfDepth, _radius) = (halfWidth, halfDepth, radius);

    /// <summary>A round item.</summary>
    /// <param name="diameter">Its diameter in millimetres.</param>
    public static ItemSection Round(double diameter) => new(0, 0, diameter / 2);

    /// <summary>A rectangular item, its sides along the sheet's.</summary>
    /// <param name="width">Along x, in millimetres.</param>
    /// <param name="depth">Along y, in millimetres.</param>
    public static ItemSection Rectangle(double width, double depth) => new(width / 2, depth / 2, 0);

    /// <summary>
    /// The shortest distance from the item to a line between two points seen from above, in millimetres; below 0 as far as
    /// the line goes into the item.
    /// </summary>
    public double LeastDistance(Vector3d from, Vector3d to)
    {
        // The distance from a convex shape, counted below 0 inside, is a convex function along a line: narrow it down.
        var (low, high) = (0.0, 1.0);
        for (var i = 0; i < 60; i++)
        {
            var (a, b) = (low + ((high - low) / 3), high - ((high - low) / 3));
            if (Distance(from.Towards(to, a)) < Distance(from.Towards(to, b)))
                high = b;
            else
                low = a;
        }

        return Math.Min(Distance(from.Towards(to, (low + high) / 2)), Math.Min(Distance(from), Distance(to)));
    }

    private double Distance(Vector3d point)
    {
        var (x, y) = (Math.Abs(point.X) - _halfWidth, Math.Abs(point.Y) - _halfDepth);
        var outside = Math.Sqrt((Math.Max(x, 0) * Math.Max(x, 0)) + (Math.Max(y, 0) * Math.Max(y, 0)));
        return outside + Math.Min(Math.Max(x, y), 0) - _radius;
    }
}
