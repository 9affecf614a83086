using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Layout.Flow;
using Pattern.Press.Typesetting.Structure;

namespace Pattern.Press.Typesetting.Layout;

/// <summary>
/// Decides how large the figures of blocks that stay together are made, for all groups in a row at once: on as few pages
/// as they can stand, with as few small figures as that allows, and with large ones where a page would stay empty.
/// </summary>
internal static class GroupFitting
{
    /// <summary>Of a page: so little on it looks like a mistake.</summary>
    public const double EmptyPage = 0.3;

    // From best to worst; what each costs is only compared where the number of pages is the same.
    private static readonly (FigureScale Scale, int Cost)[] Scales =
        [(FigureScale.Generous, 0), (FigureScale.Usual, 0), (FigureScale.Tight, 1)];

    // Of a page: with less on it, a group that stands alone looks lost.
    private const double LoosePage = 0.75;

    // A page more costs more than all the groups on a page being small.
    private const int PageCost = 1000;


    // Sums of many heights, in millimetres.
    private const double Tolerance = 1e-6;

    /// <summary>How large the figures are made of each of the groups that a list of blocks starts with, at least of the first.</summary>
    /// <param name="blocks">Blocks; the first is a group.</param>
    /// <param name="flowsOn">Whether something follows the last block on the same page.</param>
    /// <param name="column">Their column.</param>
    /// <param name="strips">What stands above them.</param>
    public static IReadOnlyList<FigureScale> ScalesOf(IEnumerable<Block> blocks, bool flowsOn, Column column, StripList strips)
    {
        var page = column.Session.TextHeight;
        var groups = new List<Group>();
        foreach (var block in blocks)
        {
            if (block is not KeepTogetherBlock { HasLargeFigures: false } kept)
                return Fit(groups, true, page, column, strips);
            var group = Measure(kept, column);
            // What is higher than a page is divided, and whatever comes after it starts wherever it ends.
            if (group.Lowest > page + Tolerance)
                return groups.Count == 0 ? [FigureScale.Usual] : Fit(groups, true, page, column, strips);
            groups.Add(group);
        }

        return Fit(groups, flowsOn, page, column, strips);
    }

    private static FigureScale[] Fit(List<Group> groups, bool flowsOn, double page, Column column, StripList strips)
    {
        // The least cost of the groups from each one on, if it starts a page, and how they are made on that page.
        var from = new Pages?[groups.Count + 1];
        from[^1] = new Pages(0, []);
        for (var i = groups.Count - 1; i > 0; i--)
            from[i] = Best(i, 0, 0);

        Pages best;
        var top = 0.0;
        if (strips.IsAtPageStart)
        {
            best = Best(0, 0, 0);
        }
        else
        {
            strips.KeepHeadings(2 * column.Session.Looks.Body.Leading);
            var tail = strips.TailHeight();
            var below = Best(0, strips.BottomOnPage(page), strips.PendingSpace);
            var above = Best(0, tail, strips.PendingSpace);
            // The page that is left then counts too.
            var moves = above.Cost + PageCost < below.Cost;
            if (moves && tail == 0 && strips.BottomOnPage(page) < page * EmptyPage)
                return [FigureScale.Divided];
            best = moves ? above : below;
            top = moves ? tail : strips.BottomOnPage(page);
            top += top > 0 ? Math.Max(strips.PendingSpace, groups[0].Gaps[0]) : 0;
        }

        var scales = new List<FigureScale>(groups.Count);
        while (scales.Count < groups.Count)
        {
            scales.AddRange(best.Scales is [FigureScale.Generous] && FitsAlone(groups[scales.Count], top) ? [FigureScale.Alone] : best.Scales);
            (best, top) = (from[scales.Count]!, 0);
        }

        return [.. scales];

        bool FitsAlone(Group group, double top) =>
            top + group.Heights[0] < page * LoosePage && top + Measure(group.Block, column, FigureScale.Alone).Height <= page + Tolerance;

        Pages Best(int first, double top, double gap)
        {
            var best = new Pages(double.PositiveInfinity, [FigureScale.Usual]);
            var packs = new List<Pack> { new(top, 0, 0, []) };
            for (var i = first; i < groups.Count; i++)
            {
                packs = Extend(packs, groups[i], i > first || top > 0 ? gap : null, flowsOn && i == groups.Count - 1, page);
                if (packs.Count == 0)
                    break;
                gap = groups[i].After;
                var pack = packs.MinBy(pack => (pack.Cost, -pack.Large))!;
                // Of ways that cost the same, the one that fills pages from the front.
                if (pack.Cost + PageCost + from[i + 1]!.Cost <= best.Cost)
                    best = new Pages(pack.Cost + PageCost + from[i + 1]!.Cost, pack.Scales);
            }

            return best;
        }
    }

