using CsCheck;
using Pattern.Press.Booklets.Figures;
using Pattern.Press.Booklets.Templates;
using Pattern.Press.Booklets.Tests.Figures;
using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Nets.Building;
using Pattern.Press.Plans.Tiling;
using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Structure;
using static Pattern.Press.Booklets.Tests.Figures.Samples;

namespace Pattern.Press.Booklets.Tests.Templates;

public class TemplatePagesTests
{
    private static readonly Gen<(Kit Kit, TemplatePage Page, double Lap)> Jobs =
        from length in Gen.Int[40, 130]
        from width in Gen.Int[40, 120]
        from height in Gen.Int[30, 150]
        from gusset in Gen.Int[9, 20]
        from depth in Gen.Int[14, 30]
        from paper in Gen.Int[0, 2]
        from margin in Gen.Int[4, 20]
        from lap in Gen.Int[0, 20]
        select (Box(length, width, height, gusset, depth), Page(new[] { PaperSize.A4, PaperSize.Letter, PaperSize.A3 }[paper], margin), (double)lap);

    [Theory]
    [InlineData("a4")]
    [InlineData("letter")]
    public void Tiles_put_together_by_their_marks_give_the_whole_template(string paper)
    {
        var kit = Box(64, 52, 80, 12, 18);
        var part = Make(kit, Page(PaperSize.Find(paper)!, 10), 10, out var plan);
        Assert.Equal(2, plan.Tiled[0].Tiles.Count);
        AssertWhole(part, plan, kit);
    }

    [Fact]
    public void Any_kit_on_any_paper_with_any_margin_and_lap_goes_together_again() => Jobs.Sample(
        job =>
        {
            var part = Make(job.Kit, job.Page, job.Lap, out var plan);
            AssertWhole(part, plan, job.Kit);
            AssertPrintable(part, job.Page.Margin);
        },
        iter: 25);

    [Fact]
    public void Words_on_template_pages_touch_neither_words_nor_lines() => Jobs.Sample(
        job =>
        {
            foreach (var page in Make(job.Kit, job.Page, job.Lap, out _).Pages)
            {
                var items = page.Contents.SelectMany(content => content.Items);
                FlatDrawingTests.AssertClear(new Reading(items));
                Assert.All(new Reading(items).Texts, text => Assert.True(text.Size >= 6.5));
            }
        },
        iter: 25);

    [Fact]
    public void Every_template_page_has_a_square_of_50_mm_and_a_bar_of_2_in_clear_of_its_templates() => Jobs.Sample(
        job =>
        {
            var pages = Make(job.Kit, job.Page, job.Lap, out var plan).Pages.Where(page => page.Destination?.StartsWith("template-joining", StringComparison.Ordinal) == false).ToList();
            Assert.Equal(plan.Pages, pages.Count);
            foreach (var page in pages)
            {
                var lines = new Reading(page.Contents.SelectMany(content => content.Items)).Lines.Where(line => line.Stroke == new Stroke(Styles.Lines.Cut, Styles.Lines.FoldWidth)).ToList();
                var square = lines.Where(line => Math.Abs(line.Length - 50) < 1e-9).ToList();
                Assert.Equal(4, square.Count);
                var corners = square.SelectMany(side => new[] { side.From, side.To }).Select(corner => (Math.Round(corner.X, 6), Math.Round(corner.Y, 6))).Distinct().ToList();
                Assert.Equal(4, corners.Count);
                Assert.Equal(2, corners.Select(corner => corner.Item1).Distinct().Count());
                Assert.Equal(2, corners.Select(corner => corner.Item2).Distinct().Count());
                // 1 in = 25.4 mm exactly (NIST SP 811, 2008, appendix B).
                var bar = Assert.Single(lines, line => line.From.X == line.To.X && Math.Abs(line.Length - (2 * 25.4)) < 1e-9);

                // Templates end above both.
                var lowest = new TemplateReading(page, Styles.Lines).Lines.Max(line => Math.Max(line.From.Y, line.To.Y));
                Assert.True(lowest < Math.Min(bar.From.Y, bar.To.Y));
                Assert.True(lowest < corners.Min(corner => corner.Item2));
            }
        },
        iter: 15);

