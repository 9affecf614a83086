using CsCheck;
using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Plans.Tiling;

namespace Pattern.Press.Plans.Tests.Tiling;

public class TilePlannerTests
{
    // Sheets of ISO 216:2007, ASME Y14.1 and (legal) from memory; see PaperSize.
    private static readonly Gen<TemplatePage> Pages =
        from paper in Pick.From([.. PaperSize.All])
        from margin in Gen.Int[4, 20]
        from head in Gen.Int[0, 14]
        from foot in Gen.Int[0, 14]
        select new TemplatePage(paper.Size.Width.Millimetres, paper.Size.Height.Millimetres, margin, head, foot);

    private static readonly Gen<Piece> Crosses =
        from wallX in Gen.Int[5, 160]
        from floorX in Gen.Int[5, 260]
        from wallY in Gen.Int[5, 160]
        from floorY in Gen.Int[5, 260]
        from map in Pick.From(
            [".#.", "###", ".#."],
            ["###", "###", "###"],
            ["##.", ".##", "..#"],
            ["#..", "##.", "###"],
            new[] { ".#.", "###", "..." })
        select Grids.Piece([wallX, floorX, wallX], [wallY, floorY, wallY], map);

    private static readonly TemplatePage A4 = new(210, 297, 10, 12, 16);

    [Fact]
    public void A_template_that_fits_a_page_is_on_one_page_and_upright()
    {
        var plan = TilePlanner.Plan(Grids.Part(Grids.Piece([60, 70, 60], [60, 129, 50], ".#.", "###", ".#.")), A4, 10);
        Assert.Single(plan.Tiles);
        Assert.False(plan.Turned);
        Assert.False(plan.Lying);
        Assert.Equal(0, plan.Lap);
        // 190 × 249 is left of the page below 12 mm of head room; the piece is centred in it.
        Assert.Equal(new Tile(0, 0, 0, 0, 190, 239, 10, 22 + 5), plan.Tiles[0]);
    }

    [Theory]
    [InlineData(190, 249, false, false)]
    [InlineData(249, 190, true, false)]
    [InlineData(277, 162, false, true)]
    public void A_template_as_large_as_the_area_still_fits(int width, int height, bool turned, bool lying)
    {
        // Upright, A4 leaves 190 × 249 here; lying, 277 × 162.
        var plan = TilePlanner.Plan(Grids.Part(Grids.Piece([width], [height], "#")), A4, 10);
        var tile = Assert.Single(plan.Tiles);
        Assert.Equal((turned, lying), (plan.Turned, plan.Lying));
        Assert.Equal(plan.AreaCorner.X, tile.PageX, 9);
        Assert.Equal(plan.AreaCorner.Y, tile.PageY, 9);
    }

    [Fact]
    public void Seams_keep_away_from_folds_beside_them_where_pages_have_room()
    {
        // An even seam would fall at 150, on the fold.
        var plan = TilePlanner.Plan(Grids.Part(Grids.Piece([50, 100, 100, 50], [180], "####")), A4, 10);
        Assert.Equal(2, plan.Tiles.Count);
        var seam = Assert.Single(Laps(plan));
        Assert.All([50.0, 150.0, 250.0], fold => Assert.False(fold > seam.From - 3 && fold < seam.To + 3));
    }

    [Fact]
    public void A_seam_with_nothing_in_its_way_is_in_the_middle()
    {
        var plan = TilePlanner.Plan(Grids.Part(Grids.Piece([300], [180], "#")), A4, 10);
        var seam = Assert.Single(Laps(plan));
        Assert.Equal((145, 155), (seam.From, seam.To));
    }

    [Fact]
    public void Blank_tiles_are_left_out()
    {
        // 3 × 3 pages, whose corners lie in the waste.
        var plan = TilePlanner.Plan(Grids.Part(Grids.Piece([150, 150, 150], [150, 150, 150], ".#.", "###", ".#.")), new TemplatePage(180, 180, 5, 0, 0), 8);
        Assert.Equal(5, plan.Tiles.Count);
        Assert.Equal((3, 3), (plan.Rows, plan.Columns));
    }

