namespace Pattern.Press.Nets;

/// <summary>An upright rectangle on the page, in millimetres (y down).</summary>
/// <param name="Left">The smallest x.</param>
/// <param name="Top">The smallest y.</param>
/// <param name="Right">The largest x.</param>
/// <param name="Bottom">The largest y.</param>
public readonly record struct Bounds(double Left, double Top, double Right, double Bottom)
{
    /// <summary>How far it reaches across.</summary>
    public double Width => Right - Left;

    /// <summary>How far it reaches down.</summary>
    public double Height => Bottom - Top;

    /// <summary>Its middle.</summary>
    public Point Centre => new((Left + Right) / 2, (Top + Bottom) / 2);

    /// <summary>The least rectangle around both.</summary>
    public Bounds With(Bounds other) => new(
        Math.Min(Left, other.Left), Math.Min(Top, other.Top), Math.Max(Right, other.Right), Math.Max(Bottom, other.Bottom));

    /// <summary>Whether the two have more in common than a strip of the given width, in millimetres.</summary>
    public bool Overlaps(Bounds other, double margin = 0) =>
        Math.Min(Right, other.Right) - Math.Max(Left, other.Left) > margin
        && Math.Min(Bottom, other.Bottom) - Math.Max(Top, other.Top) > margin;

    /// <summary>Whether a point lies inside or on the line.</summary>
    public bool Contains(Point point) => point.X >= Left && point.X <= Right && point.Y >= Top && point.Y <= Bottom;

    /// <summary>Whether the other lies inside, up to a slack in millimetres.</summary>
    public bool Contains(Bounds other, double slack = 0) =>
        other.Left >= Left - slack && other.Top >= Top - slack && other.Right <= Right + slack && other.Bottom <= Bottom + slack;
}
