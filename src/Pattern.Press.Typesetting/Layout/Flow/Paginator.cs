namespace Pattern.Press.Typesetting.Layout.Flow;

/// <summary>What stands on one page of running text.</summary>
/// <param name="Strips">The strips, with their distance from the top of the text area.</param>
/// <param name="Before">The last strip of the page before, or null.</param>
internal sealed record PagePlan(IReadOnlyList<PlacedStrip> Strips, Strip? Before);

/// <summary>
/// Puts strips on pages. Each page takes what it holds and ends at the last place where a page may end; if there is none,
/// at the last of the places that are the least bad.
/// </summary>
internal static class Paginator
{
    // Heights are sums of many numbers; a hair more than a page is a page.
    private const double Tolerance = 1e-6;

    /// <summary>Fills pages of a height.</summary>
    public static IReadOnlyList<PagePlan> Paginate(IReadOnlyList<Strip> strips, double height)
    {
        var pages = new List<PagePlan>();
        var first = 0;
        while (first < strips.Count)
        {
            var page = Fill(strips, first, height, out var next);
            pages.Add(new PagePlan(page, first > 0 ? strips[first - 1] : null));
            first = next;
        }

        return pages;
    }

    /// <summary>
    /// What stands on the last page so far, in a column that still grows. Pages before it stay as they are, so a search
    /// that begins at the page found before takes no longer for a long book than for a short one.
    /// </summary>
    /// <param name="strips">The strips.</param>
    /// <param name="height">The height of a page.</param>
    /// <param name="first">The first strip of the last page found before; becomes that of the page found now.</param>
    public static IReadOnlyList<PlacedStrip> LastPage(IReadOnlyList<Strip> strips, double height, ref int first)
    {
        while (true)
        {
            var page = Fill(strips, first, height, out var next);
            if (next >= strips.Count)
                return page;
            first = next;
        }
    }

    private static List<PlacedStrip> Fill(IReadOnlyList<Strip> strips, int first, double height, out int next)
    {
        var page = new List<PlacedStrip>();
        PlacedStrip? above = null;
        if (first > 0 && !strips[first].StartsPage)
        {
            foreach (var repeated in strips[first].Repeated)
            {
                above = new PlacedStrip(repeated, Stacking.TopOf(repeated, above), true);
                page.Add(above.Value);
            }
        }

        var before = page.Count;
        var breakAfter = first;
        var least = Keep.Always;
        for (var i = first; i < strips.Count; i++)
        {
            var strip = strips[i];
            if (i > first && strip.StartsPage)
            {
                next = i;
                return page;
            }

            var placed = new PlacedStrip(strip, Stacking.TopOf(strip, above), false);
            if (i > first && placed.Bottom + Stacking.PadBelow(strip.Frame, null) > height + Tolerance)
            {
                next = breakAfter + 1;
                page.RemoveRange(before + next - first, page.Count - before - (next - first));
                return page;
            }

            page.Add(placed);
            above = placed;
            if (strip.Keep <= least)
                (least, breakAfter) = (strip.Keep, i);
        }

        next = strips.Count;
        return page;
    }
}
