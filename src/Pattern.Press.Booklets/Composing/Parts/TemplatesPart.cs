using System.Globalization;
using Pattern.Press.Booklets.Content;
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
        var source = context.Source;
        var page = TemplatePages.PageOf(paper, source.PrinterMargin.Millimetres);
        try
        {
            var plan = TemplatePlanner.Plan(context.Primary.Kit, page, new TemplateOptions
            {
                Lap = source.Lap.Millimetres,
                Copies = context.Options.Copies ?? 1,
                OneWay = source.Stocks.Where(stock => stock.Value.OneWay).Select(stock => stock.Key).ToHashSet(),
            });
            RefuseEndless(plan, context, paper, problems);
            var job = new TemplateJob
            {
                Plan = plan,
                Page = page,
                Kit = context.Primary.Kit,
                Stocks = source.Stocks,
                Words = words,
                Styles = context.Styles,
            };
            var pages = TemplatePages.Make(job);
            foreach (var (message, stock) in job.Misfits.Distinct())
            {
                problems.Error(
                    source.StockPlaces.TryGetValue(stock, out var place) ? place : source.StructurePlace,
                    $"{message} The paper is {paper.Name}.",
                    "Use shorter names or larger paper.");
            }

            return pages;
        }
        catch (TilePlanException impossible)
        {
            Report(impossible, source, paper, problems);
            return null;
        }
    }

    private static void Report(TilePlanException impossible, BookletSource source, PaperSize paper, Problems problems)
    {
        var found = impossible.Found.ToString("0.#", CultureInfo.InvariantCulture);
        if (impossible.Problem == TilePlanProblem.LapTooLarge)
        {
            problems.Error(
                source.LapPlace,
                $"A lap of {found} mm is too wide for the pages of templates on {paper.Name}.",
                $"Make it {Math.Floor(impossible.Limit).ToString("0", CultureInfo.InvariantCulture)} mm or less, or use larger paper or a smaller printer margin.");
            return;
        }

        problems.Error(
            source.PrinterMarginPlace,
            $"A printer margin of {LengthFormat.Format(source.PrinterMargin, Ruler.WholeMillimetres)} leaves too little of {paper.Name} for templates: {found} mm, where {impossible.Limit.ToString("0", CultureInfo.InvariantCulture)} mm are needed {(impossible.Problem == TilePlanProblem.PageTooNarrow ? "across" : "each way below what every page says")}.",
            "Use a smaller printer margin or larger paper.");
    }

    private static void RefuseEndless(TemplatePlan plan, BookletContext context, PaperSize paper, Problems problems)
    {
        if (context.Options.Force)
            return;
        foreach (var tiled in plan.Tiled.Where(tiled => tiled.Tiles.Count > PrintSettings.MostPages))
        {
            problems.Error(
                context.Source.Item is null ? context.Source.StructurePlace : context.Source.ItemPlace,
                $"The template “{tiled.Part.Piece.Name}” takes {tiled.Tiles.Count.ToString(CultureInfo.InvariantCulture)} pages of {paper.Name}.",
                $"Use larger paper, or add --force to print all {tiled.Tiles.Count.ToString(CultureInfo.InvariantCulture)} pages.");
        }
    }
}
