using Pattern.Press.Nets;

namespace Pattern.Press.Acceptance.Templates;

/// <summary>What a line of a template asks for.</summary>
public enum LineKind
{
    /// <summary>Continuous and wide.</summary>
    Cut,

    /// <summary>Dashes.</summary>
    Valley,

    /// <summary>Dashes and dots in turn.</summary>
    Mountain,

    /// <summary>Dashes and double dots: where a page is joined to another.</summary>
    Join,
}

/// <summary>A straight line of a template.</summary>
public readonly record struct DrawnLine(LineKind Kind, Point From, Point To)
{
    public double Length => From.DistanceTo(To);

    public DrawnLine Moved(Point by) => new(Kind, From + by, To + by);

    /// <summary>Its part inside a box; null for less than a point's worth.</summary>
    public DrawnLine? Within((double Left, double Top, double Right, double Bottom) box)
    {
        var (start, end) = (0.0, 1.0);
        var along = To - From;
        foreach (var (at, way, low, high) in new[] { (From.X, along.X, box.Left, box.Right), (From.Y, along.Y, box.Top, box.Bottom) })
        {
            if (Math.Abs(way) < 1e-9)
            {
                if (at < low || at > high)
                    return null;
                continue;
            }

            var (enter, leave) = ((low - at) / way, (high - at) / way);
            (start, end) = (Math.Max(start, Math.Min(enter, leave)), Math.Min(end, Math.Max(enter, leave)));
        }

        return end > start ? new DrawnLine(Kind, From + (along * start), From + (along * end)) : null;
    }
}
