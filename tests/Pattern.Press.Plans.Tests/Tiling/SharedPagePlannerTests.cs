using CsCheck;
using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Plans.Tiling;

namespace Pattern.Press.Plans.Tests.Tiling;

public class SharedPagePlannerTests
{
    private static readonly TemplatePage A4 = new(210, 297, 10, 12, 16);
    private static readonly LabelRoom Label = new(44, 9);

    private static readonly Gen<IReadOnlyList<Part>> Mats =
        from sizes in Gen.Select(Gen.Int[6, 120], Gen.Int[6, 150], Gen.Int[0, 2], Gen.Bool).List[1, 14]
        select (IReadOnlyList<Part>)[.. sizes.SelectMany((s, i) => Make(s.Item1, s.Item2, s.Item3, s.Item4, i))];

    private static IEnumerable<Part> Make(int width, int height, int stock, bool pair, int index)
    {
        if (!pair)
            return [Grids.Mat($"mat {index}", width, height, stock: $"paper {stock}")];
        return
        [
            Grids.Mat($"left {index}", width, height, stock: $"paper {stock}", hand: Hand.Left) with { For = $"strip {index}" },
            Grids.Mat($"right {index}", width, height, stock: $"paper {stock}", hand: Hand.Right) with { For = $"strip {index}" },
        ];
    }

    [Fact]
    public void Every_template_is_placed_once_apart_from_all_others_inside_the_printable_area_on_pages_of_its_stock() =>
        Gen.Select(Mats, Pick.From([.. PaperSize.All]), Gen.Int[4, 20], Gen.Int[6, 10]).Sample((parts, paper, margin, gap) =>
        {
            var page = new TemplatePage(paper.Size.Width.Millimetres, paper.Size.Height.Millimetres, margin, 12, 16);
            var shared = SharedPagePlanner.Plan(parts, page, new TemplateOptions { Gap = gap, Label = Label });
            Assert.Equal(
                parts.Select(part => part.Piece.Id).Order(StringComparer.Ordinal),
                shared.Pages.SelectMany(p => p.Places).Select(place => place.Part.Piece.Id).Concat(shared.TooLarge.Select(part => part.Piece.Id)).Order(StringComparer.Ordinal));
            Assert.True(shared.Pages.Count >= (shared.TooLarge.Count < parts.Count ? shared.LeastPages : 0));
            foreach (var sheet in shared.Pages)
            {
                var (width, height) = sheet.Lying ? (page.Height, page.Width) : (page.Width, page.Height);
                Assert.Single(sheet.Places.Select(place => place.Part.Stock).Distinct());
                var taken = sheet.Places.Select(Taken).ToList();
                Assert.All(taken, t => Assert.True(
                    t.Left >= margin - 1e-6 && t.Right <= width - margin + 1e-6 && t.Top >= margin + 12 - 1e-6 && t.Bottom <= height - margin - 16 + 1e-6));
                for (var i = 0; i < taken.Count; i++)
                {
                    for (var j = 0; j < i; j++)
                    {
                        var apart = Math.Max(
                            Math.Max(taken[i].Left - taken[j].Right, taken[j].Left - taken[i].Right),
                            Math.Max(taken[i].Top - taken[j].Bottom, taken[j].Top - taken[i].Bottom));
                        Assert.True(apart >= gap - 1e-6, $"{apart} apart");
                    }
                }
            }
        }, iter: 300);

    [Fact]
    public void Mirrored_pairs_lie_next_to_each_other() =>
        Mats.Sample(parts =>
        {
            var shared = SharedPagePlanner.Plan(parts, A4, new TemplateOptions { Label = Label });
            foreach (var (left, right) in parts.Zip(parts.Skip(1)).Where(two => two.First.Hand == Hand.Left && !shared.TooLarge.Contains(two.First)))
            {
                // Two that fit the page together, side by side or one below the other, are together.
                var (w, h) = (Math.Max(44, left.Piece.Sheet.Width.Millimetres), left.Piece.Sheet.Height.Millimetres + 9);
                if ((2 * w) + 6 > 190 || h > 162)
                    continue;
                var sheet = Assert.Single(shared.Pages, p => p.Places.Any(place => place.Part == left));
                var at = sheet.Places.ToList();
                var (first, second) = (at.FindIndex(place => place.Part == left), at.FindIndex(place => place.Part == right));
                Assert.Equal(1, Math.Abs(first - second));
                Assert.Equal(at[first].Turned, at[second].Turned);
            }
        }, iter: 200);

    [Fact]
    public void Pages_are_mostly_as_few_as_the_bound()
    {
        var (met, all) = (0, 0);
        var random = new Random(7);
        for (var i = 0; i < 200; i++)
        {
            var parts = Enumerable.Range(0, random.Next(4, 12)).Select(k => Grids.Mat($"mat {k}", random.Next(10, 60), random.Next(20, 110))).ToList();
            var shared = SharedPagePlanner.Plan(parts, A4, new TemplateOptions { Label = Label });
            Assert.InRange(shared.Pages.Count, shared.LeastPages, shared.LeastPages + 1);
            met += shared.Pages.Count == shared.LeastPages ? 1 : 0;
            all++;
        }

        TestContext.Current.TestOutputHelper?.WriteLine($"{met} of {all} plans meet their bound.");
        Assert.True(met * 100 >= all * 95, $"{met} of {all}");
    }

