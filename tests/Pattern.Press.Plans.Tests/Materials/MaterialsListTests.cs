using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Plans.Materials;
using static Pattern.Press.Nets.Tests.Sheets;
using Size = Pattern.Press.Measure.Size;

namespace Pattern.Press.Plans.Tests.Materials;

public class MaterialsListTests
{
    private static readonly Stock Card = new("card", "Card", Mm(0.3m), new Grammage(80), PaperSize.A4.Size);
    private static readonly Stock Patterned = new("patterned", "Patterned paper", Mm(0.1m), null, new Size(In("12"), In("12")));

    [Fact]
    public void A_plain_A4_sheet_of_80_grams_per_square_metre_weighs_4_99_grams()
    {
        // ISO 536: mass = area × grammage.
        var list = MaterialsList.Make(new Kit(Ruler.WholeMillimetres, [Grids.Part(Grids.Piece([210], [297], "#"))]), 1, [Card]);
        Assert.Equal(4.99, list.GramsPerKit!.Value, 2);
        Assert.Equal(1, Assert.Single(list.Stocks).Sheets);
    }

    [Fact]
    public void Only_what_stays_in_the_thing_is_weighed_and_only_if_every_grammage_is_known()
    {
        var kit = new Kit(Ruler.SixteenthInches, [Grids.Part(Boxes.Base), Grids.Mat("mat", 40, 80, quantity: 2)]);

        // The sheet of 9 × 8 1/2 less four squares of 3 × 3, in square inches.
        var grams = ((9 * 8.5) - 36) * 25.4 * 25.4 / 1e6 * 80;
        var list = MaterialsList.Make(kit, 3, [Card, Patterned]);
        Assert.Equal(grams, list.Stocks[0].GramsPerKit!.Value, 6);
        Assert.Null(list.Stocks[1].GramsPerKit);
        Assert.Null(list.GramsPerKit);
        Assert.Equal((3, 6), (list.Pieces, list.Mats));

        var known = MaterialsList.Make(kit, 3, [Card, Patterned with { Grammage = new Grammage(120) }]);
        Assert.Equal(grams + (2 * 40 * 80 / 1e6 * 120), known.GramsPerKit!.Value, 6);
    }

    [Fact]
    public void Sheets_are_enough_for_all_kits_and_glue_is_as_long_as_the_folds_of_what_is_glued()
    {
        var kit = new Kit(Ruler.SixteenthInches, [Grids.Part(Boxes.Raised)]);
        var list = MaterialsList.Make(kit, 14, [Card]);

        // Two of 4 × 3 1/2 in (101.6 × 88.9) go across A4 and three down, and turned two and two: six to a sheet at most.
        Assert.InRange(list.Stocks[0].Sheets, 3, 4);
        Assert.Equal(14, list.Stocks[0].Plan.Sheets.Sum(sheet => sheet.Rectangles.Count));

        // Lips along both sides of 2 in and both of 1 1/2 in.
        Assert.Equal(14 * 7 * 25.4, list.GlueLength, 6);
    }

    [Fact]
    public void A_sheet_larger_than_its_stock_is_told_with_by_how_much()
    {
        // 9 × 8 1/2 in is 228.6 × 215.9 mm; A4 is 210 wide.
        var list = MaterialsList.Make(new Kit(Ruler.SixteenthInches, [Grids.Part(Boxes.Base)]), 1, [Card]);
        var misfit = Assert.Single(list.Stocks[0].Plan.TooLarge);
        Assert.Equal((true, Mm(5.9m), Length.Zero), (misfit.Turned, misfit.TooWide, misfit.TooHigh));
        Assert.Equal("base", misfit.Wanted.Part?.Piece.Id);
    }

    [Fact]
    public void A_stock_that_is_not_there_is_refused() =>
        Assert.Throws<ArgumentException>(() => MaterialsList.Make(new Kit(Ruler.SixteenthInches, [Grids.Part(Boxes.Base)]), 1, [Patterned]));
}
