using Pattern.Press.Measure;
using Pattern.Press.Nets;

namespace Pattern.Press.Plans.Measuring;

/// <summary>How large a panel is, as a maker would say it.</summary>
public static class PanelSize
{
    /// <summary>
    /// Along the fold the panel hangs on (width) and away from it (height); for the root across and down the sheet. Of a
    /// panel that is no rectangle, the least rectangle around it that way.
    /// </summary>
    public static Size Of(Piece piece, Panel panel)
    {
        ArgumentNullException.ThrowIfNull(piece);
        ArgumentNullException.ThrowIfNull(panel);
        var fold = piece.Folds.FirstOrDefault(fold => fold.Child == panel.Name);
        var across = new Point(1, 0);
        if (fold is not null)
        {
            var along = fold.To - fold.From;
            across = along * (1 / fold.From.DistanceTo(fold.To));
        }

        // Turned so that the fold runs across, arcs and all; along an edge of the sheet that changes no digit.
        var down = new Point(-across.Y, across.X);
        Point Turned(Point p) => new(across.Dot(p), down.Dot(p));
        var bounds = new Outline([.. panel.Outline.Edges.Select(edge => new Edge(Turned(edge.From), Turned(edge.To), edge.Bulge))]).Bounds;
        return new Size(
            Length.FromMillimetres(bounds.Right) - Length.FromMillimetres(bounds.Left),
            Length.FromMillimetres(bounds.Bottom) - Length.FromMillimetres(bounds.Top));
    }
}
