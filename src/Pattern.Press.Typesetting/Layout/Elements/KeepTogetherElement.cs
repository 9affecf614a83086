using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Layout.Flow;
using Pattern.Press.Typesetting.Structure;

namespace Pattern.Press.Typesetting.Layout.Elements;

/// <summary>Blocks that go to the next page together if they do not fit the rest of this one.</summary>
internal sealed class KeepTogetherElement : BlockElement<KeepTogetherBlock>
{
    // Of a page: a large figure, one not so large where the group is divided, and one too small to be called large.
    private const double Largest = 0.6;
    private const double Divided = 0.4;
    private const double Least = 0.25;

    // As near as the height of a figure is found, in millimetres.
    private const double Near = 2;

    protected override void LayOut(KeepTogetherBlock block, Column column, StripList strips)
    {
        strips.Space(column.Session.Styles.Spacing.Block);
        var first = strips.Count;
        var inside = block.HasLargeFigures ? WithLargeFigures(block, column, strips) : column;
        var isDivided = inside.FigureScale == FigureScale.Divided;
        // Groups in a group that is divided stay whole.
        (isDivided ? inside with { FigureScale = FigureScale.Usual } : inside).LayOut(block.Content, strips);
        if (!isDivided)
            strips.KeepTogether(first, column.Session.TextHeight);
        // What is kept together is complete: its last words do not introduce what follows it.
        strips.EndParagraph(null);
    }

    /// <summary>The column with figures as high as the rest of this page allows, or else a page that starts with the group.</summary>
    private static Column WithLargeFigures(KeepTogetherBlock block, Column column, StripList strips)
    {
        var page = column.Session.TextHeight;
        var divided = column with { FigureScale = FigureScale.Divided, MostFigureHeight = page * Divided };
        if (strips.IsAtPageStart)
            return Fitting(page, isFirst: true) is { } height ? column with { MostFigureHeight = height } : divided;
        strips.KeepHeadings(2 * column.Session.Looks.Body.Leading);
        var (bottom, tail) = (strips.BottomOnPage(page), strips.TailHeight());
        if (Fitting(page - bottom, isFirst: false) is { } here)
            return column with { MostFigureHeight = here };
        return (tail > 0 || bottom >= page * GroupFitting.EmptyPage) && Fitting(page - tail, isFirst: tail == 0) is { } next
            ? column with { MostFigureHeight = next }
            : divided;

        double? Fitting(double room, bool isFirst)
        {
            var (least, most) = (page * Least, page * Largest);
            if (HeightWith(least, isFirst) > room)
                return null;
            if (HeightWith(most, isFirst) <= room)
                return most;
            while (most - least > Near)
            {
                var middle = (least + most) / 2;
                (least, most) = HeightWith(middle, isFirst) <= room ? (middle, most) : (least, middle);
            }

            return least;
        }

        double HeightWith(double figure, bool isFirst)
        {
            var content = new StripList();
            column.Session.Measure(() => (column with { Parent = new StructureElement(Role.Div), MostFigureHeight = figure }).LayOut(block.Content, content));
            if (content.Count == 0)
                return 0;
            var gap = isFirst ? 0 : Math.Max(content[0].Gap, strips.PendingSpace);
            return gap + content.HeightFrom(0);
        }
    }
}
