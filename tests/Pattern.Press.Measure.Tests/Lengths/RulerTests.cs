using CsCheck;

namespace Pattern.Press.Measure.Tests.Lengths;

public sealed class RulerTests
{
    private static readonly Ruler[] Rulers =
    [
        Ruler.WholeMillimetres,
        new(UnitSystem.Metric, Length.FromMillimetres(0.5m)),
        new(UnitSystem.Metric, Length.FromMillimetres(0.1m)),
        new(UnitSystem.Metric, Length.FromMillimetres(2.5m)),
        new(UnitSystem.Metric, Length.FromMillimetres(50)),
        .. new[] { 1, 2, 4, 8, 16, 32, 64 }.Select(parts => new Ruler(UnitSystem.Imperial, Length.Inch / parts)),
    ];

    public static Gen<Ruler> AnyRuler { get; } = Gen.OneOf([.. Rulers.Select(Gen.Const)]);

    [Fact]
    public void Up_is_never_shorter_and_down_never_longer_and_both_end_at_a_mark_less_than_a_step_away() =>
        Gen.Select(AnyRuler, Gen.Long[-2_000_000_000, 2_000_000_000]).Sample((ruler, nanometres) =>
        {
            var length = Length.FromNanometres(nanometres);
            var (up, down, near) = (ruler.Round(length, Rounding.Up), ruler.Round(length, Rounding.Down), ruler.Round(length, Rounding.Nearest));
            Assert.True(ruler.Marks(up) && ruler.Marks(down) && ruler.Marks(near));
            Assert.True(down <= length && length <= up);
            Assert.True(up - length < ruler.Step && length - down < ruler.Step);
            Assert.Equal(ruler.Marks(length) ? Length.Zero : ruler.Step, up - down);
            Assert.True((near - length).Abs() * 2 <= ruler.Step);
        });

    [Fact]
    public void A_length_on_a_mark_stays_whichever_way_it_is_rounded() =>
        Gen.Select(AnyRuler, Gen.Int[-2000, 2000], Gen.Enum<Rounding>()).Sample((ruler, marks, rounding) =>
            Assert.Equal(ruler.Step * marks, ruler.Round(ruler.Step * marks, rounding)));

    [Fact]
    public void Rounding_is_the_same_below_zero_as_in_a_mirror() =>
        Gen.Select(AnyRuler, Gen.Long[0, 2_000_000_000]).Sample((ruler, nanometres) =>
        {
            var length = Length.FromNanometres(nanometres);
            Assert.Equal(-ruler.Round(length, Rounding.Up), ruler.Round(-length, Rounding.Down));
            Assert.Equal(-ruler.Round(length, Rounding.Nearest), ruler.Round(-length, Rounding.Nearest));
        });

    [Fact]
    public void Half_a_step_goes_away_from_zero()
    {
        Assert.Equal(Length.FromMillimetres(3), Ruler.WholeMillimetres.Round(Length.FromMillimetres(2.5m), Rounding.Nearest));
        Assert.Equal(Length.FromMillimetres(-3), Ruler.WholeMillimetres.Round(Length.FromMillimetres(-2.5m), Rounding.Nearest));
        Assert.Equal(Length.FromMillimetres(2), Ruler.WholeMillimetres.Round(Length.FromMillimetres(2.499999m), Rounding.Nearest));
        Assert.Equal(Length.FromInches(0, 1, 16), Ruler.SixteenthInches.Round(Length.FromInches(0, 1, 32), Rounding.Nearest));
    }

    [Theory]
    [InlineData(UnitSystem.Metric, 50_000)]
    [InlineData(UnitSystem.Metric, 0)]
    [InlineData(UnitSystem.Metric, -1_000_000)]
    [InlineData(UnitSystem.Metric, 50_100_000)]
    [InlineData(UnitSystem.Metric, 1_587_500)]
    [InlineData(UnitSystem.Imperial, 1_000_000)]
    [InlineData(UnitSystem.Imperial, 2_540_000)]
    [InlineData(UnitSystem.Imperial, 198_437)]
    [InlineData(UnitSystem.Imperial, 50_800_000)]
    public void A_step_that_no_ruler_has_is_refused(UnitSystem system, long nanometres) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new Ruler(system, Length.FromNanometres(nanometres)));

    [Fact]
    public void Rulers_with_the_same_marks_are_the_same() =>
        Assert.Equal(Ruler.SixteenthInches, new Ruler(UnitSystem.Imperial, Length.FromInches(0, 1, 16)));
}
