using Pattern.Press.Nets.Folding.Proofs;

namespace Pattern.Press.Nets.Folding;

/// <summary>What goes inside, as a body that stands upright with the middle of its underside at the origin.</summary>
/// <param name="IsRound">Whether it is round seen from above; else it is rectangular.</param>
/// <param name="Width">Along x, or the diameter, in millimetres.</param>
/// <param name="Depth">Along y, or the diameter.</param>
/// <param name="Height">Along z.</param>
public sealed record ItemBody(bool IsRound, double Width, double Depth, double Height)
{
    /// <summary>The same, turned a quarter about the upright axis.</summary>
    public ItemBody Turned => this with { Width = Depth, Depth = Width };

    /// <summary>Its section seen along a direction; a round one seen from the side is a rectangle.</summary>
    internal ItemSection Seen(Leaving along) => along switch
    {
        Leaving.Up => IsRound ? ItemSection.Round(Width) : ItemSection.Rectangle(Width, Depth),
        Leaving.Right or Leaving.Left => ItemSection.Rectangle(Depth, Height),
        _ => ItemSection.Rectangle(Width, Height),
    };
}
