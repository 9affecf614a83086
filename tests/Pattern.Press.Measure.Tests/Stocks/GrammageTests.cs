using CsCheck;
using Size = Pattern.Press.Measure.Size;

namespace Pattern.Press.Measure.Tests.Stocks;

public sealed class GrammageTests
{
    // Published pairs of the paper merchants' basis-weight tables.
    [Theory]
    [InlineData(20, "bond", 75.2, 0.1)]
    [InlineData(24, "bond", 90.3, 0.1)]
    [InlineData(1, "text", 1.48, 0.005)]
    [InlineData(1, "cover", 2.70, 0.006)]
    [InlineData(1, "index", 1.81, 0.005)]
    [InlineData(1, "tag", 1.63, 0.005)]
    public void Basis_weights_agree_with_the_published_tables(double pounds, string sheet, double grams, double within) =>
        Assert.Equal(grams, Grammage.FromBasisWeight(pounds, BasicSheet.All.Single(basic => basic.Name == sheet)).GramsPerSquareMetre, within);

    // Basic sheets of the same tables, in inches.
    [Theory]
    [InlineData("bond", "17", "22")]
    [InlineData("text", "25", "38")]
    [InlineData("cover", "20", "26")]
    [InlineData("tag", "24", "36")]
    [InlineData("index", "25 1/2", "30 1/2")]
    public void Basic_sheets_are_those_of_the_trade(string name, string width, string height) =>
        Assert.Equal(
            new Size(LengthParser.Parse(width + " in"), LengthParser.Parse(height + " in")),
            BasicSheet.All.Single(sheet => sheet.Name == name).Size);

    [Fact]
    public void A_ream_of_basic_sheets_weighs_what_it_says() =>
        Gen.Select(Gen.OneOf([.. BasicSheet.All.Select(Gen.Const)]), Gen.Double[1, 300]).Sample((sheet, pounds) =>
            // 1 lb = 453.59237 g exactly: NIST SP 811 (2008), appendix B.
            Assert.Equal(pounds * 453.59237, 500 * Grammage.FromBasisWeight(pounds, sheet).MassOf(sheet.Size), 1e-6));

    [Fact]
    public void A_sheet_of_a4_at_80_grams_weighs_4_99_grams() =>
        // ISO 536: mass is area times grammage.
        Assert.Equal(4.99, new Grammage(80).MassOf(PaperSize.A4.Size), 0.005);

    [Theory]
    [InlineData("220 g/m2", 220)]
    [InlineData("220 g/m²", 220)]
    [InlineData("220gsm", 220)]
    [InlineData(" 220.5 GSM ", 220.5)]
    [InlineData("80 lb cover", 216.33)]
    [InlineData("80lb Cover", 216.33)]
    [InlineData("80 lbs cover", 216.33)]
    [InlineData("80# cover", 216.33)]
    [InlineData("80 pounds cover", 216.33)]
    [InlineData("20 lb bond", 75.2)]
    public void A_paper_weight_is_read_as_it_stands_on_the_packet(string text, double grams)
    {
        Assert.True(Grammage.TryParse(text, out var grammage, out var problem), problem);
        Assert.Equal(grams, grammage.GramsPerSquareMetre, 0.05);
    }

    [Theory]
    [InlineData("", "is not a paper weight; write it as 220 g/m2, or as 80 lb cover.")]
    [InlineData("220", "is not a paper weight")]
    [InlineData("heavy", "is not a paper weight")]
    [InlineData("-80 gsm", "is not a paper weight")]
    [InlineData("80,5 gsm", "is not a paper weight")]
    [InlineData("٨٠ gsm", "is not a paper weight")]
    [InlineData("99999999999 gsm", "is not a paper weight")]
    [InlineData("0 gsm", "weighs nothing")]
    [InlineData("0.0 lb cover", "weighs nothing")]
    [InlineData("80 lb", "does not name a basic sheet; write one of 80 lb bond, 80 lb cover, 80 lb index, 80 lb tag, 80 lb text.")]
    [InlineData("80 lb blotter", "does not name a basic sheet")]
    public void What_is_no_paper_weight_is_said_with_what_to_write(string text, string expected)
    {
        Assert.False(Grammage.TryParse(text, out var grammage, out var problem));
        Assert.StartsWith($"“{text}” {expected}", problem, StringComparison.Ordinal);
        Assert.Equal(default, grammage);
    }

    // Common practice, no source: 1.3 µm for each g/m². The published pairs are thicker, as bulky office paper is.
    [Theory]
    [InlineData(80, 100_000)]
    [InlineData(220, 290_000)]
    [InlineData(250, 330_000)]
    [InlineData(300, 390_000)]
    public void A_caliper_is_estimated_to_the_hundredth_of_a_millimetre(double grams, long nanometres) =>
        Assert.Equal(Length.FromNanometres(nanometres), Stock.EstimateCaliper(new Grammage(grams)));

    [Fact]
    public void The_estimate_is_within_a_third_of_a_published_caliper()
    {
        // 20 lb bond is 0.0038 in thick and 24 lb bond 0.0048 in: the same tables.
        foreach (var (pounds, inches) in new[] { (20, 0.0038), (24, 0.0048) })
        {
            var estimate = Stock.EstimateCaliper(Grammage.FromBasisWeight(pounds, BasicSheet.Bond)).Inches;
            Assert.InRange(estimate, inches * 2 / 3, inches * 4 / 3);
        }
    }
}