    [Fact]
    public void Turning_by_a_quarter_and_back_changes_nothing() =>
        Gen.Select(Crosses, Gen.Double[0, 100], Gen.Double[0, 100]).Sample((piece, x, y) =>
        {
            var there = QuarterTurn.OnTemplate(piece, true, new Point(x, y));
            var back = QuarterTurn.OnSheet(piece, true, there);
            Assert.Equal(x, back.X, 9);
            Assert.Equal(y, back.Y, 9);

            // Clockwise, y down: what points right comes to point down.
            var right = QuarterTurn.OnTemplate(piece, true, new Point(x + 1, y)) - there;
            Assert.Equal(0, right.X, 9);
            Assert.Equal(1, right.Y, 9);
        }, iter: 50);

    [Fact]
    public void Tiles_stay_inside_the_printable_area_share_exact_laps_and_show_every_point_of_the_piece() =>
        Gen.Select(Crosses, Pages, Gen.Double[0, 20], Gen.Int[0, 10000]).Sample((piece, page, lap, seed) =>
        {
            if (page.Width < 200 && lap > 15)
                return;
            var plan = TilePlanner.Plan(Grids.Part(piece), page, lap);
            var (width, height) = plan.Lying ? (page.Height, page.Width) : (page.Width, page.Height);
            foreach (var tile in plan.Tiles)
            {
                Assert.True(tile.PageX >= page.Margin - 1e-6 && tile.PageX + tile.Width <= width - page.Margin + 1e-6);
                Assert.True(tile.PageY >= page.Margin + page.HeadRoom - 1e-6);
                Assert.True(tile.PageY + tile.Height <= height - page.Margin - page.FootRoom + 1e-6);
                foreach (var next in plan.Tiles.Where(t => t.Row == tile.Row && t.Column == tile.Column + 1))
                    Assert.Equal(lap, tile.X + tile.Width - next.X, tolerance: 1e-7);
                foreach (var next in plan.Tiles.Where(t => t.Column == tile.Column && t.Row == tile.Row + 1))
                    Assert.Equal(lap, tile.Y + tile.Height - next.Y, tolerance: 1e-7);
            }

            var random = new Random(seed);
            foreach (var panel in piece.Panels)
            {
                var corners = panel.Outline.Corners.ToList();
                for (var i = 0; i < 30; i++)
                {
                    // Corners and sides as well as points inside.
                    var (u, v) = (Math.Clamp((random.NextDouble() * 1.4) - 0.2, 0, 1), Math.Clamp((random.NextDouble() * 1.4) - 0.2, 0, 1));
                    var point = QuarterTurn.OnTemplate(piece, plan.Turned, corners[0] + ((corners[1] - corners[0]) * u) + ((corners[3] - corners[0]) * v));
                    Assert.Contains(plan.Tiles, t => point.X >= t.X - 1e-6 && point.X <= t.X + t.Width + 1e-6 && point.Y >= t.Y - 1e-6 && point.Y <= t.Y + t.Height + 1e-6);
                }
            }
        }, iter: 200);

    [Fact]
    public void No_page_is_without_card_and_never_more_pages_than_sides_need() =>
        Gen.Select(Crosses, Pages, Gen.Int[0, 12]).Sample((piece, page, lap) =>
        {
            var plan = TilePlanner.Plan(Grids.Part(piece), page, lap);
            foreach (var tile in plan.Tiles)
                Assert.Contains(piece.Panels, panel => Overlaps(plan, panel, tile));
            Assert.True(plan.Tiles.Count <= SidesNeed(piece, page, lap));

            // The other way round: area never lies.
            var card = piece.Panels.Sum(panel => panel.Outline.Edges[0].From.DistanceTo(panel.Outline.Edges[0].To) * panel.Outline.Edges[1].From.DistanceTo(panel.Outline.Edges[1].To));
            Assert.True(plan.Tiles.Count * plan.Area.Width * plan.Area.Height >= card - 1e-6);
        }, iter: 200);

    [Fact]
    public void No_grid_of_tiles_takes_fewer_pages() =>
        SmallCases.Sample((piece, page, lap) =>
        {
            var plan = TilePlanner.Plan(Grids.Part(piece), page, lap);
            Assert.Equal(ExhaustiveTiling.FewestPages(piece, page, lap), plan.Tiles.Count);
        }, iter: 12);

