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
        double Height(FigureScale scale) => Measure(group, column with { FigureScale = scale }).Height;

        // Measuring takes long, so that a scale is only measured when it decides something.
        var (lowest, gap) = Measure(group, column with { FigureScale = FigureScale.Tight });
        if (Height(FigureScale.Usual) == lowest && Height(FigureScale.Generous) == lowest)
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
            return Height(FigureScale.Usual) <= room ? FigureScale.Usual : FigureScale.Tight;
        }

        foreach (var scale in LargestFirst)
        {
            if (Height(scale) <= room)
                return scale;
        }

        return FigureScale.Usual;
    }

    private static (double Height, double Gap) Measure(KeepTogetherBlock group, Column column) =>
        column.Session.GroupHeights.Get(group, column, () =>
        {
            var strips = new StripList();
            column.Session.Measure(() => BlockElements.LayOut(group, column with { Parent = new StructureElement(Role.Div) }, strips));
            return strips.Count == 0 ? (0, 0) : (Stacking.Stack(strips.Strips).Height, strips[0].Gap);
        });
}
