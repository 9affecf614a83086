namespace Pattern.Press.Nets.Building;

/// <summary>Works out which panel of a scored sheet hangs from which, from the root outwards.</summary>
internal static class SheetHanging
{
    /// <summary>
    /// The folds: those that panels hang on, nearest to the root first, then those along diagonals. Sets each region's level
    /// and parent, and trims those with taper or relief. Adds the reasons when it cannot be done.
    /// </summary>
    public static IReadOnlyList<Hinge> Of(SheetRegions sheet, List<string> reasons)
    {
        var hinges = new List<Hinge>();
        var level = 0;
        sheet.Root.Level = 0;
        List<Region> outermost = [sheet.Root];
        while (outermost.Count > 0)
        {
            level++;
            var next = new List<Region>();
            foreach (var region in sheet.Regions.Where(region => region.Level is null))
            {
                var holders = outermost.Select(holder => (Holder: holder, Lines: Lines(region, holder)))
                    .Where(pair => pair.Lines.Count > 0).ToArray();
                if (holders.Length > 0)
                {
                    next.Add(region);
                    if (Hang(region, holders, reasons) is { } hinge)
                        hinges.Add(hinge);
                }
            }

            // Set afterwards: panels of one level do not hang from each other.
            foreach (var region in next)
                region.Level = level;
            outermost = next;
        }

        foreach (var region in sheet.Regions.Where(region => region.Level is null))
            reasons.Add($"{region.Place} is cut off from the rest: {WhyUnheld(region)}");
        if (reasons.Count == 0)
            hinges.AddRange(sheet.Splits.Select(split => AlongDiagonal(split, reasons)).OfType<Hinge>().Distinct());
        return hinges;
    }

    private static Hinge? Hang(Region region, (Region Holder, IReadOnlyList<Edge> Lines)[] holders, List<string> reasons)
    {
        if (holders.Length > 1)
        {
            var remedy = region.Cell.HangsFrom == HangsFrom.Inward
                ? "say whether it hangs from the one beside it or the one above or below."
                : "it needs one neighbour only on that side.";
            reasons.Add($"{region.Place} could hang from {holders.Length} panels that are equally near to the root, {string.Join(" and ", holders.Select(pair => $"the {pair.Holder.Cell.Kind} “{pair.Holder.Letter}”"))}; {remedy}");
            return null;
        }

        var (holder, lines) = holders[0];
        if (lines.Count > 1)
        {
            reasons.Add($"{region.Place} meets the {holder.Cell.Kind} “{holder.Letter}” along {lines.Count} lines; it can fold along one only.");
            return null;
        }

        region.Parent = holder;
        var line = lines[0];
        if (region.Cell.Taper > 0 || region.Cell.Relief > Measure.Length.Zero)
        {
            if (Trimming.Trimmed(region.Outline, line, region.Cell.Taper, region.Cell.Relief.Millimetres, region.Cell.TaperRuler) is not { } trimmed)
            {
                reasons.Add($"{region.Place} would be trimmed away: its taper and relief take more than the fold it hangs on is long.");
                return null;
            }

            region.Outline = trimmed;
            line = Lines(region, holder)[0];
        }

        return new Hinge(holder, region, InReadingDirection(line), region.Cell.Fold!);
    }

    // Slanted lines are diagonals or tapered ends, from which nothing hangs.
    private static IReadOnlyList<Edge> Lines(Region region, Region holder) =>
    [
        .. SharedEdges.Between(region.Outline, holder.Outline).Where(line => region.Cell.HangsFrom switch
        {
            HangsFrom.Beside => IsUpright(line),
            HangsFrom.AboveOrBelow => IsLevel(line),
            _ => IsUpright(line) || IsLevel(line),
        }),
    ];

    private static bool IsUpright(Edge line) => Math.Abs(line.From.X - line.To.X) < LineWork.Tolerance;

    private static bool IsLevel(Edge line) => Math.Abs(line.From.Y - line.To.Y) < LineWork.Tolerance;

    private static string WhyUnheld(Region region) => region.Cell.HangsFrom switch
    {
        HangsFrom.Beside => "it is to hang from a panel to its left or right, but none there leads to the root.",
        HangsFrom.AboveOrBelow => "it is to hang from a panel above or below it, but none there leads to the root.",
        _ => "no panel beside it leads to the root.",
    };

    private static Hinge? AlongDiagonal(SplitCell split, List<string> reasons)
    {
        // The fold is the whole stretch that the two panels share there, which may pass through several cells.
        var line = SharedEdges.Between(split.First.Outline, split.Second.Outline)
            .Select(shared => (Edge?)shared).FirstOrDefault(shared => shared!.Value.DistanceTo(split.Line.Middle) < LineWork.Tolerance);
        if (line is null)
        {
            reasons.Add($"{split.First.Place} no longer meets its neighbour along the diagonal once its ends are trimmed.");
            return null;
        }

        var (parent, child) = split.First.Level <= split.Second.Level ? (split.First, split.Second) : (split.Second, split.First);
        return new Hinge(parent, child, InReadingDirection(line.Value), split.Fold);
    }

    // From the upper end, or from the left one when it is level.
    private static Edge InReadingDirection(Edge line) =>
        line.From.Y > line.To.Y || (line.From.Y == line.To.Y && line.From.X > line.To.X) ? line.Reversed : line;
}
