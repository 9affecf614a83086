using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Plans.Cutting;
using Pattern.Press.Plans.Sheets;
using Pattern.Press.Structures.Fitting;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Booklets.Composing;

/// <summary>Refuses pieces that no sheet is large enough for.</summary>
internal static class SheetsOfStock
{
    // Sizes that card is sold in. Common practice, no source, beside the papers that are known by name.
    private static readonly IReadOnlyList<(string Name, Size Size)> Sold =
    [
        .. PaperSize.All.Select(paper => (paper.Name, paper.Size)),
        ("12 × 12 in", new Size(Length.Inch * 12, Length.Inch * 12)),
        ("A2", new Size(Length.FromMillimetres(420), Length.FromMillimetres(594))),
        ("50 × 70 cm", new Size(Length.FromMillimetres(500), Length.FromMillimetres(700))),
        ("A1", new Size(Length.FromMillimetres(594), Length.FromMillimetres(841))),
    ];

    /// <summary>A piece larger than its stock is a problem, whichever parts the booklet has; the other fit's only when the first has none.</summary>
    public static void Check(BookletContext context, Problems problems)
    {
        if (!ReportTooLarge(context, context.Primary, problems))
            ReportTooLarge(context, context.Secondary, problems);
    }

    private static bool ReportTooLarge(BookletContext context, Model model, Problems problems)
    {
        var found = false;
        var ruler = model.Kit.Ruler;
        foreach (var group in CutList.Make(model.Kit, 1).Groups)
        {
            var stock = context.Source.Stocks[group.Stock];
            var tooLarge = SheetPlan.TooLargeFor(stock, SheetPlan.Wanted(group));
            if (tooLarge.Count == 0)
                continue;
            found = true;
            var advice = Advice(context, model, stock, ruler);
            foreach (var misfit in tooLarge)
            {
                var by = new[] { (By: misfit.TooWide, Side: "wide"), (By: misfit.TooHigh, Side: "long") }
                    .Where(side => side.By > Length.Zero)
                    .Select(side => $"{LengthFormat.Format(side.By, ruler)} too {side.Side}");
                problems.Error(
                    context.Source.StockPlaces.TryGetValue(stock.Id, out var place) ? place : new Place("booklet.md"),
                    $"{misfit.Wanted.Name} needs {LengthFormat.Format(misfit.Wanted.Size, ruler)}, but “{stock.Id}” comes in sheets of {LengthFormat.Format(misfit.Room, ruler)}: it is {string.Join(" and ", by)}.",
                    advice);
            }
        }

        return found;
    }

    private static string Advice(BookletContext context, Model model, Stock stock, Ruler ruler)
    {
        var wanted = Wanted(model.Kit, stock);
        var larger = Sold.Where(sheet => Holds(stock with { Sheet = sheet.Size }, wanted)).OrderBy(sheet => sheet.Size.SquareMillimetres).Select(sheet => sheet.Name).FirstOrDefault();
        var advice = larger is null
            ? "No sheet that is commonly sold holds every piece of it; make the thing smaller."
            : $"The nearest size that holds every piece of it is {larger}.";
        return LargestItem(context, model, stock) is { } item
            ? $"{advice} The largest item of this shape that this stock holds a box for is {Across(item, ruler)}."
            : advice;
    }

    private static List<Size> Wanted(Kit kit, Stock stock) =>
        [.. CutList.Make(kit, 1).Groups.Where(group => group.Stock == stock.Id).SelectMany(group => group.Items).Select(item => item.Size)];

    private static bool Holds(Stock stock, List<Size> wanted)
    {
        var room = new Size(stock.SheetAsCut.Width - (stock.Trim * 2), stock.SheetAsCut.Height - (stock.Trim * 2));
        return wanted.TrueForAll(size =>
            (size.Width <= room.Width && size.Height <= room.Height) || (stock.MayTurn && size.Turned.Width <= room.Width && size.Turned.Height <= room.Height));
    }

    // The item is made smaller all over until its box can be cut; its proportions are kept to the marks of the ruler.
    private static Item? LargestItem(BookletContext context, Model model, Stock stock)
    {
        if (context.Source.Item is not { } item)
            return null;
        var ruler = model.Kit.Ruler;
        Item? best = null;
        var (low, high) = (0.0, 1.0);
        for (var i = 0; i < 12; i++)
        {
            var part = (low + high) / 2;
            Length Smaller(Length length) => ruler.Round(Length.FromMillimetres(length.Millimetres * part), Rounding.Down);
            var smaller = item with { Width = Smaller(item.Width), Depth = Smaller(item.Depth), Height = Smaller(item.Height) };
            if (smaller.Height > Length.Zero && smaller.Width > Length.Zero && smaller.Depth > Length.Zero
                && new[] { ruler, context.Metric.Kit.Ruler, context.Imperial.Kit.Ruler }.Distinct().All(column =>
                    context.Refit(column, smaller, context.Given) is { } fitted && Holds(stock, Wanted(fitted.Kit, stock))))
            {
                (best, low) = (smaller, part);
            }
            else
            {
                high = part;
            }
        }

        return best;
    }

    private static string Across(Item item, Ruler ruler) => item.Shape == ItemShape.Round
        ? $"{LengthFormat.Format(item.Width, ruler)} across and {LengthFormat.Format(item.Height, ruler)} tall"
        : $"{LengthFormat.Format(new Size(item.Width, item.Depth), ruler)} and {LengthFormat.Format(item.Height, ruler)} tall";
}
