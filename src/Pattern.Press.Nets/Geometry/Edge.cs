namespace Pattern.Press.Nets;

/// <summary>One side of an outline: a straight line, or a circular arc.</summary>
/// <param name="From">Where it starts.</param>
/// <param name="To">Where it ends.</param>
/// <param name="Bulge">
/// 0 for a straight line; for an arc the tangent of a quarter of the angle it turns through, positive when it turns
/// clockwise as seen on the page (x right, y down). ±1 is a half circle.
/// </param>
public readonly record struct Edge(Point From, Point To, double Bulge = 0)
{
    /// <summary>Whether it is an arc.</summary>
    public bool IsArc => Bulge != 0;

    /// <summary>The same side, walked the other way.</summary>
    public Edge Reversed => new(To, From, -Bulge);

    /// <summary>Its ends and bulge, for debugging.</summary>
    // What a record writes by itself would go into Reversed, and from there never end.
    public override string ToString() => FormattableString.Invariant($"{From} to {To}, bulge {Bulge}");
}
