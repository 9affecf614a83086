using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Layout.Flow;
using Pattern.Press.Typesetting.Structure;

namespace Pattern.Press.Typesetting.Layout;

/// <summary>
/// Decides whether the figures of blocks that stay together are made small. They are where that lets a page hold one
/// group more, and nowhere else: a group that has its page to itself does better with large figures.
/// </summary>
internal static class GroupFitting
{
    /// <summary>Whether a group is set tight, given all that stands above it and what comes after it.</summary>
    /// <param name="group">The group.</param>
    /// <param name="next">The block after it, or null.</param>
    /// <param name="column">Its column.</param>
    /// <param name="strips">What stands above it.</param>
    public static bool IsTight(KeepTogetherBlock group, Block? next, Column column, StripList strips)
    {
        var page = column.Session.TextHeight;
        var roomy = Measure(group, column);
        var tight = Measure(group, column with { IsTight = true });
        if (tight.Height >= roomy.Height)
            return false;
        var top = strips.IsAtPageStart ? 0 : BottomOf(strips, page) + Math.Max(strips.PendingSpace, roomy.Gap);
        if (top + tight.Height > page)
            top = 0;
        else if (top + roomy.Height > page)
            return true;
        if (next is not KeepTogetherBlock follower)
            return false;
        var below = Measure(follower, column with { IsTight = true });
        var room = page - top - below.Gap - below.Height;
        return tight.Height <= room && roomy.Height > room;
    }

    private static double BottomOf(StripList strips, double page)
    {
        var last = Paginator.Paginate(strips.Strips, page)[^1].Strips[^1];
        return last.Bottom + Stacking.PadBelow(last.Strip.Frame, null);
    }

    private static (double Height, double Gap) Measure(KeepTogetherBlock group, Column column)
    {
        var strips = new StripList();
        column.Session.Try(() =>
        {
            BlockElements.LayOut(group, column with { Parent = new StructureElement(Role.Div) }, strips);
            return false;
        });
        return strips.Count == 0 ? (0, 0) : (Stacking.Stack(strips.Strips).Height, strips[0].Gap);
    }
}
