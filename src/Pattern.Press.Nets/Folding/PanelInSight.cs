namespace Pattern.Press.Nets.Folding;

/// <summary>Where lines that all run one way meet a panel in space; found in the panel's own plane, where its outline is.</summary>
public readonly struct PanelInSight
{
    private readonly Panel _panel;
    private readonly Bounds _bounds;
    private readonly RigidMotion _back;
    private readonly Vector3d _way;

    /// <summary>A panel, looked at along lines.</summary>
    /// <param name="panel">The panel.</param>
    /// <param name="way">The way that the lines run, of length 1.</param>
    public PanelInSight(PosedPanel panel, Vector3d way)
    {
        ArgumentNullException.ThrowIfNull(panel);
        (_panel, _bounds, _back) = (panel.Panel, panel.Panel.Outline.Bounds, panel.Motion.Inverse);
        _way = _back.Turned(way);
    }

    /// <summary>Whether it is seen edge-on, so that no line meets it.</summary>
    private bool IsEdgeOn => Math.Abs(_way.Z) < 1e-9;

    /// <summary>Whether the line from a place meets the panel, not in a hole.</summary>
    /// <param name="from">The place.</param>
    /// <param name="least">How far along the line it has to be at least, in millimetres.</param>
    public bool Meets(Vector3d from, double least)
    {
        if (IsEdgeOn)
            return false;
        var start = _back.Apply(from);
        var far = -start.Z / _way.Z;
        var at = new Point(start.X + (far * _way.X), -(start.Y + (far * _way.Y)));
        return far >= least && _bounds.Contains(at) && _panel.Contains(at);
    }
}
