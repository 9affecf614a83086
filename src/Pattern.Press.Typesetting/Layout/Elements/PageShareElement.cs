using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Layout.Flow;
using Pattern.Press.Typesetting.Structure;

namespace Pattern.Press.Typesetting.Layout.Elements;

/// <summary>
/// Blocks on an equal part of the page. Their figures are made as large as that part lets them be; what is too long with
/// the smallest ones flows on like any other text.
/// </summary>
internal sealed class PageShareElement : BlockElement<PageShareBlock>
{
    // Drawings of things in space are still made out at that height, in millimetres.
    private const double LowestFigure = 24;
    private const double Step = 2;

    protected override void LayOut(PageShareBlock block, Column column, StripList strips)
    {
        var (page, gutter) = (column.Session.TextHeight, column.Session.Styles.Spacing.Gutter);
        var height = (page - (gutter * (block.Count - 1))) / block.Count;
        var most = Math.Max(LowestFigure, height);
        while (most > LowestFigure && HeightOf(block, column with { MostFigureHeight = most }) > height)
            most = Math.Max(LowestFigure, most - Step);

        var content = new StripList();
        var narrowed = column with { MostFigureHeight = most, Frame = null };
        if (HeightOf(block, narrowed) > page)
        {
            narrowed.LayOut(block.Content, strips);
            return;
        }

        narrowed.LayOut(block.Content, content);
        if (content.Count == 0)
            return;
        var group = new GroupStrip("A part of a page") { Source = column.Source, Frame = column.Frame };
        group.AddColumn(content.Strips);
        // A hair less, so that sums of halves and thirds never come out above the page.
        group.Stretch(height - 0.001);
        strips.Space(gutter);
        strips.Add(group);
        strips.Space(gutter);
    }

    private static double HeightOf(PageShareBlock block, Column column)
    {
        var content = new StripList();
        column.Session.Measure(() => (column with { Parent = new StructureElement(Role.Div) }).LayOut(block.Content, content));
        return content.Count == 0 ? 0 : Stacking.Stack(content.Strips).Height;
    }
}
