using Pattern.Press.Booklets.Figures;
using Pattern.Press.Booklets.Templates;
using Pattern.Press.Measure;
using Pattern.Press.Plans.Tiling;
using Pattern.Press.Structures.Reading;
using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Booklets.Composing.Parts;

/// <summary>The full-size templates of the primary fit.</summary>
internal static class TemplatesPart
{
    /// <summary>Plans and draws the templates; null after a problem.</summary>
    public static FixedPart? Compose(BookletContext context, IFigureWords words, PaperSize paper, Problems problems)
    {
        var page = new TemplatePage(
            paper.Size.Width.Millimetres,
            paper.Size.Height.Millimetres,
            context.Source.PrinterMargin.Millimetres,
            TemplatePages.HeadRoom,
            TemplatePages.FootRoom);
        try
        {
            return TemplatePages.Make(new TemplateJob
            {
                Plan = TemplatePlanner.Plan(context.Primary.Kit, page, context.Source.Lap.Millimetres),
                Page = page,
                Kit = context.Primary.Kit,
                Stocks = context.Source.Stocks,
                Words = words,
                Styles = context.Styles,
            });
        }
        catch (TilePlanException impossible)
        {
            problems.Error(new Place("booklet.md"), $"The templates cannot be laid out on {paper.Name}: {impossible.Message}");
            return null;
        }
    }
}