    [Fact]
    public void Waste_at_the_edge_of_the_sheet_has_the_edge_drawn_thin()
    {
        // Four corners of 68 mm each way are cut away from this box: 80 mm of wall less 12 mm of gusset.
        var kit = Box(64, 52, 80, 12, 18);
        var part = Make(kit, Page(PaperSize.A3, 10), 10, out var plan);
        Assert.Single(plan.Tiled[0].Tiles);
        var lines = new Reading(part.Pages.Single(page => page.Destination == "template-base").Contents.SelectMany(content => content.Items)).Lines.ToList();
        var sides = lines.Where(line => line.Stroke == DrawingStrokes.Sheet(Styles.Lines) && Math.Abs(line.Length - 68) < 1e-9).ToList();
        Assert.Equal(8, sides.Count);
        var (left, top) = (sides.Min(line => line.From.X), sides.Min(line => line.From.Y));
        var (right, bottom) = (sides.Max(line => line.From.X), sides.Max(line => line.From.Y));
        double[] extent = [right - left, bottom - top];
        Assert.Equal([212, 224], extent.Order().Select(side => Math.Round(side, 6)));
    }

    [Fact]
    public void Small_templates_are_not_hatched()
    {
        var strip = Pattern.Press.Nets.Building.Mats.MitredStrip("strip", "Strip", new Pattern.Press.Measure.Size(Mm(74), Mm(6)), Hand.Left);
        var kit = new Kit(Ruler.WholeMillimetres, [new Part(strip, PartKind.Mat, "patterned", 1)]);
        var page = Assert.Single(Make(kit, Page(PaperSize.A4, 10), 10, out _).Pages);
        Assert.NotEmpty(strip.Waste);
        Assert.DoesNotContain(new Reading(page.Contents.SelectMany(content => content.Items)).Lines, line => line.From.X != line.To.X && line.From.Y != line.To.Y && line.Stroke != Styles.Lines.CutStroke);
    }

    [Fact]
    public void Pages_say_what_they_are()
    {
        var kit = Box(64, 52, 80, 12, 18);
        var part = Make(kit, Page(PaperSize.A4, 10), 10, out var plan);
        Assert.Equal(plan.Pages + 1, part.Pages.Count);
        Assert.Equal(["template-joining", "template-base", "template-base-a2", "template-lid", "template-platform", "template-small"], part.Pages.Select(page => page.Destination));
        Assert.Equal([1, 2, 2, 2, 2, 2], part.Pages.Select(page => page.BookmarkLevel));
        var texts = Texts(part.Pages[1]);
        foreach (var expected in new[] { "Base", "page\u00A0A1\u00A0of\u00A02", "Cut 1 from Smooth card.", "The inside of the card faces you.", "Sheet 224 × 212 mm: lay the thin outline on its edges.", "Joins A2 on the right at K, L and M.", "A2 is glued on here, up to the line", "T2 · template page 2 of 6" })
            Assert.Contains(expected, texts, StringComparison.Ordinal);
        Assert.Contains("Joins A1 on the left at K, L and M.", Texts(part.Pages[2]), StringComparison.Ordinal);
        Assert.Contains("trim here, then glue on A1", Texts(part.Pages[2]), StringComparison.Ordinal);
        Assert.Contains("Trim A2 and glue it over the shaded strip of A1, so that K, L and M meet.", Texts(part.Pages[0]), StringComparison.Ordinal);
        var small = Texts(part.Pages[5]);
        foreach (var expected in new[] { "Long wall mat · cut 2", "58 × 74 mm", "Lid mat · cut 1" })
            Assert.Contains(expected, small, StringComparison.Ordinal);
    }

    [Fact]
    public void Figures_carry_words_for_those_who_cannot_see_them_and_lie_in_their_boxes()
    {
        foreach (var page in Make(Box(64, 52, 80, 12, 18), Page(PaperSize.Letter, 10), 10, out _).Pages)
        {
            Assert.Contains(page.Contents, content => content.Role == Role.H2);
            foreach (var figure in page.Contents.Where(content => content.Role == Role.Figure))
            {
                Assert.False(string.IsNullOrWhiteSpace(figure.AlternativeText));
                var (x, y, width, height) = figure.Box ?? throw new InvalidOperationException("A figure has no box.");
                foreach (var point in new Reading(figure.Items).Paths.SelectMany(path => path.Points))
                {
                    Assert.InRange(point.X, x - 1e-6, x + width + 1e-6);
                    Assert.InRange(point.Y, y - 1e-6, y + height + 1e-6);
                }
            }
        }
    }

