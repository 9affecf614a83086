using Pattern.Press.Nets;

namespace Pattern.Press.Plans.Tiling;

/// <summary>
/// The clockwise quarter turn of a template: what was at the bottom left comes to the top left, and the turned template
/// again has its origin at its top-left corner.
/// </summary>
public static class QuarterTurn
{
    /// <summary>Where a point of the piece lies in its template.</summary>
    /// <param name="piece">The piece, whose sheet is turned as a whole.</param>
    /// <param name="turned">Whether the template is turned; if not, the point stays.</param>
    /// <param name="point">A point in the sheet's millimetres.</param>
    public static Point OnTemplate(Piece piece, bool turned, Point point)
    {
        ArgumentNullException.ThrowIfNull(piece);
        return turned ? new Point(piece.Sheet.Height.Millimetres - point.Y, point.X) : point;
    }

    /// <summary>Where a point of a template lies on the piece's sheet: the way back.</summary>
    /// <param name="piece">The piece, whose sheet is turned as a whole.</param>
    /// <param name="turned">Whether the template is turned; if not, the point stays.</param>
    /// <param name="point">A point in the template's millimetres.</param>
    public static Point OnSheet(Piece piece, bool turned, Point point)
    {
        ArgumentNullException.ThrowIfNull(piece);
        return turned ? new Point(point.Y, piece.Sheet.Height.Millimetres - point.X) : point;
    }
}
