using Pattern.Press.Nets;

namespace Pattern.Press.Booklets.Figures.Drafting;

/// <summary>Where a piece's own millimetres lie in a drawing: turned by quarters, scaled, moved.</summary>
internal readonly record struct Placing(double Scale, double X, double Y, bool Turned = false, double SheetHeight = 0)
{
    /// <summary>The piece's own coordinates.</summary>
    public static Placing None => new(1, 0, 0);

    // A clockwise quarter turn takes the sheet's bottom-left corner to the top left.
    public Point Put(Point p) => Turned
        ? new Point(((SheetHeight - p.Y) * Scale) + X, (p.X * Scale) + Y)
        : new Point((p.X * Scale) + X, (p.Y * Scale) + Y);

    public Segment Put(Point from, Point to) => new(Put(from), Put(to));
}
