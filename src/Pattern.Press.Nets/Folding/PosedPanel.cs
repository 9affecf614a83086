namespace Pattern.Press.Nets.Folding;

/// <summary>A panel in space.</summary>
public sealed class PosedPanel
{
    /// <summary>How far straight lines may stray from an arc of the outline, in millimetres.</summary>
    private const double Flatness = 0.02;

    private Vector3d[]? _corners;

    /// <summary>A panel moved from where it lies on the sheet.</summary>
    public PosedPanel(Panel panel, RigidMotion motion)
    {
        Panel = panel;
        Motion = motion;
    }

    /// <summary>The panel.</summary>
    public Panel Panel { get; }

    /// <summary>The move from the flat sheet.</summary>
    public RigidMotion Motion { get; }

    /// <summary>
    /// Its corners in space, in the order of its outline: clockwise as seen from the facing side. Arcs are followed within
    /// 0.02 mm.
    /// </summary>
    public IReadOnlyList<Vector3d> Corners =>
        _corners ??= Moved(Panel.Outline.Flattened(Flatness));

    /// <summary>The arrow of length 1 that stands on its facing side.</summary>
    public Vector3d Facing => Motion.ZAxis;

    /// <summary>Where a point of the sheet is now.</summary>
    public Vector3d At(Point point) => Motion.Apply(Vector3d.OnSheet(point));

    private Vector3d[] Moved(IReadOnlyList<Point> points)
    {
        var moved = new Vector3d[points.Count];
        for (var i = 0; i < moved.Length; i++)
            moved[i] = At(points[i]);
        return moved;
    }
}
