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

        // Along an edge of the sheet no rounding is wanted: there the sizes are exact.
        var outline = panel.Outline.Flattened(0.01);
        var down = new Point(-across.Y, across.X);
        return new Size(Reach(outline.Select(across.Dot)), Reach(outline.Select(down.Dot)));
    }

    private static Length Reach(IEnumerable<double> positions)
    {
        var all = positions.ToList();
        return Length.FromMillimetres(all.Max()) - Length.FromMillimetres(all.Min());
    }
}