    // Mats of a box with a square floor and of its lid, by the sizes that matter: pairs and single ones.
    [Fact]
    public void Mats_of_boxes_are_on_as_few_pages_as_the_bound_on_every_paper()
    {
        var (met, all) = (0, 0);
        foreach (var paper in PaperSize.All)
        {
            var page = new TemplatePage(paper.Size.Width.Millimetres, paper.Size.Height.Millimetres, 10, 4.5, 53);
            for (var side = 40; side <= 100; side += 6)
            {
                var parts = new[] { (side, side), (side, side + 12), (side, side + 10), (side + 4, side + 4), (side + 4, 16), (side + 3, 16), (side - 2, 6), (side - 3, 6) }
                    .Select((s, i) => Grids.Mat($"mat {i}", s.Item1, s.Item2))
                    .Concat(Make(side + 12, 6, 0, true, 9).Select(part => part with { Stock = "patterned" }))
                    .ToList();
                var shared = SharedPagePlanner.Plan(parts, page, new TemplateOptions());
                met += shared.Pages.Count == shared.LeastPages ? 1 : 0;
                all++;
            }
        }

        TestContext.Current.TestOutputHelper?.WriteLine($"{met} of {all} plans of a box's mats meet their bound.");
        Assert.True(met * 100 >= all * 80, $"{met} of {all}");
    }

    [Fact]
    public void Templates_that_no_two_of_can_share_a_page_are_the_bound()
    {
        // 190 × 249 are left upright and 277 × 162 lying. With their labels they are 140 × 159 or, turned, 150 × 149: two
        // side by side are 286 wide at least, two one below the other 304 high at least.
        var three = Enumerable.Range(0, 3).Select(i => Grids.Mat($"mat {i}", 140, 150)).ToList();
        var shared = SharedPagePlanner.Plan(three, A4, new TemplateOptions { Label = Label });
        Assert.Equal((3, 3), (shared.LeastPages, shared.Pages.Count));
    }

    [Fact]
    public void Templates_of_a_paper_with_a_right_way_up_are_not_turned()
    {
        // As drawn, 60 × 189 with the label, two go side by side on an upright page; turned, 180 × 69, three below each other.
        var strips = Enumerable.Range(0, 3).Select(i => Grids.Mat($"strip {i}", 60, 180)).ToList();
        var any = Assert.Single(SharedPagePlanner.Plan(strips, A4, new TemplateOptions { Label = Label }).Pages);
        Assert.All(any.Places, place => Assert.True(place.Turned));
        var oneWay = SharedPagePlanner.Plan(strips, A4, new TemplateOptions { Label = Label, OneWay = new HashSet<string> { "patterned" } });
        Assert.Equal(2, oneWay.Pages.Count);
        Assert.DoesNotContain(oneWay.Pages.SelectMany(page => page.Places), place => place.Turned);
    }

    [Fact]
    public void Mirrored_mats_for_different_faces_are_pairs_too()
    {
        var parts = new[]
        {
            Grids.Mat("left", 74, 6, hand: Hand.Left) with { For = "one of each pair" },
            Grids.Mat("plate", 60, 60),
            Grids.Mat("right", 74, 6, hand: Hand.Right) with { For = "the other of each pair" },
        };
        var page = Assert.Single(SharedPagePlanner.Plan(parts, A4, new TemplateOptions { Label = Label }).Pages);
        var order = page.Places.Select(place => place.Part.Piece.Id).ToList();
        Assert.Equal(1, Math.Abs(order.IndexOf("left") - order.IndexOf("right")));
    }

    [Fact]
    public void A_gap_too_narrow_for_scissors_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => SharedPagePlanner.Plan([Grids.Mat("mat", 20, 20)], A4, new TemplateOptions { Gap = 5 }));

    [Fact]
    public void Folded_and_large_templates_have_pages_of_their_own_and_small_flat_ones_share()
    {
        var kit = new Kit(
            Ruler.WholeMillimetres,
            [
                Grids.Part(Grids.Piece([50, 100, 50], [50, 100, 50], ".#.", "###", ".#.")),
                Grids.Part(Grids.Piece([10, 20, 10], [30], "###")),
                Grids.Mat("large", 180, 200),
                Grids.Mat("small", 40, 90, quantity: 4),
                Grids.Mat("smaller", 30, 90, quantity: 2),
            ]);
        var plan = TemplatePlanner.Plan(kit, A4, 10);
        Assert.Equal([200, 40, 180], plan.Tiled.Select(t => (int)t.Part.Piece.Sheet.Width.Millimetres));
        Assert.Equal(["small", "smaller"], Assert.Single(plan.Shared).Places.Select(place => place.Part.Piece.Id));
        Assert.Equal(5, plan.Pages);
    }

    private static (double Left, double Top, double Right, double Bottom) Taken(SharedPlace place)
    {
        var size = place.Turned ? place.Part.Piece.Sheet.Turned : place.Part.Piece.Sheet;
        Assert.Equal(place.PageY + size.Height.Millimetres, place.Label.Y, 6);
        return (
            place.PageX,
            place.PageY,
            Math.Max(place.PageX + size.Width.Millimetres, place.Label.X + place.Label.Width),
            place.Label.Y + place.Label.Height);
    }
}
