using Pattern.Press.Nets;
using Pattern.Press.Plans.Tiling;

namespace Pattern.Press.Plans.Tests.Tiling;

/// <summary>
/// The fewest pages of any grid of tiles, found by trying every place of every seam on a fine raster. Knows nothing of
/// how the planner searches; pieces are grids of rectangles whose corners lie on the raster's coarser lines.
/// </summary>
internal static class ExhaustiveTiling
{
    private const double Raster = 0.5;

    public static int FewestPages(Piece piece, TemplatePage page, double lap)
    {
        var fewest = int.MaxValue;
        foreach (var (areaWidth, areaHeight) in Areas(page).Distinct())
        {
            var panels = piece.Panels
                .Select(p => (Left: p.Outline.Corners.Min(c => c.X), Top: p.Outline.Corners.Min(c => c.Y), Right: p.Outline.Corners.Max(c => c.X), Bottom: p.Outline.Corners.Max(c => c.Y)))
                .ToList();
            var (left, right) = (panels.Min(p => p.Left), panels.Max(p => p.Right));
            var (top, bottom) = (panels.Min(p => p.Top), panels.Max(p => p.Bottom));

            // All that a row of tiles or a column of tiles does is to touch some of the panels: ways that touch the same
            // panels are alike, and among those a way with the same panels and more is of no use.
            var columns = Ways(left, right, areaWidth, lap, (from, to) => Touched(panels.Select(p => (p.Left, p.Right)), from, to));
            var rows = Ways(top, bottom, areaHeight, lap, (from, to) => Touched(panels.Select(p => (p.Top, p.Bottom)), from, to));
            foreach (var across in columns)
            {
                foreach (var down in rows)
                    fewest = Math.Min(fewest, across.Sum(column => down.Count(row => (row & column) != 0)));
            }
        }

        return fewest;
    }

    // What is left of the page upright and lying, for the template as it is and, with the two sides swapped, turned.
    private static IEnumerable<(double Width, double Height)> Areas(TemplatePage page)
    {
        foreach (var (width, height) in new[] { (page.Width, page.Height), (page.Height, page.Width) })
        {
            var (left, below) = (width - (2 * page.Margin), height - (2 * page.Margin) - page.HeadRoom - page.FootRoom);

            // Less is not offered for tiles at all.
            if (Math.Min(left, below) < 40)
                continue;
            yield return (left, below);
            yield return (below, left);
        }
    }

    private static int Touched(IEnumerable<(double From, double To)> panels, double from, double to)
    {
        const double Clearance = 0.5 - 1e-7;
        var touched = 0;
        var bit = 1;
        foreach (var panel in panels)
        {
            if (panel.From < to + Clearance && panel.To > from - Clearance)
                touched |= bit;
            bit <<= 1;
        }

        return touched;
    }

    private static List<int[]> Ways(double start, double end, double side, double lap, Func<double, double, int> touched)
    {
        var ways = new Dictionary<string, int[]>(StringComparer.Ordinal);
        var seen = new HashSet<string>(StringComparer.Ordinal);
        var least = 1;
        for (var reach = side; reach < end - start - 1e-9; reach += side - lap)
            least++;
        Extend(start, []);
        return [.. ways.Values];

        // Tiles from left to right: each starts where the one before ends, less the lap.
        void Extend(double from, int[] tiles)
        {
            if (tiles.Length > least + 1 || !seen.Add(FormattableString.Invariant($"{from:F3}|{string.Join(',', tiles)}")))
                return;
            if (from + side >= end - 1e-9)
            {
                int[] way = [.. tiles, touched(from, end)];
                ways.TryAdd(string.Join(',', way), way);
            }

            for (var to = from + (tiles.Length == 0 ? Math.Max(lap, Raster) : Math.Max(2 * lap, lap + 1)); to <= from + side + 1e-9 && to < end - 1e-9; to += Raster)
                Extend(to - lap, [.. tiles, touched(from, to)]);
            if (from + side < end - 1e-9)
                Extend(from + side - lap, [.. tiles, touched(from, from + side)]);
        }
    }
}
