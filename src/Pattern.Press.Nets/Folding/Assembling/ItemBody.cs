using Pattern.Press.Nets.Folding.Proofs;

namespace Pattern.Press.Nets.Folding;

/// <summary>What goes inside, as a body with the middle of its underside at the origin.</summary>
/// <param name="IsRound">Whether it is round about its axis; else it is a block.</param>
/// <param name="Width">Along x, in millimetres.</param>
/// <param name="Depth">Along y.</param>
/// <param name="Height">Along z.</param>
public sealed record ItemBody(bool IsRound, double Width, double Depth, double Height)
{
    /// <summary>The way its axis points: up when it stands, else along x or y.</summary>
    public Vector3d Axis { get; init; } = Vector3d.UnitZ;

    /// <summary>Whether it is round and lies on its side.</summary>
    public bool RollsOnItsSide => IsRound && Axis.Z < 0.5;

    /// <summary>How wide it is across its axis, when it is round.</summary>
    public double Diameter => Axis.X > 0.5 ? Depth : Width;

    /// <summary>The middle of the end that its axis points away from.</summary>
    public Vector3d Start => (Vector3d.UnitZ * (Height / 2)) - (Axis * (Length / 2));

    /// <summary>How long it is along its axis, in millimetres.</summary>
    public double Length => Axis.X > 0.5 ? Width : Axis.Y > 0.5 ? Depth : Height;

    /// <summary>The same, turned a quarter about the upright axis.</summary>
    public ItemBody Turned => this with { Width = Depth, Depth = Width, Axis = new Vector3d(Axis.Y, Axis.X, Axis.Z) };

    /// <summary>The same, laid down with its top to the back.</summary>
    public ItemBody Tipped => this with { Depth = Height, Height = Depth, Axis = new Vector3d(Axis.X, Axis.Z, Axis.Y) };

    /// <summary>How far a point, seen from the middle of a round one, is from it, in millimetres; below 0 inside.</summary>
    internal double Distance(Vector3d point)
    {
        var (around, beyond) = Parts(point);
        var (x, y) = (Math.Max(around, 0), Math.Max(beyond, 0));
        return Math.Sqrt((x * x) + (y * y)) + Math.Min(Math.Max(around, beyond), 0);
    }

    /// <summary>The arrow from a point beside a round one to its axis, or from one beyond an end to that end.</summary>
    internal Vector3d Towards(Vector3d point)
    {
        var (around, beyond) = Parts(point);
        var along = Axis.Dot(point);
        var arrow = beyond > around ? Axis * -along : (Axis * along) - point;
        return arrow.Length < 1e-9 ? Vector3d.UnitZ : arrow.Unit;
    }

    private (double Around, double Beyond) Parts(Vector3d point)
    {
        var along = Axis.Dot(point);
        return ((point - (Axis * along)).Length - (Diameter / 2), Math.Abs(along) - (Length / 2));
    }

    /// <summary>Its section seen along a direction; a round one seen across its axis is a rectangle.</summary>
    internal ItemSection Seen(Leaving along) => along switch
    {
        Leaving.Up => IsRound && Axis.Z > 0.5 ? ItemSection.Round(Width) : ItemSection.Rectangle(Width, Depth),
        Leaving.Right or Leaving.Left => IsRound && Axis.X > 0.5 ? ItemSection.Round(Depth) : ItemSection.Rectangle(Depth, Height),
        _ => IsRound && Axis.Y > 0.5 ? ItemSection.Round(Width) : ItemSection.Rectangle(Width, Height),
    };
}
