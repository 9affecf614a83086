namespace Pattern.Press.Nets.Folding;

/// <summary>
/// A move in space that keeps lengths and handedness: where the three axes turn to, and the shift after the turn. Written
/// as a matrix the four are its columns.
/// </summary>
/// <param name="XAxis">Where the x axis turns to; of length 1.</param>
/// <param name="YAxis">Where the y axis turns to; of length 1, square to the first.</param>
/// <param name="ZAxis">Where the z axis turns to; the vector product of the other two.</param>
/// <param name="Shift">Where the origin goes, in millimetres.</param>
public readonly record struct RigidMotion(Vector3d XAxis, Vector3d YAxis, Vector3d ZAxis, Vector3d Shift)
{
    /// <summary>No move at all.</summary>
    public static RigidMotion None => new(Vector3d.UnitX, Vector3d.UnitY, Vector3d.UnitZ, default);

    /// <summary>A shift without a turn.</summary>
    public static RigidMotion By(Vector3d shift) => None with { Shift = shift };

    /// <summary>A turn about a line, by the right-hand rule. Quarter turns are exact.</summary>
    /// <param name="through">A point on the line.</param>
    /// <param name="along">The way the line runs; of any length above 0.</param>
    /// <param name="degrees">How far.</param>
    public static RigidMotion Turn(Vector3d through, Vector3d along, double degrees)
    {
        var axis = along.Unit;
        var (sine, cosine) = SineCosine(degrees);

        // Rodrigues' formula, column by column.
        Vector3d Turned(Vector3d v) => (v * cosine) + (axis.Cross(v) * sine) + (axis * (axis.Dot(v) * (1 - cosine)));

        var turn = new RigidMotion(Turned(Vector3d.UnitX), Turned(Vector3d.UnitY), Turned(Vector3d.UnitZ), default);
        return turn with { Shift = through - turn.Turned(through) };
    }

    /// <summary>Where a point goes.</summary>
    public Vector3d Apply(Vector3d point) => Turned(point) + Shift;

    /// <summary>Where an arrow turns to.</summary>
    public Vector3d Turned(Vector3d arrow) => (XAxis * arrow.X) + (YAxis * arrow.Y) + (ZAxis * arrow.Z);

    /// <summary>The move that does the other one first and then this one.</summary>
    public RigidMotion After(RigidMotion first) =>
        new(Turned(first.XAxis), Turned(first.YAxis), Turned(first.ZAxis), Apply(first.Shift));

    /// <summary>The move back.</summary>
    public RigidMotion Inverse
    {
        get
        {
            var back = new RigidMotion(
                new Vector3d(XAxis.X, YAxis.X, ZAxis.X),
                new Vector3d(XAxis.Y, YAxis.Y, ZAxis.Y),
                new Vector3d(XAxis.Z, YAxis.Z, ZAxis.Z),
                default);
            return back with { Shift = -back.Turned(Shift) };
        }
    }

    /// <summary>Where the axes turn to, and the shift.</summary>
    public override string ToString() => $"x to {XAxis}, y to {YAxis}, z to {ZAxis}, shifted by {Shift}";

    private static (double Sine, double Cosine) SineCosine(double degrees) => (((degrees % 360) + 360) % 360) switch
    {
        0 => (0, 1),
        90 => (1, 0),
        180 => (0, -1),
        270 => (-1, 0),
        _ => Math.SinCos(degrees * Math.PI / 180),
    };
}
