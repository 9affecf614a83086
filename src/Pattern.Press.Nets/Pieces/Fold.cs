namespace Pattern.Press.Nets;

/// <summary>Which way a fold goes, seen from the side of the sheet that faces the maker (the printed side).</summary>
public enum FoldDirection
{
    /// <summary>Towards the maker: the line ends up at the bottom of a valley.</summary>
    Valley,

    /// <summary>Away from the maker: the line ends up as a ridge.</summary>
    Mountain,
}

/// <summary>A scored line between two panels, straight unless it says how far it bulges.</summary>
/// <param name="Parent">The panel nearer to the piece's root, by name.</param>
/// <param name="Child">The panel that turns about the line when it is folded, by name.</param>
/// <param name="From">One end of the line.</param>
/// <param name="To">The other end.</param>
/// <param name="Direction">Which way it folds.</param>
/// <param name="Angle">
/// How far the child turns from flat to finished, in degrees, above 0 to 180; on a curved fold, at its middle.
/// </param>
public sealed record Fold(string Parent, string Child, Point From, Point To, FoldDirection Direction, double Angle)
{
    /// <summary>0 for a straight fold; for one along an arc what <see cref="Edge.Bulge"/> is, from one end to the other.</summary>
    public double Bulge { get; init; }

    /// <summary>A fold past this angle, in degrees, lays its panels on each other.</summary>
    public const double LaysOver = 179;

    /// <summary>Whether the finished fold goes all the way over, so that its panels lie on each other.</summary>
    public bool GoesOver => Angle > LaysOver;

    /// <summary>The line itself.</summary>
    public Edge Line => new(From, To, Bulge);
}
