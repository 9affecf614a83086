using Pattern.Press.Nets.Folding;

namespace Pattern.Press.Booklets.Figures.Solid;

/// <summary>Spots in staggered rows, as on patterned paper: in any drawing, in grey too, they tell a mat from the card.</summary>
/// <param name="Middle">The middle of the mat, where there is a spot.</param>
/// <param name="Across">The arrow of length 1 along the rows.</param>
/// <param name="Down">The arrow of length 1 across them.</param>
/// <param name="HalfWidth">How far the mat reaches along the rows from its middle, in millimetres.</param>
/// <param name="HalfHeight">How far it reaches across them.</param>
public sealed record SpotPattern(Vector3d Middle, Vector3d Across, Vector3d Down, double HalfWidth, double HalfHeight)
{
    /// <summary>The distance of spots in a row, in millimetres.</summary>
    public const double Pitch = 9;

    /// <summary>The radius of a spot, in millimetres.</summary>
    public const double Radius = 1.1;

    /// <summary>The middles of the spots whose middles lie on the rectangle around the mat.</summary>
    public IEnumerable<Vector3d> Spots()
    {
        var (rows, columns) = ((int)(HalfHeight / (Pitch / 2)), (int)(HalfWidth / (Pitch / 2)));
        for (var row = -rows; row <= rows; row++)
        {
            for (var column = -columns; column <= columns; column++)
            {
                if (((row + column) & 1) == 0)
                    yield return Middle + (Across * (column * Pitch / 2)) + (Down * (row * Pitch / 2));
            }
        }
    }
}
