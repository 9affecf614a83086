using CsCheck;
using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Structures.Fitting;
using static Pattern.Press.Structures.Tests.Boxes;

namespace Pattern.Press.Structures.Tests.Fitting;

public class ItemTests
{
    private static readonly Ruler[] Rulers =
    [
        Ruler.WholeMillimetres,
        new(UnitSystem.Metric, Length.FromMillimetres(0.5m)),
        Ruler.SixteenthInches,
        new(UnitSystem.Imperial, Length.Inch / 32),
        new(UnitSystem.Imperial, Length.Inch / 8),
    ];

    private static readonly Gen<(Ruler Ruler, Item Item, string Sizes, string Card, string Mats)> AnyFit =
        from ruler in OneOf(Rulers)
        from round in Gen.Bool
        from width in Gen.Int[50, 2600]
        from depth in Gen.Int[50, 2600]
        from height in Gen.Int[30, 2400]
        from gussets in OneOf("yes", "no")
        from lid in OneOf("single", "double")
        from platform in OneOf("yes", "no")
        from mats in OneOf("none", "inside", "both")
        from card in OneOf("0.2 mm", "0.3 mm", "0.41 mm")
        from paper in OneOf("0.1 mm", "0.16 mm")
        select (
            ruler,
            Item(round, width, round ? width : depth, height),
            $"gussets: {gussets}\nlid_walls: {lid}\nplatform: {platform}\nmats: {mats}",
            card,
            paper);

    private static Gen<T> OneOf<T>(params T[] all) => Gen.Int[0, all.Length - 1].Select(i => all[i]);

    // Tenths of a millimetre.
    private static Item Item(bool round, int width, int depth, int height) => new(
        "an item",
        round ? ItemShape.Round : ItemShape.Rectangular,
        Length.FromMillimetres(width / 10m),
        Length.FromMillimetres(depth / 10m),
        Length.FromMillimetres(height / 10m));

    [Fact]
    public void Any_item_fits_on_any_ruler_and_everything_that_is_measured_lies_on_it()
    {
        AnyFit.Sample(
            fit =>
            {
                var problems = new Pattern.Press.Structures.Reading.Problems();
                var request = Request(fit.Ruler, fit.Item, fit.Sizes, problems) with { Stocks = StocksOf(fit.Card, fit.Mats) };
                var model = Explosion.Fit(request, problems);
                Assert.Equal("", Words(problems));
                Assert.All(model!.Checks, check => Assert.True(check.Holds, check.Name));
                HoldsTheItem(model, fit.Item, L(fit.Card));
                LiesOnTheRuler(model, fit.Ruler);
                SegmentsAddUp(model);
            },
            iter: 150);
    }

    // Worked out here from the pieces alone: a box is one card smaller inside than from score to score.
    private static void HoldsTheItem(Model model, Item item, Length card)
    {
        var (across, down) = (Scores(model, "base.scores_across"), Scores(model, "base.scores_down"));
        var inside = new Measure.Size(across[^1] - across[0] - card, down[^1] - down[0] - card);
        var ease = Size(model, "size.ease");
        Assert.True(inside.Longer >= Length.Max(item.Width, item.Depth) + (ease * 2));
        Assert.True(inside.Shorter >= Length.Min(item.Width, item.Depth) + (ease * 2));
        var below = model.Values["size.platform"] is FlagValue { Flag: true } ? Size(model, "size.platform_height") : Length.Zero;
        Assert.True(across[0] >= below + item.Height + Size(model, "size.headroom"));
        var lid = Scores(model, "lid.scores_across");
        var isDouble = model.Values["size.lid_walls"] == new WordValue("double");
        var lidInside = isDouble ? lid[2] - lid[1] - (card * 2) : lid[1] - lid[0];
        Assert.True(lidInside - card > across[^1] - across[0] + card);
    }