    [Fact]
    public void Small_templates_are_drawn_at_true_size()
    {
        var kit = Box(64, 52, 80, 12, 18);
        var page = Make(kit, Page(PaperSize.A4, 10), 10, out var plan).Pages[^1];
        var cuts = new TemplateReading(page, Styles.Lines).Lines.Where(line => line.Kind == "cut").ToList();
        Assert.Equal(4 * plan.Shared[0].Places.Count, cuts.Count);
        foreach (var mat in kit.Parts.Where(part => part.Kind == PartKind.Mat))
        {
            foreach (var side in new[] { mat.Piece.Sheet.Width.Millimetres, mat.Piece.Sheet.Height.Millimetres })
                Assert.Contains(cuts, line => Math.Abs(line.From.DistanceTo(line.To) - side) < 1e-9);
        }
    }

    // All folds of this piece run from top to bottom, so the grain matters, on a page of its own and beside its copies.
    [Theory]
    [InlineData(1)]
    [InlineData(4)]
    public void Pieces_with_folds_in_one_direction_show_their_grain_however_often_they_are_printed(int copies)
    {
        var sleeve = new ScoredSheet
        {
            Id = "sleeve",
            Name = "Sleeve",
            Across = [Mm(20), Mm(20), Mm(20)],
            Down = [Mm(60)],
            Map = ["wFw"],
            Cells = new Dictionary<char, Cell> { ['F'] = new() { Kind = "floor" }, ['w'] = new() { Kind = "wall", Fold = new(FoldDirection.Valley, 90) } },
            Root = 'F',
        }.Build();
        var kit = new Kit(Ruler.WholeMillimetres, [new Part(sleeve, PartKind.Piece, "card", 1)]);
        var page = Assert.Single(Make(kit, Page(PaperSize.A4, 10), 10, out var plan, copies).Pages);
        Assert.Equal(copies > 1, plan.Shared.Count == 1);
        Assert.Contains(Say("template.grain"), Texts(page), StringComparison.Ordinal);
    }

    [Fact]
    public void A_lying_page_is_wider_than_high() => Jobs.Sample(
        job =>
        {
            var pages = Make(job.Kit, job.Page, job.Lap, out var plan).Pages.Where(page => page.Destination?.StartsWith("template-joining", StringComparison.Ordinal) == false).ToList();
            var lying = plan.Tiled.SelectMany(tiled => tiled.Tiles.Select(_ => tiled.Lying)).Concat(plan.Shared.Select(shared => shared.Lying)).ToList();
            Assert.Equal(lying, pages.Select(page => page.Width > page.Height));
        },
        iter: 10);

    private static string Texts(FixedPage page) =>
        string.Join(" ", page.Contents.SelectMany(content => new Reading(content.Items).Texts).Select(text => text.Text.TrimEnd(' ')));

    private static TemplatePage Page(PaperSize paper, double margin) => TemplatePages.PageOf(paper, margin);

    private static string Say(string key) => new EnglishWords().Say(key);

    private static FixedPart Make(Kit kit, TemplatePage page, double lap, out TemplatePlan plan, int copies = 1)
    {
        plan = TemplatePlanner.Plan(kit, page, new TemplateOptions { Lap = lap, Copies = copies });
        var sheet = new Pattern.Press.Measure.Size(Mm(297), Mm(420));
        return TemplatePages.Make(new TemplateJob
        {
            Plan = plan,
            Page = page,
            Kit = kit,
            Stocks = new Dictionary<string, Stock>
            {
                ["card"] = new("card", "Smooth card", Mm(0.3), null, sheet),
                ["patterned"] = new("patterned", "Patterned paper", Mm(0.1), null, sheet),
            },
            Words = new EnglishWords(),
            Styles = Styles,
        });
    }

    private static void AssertPrintable(FixedPart part, double margin)
    {
        foreach (var page in part.Pages)
        {
            var reading = new Reading(page.Contents.SelectMany(content => content.Items));
            foreach (var point in reading.Paths.SelectMany(path => path.Points))
            {
                Assert.InRange(point.X, margin - 1e-6, page.Width - margin + 1e-6);
                Assert.InRange(point.Y, margin - 1e-6, page.Height - margin + 1e-6);
            }

            foreach (var text in reading.Texts)
            {
                Assert.InRange(text.Left, margin - 1e-6, page.Width - margin + 1e-6);
                Assert.InRange(text.Right, margin - 1e-6, page.Width - margin + 1e-6);
                Assert.InRange(text.Bottom, margin - 1e-6, page.Height - margin + 1e-6);
            }
        }
    }

