using System.Globalization;
using CsCheck;
using Size = Pattern.Press.Measure.Size;

namespace Pattern.Press.Measure.Tests.Lengths;

public sealed class LengthTests
{
    // NIST SP 811 (2008), appendix B: 1 in = 25.4 mm exactly; the fractions follow.
    [Theory]
    [InlineData(1, "25.4")]
    [InlineData(2, "12.7")]
    [InlineData(4, "6.35")]
    [InlineData(8, "3.175")]
    [InlineData(16, "1.5875")]
    [InlineData(32, "0.79375")]
    [InlineData(64, "0.396875")]
    public void A_binary_part_of_an_inch_is_exact_in_millimetres(int parts, string millimetres)
    {
        var expected = Length.FromMillimetres(decimal.Parse(millimetres, CultureInfo.InvariantCulture));
        Assert.Equal(expected, Length.FromInches(0, 1, parts));
        Assert.Equal(expected, Length.Inch / parts);
        Assert.Equal(Length.Inch, expected * parts);
    }

    [Fact]
    public void Units_agree_with_each_other()
    {
        Assert.Equal(25_400_000, Length.Inch.Nanometres);
        Assert.Equal(1_000_000, Length.Millimetre.Nanometres);
        Assert.Equal(72, Length.Inch.Points);
        Assert.Equal(2.25, Length.FromInches(2, 1, 4).Inches);
        Assert.Equal(57.15, Length.FromInches(2.25m).Millimetres);
        Assert.Equal(25.4m, Length.Inch / Length.Millimetre);
        Assert.Equal("57.15 mm", Length.FromInches(2.25m).ToString());
    }

    [Fact]
    public void Sums_of_any_marks_never_drift() =>
        Gen.Int[1, 640].Array[1, 200].Sample(parts =>
        {
            var sum = parts.Aggregate(Length.Zero, (total, part) => total + Length.FromInches(0, part, 64));
            Assert.Equal(Length.FromInches(0, parts.Sum(), 64), sum);
            Assert.Equal(Length.Zero, parts.Aggregate(sum, (total, part) => total - Length.FromInches(0, part, 64)));
        });

    [Fact]
    public void A_length_comes_back_unchanged_from_millimetres() =>
        Gen.Long[-4_000_000_000_000, 4_000_000_000_000].Sample(nanometres =>
        {
            var length = Length.FromNanometres(nanometres);
            Assert.Equal(length, Length.FromMillimetres(length.Millimetres));
        });

    [Fact]
    public void Arithmetic_is_that_of_whole_nanometres() =>
        Gen.Select(Gen.Long[-1_000_000_000_000, 1_000_000_000_000], Gen.Long[-1_000_000_000_000, 1_000_000_000_000], Gen.Int[-1000, 1000]).Sample((a, b, n) =>
        {
            var (first, second) = (Length.FromNanometres(a), Length.FromNanometres(b));
            Assert.Equal(a + b, (first + second).Nanometres);
            Assert.Equal(a - b, (first - second).Nanometres);
            Assert.Equal(-a, (-first).Nanometres);
            Assert.Equal(a * n, (first * n).Nanometres);
            Assert.Equal(first * n, n * first);
            Assert.Equal(a < b, first < second);
            Assert.Equal(a >= b, first >= second);
            Assert.Equal(Math.Max(a, b), Length.Max(first, second).Nanometres);
            Assert.Equal(Math.Min(a, b), Length.Min(first, second).Nanometres);
            Assert.Equal(Math.Abs(a), first.Abs().Nanometres);
            Assert.Equal(a < 0, first.IsNegative);
        });

    [Fact]
    public void Halves_of_a_nanometre_go_away_from_zero()
    {
        Assert.Equal(2, (Length.FromNanometres(3) / 2).Nanometres);
        Assert.Equal(-2, (Length.FromNanometres(-3) / 2).Nanometres);
        Assert.Equal(3, (Length.FromNanometres(5) * 0.5m).Nanometres);
        Assert.Equal(1, Length.FromMillimetres(0.0000005m).Nanometres);
        Assert.Equal(8_466_667, Length.FromInches(0, 1, 3).Nanometres);
    }

    [Fact]
    public void What_leaves_the_range_is_refused()
    {
        var longest = Length.FromNanometres(long.MaxValue);
        Assert.Throws<OverflowException>(() => longest + Length.FromNanometres(1));
        Assert.Throws<OverflowException>(() => -longest - Length.FromNanometres(2));
        Assert.Throws<OverflowException>(() => longest * 2);
        Assert.Throws<OverflowException>(() => longest * 1.5m);
        Assert.Throws<OverflowException>(() => -Length.FromNanometres(long.MinValue));
        Assert.Throws<OverflowException>(() => Length.FromMillimetres(double.NaN));
        Assert.Throws<OverflowException>(() => Length.FromMillimetres(double.PositiveInfinity));
        Assert.Throws<OverflowException>(() => Length.FromMillimetres(1e20));
        Assert.Throws<OverflowException>(() => Length.FromMillimetres(1e20m));
        Assert.Throws<OverflowException>(() => Length.FromInches(decimal.MaxValue));
    }

    [Theory]
    [InlineData(-1, 0, 1)]
    [InlineData(0, -1, 2)]
    [InlineData(0, 1, 0)]
    [InlineData(0, 1, -2)]
    public void A_fraction_has_no_negative_parts_and_nothing_is_divided_by_zero(int whole, int numerator, int denominator) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Length.FromInches(whole, numerator, denominator));

    [Fact]
    public void A_size_knows_its_sides_whichever_way_it_lies()
    {
        var size = new Size(Length.FromMillimetres(297), Length.FromMillimetres(210));
        Assert.Equal((size.Width, size.Height), (size.Longer, size.Shorter));
        Assert.Equal(PaperSize.A4.Size, size.Turned);
        Assert.Equal(62370, size.SquareMillimetres);
        Assert.True(size.FitsOn(PaperSize.A4.Size));
        Assert.False(size.FitsOn(PaperSize.Letter.Size));
        Assert.True(new Size(Length.FromMillimetres(200), Length.FromMillimetres(10)).FitsOn(PaperSize.A5.Size));
    }
}
