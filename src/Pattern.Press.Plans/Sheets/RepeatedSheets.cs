namespace Pattern.Press.Plans.Sheets;

/// <summary>
/// Sheets for many equal rectangles, the way a maker plans for a class: one sheet that is as full as can be, cut as often
/// as there are rectangles for it, then the next. How long that takes depends on how many kinds of rectangles there are
/// and hardly on how many of each, and most sheets are cut alike.
/// </summary>
internal static class RepeatedSheets
{
    /// <summary>Full sheets, and how many of each kind are left when about as much as goes on a few sheets is.</summary>
    /// <param name="kinds">The rectangles; each fits an empty sheet.</param>
    /// <param name="counts">How many of each; what is left of them afterwards.</param>
    /// <param name="width">The width of a sheet.</param>
    /// <param name="height">Its height.</param>
    /// <param name="mayTurn">Whether rectangles may be turned.</param>
    /// <param name="share">
    /// How much more of a kind a sheet may take than its share of what is left: with 1 all kinds are used up together, with
    /// much more the sheets are the fullest that can be found.
    /// </param>
    /// <param name="sheetsLeft">As much as goes on so many sheets is left over.</param>
    /// <returns>Sheets with how often each is cut; their items are kinds.</returns>
    public static List<(Packing.Part Sheet, int Times)> Fill(
        IReadOnlyList<(long Width, long Height)> kinds, int[] counts, long width, long height, bool mayTurn, double share, int sheetsLeft)
    {
        var sheets = new List<(Packing.Part, int)>();
        var sheet = (double)width * height;
        var orders = SheetPlanner.Orders(kinds).ToList();
        while (true)
        {
            var left = kinds.Select((kind, i) => (double)kind.Width * kind.Height * counts[i]).Sum() / sheet;
            if (left <= sheetsLeft)
                return sheets;
            var most = counts.Select(count => (int)Math.Min(count, Math.Ceiling(count / left * share))).ToArray();
            var (part, used) = Fullest(kinds, most, orders, width, height, mayTurn);
            var times = Enumerable.Range(0, counts.Length).Where(i => used[i] > 0).Min(i => counts[i] / used[i]);

            // What is kept back is as mixed as the rest, so that the last sheets can be filled too.
            times = Math.Max(1, Math.Min(times, (int)Math.Ceiling(left - sheetsLeft)));
            for (var i = 0; i < counts.Length; i++)
                counts[i] -= used[i] * times;
            sheets.Add((part, times));
        }
    }

    private static (Packing.Part Sheet, int[] Used) Fullest(
        IReadOnlyList<(long Width, long Height)> kinds, int[] most, List<int[]> orders, long width, long height, bool mayTurn)
    {
        (Packing.Part Sheet, int[] Used, double Area)? best = null;
        foreach (var order in orders)
        {
            foreach (var fit in Enum.GetValues<Packing.FitRule>())
            {
                foreach (var split in Enum.GetValues<Packing.SplitRule>())
                {
                    var packing = new Packing(width, height, mayTurn, fit, split, new Packing.SpareParts());
                    var used = packing.FillOne(kinds, order, most);
                    var area = kinds.Select((kind, i) => (double)kind.Width * kind.Height * used[i]).Sum();
                    if (best is not { } found || area > found.Area)
                        best = (packing.Sheets[0], used, area);
                }
            }
        }

        return (best!.Value.Sheet, best.Value.Used);
    }
}
