using CsCheck;
using Pattern.Press.Measure;
using Pattern.Press.Nets.Building;
using Pattern.Press.Nets.Checks;
using static Pattern.Press.Nets.Tests.Sheets;
using Size = Pattern.Press.Measure.Size;

namespace Pattern.Press.Nets.Tests.Building;

public sealed class LidAndPlatformTests
{
    // Check values: common practice, no source. Floor 2 × 1 1/2 with 1/8 clearance, depth 3/4.
    private static readonly Piece Lid =
        DoubleLid(In("2 1/8"), In("1 5/8"), In("3/4"), taper: 10, relief: In("1/16")).Build();

    [Fact]
    public void The_sheet_of_the_known_lid_is_5_and_an_eighth_by_4_and_five_eighths() =>
        Assert.Equal(new Size(In("5 1/8"), In("4 5/8")), Lid.Sheet);

    [Fact]
    public void It_is_scored_at_three_quarters_and_1_and_a_half_from_all_four_sides()
    {
        var upright = Lid.Folds.Where(fold => fold.From.X == fold.To.X).Select(fold => fold.From.X / 25.4);
        Assert.Equal([0.75, 1.5, 5.125 - 1.5, 5.125 - 0.75], Distinct(upright));
        var level = Lid.Folds.Where(fold => fold.From.Y == fold.To.Y).Select(fold => fold.From.Y / 25.4);
        Assert.Equal([0.75, 1.5, 4.625 - 1.5, 4.625 - 0.75], Distinct(level));
    }

    [Fact]
    public void Its_tabs_hang_beside_the_walls_above_and_below_and_are_clear_of_the_others()
    {
        var tabs = Lid.Panels.Where(panel => panel.Role == PanelRole.Tab).ToArray();
        Assert.Equal(
            ["upper left glue tab", "upper right glue tab", "lower left glue tab", "lower right glue tab"],
            tabs.Select(tab => tab.Name));
        foreach (var tab in tabs)
        {
            var fold = Assert.Single(Lid.Folds, fold => fold.Child == tab.Name);
            Assert.Equal(tab.Name.StartsWith("upper", StringComparison.Ordinal) ? "upper wall" : "lower wall", fold.Parent);
            Assert.Equal(fold.From.X, fold.To.X);
            Assert.Equal(0.75 * 25.4, fold.From.DistanceTo(fold.To), 9);
        }
    }

    [Fact]
    public void A_tapered_tab_loses_two_triangles_of_its_depth_times_the_tangent()
    {
        var depth = 0.75 * 25.4;
        var tab = Lid.Panel("upper left glue tab").Outline;
        Assert.Equal((depth * depth) - (depth * depth * Math.Tan(10 * Math.PI / 180)), tab.Area, 9);
        var far = tab.Edges.Single(edge => Math.Abs(edge.From.X - depth) < 1e-9 && Math.Abs(edge.To.X - depth) < 1e-9);
        Assert.Equal(depth * (1 - (2 * Math.Tan(10 * Math.PI / 180))), far.Length, 9);
    }

    [Fact]
    public void An_inner_wall_is_shorter_than_its_wall_by_the_relief_at_both_ends()
    {
        var fold = Assert.Single(Lid.Folds, fold => fold.Child == "upper inner wall");
        Assert.Equal((FoldDirection.Valley, 180.0), (fold.Direction, fold.Angle));
        Assert.Equal(2 * 25.4, fold.From.DistanceTo(fold.To), 9);
        Assert.Equal(2 * 0.75 * 25.4 * 25.4, Lid.Panel("upper inner wall").Outline.Area, 9);
    }

    [Fact]
    public void Each_corner_s_waste_is_one_region_round_the_tab()
    {
        Assert.Equal(4, Lid.Waste.Count);
        var depth = 0.75 * 25.4;
        var corner = Lid.Waste[0];
        Assert.Empty(corner.Holes);
        var lean = depth * depth * Math.Tan(10 * Math.PI / 180);
        var sliver = depth * In("1/16").Millimetres;
        Assert.Equal((3 * depth * depth) + lean + (2 * sliver), corner.Outline.Area, 9);
    }

