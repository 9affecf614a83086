namespace Pattern.Press.Plans.Sheets;

/// <summary>
/// How many sheets any plan takes at least. Sides are mapped by functions that keep every sum of sides that fits a sheet
/// within the sheet (dual feasible functions: S. P. Fekete and J. Schepers, "New classes of fast lower bounds for bin
/// packing problems", Mathematical Programming 91, 2001; from memory), and the mapped areas are added up.
/// </summary>
internal static class SheetBound
{
    public static int Of(IReadOnlyList<(long Width, long Height)> items, long width, long height, bool mayTurn)
    {
        if (items.Count == 0)
            return 0;
        var kinds = items.GroupBy(item => item).Select(kind => (kind.Key.Width, kind.Key.Height, Count: kind.Count())).ToList();
        var across = Thresholds(items, width, mayTurn, item => item.Width, item => item.Height);
        var down = Thresholds(items, height, mayTurn, item => item.Height, item => item.Width);
        var best = 1;
        foreach (var a in across)
        {
            foreach (var b in down)
            {
                decimal sum = 0;
                foreach (var (w, h, count) in kinds)
                {
                    var part = Part(w, h, a, b);
                    sum += count * (mayTurn ? Math.Min(part, Part(h, w, a, b)) : part);
                }

                best = Math.Max(best, (int)Math.Ceiling(sum / ((decimal)width * height)));
            }
        }

        return best;

        // A side that does not fit that way cannot lie that way, so it counts for nothing less than the other way does.
        decimal Part(long w, long h, long a, long b) =>
            w > width || h > height ? decimal.MaxValue : (decimal)Mapped(w, width, a) * Mapped(h, height, b);
    }

    private static long Mapped(long side, long whole, long threshold) =>
        side > whole - threshold ? whole : side < threshold ? 0 : side;

    private static List<long> Thresholds(
        IReadOnlyList<(long Width, long Height)> items,
        long whole,
        bool mayTurn,
        Func<(long Width, long Height), long> side,
        Func<(long Width, long Height), long> other)
    {
        var sides = items.Select(side);
        if (mayTurn)
            sides = sides.Concat(items.Select(other));

        // Values change only just above an item's side, or just above what it leaves of the sheet.
        var all = sides.SelectMany(s => new[] { s, s + 1, whole - s, whole - s + 1 })
            .Where(s => s >= 1 && s * 2 <= whole)
            .Append(0).Append(whole / 2)
            .Distinct().Order().ToList();
        var stride = 1 + (all.Count / 24);
        return [.. all.Where((_, i) => i % stride == 0 || i == all.Count - 1)];
    }
}
