using Pattern.Press.Nets;
using Pattern.Press.Nets.Folding;

namespace Pattern.Press.Booklets.Figures.Solid;

/// <summary>How much of where glue goes is seen from a place.</summary>
internal static class GlueInSight
{
    // Places looked at along the longer side of each area, and across.
    private const int Along = 9;
    private const int Across = 5;

    // What lies on the glue itself is no nearer than this.
    private const double Touching = 0.2;

    /// <summary>The part of areas that is seen, as it appears: 1 seen straight on and nothing before it, 0 hidden.</summary>
    public static double Share(Pose pose, IReadOnlyList<GlueArea> areas, Axonometry view) => OfAll(areas, area => Share(pose, area, view));

    /// <summary>The same of one area.</summary>
    public static double Share(Pose pose, GlueArea area, Axonometry view) => Appearing(pose, area, view, Towards(pose, area, view));

    /// <summary>The part of areas that would be seen if the panels that carry them were glass; 0 where their glue faces the viewer.</summary>
    public static double ShareOfBack(Pose pose, IReadOnlyList<GlueArea> areas, Axonometry view) => OfAll(areas, area => ShareOfBack(pose, area, view));

    /// <summary>The same of one area.</summary>
    public static double ShareOfBack(Pose pose, GlueArea area, Axonometry view) => Appearing(pose, area, view, -Towards(pose, area, view));

    private static double OfAll(IReadOnlyList<GlueArea> areas, Func<GlueArea, double> share)
    {
        var all = areas.Sum(area => area.Outline.Area);
        return all > 0 ? areas.Sum(area => area.Outline.Area * share(area)) / all : 0;
    }

    // What is turned away is not looked for.
    private static double Appearing(Pose pose, GlueArea area, Axonometry view, double towards) => towards > 0 ? towards * Open(pose, area, view) : 0;

    private static double Towards(Pose pose, GlueArea area, Axonometry view) =>
        (pose.Panel(area.Panel).Facing * (area.Side == SheetSide.Facing ? 1 : -1)).Dot(view.Viewer);

    private static double Open(Pose pose, GlueArea area, Axonometry view)
    {
        var panel = pose.Panel(area.Panel);
        Vector3d[] places = [.. Places(area.Outline).Select(panel.At)];
        if (places.Length == 0)
            return 0;
        var hidden = new bool[places.Length];
        for (var i = 0; i < pose.Panels.Count; i++)
        {
            if (pose.Panels[i] == panel)
                continue;
            var other = new PanelInSight(pose.Panels[i], view.Viewer);
            for (var place = 0; place < places.Length; place++)
                hidden[place] = hidden[place] || other.Meets(places[place], Touching);
        }

        return (double)hidden.AsSpan().Count(false) / places.Length;
    }

    private static IEnumerable<Point> Places(Outline outline)
    {
        var bounds = outline.Bounds;
        var (columns, rows) = bounds.Width > bounds.Height ? (Along, Across) : (Across, Along);
        for (var column = 0; column < columns; column++)
        {
            for (var row = 0; row < rows; row++)
            {
                var place = new Point(bounds.Left + (bounds.Width * (column + 0.5) / columns), bounds.Top + (bounds.Height * (row + 0.5) / rows));
                if (outline.Contains(place))
                    yield return place;
            }
        }
    }
}
