using Pattern.Press.Nets.Folding;

namespace Pattern.Press.Booklets.Figures.Solid;

/// <summary>What a surface is made of, which decides its tint.</summary>
public enum Surface
{
    /// <summary>The side of the card that faced the maker: the inside of a box.</summary>
    CardFacing,

    /// <summary>The other side of the card.</summary>
    CardAway,

    /// <summary>The item.</summary>
    Item,

    /// <summary>A mat.</summary>
    Mat,
}

/// <summary>A flat convex region in space.</summary>
/// <param name="Corners">Its corners, anticlockwise as seen from the side the normal stands on.</param>
/// <param name="Normal">The arrow of length 1 that stands on its front.</param>
/// <param name="Front">What the front is made of.</param>
/// <param name="Back">What the back is made of; null when nobody sees it, as inside a solid body.</param>
/// <param name="Owner">A number that faces of one panel or body have in common.</param>
public sealed record Face(IReadOnlyList<Vector3d> Corners, Vector3d Normal, Surface Front, Surface? Back, int Owner)
{
    /// <summary>A pattern printed on the front; null for none.</summary>
    public SpotPattern? Pattern { get; init; }
}

/// <summary>What a line in space is.</summary>
public enum LineKind
{
    /// <summary>A cut edge of card.</summary>
    Cut,

    /// <summary>A fold.</summary>
    Fold,

    /// <summary>An edge of a solid body.</summary>
    Edge,

    /// <summary>The edge of a mat.</summary>
    Mat,

    /// <summary>A fine line on a surface.</summary>
    Detail,

    /// <summary>A line of the hatching where glue goes.</summary>
    Glue,

    /// <summary>The same on the back of the panel that is seen.</summary>
    GlueBehind,

    /// <summary>The same behind whatever there is, drawn through it.</summary>
    HiddenGlue,

    /// <summary>A line inside a rounded surface, drawn only where the surface turns away.</summary>
    Rounded,
}

/// <summary>A straight line that may be drawn.</summary>
/// <param name="From">One end.</param>
/// <param name="To">The other end.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Left">In a rounded surface, the arrow that stands on the flat part on one side.</param>
/// <param name="Right">The arrow on the other side.</param>
public readonly record struct SpaceLine(Vector3d From, Vector3d To, LineKind Kind, Vector3d Left = default, Vector3d Right = default)
{
    /// <summary>
    /// For the edge of a panel, the arrow of length 1 into it, square to the edge; for a fold, one into each panel. Empty where
    /// that says nothing.
    /// </summary>
    public IReadOnlyList<Vector3d>? Inwards { get; init; }
}
