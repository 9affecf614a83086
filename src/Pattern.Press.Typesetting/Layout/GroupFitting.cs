using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Layout.Flow;
using Pattern.Press.Typesetting.Structure;

namespace Pattern.Press.Typesetting.Layout;

/// <summary>
/// Decides how large the figures of blocks that stay together are made: small where that lets a page hold one group more,
/// large where the page would stay empty otherwise.
/// </summary>
internal static class GroupFitting
{
    private static readonly FigureScale[] LargestFirst = [FigureScale.Generous, FigureScale.Usual, FigureScale.Tight];

    /// <summary>How large the figures of a group are made, given all that stands above it and what comes after it.</summary>
    /// <param name="group">The group.</param>
    /// <param name="next">The block after it; null if a page starts after it.</param>
    /// <param name="column">Its column.</param>
    /// <param name="strips">What stands above it.</param>
    public static FigureScale ScaleOf(KeepTogetherBlock group, Block? next, Column column, StripList strips)
    {
        var page = column.Session.TextHeight;
        var heights = LargestFirst.Select(scale => Measure(group, column with { FigureScale = scale })).ToList();
        var (lowest, gap) = (heights[^1].Height, heights[^1].Gap);
        if (heights.TrueForAll(one => one.Height == lowest))
            return FigureScale.Usual;
        var top = strips.IsAtPageStart ? 0 : strips.BottomOnPage(page) + Math.Max(strips.PendingSpace, gap);
        var room = page - (top + lowest > page ? 0 : top);
        if (next is KeepTogetherBlock follower)
        {
            var below = Measure(follower, column with { FigureScale = FigureScale.Tight });
            var left = room - below.Gap - below.Height;
            room = lowest <= left ? left : room;
        }
        else if (next is not null)
        {
            // Text goes on below it, which takes what is left.
            return heights[1].Height <= room ? FigureScale.Usual : FigureScale.Tight;
        }

        for (var i = 0; i < LargestFirst.Length; i++)
        {
            if (heights[i].Height <= room)
                return LargestFirst[i];
        }

        return FigureScale.Usual;
    }

    private static (double Height, double Gap) Measure(KeepTogetherBlock group, Column column)
    {
        var heights = column.Session.GroupHeights;
        if (heights.TryGetValue((group, column.FigureScale, column.Width), out var known))
            return known;
        var strips = new StripList();
        column.Session.Measure(() => BlockElements.LayOut(group, column with { Parent = new StructureElement(Role.Div) }, strips));
        return heights[(group, column.FigureScale, column.Width)] =
            strips.Count == 0 ? (0, 0) : (Stacking.Stack(strips.Strips).Height, strips[0].Gap);
    }
}
