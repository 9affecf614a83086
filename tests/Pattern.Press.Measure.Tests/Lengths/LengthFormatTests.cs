using CsCheck;
using Size = Pattern.Press.Measure.Size;

namespace Pattern.Press.Measure.Tests.Lengths;

public sealed class LengthFormatTests
{
    [Fact]
    public void What_lies_on_a_ruler_is_read_back_from_what_was_written() =>
        Gen.Select(RulerTests.AnyRuler, Gen.Int[-5000, 5000]).Sample((ruler, marks) =>
        {
            var length = ruler.Step * marks;
            Assert.Equal(length, LengthParser.Parse(LengthFormat.Format(length, ruler)));
        });

    [Fact]
    public void Every_64th_up_to_four_inches_is_in_lowest_terms()
    {
        for (var parts = 0; parts <= 256; parts++)
        {
            var length = Length.FromInches(0, parts, 64);
            var (whole, numerator, denominator) = LengthFormat.Fraction(length);
            Assert.Equal(parts, (whole * 64) + (numerator * (64 / denominator)));
            Assert.True(numerator == 0 ? denominator == 1 : numerator % 2 == 1 && numerator < denominator);
            Assert.Equal(length, LengthParser.Parse(LengthFormat.MixedInches(length) + " in"));
        }
    }

    [Theory]
    [InlineData(0, 0, 1, "0 in")]
    [InlineData(2, 0, 1, "2 in")]
    [InlineData(2, 1, 4, "2 1/4 in")]
    [InlineData(0, 3, 8, "3/8 in")]
    [InlineData(2, 4, 16, "2 1/4 in")]
    [InlineData(0, 63, 64, "63/64 in")]
    [InlineData(2, 3, 32, "2 3/32 in")]
    public void Inches_are_mixed_fractions(int whole, int numerator, int denominator, string expected) =>
        Assert.Equal(expected, LengthFormat.Format(Length.FromInches(whole, numerator, denominator), Ruler.SixteenthInches));

    [Fact]
    public void Below_zero_there_is_one_sign_before_all()
    {
        Assert.Equal("-2 1/4 in", LengthFormat.Format(-Length.FromInches(2, 1, 4), Ruler.SixteenthInches));
        Assert.Equal("-1/2", LengthFormat.Number(-Length.FromInches(0, 1, 2), Ruler.SixteenthInches));
        Assert.Equal("-58 mm", LengthFormat.Format(Length.FromMillimetres(-58), Ruler.WholeMillimetres));
    }

    [Fact]
    public void Next_to_nothing_has_no_sign()
    {
        Assert.Equal("0 mm", LengthFormat.Format(Length.FromNanometres(-1), Ruler.WholeMillimetres));
        Assert.Equal("0 in", LengthFormat.Format(Length.FromNanometres(-1), Ruler.SixteenthInches));
        Assert.Equal("0", LengthFormat.MixedInches(Length.FromNanometres(-1)));
    }

    [Fact]
    public void What_lies_off_the_marks_does_not_look_as_if_it_were_on_them()
    {
        Assert.Equal("0.325 mm", LengthFormat.Format(Length.FromMillimetres(0.325m), Ruler.WholeMillimetres));
        Assert.Equal("215.9 mm", LengthFormat.Format(PaperSize.Letter.Size.Width, Ruler.WholeMillimetres));
        Assert.Equal("8.268 in", LengthFormat.Format(PaperSize.A4.Size.Width, Ruler.SixteenthInches));
        Assert.Equal("0.012 in", LengthFormat.Format(Length.FromMillimetres(0.3m), Ruler.SixteenthInches));
    }

    [Fact]
    public void To_the_nearest_64th_an_a4_sheet_is_8_17_64_wide() =>
        Assert.Equal("8 17/64", LengthFormat.MixedInches(PaperSize.A4.Size.Width));

    [Fact]
    public void Millimetres_have_no_decimals_that_say_nothing()
    {
        var halves = new Ruler(UnitSystem.Metric, Length.FromMillimetres(0.5m));
        Assert.Equal("58 mm", LengthFormat.Format(Length.FromMillimetres(58), halves));
        Assert.Equal("58.5 mm", LengthFormat.Format(Length.FromMillimetres(58.5m), halves));
        Assert.Equal("1200 mm", LengthFormat.Format(Length.FromMillimetres(1200), Ruler.WholeMillimetres));
    }

    [Fact]
    public void A_fraction_of_less_than_nothing_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => LengthFormat.Fraction(Length.FromNanometres(-1)));
}
