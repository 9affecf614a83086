using CsCheck;
using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Plans.Tiling;

namespace Pattern.Press.Plans.Tests.Tiling;

/// <summary>Templates for several kits.</summary>
public class CopiesTests
{
    private static readonly TemplatePage A4 = new(210, 297, 10, 4.5, 53);

    private static readonly Part Tray = Grids.Part(Grids.Piece([20, 40, 20], [20, 60, 20], ".#.", "###", ".#.") with { Id = "tray" });
    private static readonly Part Box = Grids.Part(Grids.Piece([50, 100, 50], [50, 130, 50], ".#.", "###", ".#.") with { Id = "box" });

    private static TemplatePlan Plan(int copies, params Part[] parts) =>
        TemplatePlanner.Plan(new Kit(Ruler.WholeMillimetres, parts), A4, new TemplateOptions { Copies = copies });

    [Fact]
    public void Mats_are_there_once_for_each_kit_where_that_saves_pages()
    {
        // Nine of 55 × 60 mm with their labels are on a page of 190 × 219 mm.
        var plan = Plan(9, Grids.Mat("mat", 55, 60, quantity: 4));
        var page = Assert.Single(plan.Shared);
        Assert.Equal(9, page.Places.Count);
        Assert.All(page.Places, place => Assert.Equal(4, place.Cut));
        Assert.Equal(9, plan.Kits);
    }

    [Fact]
    public void Mats_that_fill_their_page_are_there_once_and_say_how_many_to_cut_for_all()
    {
        var plan = Plan(6, Grids.Mat("mat", 130, 140, quantity: 2));
        var place = Assert.Single(Assert.Single(plan.Shared).Places);
        Assert.Equal(12, place.Cut);
    }

    [Fact]
    public void A_template_of_several_pages_is_there_once_and_says_how_many_to_cut_for_all()
    {
        var plan = Plan(7, Box);
        var tiled = Assert.Single(plan.Tiled);
        Assert.True(tiled.Tiles.Count > 1);
        Assert.Equal(7, tiled.Cut);
        Assert.Equal(Plan(1, Box).Tiled[0].Tiles, tiled.Tiles);
        Assert.Equal(1, Plan(1, Box).Tiled[0].Cut);
    }

    [Fact]
    public void A_small_piece_that_folds_shares_pages_with_its_copies_alone()
    {
        Assert.Single(Plan(1, Tray).Tiled);
        var plan = Plan(4, Tray, Grids.Mat("mat", 50, 60, stock: "card"));
        Assert.Empty(plan.Tiled);
        Assert.All(plan.Shared, page => Assert.Single(page.Places.Select(place => place.Part.Piece.Folds.Count > 0).Distinct()));
        Assert.Equal(4, plan.Shared.SelectMany(page => page.Places).Count(place => place.Part == Tray));
        Assert.Equal(4, plan.Shared.SelectMany(page => page.Places).Count(place => place.Part.Piece.Id == "mat"));
    }

    [Fact]
    public void Every_kit_has_all_it_takes_and_never_takes_more_pages_than_printing_them_all() =>
        Gen.Select(
            Gen.Select(Gen.Int[6, 120], Gen.Int[6, 150], Gen.Int[1, 4], Gen.Int[0, 1]).List[1, 6],
            Gen.Int[2, 9],
            Pick.From([.. PaperSize.All]),
            Gen.Bool).Sample((sizes, copies, paper, withTray) =>
        {
            var parts = sizes.Select((s, i) => Grids.Mat($"mat {i}", s.Item1, s.Item2, s.Item3, $"paper {s.Item4}")).Concat(withTray ? [Tray, Box] : [Box]).ToList();
            var kit = new Kit(Ruler.WholeMillimetres, parts);
            var page = new TemplatePage(paper.Size.Width.Millimetres, paper.Size.Height.Millimetres, 8, 4.5, 53);
            var one = TemplatePlanner.Plan(kit, page, new TemplateOptions());
            var plan = TemplatePlanner.Plan(kit, page, new TemplateOptions { Copies = copies });
            foreach (var part in parts)
            {
                var places = plan.Shared.SelectMany(p => p.Places).Where(place => place.Part == part).ToList();
                var cut = places.Sum(place => place.Cut) + plan.Tiled.Where(tiled => tiled.Part == part).Sum(tiled => tiled.Cut);
                Assert.Equal(copies * part.Quantity, cut);
                Assert.True(places.Count is 0 or 1 || places.Count == copies);
            }

            Assert.True(plan.Pages <= copies * one.Pages);

            // Pages of copies are fewer than as many pages of one kit.
            var repeated = plan.Shared.Where(p => p.Places.Any(place => place.Cut == place.Part.Quantity)).ToList();
            if (repeated.Count > 0)
            {
                var ids = repeated.SelectMany(p => p.Places).Select(place => place.Part.Piece.Id).ToHashSet();
                var before = one.Shared.Count(p => p.Places.Any(place => ids.Contains(place.Part.Piece.Id)))
                    + one.Tiled.Where(tiled => ids.Contains(tiled.Part.Piece.Id)).Sum(tiled => tiled.Tiles.Count);
                Assert.True(repeated.Count < copies * before, $"{repeated.Count} pages instead of {copies} × {before}");
            }
        }, iter: 60);

    [Fact]
    public void No_kit_at_all_is_refused() => Assert.Throws<ArgumentOutOfRangeException>(() => Plan(0, Tray));
}
