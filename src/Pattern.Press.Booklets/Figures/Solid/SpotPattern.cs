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

    /// <summary>
    /// The rows of spots on the rectangle around the mat, in millimetres from its middle: the first spot of the row, the
    /// last, a <see cref="Pitch"/> apart, and how far down the row lies.
    /// </summary>
    public IEnumerable<(double Start, double End, double Down)> Rows()
    {
        var (rows, columns) = ((int)(HalfHeight / (Pitch / 2)), (int)(HalfWidth / (Pitch / 2)));
        for (var row = -rows; row <= rows; row++)
        {
            var last = ((row + columns) & 1) == 0 ? columns : columns - 1;
            if (last >= 0)
                yield return (-last * Pitch / 2, last * Pitch / 2, row * Pitch / 2);
        }
    }
}