    private static void LiesOnTheRuler(Model model, Ruler ruler)
    {
        foreach (var parameter in Explosion.Parameters.Where(parameter => parameter.Kind == ParameterKind.Length))
        {
            if (model.Values.TryGetValue($"size.{parameter.Name}", out var value))
                Assert.True(ruler.Marks(Assert.IsType<LengthValue>(value).Length), parameter.Name);
        }

        foreach (var part in model.Kit.Parts)
        {
            Assert.True(ruler.Marks(part.Piece.Sheet.Width) && ruler.Marks(part.Piece.Sheet.Height), part.Piece.Id);
            foreach (var corner in part.Piece.Folds.SelectMany(fold => new[] { fold.From, fold.To }))
                Assert.True(ruler.Marks(Length.FromMillimetres(corner.X)) && ruler.Marks(Length.FromMillimetres(corner.Y)), part.Piece.Id);
        }
    }

    private static void SegmentsAddUp(Model model)
    {
        foreach (var part in model.Kit.Parts.Where(part => part.Kind == PartKind.Piece))
        {
            var id = part.Piece.Id;
            foreach (var (scores, side) in new[] { ("across", part.Piece.Sheet.Width), ("down", part.Piece.Sheet.Height) })
            {
                var marks = Scores(model, $"{id}.scores_{scores}");
                var segments = marks.Prepend(Length.Zero).Zip(marks.Append(side), (from, to) => to - from).ToList();
                Assert.All(segments, segment => Assert.True(segment > Length.Zero));
                Assert.Equal(side, segments.Aggregate((a, b) => a + b));
                Assert.Equal(segments, segments.AsEnumerable().Reverse());
                Assert.Equal(Size(model, (id, scores) switch
                {
                    ("base", "across") => "size.floor_length",
                    ("base", _) => "size.floor_width",
                    ("lid", "across") => "size.lid_length",
                    ("lid", _) => "size.lid_width",
                    (_, "across") => "size.platform_length",
                    _ => "size.platform_width",
                }), segments[segments.Count / 2]);
            }
        }
    }

    private static IReadOnlyList<Length> Scores(Model model, string name) => Assert.IsType<LengthListValue>(model.Values[name]).Lengths;

    private static Length Size(Model model, string name) => Assert.IsType<LengthValue>(model.Values[name]).Length;

    [Fact]
    public void A_round_item_makes_a_square_floor_and_a_rectangular_one_lies_along_it()
    {
        var square = Fit(Ruler.WholeMillimetres, Round("58 mm", "72 mm"), "platform: no");
        Assert.Equal(square.Values["size.floor_length"], square.Values["size.floor_width"]);
        var one = Fit(Ruler.WholeMillimetres, Rectangular("50 mm", "80 mm", "30 mm"), "platform: no");
        var other = Fit(Ruler.WholeMillimetres, Rectangular("80 mm", "50 mm", "30 mm"), "platform: no");
        Assert.Equal(one.Values["base.sheet"], other.Values["base.sheet"]);
        Assert.True(Size(one, "size.floor_length") > Size(one, "size.floor_width"));
    }

    [Fact]
    public void Ease_headroom_and_the_layers_add_up_to_the_floor_and_the_walls()
    {
        // 58 + 2·2 ease + card 0.3 + both sides: mat 0.12, gusset of two cards and two mats 0.84 = 64.22.
        var model = Fit(Ruler.WholeMillimetres, Round("58 mm", "72 mm"), "ease: 2 mm\nheadroom: 3 mm");
        Assert.Equal(L("65 mm"), Size(model, "size.floor_length"));
        // 72 + 3 headroom + mat 0.12 + half a card 0.15 = 75.27.
        Assert.Equal(L("76 mm"), Size(model, "size.wall_height"));
        // Without mats and gussets: 58 + 4 + 0.3 = 62.3.
        Assert.Equal(L("63 mm"), Size(Fit(Ruler.WholeMillimetres, Round("58 mm", "72 mm"), "ease: 2 mm\ngussets: no\nmats: none"), "size.floor_length"));
    }