    // Everything a multiple of 6 mm and areas of 40 to 70 mm, so that an exhaustive search over seams every 0.5 mm is
    // quick and yet meets up to 4 × 4 tiles.
    private static readonly Gen<(Piece Piece, TemplatePage Page, double Lap)> SmallCases =
        from a in Gen.Int[1, 11]
        from b in Gen.Int[1, 11]
        from c in Gen.Int[1, 9]
        from d in Gen.Int[1, 9]
        from map in Pick.From(
            [".#.", "###", ".#."],
            ["##.", ".##", "..#"],
            ["#..", "##.", "###"],
            new[] { "###", "#..", "#.." })
        from width in Gen.Int[0, 3]
        from height in Gen.Int[0, 3]
        from margin in Pick.From(0, 4)
        from foot in Pick.From(0, 0, 0, 9)
        from lap in Pick.From(0.0, 3.0, 6.0)
        select (
            Grids.Piece([a * 6, b * 6, a * 6], [c * 6, d * 6, c * 6], map),
            new TemplatePage(40 + (width * 6) + (2 * margin), 40 + (height * 6) + (2 * margin) + foot, margin, 0, foot),
            lap);

    // Boxes of four kinds on every paper. The bound is not always reached: it does not see that blank corners which can be
    // left out one by one cannot always be left out together. The exhaustive search above is the judge of small cases.
    [Fact]
    public void Plans_are_never_below_a_bound_by_area_and_side_and_mostly_on_it()
    {
        var (met, all) = (0, 0);
        Gen.Select(Boxes.Any, Pick.From([.. PaperSize.All]), Gen.Int[4, 20], Gen.Int[0, 20]).Sample((piece, paper, margin, lap) =>
        {
            var page = new TemplatePage(paper.Size.Width.Millimetres, paper.Size.Height.Millimetres, margin, 4.5, 53);
            if (Math.Min(page.Width - (2 * margin), page.Height - (2 * margin) - 57.5) < 3 * lap)
                return;
            var pages = TilePlanner.Plan(Grids.Part(piece), page, lap).Tiles.Count;
            var bound = TileBound.Of(piece, page, lap);
            Assert.True(pages >= bound, $"{pages} pages, but the bound is {bound}");
            Interlocked.Add(ref met, pages == bound ? 1 : 0);
            Interlocked.Increment(ref all);
        }, iter: 150);
        TestContext.Current.TestOutputHelper?.WriteLine($"{met} of {all} plans meet their bound.");
        Assert.True(met * 100 >= all * 80, $"{met} of {all}");
    }

    [Fact]
    public void Seams_keep_away_from_tabs_and_small_panels_where_pages_have_room()
    {
        // An even seam would fall at 150, inside the small panel from 142 to 158.
        var plan = TilePlanner.Plan(Grids.Part(Grids.Piece([142, 16, 142], [180], "###")), A4, 10);
        Assert.Equal(2, plan.Tiles.Count);
        var seam = Assert.Single(Laps(plan));
        Assert.True(seam.To <= 142 || seam.From >= 158, $"{seam}");
    }

    [Fact]
    public void A_seam_across_a_fold_is_no_trouble_and_one_along_it_is()
    {
        // The fold down the middle runs along the seam of an upright cut and across that of a level one.
        var plan = TilePlanner.Plan(Grids.Part(Grids.Piece([120, 120], [240], "##")), A4, 10);
        Assert.Equal(2, plan.Tiles.Count);
        var x = QuarterTurn.OnTemplate(plan.Part.Piece, plan.Turned, new Point(120, 0));
        var isUpright = plan.Columns == 2;
        if (isUpright != plan.Turned)
        {
            var seam = Assert.Single(Laps(plan));
            var fold = isUpright ? x.X : x.Y;
            Assert.False(fold > seam.From - 3 && fold < seam.To + 3);
        }
    }

    [Fact]
    public void A_lap_of_nothing_lets_tiles_meet_edge_to_edge()
    {
        var plan = TilePlanner.Plan(Grids.Part(Grids.Piece([370], [180], "#")), A4, 0);
        Assert.Equal(2, plan.Tiles.Count);
        Assert.Equal(plan.Tiles[1].X, plan.Tiles[0].X + plan.Tiles[0].Width, 9);
        Assert.Equal(370, plan.Tiles.Sum(tile => tile.Width), 9);
    }

