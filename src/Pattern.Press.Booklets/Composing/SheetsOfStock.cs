using Pattern.Press.Measure;
using Pattern.Press.Plans.Materials;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Booklets.Composing;

/// <summary>Plans the sheets of both fits once, and refuses pieces that no sheet is large enough for.</summary>
internal static class SheetsOfStock
{
    /// <summary>What both fits take; a piece larger than its stock is a problem, whichever parts the booklet has.</summary>
    public static (MaterialsList Primary, MaterialsList Secondary) Plan(BookletContext context, Problems problems)
    {
        var source = context.Source;
        var list = MaterialsList.Make(context.Primary.Kit, source.Kits, [.. source.Stocks.Values]);
        var other = MaterialsList.Make(context.Secondary.Kit, source.Kits, [.. source.Stocks.Values]);
        if (!ReportTooLarge(context, list, context.Primary.Kit.Ruler, problems))
            ReportTooLarge(context, other, context.Secondary.Kit.Ruler, problems);
        return (list, other);
    }

    private static bool ReportTooLarge(BookletContext context, MaterialsList list, Ruler ruler, Problems problems)
    {
        var misfits = list.Stocks.SelectMany(need => need.Plan.TooLarge.Select(misfit => (need.Stock, Misfit: misfit))).ToList();
        foreach (var (stock, misfit) in misfits)
        {
            var by = new[] { (By: misfit.TooWide, Side: "wide"), (By: misfit.TooHigh, Side: "long") }
                .Where(side => side.By > Length.Zero)
                .Select(side => $"{LengthFormat.Format(side.By, ruler)} too {side.Side}");
            problems.Error(
                context.Source.StockPlaces.TryGetValue(stock.Id, out var place) ? place : new Place("booklet.md"),
                $"{misfit.Wanted.Name} needs {Text(misfit.Wanted.Size, ruler)}, but “{stock.Id}” comes in sheets of {Text(misfit.Room, ruler)}: it is {string.Join(" and ", by)}.",
                $"Use a stock of at least {Text(misfit.Wanted.Size, ruler)}, or make the box smaller.");
        }

        return misfits.Count > 0;
    }

    private static string Text(Size size, Ruler ruler) => $"{LengthFormat.Number(size.Width, ruler)} × {LengthFormat.Format(size.Height, ruler)}";
}