    [Fact]
    public void A_platform_raises_the_walls_by_its_own_height_and_a_card()
    {
        var without = Fit(Ruler.WholeMillimetres, Round("58 mm", "72 mm"), "headroom: 3 mm");
        var with = Fit(Ruler.WholeMillimetres, Round("58 mm", "72 mm"), "headroom: 3 mm\nplatform: yes\nplatform_height: 15 mm");
        // 75.27 as above, and 15.3 more.
        Assert.Equal(L("91 mm"), Size(with, "size.wall_height"));
        Assert.Equal(L("76 mm"), Size(without, "size.wall_height"));
    }

    [Fact]
    public void The_lids_clearance_follows_the_card_and_the_lid()
    {
        Assert.Equal(L("3 mm"), Size(Fit(Ruler.WholeMillimetres, Round("58 mm", "72 mm"), "lid_walls: double"), "size.lid_clearance"));
        // Four cards and a millimetre: 2.2.
        Assert.Equal(L("3 mm"), Size(Fit(Ruler.WholeMillimetres, Round("58 mm", "72 mm"), "lid_walls: single"), "size.lid_clearance"));
        var half = new Ruler(UnitSystem.Metric, Length.FromMillimetres(0.5m));
        Assert.Equal(L("2.5 mm"), Size(Fit(half, Round("58 mm", "72 mm"), "lid_walls: single"), "size.lid_clearance"));
        // Six cards, two mats outside, and a millimetre: 3.04.
        Assert.Equal(L("4 mm"), Size(Fit(Ruler.WholeMillimetres, Round("58 mm", "72 mm"), "mats: both"), "size.lid_clearance"));
    }

    [Theory]
    [InlineData("floor_length: 60 mm", "booklet.md:1:15: error: “The item fits along the length of the floor” does not hold: it lacks 4.22 mm. Make floor_length at least 65 mm, or leave it out so that it follows from the item.")]
    [InlineData("ease: 2 mm\nfloor_width: 60 mm", "booklet.md:2:14: error: “The item fits across the width of the floor” does not hold: it lacks 4.22 mm. Make floor_width at least 65 mm, or leave it out so that it follows from the item.")]
    [InlineData("wall_height: 70 mm", "booklet.md:1:14: error: “The item stands under the lid” does not hold: it lacks 5.27 mm. Make wall_height at least 76 mm, or leave it out so that it follows from the item.")]
    [InlineData("lid_clearance: 2 mm", "booklet.md:1:16: error: “The lid goes over the box” does not hold: it lacks 0.3 mm. Make lid_clearance at least 3 mm, or leave it out so that it follows from the card.")]
    [InlineData("platform: yes\nplatform_slack: 1 mm", "booklet.md:2:17: error: “The platform drops into the box” does not hold: it lacks 0.08 mm. Make platform_slack at least 2 mm, or leave it out so that it follows from the card.")]
    public void Sizes_that_do_not_hold_the_item_fail_with_what_to_change(string sizes, string expected)
    {
        Assert.Equal(expected, Boxes.Problems(Ruler.WholeMillimetres, Round("58 mm", "72 mm"), sizes));
    }

    [Fact]
    public void A_failing_check_is_in_the_model_with_its_numbers()
    {
        var problems = new Pattern.Press.Structures.Reading.Problems();
        var model = Explosion.Fit(Request(Ruler.WholeMillimetres, Round("58 mm", "72 mm"), "wall_height: 70 mm", problems), problems);
        var failing = Assert.Single(model!.Checks, check => !check.Holds);
        // 70 − 0.15 − 0.12 − 72
        Assert.Equal((L("-2.27 mm"), L("3 mm")), (failing.Found, failing.Least));
        Assert.True(problems.HasErrors);
    }

    [Fact]
    public void An_item_that_lies_across_a_turned_floor_is_understood()
    {
        Fit(Ruler.WholeMillimetres, Rectangular("80 mm", "50 mm", "30 mm"), "floor_length: 60 mm\nfloor_width: 90 mm");
    }
}
