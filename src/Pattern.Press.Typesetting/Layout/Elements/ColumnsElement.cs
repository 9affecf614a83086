using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Layout.Flow;
using Pattern.Press.Typesetting.Structure;

namespace Pattern.Press.Typesetting.Layout.Elements;

/// <summary>
/// Blocks in columns of equal width and as equal height as their lines allow. In fewer columns where the page is narrow,
/// and in one where they would not fit one page.
/// </summary>
internal sealed class ColumnsElement : BlockElement<ColumnsBlock>
{
    // About thirty-five letters of a text face; shorter lines are all ends, in millimetres.
    private const double NarrowestColumn = 58;

    // Of their height: what runs over by more fills a good part of the next page anyway.
    private const double MostOver = 0.4;

    protected override void LayOut(ColumnsBlock block, Column column, StripList strips)
    {
        var gutter = column.Session.Styles.Spacing.Gutter;
        for (var count = Wanted(block, column, strips); count > 1; count--)
        {
            var width = (column.Width - (gutter * (count - 1))) / count;
            if (width >= NarrowestColumn && column.Session.Try(() => TryColumns(block, column, count, width, gutter, strips)))
                return;
        }

        column.LayOut(block.Content, strips);
    }

    private static int Wanted(ColumnsBlock block, Column column, StripList strips)
    {
        if (!block.MoreToFit)
            return block.Count;
        var height = 0.0;
        column.Session.Measure(() =>
        {
            var content = new StripList();
            (column with { Parent = new StructureElement(Role.Div) }).LayOut([block with { MoreToFit = false }], content);
            height = content.HeightFrom(0);
        });
        var top = strips.IsAtPageStart ? 0 : strips.BottomOnPage(column.Session.TextHeight) + strips.PendingSpace;
        var over = top + height - column.Session.TextHeight;
        return over > 0 && over < height * MostOver ? block.Count + 1 : block.Count;
    }

    private static bool TryColumns(ColumnsBlock block, Column column, int count, double width, double gutter, StripList strips)
    {
        var trial = new StructureElement(Role.Div);
        var problems = column.Session.ProblemCount;
        var content = new StripList();
        (column.Inset(0, column.Width - width) with { Parent = trial, Frame = null, MayJustify = false, KeepsItems = true }).LayOut(block.Content, content);
        if (content.Count == 0 || column.Session.ProblemCount > problems || content.Strips.Skip(1).Any(strip => strip.StartsPage))
            return false;
        content.KeepHeadings(2 * column.Session.Looks.Body.Leading);
        var height = LowestHeight(content, count);
        if (height > column.Session.TextHeight)
            return false;

        foreach (var element in trial.Children)
            column.Parent.Add(element);
        var group = new GroupStrip("Text in columns") { Source = column.Source, Frame = column.Frame };
        var at = 0;
        foreach (var part in Paginator.Paginate(content.Strips, height))
            group.AddColumn([.. part.Strips.Select(placed => placed.Strip)], shift: at++ * (width + gutter));
        strips.Space(content[0].Gap);
        strips.Add(group);
        strips.Space(content.PendingSpace);
        return true;
    }

    // The least height at which so many columns hold everything, to a tenth of a millimetre.
    private static double LowestHeight(StripList content, int count)
    {
        var (low, high) = (content.HeightFrom(0) / count * 0.5, content.HeightFrom(0));
        while (high - low > 0.1)
        {
            var middle = (low + high) / 2;
            (low, high) = Fits(content, count, middle) ? (low, middle) : (middle, high);
        }

        return high;
    }

    // Columns end where a page may end, never inside an item.
    private static bool Fits(StripList content, int count, double height)
    {
        if (content.Strips.Any(strip => strip.Height > height))
            return false;
        var columns = Paginator.Paginate(content.Strips, height);
        return columns.Count <= count && columns.SkipLast(1).All(column => column.Strips[^1].Strip.Keep == Keep.Free);
    }
}
