using CsCheck;
using Pattern.Press.Measure;
using Pattern.Press.Nets.Building;
using Pattern.Press.Nets.Checks;
using static Pattern.Press.Nets.Tests.Sheets;
using Size = Pattern.Press.Measure.Size;

namespace Pattern.Press.Nets.Tests.Building;

public sealed class MatsTests
{
    [Fact]
    public void A_rectangular_mat_is_its_sheet()
    {
        var size = new Size(In("1 3/4"), In("3 1/4"));
        var mat = Mats.Rectangle("wall-mat", "Mat for a long wall", size);
        Assert.Equal(size, mat.Sheet);
        Assert.Equal(size.SquareMillimetres, Assert.Single(mat.Panels).Outline.Area, 9);
        Assert.Empty(mat.Folds);
        Assert.Empty(mat.Waste);
        Assert.Equal(4, mat.Cuts.Count);
    }

    [Fact]
    public void A_left_strip_slants_at_the_left_and_the_right_one_is_its_mirror_image()
    {
        var size = new Size(In("3 1/4"), In("1/4"));
        var (left, right) = (Mats.MitredStrip("a", "A", size, Hand.Left), Mats.MitredStrip("b", "B", size, Hand.Right));
        Assert.Equal([new(6.35, 0), new(82.55, 0), new(82.55, 6.35), new(0, 6.35)], left.Outline.Corners);
        Assert.Equal(
            left.Outline.MirroredAt(size.Width.Millimetres / 2).Corners.OrderBy(p => p.X).ThenBy(p => p.Y),
            right.Outline.Corners.OrderBy(p => p.X).ThenBy(p => p.Y),
            (a, b) => a.DistanceTo(b) < 1e-9);
        foreach (var strip in new[] { left, right })
        {
            Assert.Equal(6.35 * 6.35 / 2, Assert.Single(strip.Waste).Outline.Area, 9);
            Assert.Equal(Math.Sqrt(2) * 6.35, strip.Cuts.Single(cut => cut.From.X != cut.To.X && cut.From.Y != cut.To.Y).Length, 9);
        }
    }

    [Fact]
    public void Whatever_its_size_a_strip_is_sound_and_both_hands_weigh_the_same() =>
        Gen.Select(Gen.Int[2, 3000], Gen.Int[1, 500]).Where((length, width) => width < length).Sample((length, width) =>
        {
            var size = new Size(Mm(length / 10m), Mm(width / 10m));
            var (left, right) = (Mats.MitredStrip("a", "A", size, Hand.Left), Mats.MitredStrip("b", "B", size, Hand.Right));
            Assert.Empty(PieceChecks.Problems(left));
            Assert.Equal(left.Outline.Area, right.Outline.Area, 9);
            Assert.Equal((length / 10.0 * (width / 10.0)) - (width * width / 200.0), left.Outline.Area, 6);
        }, iter: 100);

    [Theory]
    [InlineData(0, 10, "The mat's width is 0 mm")]
    [InlineData(10, -1, "The mat's height is -1 mm")]
    public void A_mat_that_its_border_ate_is_refused(int width, int height, string reason)
    {
        var size = new Size(Mm(width), Mm(height));
        Assert.Contains(reason, Assert.Throws<NetException>(() => Mats.Rectangle("m", "M", size)).Message, StringComparison.Ordinal);
        Assert.Contains(reason, Assert.Throws<NetException>(() => Mats.MitredStrip("m", "M", size, Hand.Left)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_strip_too_short_for_its_slanted_end_is_refused() =>
        Assert.Contains(
            "no longer than it is wide",
            Assert.Throws<NetException>(() => Mats.MitredStrip("m", "M", new(Mm(10), Mm(10)), Hand.Right)).Message,
            StringComparison.Ordinal);

    [Fact]
    public void A_strip_has_a_hand() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Mats.MitredStrip("m", "M", new(Mm(30), Mm(10)), Hand.Either));
}
