using CsCheck;
using Pattern.Press.Measure;
using Pattern.Press.Nets.Checks;
using static Pattern.Press.Nets.Tests.Sheets;
using Size = Pattern.Press.Measure.Size;

namespace Pattern.Press.Nets.Tests.Building;

public sealed class GussetBoxTests
{
    // Check values: common practice, no source.
    private static readonly Piece Box = GussetBox(In("2"), In("1 1/2"), In("3 1/2"), In("1/2")).Build();

    [Fact]
    public void The_sheet_of_the_known_box_is_9_by_8_and_a_half_inches() =>
        Assert.Equal(new Size(In("9"), In("8 1/2")), Box.Sheet);

    [Fact]
    public void Its_walls_fold_at_3_and_a_half_and_5_and_a_half_along_the_long_side_and_3_and_a_half_and_5_along_the_short()
    {
        var walls = Box.Folds.Where(fold => fold.Parent == "floor").ToArray();
        Assert.Equal(4, walls.Length);
        Assert.Equal([3.5, 5.5], Positions(walls, fold => fold.From.X == fold.To.X, fold => fold.From.X));
        Assert.Equal([3.5, 5.0], Positions(walls, fold => fold.From.Y == fold.To.Y, fold => fold.From.Y));
        Assert.All(walls, fold => Assert.Equal((FoldDirection.Valley, 90), (fold.Direction, fold.Angle)));
    }

    [Fact]
    public void Its_corner_waste_is_four_squares_of_3_inches_between_3_and_6_and_3_and_5_and_a_half()
    {
        var inch = 25.4;
        var corners = Box.Waste.Select(waste => waste.Outline.Bounds).ToArray();
        Assert.Equal(
            [
                new Bounds(0, 0, 3 * inch, 3 * inch),
                new Bounds(6 * inch, 0, 9 * inch, 3 * inch),
                new Bounds(0, 5.5 * inch, 3 * inch, 8.5 * inch),
                new Bounds(6 * inch, 5.5 * inch, 9 * inch, 8.5 * inch),
            ],
            corners,
            (a, b) => a.Contains(b, 1e-9) && b.Contains(a, 1e-9));
        Assert.All(Box.Waste, waste => Assert.Equal(4, waste.Outline.Edges.Count));
        Assert.All(Box.Waste, waste => Assert.Empty(waste.Holes));
    }

    [Fact]
    public void Each_corner_has_two_gussets_mitred_at_the_floor_that_fold_to_their_wall_and_to_each_other()
    {
        var gusset = Box.Panel("upper left gusset on the upper long wall");
        var corners = gusset.Outline.Corners.Select(corner => (corner.X / 25.4, corner.Y / 25.4)).ToArray();
        Assert.Equal([(3, 0), (3.5, 0), (3.5, 3.5), (3, 3)], corners, Near);
        Assert.Equal(PanelRole.Gusset, gusset.Role);

        var touching = Box.Folds.Where(fold => fold.Parent == gusset.Name || fold.Child == gusset.Name).ToArray();
        Assert.Equal(2, touching.Length);
        Assert.Equal("upper long wall", touching[0].Parent);
        Assert.Equal((FoldDirection.Valley, 135.0), (touching[0].Direction, touching[0].Angle));
        Assert.Equal("upper left gusset on the left short wall", touching[1].Child);
        Assert.Equal((FoldDirection.Mountain, 180.0), (touching[1].Direction, touching[1].Angle));
        Assert.Equal(Math.Sqrt(0.5) * 25.4, touching[1].From.DistanceTo(touching[1].To), 9);
    }

    [Fact]
    public void It_is_cut_once_round_with_no_slits()
    {
        // Twelve lines: three along each arm's end and flank, four arms.
        Assert.Equal(12, Box.Cuts.Count);
        Assert.Equal(Box.Outline.Perimeter, Box.Cuts.Sum(cut => cut.Length), 9);
        Assert.Equal(2 * (9 + 8.5) * 25.4, Box.Cuts.Sum(cut => cut.Length), 9);
    }

    [Fact]
    public void Its_panels_are_named_in_words_and_listed_in_reading_order()
    {
        Assert.Equal("floor", Box.Root);
        Assert.Equal(
            [
                "upper left gusset on the upper long wall",
                "upper right gusset on the upper long wall",
                "upper long wall",
                "upper left gusset on the left short wall",
                "upper right gusset on the right short wall",
                "left short wall",
                "floor",
                "right short wall",
                "lower left gusset on the left short wall",
                "lower right gusset on the right short wall",
                "lower long wall",
                "lower left gusset on the lower long wall",
                "lower right gusset on the lower long wall",
            ],
            Box.Panels.Select(panel => panel.Name));
    }

    [Fact]
    public void Whatever_the_sizes_the_piece_is_sound_and_its_areas_are_those_of_arithmetic() =>
        Gen.Select(Gen.Int[1, 4000], Gen.Int[1, 4000], Gen.Int[2, 3000], Gen.Int[1, 2999])
            .Where((_, _, height, gusset) => gusset < height)
            .Sample((a, b, c, d) =>
            {
                var (length, width, height, gusset) = (Mm(a / 10m), Mm(b / 10m), Mm(c / 10m), Mm(d / 10m));
                var piece = GussetBox(length, width, height, gusset).Build();
                Assert.Empty(PieceChecks.Problems(piece));
                Assert.Equal(new Size(length + (height * 2), width + (height * 2)), piece.Sheet);
                Assert.Equal((13, 16), (piece.Panels.Count, piece.Folds.Count));
                var waste = (height - gusset).Millimetres;
                Assert.Equal(4 * waste * waste, piece.Waste.Sum(region => region.Outline.Area), 6);
                var corner = height.Millimetres;
                Assert.Equal(
                    4 * ((corner * corner) - (waste * waste)),
                    piece.Panels.Where(panel => panel.Role == PanelRole.Gusset).Sum(panel => panel.Outline.Area),
                    6);
            }, iter: 60);

    private static double[] Positions(IEnumerable<Fold> folds, Func<Fold, bool> which, Func<Fold, double> where) =>
        [.. folds.Where(which).Select(fold => Math.Round(where(fold) / 25.4, 9)).Order()];

    private static bool Near((double X, double Y) a, (double X, double Y) b) =>
        Math.Abs(a.X - b.X) < 1e-9 && Math.Abs(a.Y - b.Y) < 1e-9;
}
