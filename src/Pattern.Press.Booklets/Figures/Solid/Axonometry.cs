using Pattern.Press.Nets.Folding;

namespace Pattern.Press.Booklets.Figures.Solid;

/// <summary>
/// A view from infinitely far away: parallel lines stay parallel (orthogonal axonometry, ISO 5456-3, from memory). Space
/// has x to the right, y away from the viewer and z up.
/// </summary>
public sealed record Axonometry
{
    /// <summary>A view from a place.</summary>
    /// <param name="azimuth">How far the viewer has walked round to the right from the front, in degrees.</param>
    /// <param name="elevation">How high the viewer looks down from, in degrees; above 0 and below 90.</param>
    public Axonometry(double azimuth, double elevation)
    {
        (Azimuth, Elevation) = (azimuth, elevation);
        var (sa, ca) = Math.SinCos(azimuth * Math.PI / 180);
        var (se, ce) = Math.SinCos(elevation * Math.PI / 180);
        Right = new Vector3d(ca, sa, 0);
        Up = new Vector3d(-se * sa, se * ca, ce);
        Viewer = new Vector3d(ce * sa, -ce * ca, se);
    }

    /// <summary>The isometric view: all three axes foreshortened alike, two of them at 30° to the level.</summary>
    public static Axonometry Isometric { get; } = new(45, Math.Asin(1 / Math.Sqrt(3)) * 180 / Math.PI);

    /// <summary>The dimetric view: width and height alike, depth half of them; the axes at 7° and 42° to the level.</summary>
    public static Axonometry Dimetric { get; } =
        new(Math.Asin(1 / Math.Sqrt(8)) * 180 / Math.PI, Math.Asin(1.0 / 3) * 180 / Math.PI);

    /// <summary>How far round the viewer stands, in degrees.</summary>
    public double Azimuth { get; }

    /// <summary>How high the viewer looks down from, in degrees.</summary>
    public double Elevation { get; }

    /// <summary>What points to the right in the drawing.</summary>
    public Vector3d Right { get; }

    /// <summary>What points up in the drawing.</summary>
    public Vector3d Up { get; }

    /// <summary>What points straight at the viewer.</summary>
    public Vector3d Viewer { get; }

    /// <summary>Where a point appears: x to the right, y down, and how near it is to the viewer.</summary>
    public Seen See(Vector3d point) => new(Right.Dot(point), -Up.Dot(point), Viewer.Dot(point));
}

/// <summary>A point as it appears.</summary>
/// <param name="X">To the right.</param>
/// <param name="Y">Down.</param>
/// <param name="Near">How near to the viewer; larger is nearer.</param>
public readonly record struct Seen(double X, double Y, double Near);
