using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Plans.Materials;
using static Pattern.Press.Nets.Tests.Sheets;

namespace Pattern.Press.Plans.Tests.Materials;

public class ShoppingListTests
{
    private static Purchase Of(decimal forAll, decimal spare, Pack? pack) => new(PurchaseKind.Stock, "card", 1, forAll, spare, pack);

    [Theory]
    [InlineData(28, 3, 10, 4, 21.60)]
    [InlineData(30, 0, 10, 3, 16.20)]
    [InlineData(31, 0, 10, 4, 21.60)]
    [InlineData(1, 0, 100, 1, 5.40)]
    public void Whole_packs_are_bought(int needed, int spare, int holds, int packs, double cost)
    {
        var purchase = Of(needed, spare, new Pack(holds, 5.40m));
        Assert.Equal((packs, (decimal)cost), (purchase.Packs, purchase.Cost));
    }

    [Fact]
    public void A_roll_is_bought_whole_too()
    {
        // 39.4 m of tape from rolls of 10 m.
        var tape = new Purchase(PurchaseKind.Adhesive, "tape", 2_814, 39_396, 0, new Pack(10_000, 1.80m));
        Assert.Equal((4, 7.20m), (tape.Packs, tape.Cost));
    }

    [Fact]
    public void A_kit_costs_its_part_of_all_packs_rounded_up_and_what_has_no_price_is_named()
    {
        var list = new ShoppingList(14, [Of(28, 3, new Pack(10, 5.40m)), Of(14, 0, new Pack(5, null)), Of(14, 0, null)]);
        Assert.Equal(21.60m, list.Total);
        Assert.Equal(1.55m, list.PerKit);
        Assert.Equal(2, list.Unpriced.Count);
        Assert.Equal(3, list.Purchases[1].Packs);
        Assert.Null(new ShoppingList(14, [Of(14, 0, null)]).Total);
    }

    [Theory]
    [InlineData(28, 0.1, 3)]
    [InlineData(30, 0.1, 3)]
    [InlineData(1, 0.1, 1)]
    [InlineData(6, 0, 0)]
    public void Spare_sheets_are_whole(int needed, double allowance, int spare) =>
        Assert.Equal(spare, ShoppingList.SpareOf(needed, (decimal)allowance));

    [Fact]
    public void A_mat_takes_tape_along_both_long_sides_and_a_narrow_one_along_its_middle()
    {
        // Common practice, no source.
        var stock = new Stock("patterned", "Patterned paper", Mm(0.1m), null, PaperSize.A4.Size);
        var list = MaterialsList.Make(new Kit(Ruler.WholeMillimetres, [Grids.Mat("wall", 59, 74, 2), Grids.Mat("strip", 74, 6, 4)]), 3, [stock]);
        Assert.Equal(3 * ((2 * 2 * 74) + (4 * 74)), list.MatGlueLength, 6);
    }

    [Fact]
    public void Trim_and_grain_of_a_stock_are_kept_to()
    {
        // A4 holds two of 200 × 140 mm one below the other; less 10 mm all round it is 190 mm wide and holds them upright,
        // one at a time.
        var stock = new Stock("patterned", "Patterned paper", Mm(0.1m), null, PaperSize.A4.Size);
        var kit = new Kit(Ruler.WholeMillimetres, [Grids.Mat("mat", 200, 140, 2)]);
        Assert.Equal(1, MaterialsList.Make(kit, 1, [stock]).Stocks[0].Sheets);
        Assert.Equal(2, MaterialsList.Make(kit, 1, [stock with { Trim = Mm(10) }]).Stocks[0].Sheets);

        // Grain down A4 leaves the mats as they are, 200 across: two. Grain across turns the sheet: 297 × 210 holds one.
        Assert.Equal(1, MaterialsList.Make(kit, 1, [stock with { Grain = Grain.Down }]).Stocks[0].Sheets);
        var across = MaterialsList.Make(kit, 1, [stock with { Grain = Grain.Across }]).Stocks[0];
        Assert.Equal(2, across.Sheets);
        Assert.All(across.Plan.Sheets.SelectMany(sheet => sheet.Rectangles), r => Assert.False(r.Turned));
    }
}
