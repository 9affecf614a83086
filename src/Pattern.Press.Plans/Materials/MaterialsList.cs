using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Plans.Cutting;
using Pattern.Press.Plans.Sheets;

namespace Pattern.Press.Plans.Materials;

/// <summary>What so many kits take.</summary>
/// <param name="Kits">How many kits.</param>
/// <param name="Stocks">What each stock is needed for, in the order in which stocks first occur.</param>
/// <param name="Pieces">How many folded pieces in all.</param>
/// <param name="Mats">How many mats in all.</param>
/// <param name="GlueLength">
/// Adhesive for all kits, in millimetres: the length of the fold that each glued panel hangs on, which is the length of
/// the strip of adhesive it takes. Mats are not counted.
/// </param>
/// <param name="GramsPerKit">
/// The mass of one finished kit: the area of its panels × the grammage of their stock (ISO 536). Null unless every
/// grammage is known.
/// </param>
public sealed record MaterialsList(
    int Kits,
    IReadOnlyList<StockNeed> Stocks,
    int Pieces,
    int Mats,
    double GlueLength,
    double? GramsPerKit)
{
    // Narrower than this, a mat is held by one strip of tape. Common practice, no source.
    private static readonly Length OneStrip = Length.FromMillimetres(15);

    /// <summary>
    /// Adhesive for the mats of all kits, in millimetres: a strip along both long sides of each, one along the middle of a
    /// narrow one (common practice, no source).
    /// </summary>
    public double MatGlueLength { get; private init; }

    /// <summary>The list for a number of kits.</summary>
    /// <param name="kit">The parts.</param>
    /// <param name="kits">How many; 1 or more.</param>
    /// <param name="stocks">Every stock the kit names, each once; others are passed over.</param>
    /// <param name="options">How sheets may be cut.</param>
    /// <exception cref="ArgumentException">The kit names a stock that is not there.</exception>
    public static MaterialsList Make(Kit kit, int kits, IReadOnlyList<Stock> stocks, SheetOptions? options = null)
    {
        ArgumentNullException.ThrowIfNull(kit);
        ArgumentNullException.ThrowIfNull(stocks);
        var cuts = CutList.Make(kit, kits);
        var needs = new List<StockNeed>();
        foreach (var group in cuts.Groups)
        {
            var stock = stocks.FirstOrDefault(s => s.Id == group.Stock)
                ?? throw new ArgumentException($"The kit is cut from “{group.Stock}”, which is not among the stocks.", nameof(stocks));
            var area = group.Items.Sum(item => item.Part.Quantity * item.Part.Piece.Panels.Sum(panel => panel.Outline.Area));
            needs.Add(new StockNeed(stock, group.Items.Sum(item => item.Quantity), SheetPlan.Make(SheetPlan.Wanted(group), stock, options), area));
        }

        int Total(PartKind kind) => kit.Parts.Where(part => part.Kind == kind).Sum(part => part.Quantity) * kits;
        return new MaterialsList(
            kits,
            needs,
            Total(PartKind.Piece),
            Total(PartKind.Mat),
            kit.Parts.Sum(part => part.Quantity * GlueOf(part.Piece)) * kits,
            needs.All(need => need.GramsPerKit is not null) ? needs.Sum(need => need.GramsPerKit) : null)
        {
            MatGlueLength = kit.Parts.Where(part => part.Kind == PartKind.Mat).Sum(part => part.Quantity * MatGlueOf(part.Piece.Sheet)) * kits,
        };
    }

    private static double MatGlueOf(Size mat) => mat.Longer.Millimetres * (mat.Shorter < OneStrip ? 1 : 2);

    private static double GlueOf(Piece piece) =>
        piece.Folds
            .Where(fold => piece.GlueAreas.Any(area => area.Panel == fold.Child))
            .Sum(fold => fold.From.DistanceTo(fold.To));
}

/// <summary>What is needed of one stock.</summary>
/// <param name="Stock">The stock.</param>
/// <param name="Rectangles">How many rectangles are cut from it for all kits.</param>
/// <param name="Plan">How its sheets are cut; lists what no sheet is large enough for.</param>
/// <param name="PanelAreaPerKit">What stays in one finished kit, in mm².</param>
public sealed record StockNeed(Stock Stock, int Rectangles, SheetPlan Plan, double PanelAreaPerKit)
{
    /// <summary>How many sheets to buy, without any spare.</summary>
    public int Sheets => Plan.Sheets.Count;

    /// <summary>What one kit weighs of it, in grams (area × grammage, ISO 536); null when the grammage is not known.</summary>
    public double? GramsPerKit => Stock.Grammage is { } grammage ? PanelAreaPerKit / 1e6 * grammage.GramsPerSquareMetre : null;
}