    /// <summary>All ways of putting one group more on a page, without those that are higher than another and no better.</summary>
    private static List<Pack> Extend(List<Pack> packs, Group group, double? above, bool isFollowed, double page)
    {
        var longer = new List<Pack>(packs.Count * Scales.Length);
        foreach (var pack in packs)
        {
            for (var i = 0; i < Scales.Length; i++)
            {
                var (scale, cost) = Scales[i];
                // Text that goes on below takes what is left, so nothing is made large to fill it.
                if (scale != FigureScale.Usual && (group.IsRigid || (isFollowed && scale == FigureScale.Generous)))
                    continue;
                var gap = above is { } least ? Math.Max(least, group.Gaps[i]) : 0;
                var height = pack.Height + gap + group.Heights[i];
                if (height <= page + Tolerance)
                    longer.Add(new Pack(height, pack.Cost + cost, pack.Large + (scale == FigureScale.Generous ? 1 : 0), [.. pack.Scales, scale]));
            }
        }

        return [.. longer
            .GroupBy(pack => (pack.Cost, pack.Large))
            .Select(same => same.MinBy(pack => pack.Height)!)];
    }

    private static Group Measure(KeepTogetherBlock group, Column column)
    {
        var found = Scales.Select(one => Measure(group, column, one.Scale)).ToList();
        return new Group(group, [.. found.Select(one => one.Height)], [.. found.Select(one => one.Gap)], found[0].After);
    }

    private static GroupHeight Measure(KeepTogetherBlock group, Column column, FigureScale scale)
    {
        var inside = column with { FigureScale = scale };
        return column.Session.GroupHeights.Get(group, inside, () =>
        {
            var strips = new StripList();
            column.Session.Measure(() => BlockElements.LayOut(group, inside with { Parent = new StructureElement(Role.Div) }, strips));
            return strips.Count == 0 ? default : new GroupHeight(strips.HeightFrom(0), strips[0].Gap, strips.PendingSpace);
        });
    }

    /// <summary>A group.</summary>
    /// <param name="Block">What it is.</param>
    /// <param name="Heights">Its height at each of the scales.</param>
    /// <param name="Gaps">The room above it at each of the scales.</param>
    /// <param name="After">The room below it.</param>
    private sealed record Group(KeepTogetherBlock Block, double[] Heights, double[] Gaps, double After)
    {
        public double Lowest => Heights.Min();

        /// <summary>Whether it comes out the same at any scale.</summary>
        public bool IsRigid => Heights.All(height => height == Heights[0]) && Gaps.All(gap => gap == Gaps[0]);
    }

    /// <summary>Some groups on one page: how high they are, and what they cost.</summary>
    private sealed record Pack(double Height, int Cost, int Large, IReadOnlyList<FigureScale> Scales);

    /// <summary>All groups from one on: what they cost, and the scales of those on the first page.</summary>
    private sealed record Pages(double Cost, IReadOnlyList<FigureScale> Scales);
}
