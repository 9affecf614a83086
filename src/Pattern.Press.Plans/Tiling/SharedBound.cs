namespace Pattern.Press.Plans.Tiling;

/// <summary>A number of shared pages that no plan can go below.</summary>
internal static class SharedBound
{
    /// <summary>The bound for templates of one stock, given the ways each may lie.</summary>
    public static int Of(IReadOnlyList<IReadOnlyList<SharedSlot>> templates, IReadOnlyList<DrawingArea> areas, double gap)
    {
        // By area: each template takes at least itself, its label and a gap to two sides, of an area that is a gap larger
        // each way.
        var page = areas.Max(area => (area.Width + gap) * (area.Height + gap));
        var all = templates.Sum(ways => ways.Min(slot => (slot.Width + gap) * (slot.Height + gap)));
        var byArea = (int)Math.Ceiling((all / page) - 1e-9);

        // By sides: templates of which no two can share a page take a page each. The largest come first, since they have
        // fewest companions.
        var alone = new List<IReadOnlyList<SharedSlot>>();
        foreach (var ways in templates.OrderByDescending(ways => ways[0].Width * ways[0].Height))
        {
            if (alone.TrueForAll(other => !CanShare(ways, other, areas, gap)))
                alone.Add(ways);
        }

        return Math.Max(byArea, alone.Count);
    }

    // Two rectangles that do not meet lie beside each other or one below the other.
    private static bool CanShare(IReadOnlyList<SharedSlot> one, IReadOnlyList<SharedSlot> other, IReadOnlyList<DrawingArea> areas, double gap) =>
        one.Any(a => other.Any(b => areas.Any(area =>
            (a.Width + gap + b.Width <= area.Width + 1e-9 && Math.Max(a.Height, b.Height) <= area.Height + 1e-9)
            || (a.Height + gap + b.Height <= area.Height + 1e-9 && Math.Max(a.Width, b.Width) <= area.Width + 1e-9))));
}