    [Fact]
    public void What_a_page_says_needs_its_width_whichever_way_it_lies()
    {
        // Upright, 88 mm are left across, which is too narrow; lying, 150 mm.
        var page = new TemplatePage(148, 210, 30, 4.5, 20) { LeastWidth = 106 };
        var plan = TilePlanner.Plan(Grids.Part(Grids.Piece([60], [60], "#")), page, 0);
        Assert.True(plan.Lying);
        var error = Assert.Throws<TilePlanException>(() => TilePlanner.Plan(Grids.Part(Grids.Piece([60], [60], "#")), page with { LeastWidth = 151 }, 0));
        Assert.Equal(TilePlanProblem.PageTooNarrow, error.Problem);
        Assert.Equal((150, 151), (error.Found, error.Limit));
    }

    [Fact]
    public void Head_and_foot_of_a_page_are_outside_of_its_drawing_whichever_way_it_lies()
    {
        foreach (var lying in new[] { false, true })
        {
            var (all, drawing, foot) = (A4.Printable(lying), A4.Drawing(lying), A4.Foot(lying));
            Assert.Equal(lying ? 277 : 190, all.Width);
            Assert.Equal(all.Top + 12, drawing.Top);
            Assert.Equal(drawing.Bottom, foot.Top, 9);
            Assert.Equal(all.Bottom, foot.Bottom, 9);
            Assert.Equal(16, foot.Height);
            Assert.Equal((all.Left, all.Right), (foot.Left, foot.Right));
        }
    }

    [Fact]
    public void A_page_without_room_for_a_usable_tile_is_refused_with_the_room_it_has()
    {
        var error = Assert.Throws<TilePlanException>(() => TilePlanner.Plan(Grids.Part(Grids.Piece([50], [50], "#")), new TemplatePage(60, 80, 20, 0, 0), 5));
        Assert.Equal(TilePlanProblem.AreaTooSmall, error.Problem);
        Assert.Equal(20, error.Found);
        Assert.Contains("20 × 40 mm", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_lap_too_wide_for_its_tiles_is_refused_with_the_most_it_can_be()
    {
        var error = Assert.Throws<TilePlanException>(() => TilePlanner.Plan(Grids.Part(Grids.Piece([500], [50], "#")), A4, 190));
        Assert.Equal(TilePlanProblem.LapTooLarge, error.Problem);
        Assert.Contains("63 mm at most", error.Message, StringComparison.Ordinal);
    }

    private static int SidesNeed(Piece piece, TemplatePage page, double lap)
    {
        var fewest = int.MaxValue;
        foreach (var (w, h) in new[] { (page.Width, page.Height), (page.Height, page.Width) })
        {
            var (areaWidth, areaHeight) = (w - (2 * page.Margin), h - (2 * page.Margin) - page.HeadRoom - page.FootRoom);
            foreach (var size in new[] { piece.Sheet, piece.Sheet.Turned })
                fewest = Math.Min(fewest, Need(size.Width.Millimetres, areaWidth) * Need(size.Height.Millimetres, areaHeight));
        }

        return fewest;

        int Need(double length, double side)
        {
            var tiles = 1;
            for (var reach = side; reach < length - 1e-9; reach += side - lap)
                tiles++;
            return tiles;
        }
    }

    private static bool Overlaps(TilePlan plan, Panel panel, Tile tile)
    {
        var corners = panel.Outline.Corners.Select(c => QuarterTurn.OnTemplate(plan.Part.Piece, plan.Turned, c)).ToList();
        const double Near = 0.6;
        return corners.Min(c => c.X) < tile.X + tile.Width + Near && corners.Max(c => c.X) > tile.X - Near
            && corners.Min(c => c.Y) < tile.Y + tile.Height + Near && corners.Max(c => c.Y) > tile.Y - Near;
    }

    private static IEnumerable<(double From, double To)> Laps(TilePlan plan)
    {
        foreach (var tile in plan.Tiles.Where(tile => tile.Column > 0 && tile.Row == 0))
            yield return (tile.X, tile.X + plan.Lap);
        foreach (var tile in plan.Tiles.Where(tile => tile.Row > 0 && tile.Column == 0))
            yield return (tile.Y, tile.Y + plan.Lap);
    }
}