    private static void AssertWhole(FixedPart part, TemplatePlan plan, Kit kit)
    {
        foreach (var tiled in plan.Tiled)
        {
            var name = "template-" + tiled.Part.Piece.Id;
            var pages = part.Pages
                .Where(page => page.Destination == name || (page.Destination?.StartsWith(name + "-", StringComparison.Ordinal) == true && char.IsAsciiDigit(page.Destination[^1])))
                .Select(page => new TemplateReading(page, Styles.Lines)).ToList();
            Assert.Equal(tiled.Tiles.Count, pages.Count);
            var places = TemplateReading.Join(pages);
            var found = pages.SelectMany((page, i) => page.Lines.Select(line => line with { From = line.From + places[i], To = line.To + places[i] })).ToList();
            AssertSame(found, tiled);
        }
    }

    // Every line of the piece once, a second time only where pages lap, and nothing else. Where the template lies is not
    // known, so its top-left corner is brought to that of the model.
    private static void AssertSame(IReadOnlyList<FoundLine> found, TilePlan plan)
    {
        var piece = plan.Part.Piece;
        var model = piece.Folds.Select(fold => new FoundLine(fold.Direction == FoldDirection.Valley ? "valley" : "mountain", Turn(fold.From), Turn(fold.To)))
            .Concat(piece.Cuts.Select(cut => new FoundLine("cut", Turn(cut.From), Turn(cut.To)))).ToList();
        var move = new Point(Left(model) - Left(found), Top(model) - Top(found));
        var rest = found.Select(line => line with { From = line.From + move, To = line.To + move }).ToList();
        foreach (var line in model)
        {
            var length = line.From.DistanceTo(line.To);
            var along = (line.To - line.From) * (1 / length);
            var parts = new List<(double From, double To)>();
            for (var i = rest.Count - 1; i >= 0; i--)
            {
                if (rest[i].Kind != line.Kind || !On(rest[i].From) || !On(rest[i].To))
                    continue;
                var (a, b) = (Along(rest[i].From), Along(rest[i].To));
                parts.Add((Math.Min(a, b), Math.Max(a, b)));
                rest.RemoveAt(i);
            }

            double reach = 0;
            foreach (var part in parts.OrderBy(part => part.From))
            {
                Assert.True(part.From <= reach + 1e-6, $"{line} is missing from {reach} to {part.From}");
                reach = Math.Max(reach, part.To);
            }

            Assert.Equal(length, reach, 6);
            // Each page shows of it what lies in its tile: so it is there once, and twice where tiles lap.
            // A hair more is shown, lest a line along the edge be lost.
            Assert.Equal(plan.Tiles.Sum(tile => Shown(line, tile)), parts.Sum(part => part.To - part.From), 0.0005);

            double Along(Point p) => ((p.X - line.From.X) * along.X) + ((p.Y - line.From.Y) * along.Y);
            bool On(Point p)
            {
                var off = Math.Abs(((p.X - line.From.X) * along.Y) - ((p.Y - line.From.Y) * along.X));
                return off < 1e-6 && Along(p) > -1e-6 && Along(p) < length + 1e-6;
            }
        }

        Assert.Empty(rest);

        // By the share of the line that is inside, side by side of the tile.
        static double Shown(FoundLine line, Tile tile)
        {
            double from = 0, to = 1;
            foreach (var (start, end, low, high) in new[] { (line.From.X, line.To.X, tile.X, tile.X + tile.Width), (line.From.Y, line.To.Y, tile.Y, tile.Y + tile.Height) })
            {
                if (Math.Abs(end - start) < 1e-9)
                {
                    if (start < low - 1e-9 || start > high + 1e-9)
                        return 0;
                    continue;
                }

                var (a, b) = ((low - start) / (end - start), (high - start) / (end - start));
                from = Math.Max(from, Math.Min(a, b));
                to = Math.Min(to, Math.Max(a, b));
            }

            return Math.Max(0, to - from) * line.From.DistanceTo(line.To);
        }

        Point Turn(Point p) => plan.Turned ? new Point(piece.Sheet.Height.Millimetres - p.Y, p.X) : p;
        static double Left(IEnumerable<FoundLine> lines) => lines.Min(line => Math.Min(line.From.X, line.To.X));
        static double Top(IEnumerable<FoundLine> lines) => lines.Min(line => Math.Min(line.From.Y, line.To.Y));
    }
}
