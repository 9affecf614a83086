namespace Pattern.Press.Conformance;

/// <summary>A rectangle in points, from the lower left corner of a page.</summary>
public readonly record struct Box(double Left, double Bottom, double Right, double Top)
{
    // Places are written in thousandths of a point.
    private const double Hair = 0.01;

    /// <summary>Whether it has any area.</summary>
    public bool HasArea => Right > Left && Top > Bottom;

    /// <summary>Whether it lies inside another, or on its edges.</summary>
    public bool IsWithin(Box other, double hair = Hair) =>
        HasArea && Left >= other.Left - hair && Bottom >= other.Bottom - hair && Right <= other.Right + hair && Top <= other.Top + hair;
}