    [Fact]
    public void Adhesive_goes_on_tabs_and_inner_walls_from_the_sides_that_touch()
    {
        Assert.Equal(8, Lid.GlueAreas.Count);
        Assert.All(Lid.GlueAreas, glue => Assert.Same(Lid.Panel(glue.Panel).Outline, glue.Outline));
        Assert.All(Lid.GlueAreas, glue => Assert.Equal(
            Lid.Panel(glue.Panel).Role == PanelRole.Tab ? SheetSide.Away : SheetSide.Facing, glue.Side));
    }

    [Fact]
    public void Without_taper_the_other_end_of_a_tab_is_slit_from_the_other_wall_in_one_cut()
    {
        var lid = DoubleLid(In("2 1/8"), In("1 5/8"), In("3/4"), taper: 0, relief: Length.Zero).Build();
        var depth = 0.75 * 25.4;
        var slits = lid.Cuts.Where(cut => Math.Abs(cut.From.Y - (2 * depth)) < 1e-9 && Math.Abs(cut.To.Y - (2 * depth)) < 1e-9).ToArray();

        // From the sheet's edge at the inner wall's end on along the tab: one straight cut at each side.
        Assert.Equal(2, slits.Length);
        Assert.All(slits, slit => Assert.Equal(2 * depth, slit.Length, 9));
        Assert.Equal(lid.Outline.Perimeter + (4 * depth), lid.Cuts.Sum(cut => cut.Length), 9);
    }

    [Fact]
    public void The_sheet_of_the_known_platform_is_4_by_3_and_a_half_scored_at_a_half_and_1()
    {
        // Common practice, no source: half an inch high with a half-inch lip, before anything is taken off.
        var platform = Platform(In("2"), In("1 1/2"), In("1/2"), In("1/2")).Build();
        Assert.Equal(new Size(In("4"), In("3 1/2")), platform.Sheet);
        Assert.Equal([0.5, 1, 3, 3.5], Distinct(platform.Folds.Where(fold => fold.From.X == fold.To.X).Select(fold => fold.From.X / 25.4)));
        Assert.Equal([0.5, 1, 2.5, 3], Distinct(platform.Folds.Where(fold => fold.From.Y == fold.To.Y).Select(fold => fold.From.Y / 25.4)));
    }

    [Fact]
    public void A_platform_a_hair_smaller_keeps_its_scores_and_its_exact_sheet()
    {
        var hair = In("1/16");
        var platform = Platform(In("2") - hair, In("1 1/2") - hair, In("1/2"), In("1/2")).Build();
        Assert.Equal(new Size(In("3 15/16"), In("3 7/16")), platform.Sheet);
    }

    [Fact]
    public void Whatever_the_sizes_of_a_lid_it_is_sound() =>
        Gen.Select(Gen.Int[100, 3000], Gen.Int[100, 3000], Gen.Int[1, 1000], Gen.Int[0, 200], Gen.Int[0, 49])
            .Sample((a, b, c, tenths, r) =>
            {
                var (length, width, depth, taper) = (Mm(a / 10m), Mm(b / 10m), Mm(c / 10m), tenths / 10.0);
                var lid = DoubleLid(length, width, depth, taper, Mm(r / 10m)).Build();
                Assert.Empty(PieceChecks.Problems(lid));
                var (d, relief) = (depth.Millimetres, r / 10.0);
                var area = ((length.Millimetres + (4 * d)) * (width.Millimetres + (4 * d))) - (12 * d * d)
                    - (4 * d * d * Math.Tan(taper * Math.PI / 180)) - (8 * d * relief);
                Assert.Equal(area, lid.Panels.Sum(panel => panel.Outline.Area), 6);
            }, iter: 60);

    [Fact]
    public void Whatever_the_sizes_of_a_platform_it_is_sound() =>
        Gen.Select(Gen.Int[1, 3000], Gen.Int[1, 3000], Gen.Int[1, 1000], Gen.Int[1, 500]).Sample((a, b, c, d) =>
        {
            var platform = Platform(Mm(a / 10m), Mm(b / 10m), Mm(c / 10m), Mm(d / 10m)).Build();
            Assert.Empty(PieceChecks.Problems(platform));
            Assert.Equal((9, 8, 4, 12), (platform.Panels.Count, platform.Folds.Count, platform.Waste.Count, platform.Cuts.Count));
        }, iter: 60);

    private static double[] Distinct(IEnumerable<double> values) => [.. values.Select(value => Math.Round(value, 9)).Distinct().Order()];
}
