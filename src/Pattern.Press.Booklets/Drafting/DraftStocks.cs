using System.Globalization;
using System.Text.RegularExpressions;
using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Structures;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Booklets.Drafting;

/// <summary>A stock as a draft names it.</summary>
/// <param name="Id">The structure's word for its use.</param>
/// <param name="Name">What to ask for.</param>
/// <param name="Weight">In g/m².</param>
/// <param name="Sheet">The sheet's size as it is written.</param>
internal sealed record DraftStock(string Id, string Name, double Weight, string Sheet)
{
    /// <summary>The weight as the maker said it, such as <c>80 lb cover</c>; null for one in g/m².</summary>
    public string? Pounds { get; init; }

    // Sheets that are sold, small to large: 305 mm square, then the trade's half and full sheets (common practice, no source).
    private static readonly (string Written, double Short, double Long)[] Sheets =
        [("305 x 305 mm", 305, 305), ("350 x 500 mm", 350, 500), ("500 x 700 mm", 500, 700), ("700 x 1000 mm", 700, 1000)];

    // Where card is sold in inches (from memory).
    private static readonly (string Written, double Short, double Long)[] InchSheets =
        [("12 x 12 in", 304.8, 304.8), ("12 x 18 in", 304.8, 457.2), ("19 x 25 in", 482.6, 635), ("25 x 38 in", 635, 965.2)];

    /// <summary>Its lines in the front matter.</summary>
    public string Written => $"  {Id}:\n    name: {Draft.Quoted(Name)}\n    weight: {Pounds ?? Weight.ToString("0.##", CultureInfo.InvariantCulture) + " g/m2"}\n    sheet: {Sheet}\n";

    /// <summary>The stock for a fit.</summary>
    public Stock AsStock() => new(Id, Name, Stock.EstimateCaliper(new Grammage(Weight)), new Grammage(Weight), new Size(Length.FromMillimetres(1000), Length.FromMillimetres(1000)), true);

    /// <summary>The same on the smallest usual sheet that every part goes on, unless a sheet was said.</summary>
    /// <param name="parts">All parts.</param>
    /// <param name="inInches">Whether sheets are bought by the inch.</param>
    public DraftStock LargeEnough(IReadOnlyList<Part> parts, bool inInches)
    {
        if (Sheet.Length > 0)
            return this;
        var own = parts.Where(part => part.Stock == Id).Select(part => part.Piece.Sheet).ToList();
        // A little is left over, as the other ruler may take a step more.
        var across = own.Max(size => Math.Min(size.Width.Millimetres, size.Height.Millimetres)) + 5;
        var along = own.Max(size => Math.Max(size.Width.Millimetres, size.Height.Millimetres)) + 5;
        var sold = inInches ? InchSheets : Sheets;
        var fitting = sold.FirstOrDefault(sheet => sheet.Short >= across && sheet.Long >= along);
        return this with { Sheet = fitting.Written ?? sold[^1].Written };
    }
}

/// <summary>Chooses stocks for a draft.</summary>
internal static partial class DraftStocks
{
    /// <summary>One for each of the structure's uses; the first as the maker said it: <c>moss-green card, 250 g/m2, 305 x 305 mm</c>.</summary>
    /// <param name="structure">The structure.</param>
    /// <param name="said">What the maker said, or null.</param>
    /// <param name="problems">Where a weight goes that cannot be read.</param>
    public static List<DraftStock> For(Structure structure, string? said, Problems problems)
    {
        var stocks = structure.Stocks.Select(use => new DraftStock(use.Id, Name(use.Id), Weight(use), "")).ToList();
        if (said is null || stocks.Count == 0)
            return stocks;
        foreach (var part in said.Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            if (!WeightPattern().IsMatch(part))
                stocks[0] = SheetPattern().IsMatch(part) ? stocks[0] with { Sheet = part } : stocks[0] with { Name = part };
            else if (Grammage.TryParse(part, out var grammage, out var basis, out var problem))
                stocks[0] = stocks[0] with { Weight = grammage.GramsPerSquareMetre, Pounds = basis is null ? null : part };
            else
                problems.Error(new Place("--stock"), problem);
        }

        return stocks;
    }

    private static string Name(string id) => id switch
    {
        "card" => "card in a colour you like",
        "mats" => "patterned paper for the mats",
        "paper" => "writing paper",
        _ => id.Replace('_', ' '),
    };

    // The weights a structure asks for are in its sentence, such as “about 120 to 200 g/m²”; their middle, to the next ten.
    private static int Weight(StockUse use)
    {
        var range = RangePattern().Match(use.Means);
        if (!range.Success)
            return use.Id == "mats" ? 120 : 220;
        var (from, to) = (int.Parse(range.Groups[1].ValueSpan, CultureInfo.InvariantCulture), int.Parse(range.Groups[2].ValueSpan, CultureInfo.InvariantCulture));
        return (from + to) / 20 * 10;
    }

    [GeneratedRegex(@"^[\d.]+\s*(?:g/m2|g/m²|gsm|lbs?|#|pounds?)\b.*$|^[\d.]+\s*(?:g/m²|#)", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex WeightPattern();

    [GeneratedRegex(@"^(?:A\d|\d.*[x×].*)$", RegexOptions.CultureInvariant)]
    private static partial Regex SheetPattern();

    [GeneratedRegex(@"(\d+) to (\d+) g/m²", RegexOptions.CultureInvariant)]
    private static partial Regex RangePattern();
}
