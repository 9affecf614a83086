namespace Pattern.Press.Typesetting.Pages;

/// <summary>An affine change of coordinates: x' = A·x + C·y + E, y' = B·x + D·y + F, in millimetres.</summary>
public readonly record struct Transform(double A, double B, double C, double D, double E, double F)
{
    /// <summary>No change.</summary>
    public static Transform Identity => new(1, 0, 0, 1, 0, 0);

    /// <summary>Moves by so many millimetres.</summary>
    public static Transform Move(double x, double y) => new(1, 0, 0, 1, x, y);

    /// <summary>Makes larger or smaller about the origin.</summary>
    public static Transform Scale(double by) => new(by, 0, 0, by, 0, 0);

    /// <summary>Turns about the origin, clockwise as seen on the page, by degrees.</summary>
    public static Transform Turn(double degrees)
    {
        // Quarter turns are exact, so that turned templates keep exact coordinates.
        var (s, c) = (((degrees % 360) + 360) % 360) switch
        {
            0 => (0.0, 1.0),
            90 => (1.0, 0.0),
            180 => (0.0, -1.0),
            270 => (-1.0, 0.0),
            _ => Math.SinCos(degrees * Math.PI / 180),
        };
        return new(c, s, -s, c, 0, 0);
    }

    /// <summary>This change first, then another.</summary>
    public Transform Then(Transform next) => new(
        (next.A * A) + (next.C * B),
        (next.B * A) + (next.D * B),
        (next.A * C) + (next.C * D),
        (next.B * C) + (next.D * D),
        (next.A * E) + (next.C * F) + next.E,
        (next.B * E) + (next.D * F) + next.F);

    /// <summary>Where a point goes.</summary>
    public PagePoint Apply(PagePoint p) => new((A * p.X) + (C * p.Y) + E, (B * p.X) + (D * p.Y) + F);
}
