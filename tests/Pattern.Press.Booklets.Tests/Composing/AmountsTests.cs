using System.Globalization;
using System.Text.RegularExpressions;
using CsCheck;
using Pattern.Press.Booklets.Composing.Parts;
using Pattern.Press.Booklets.Content;
using Pattern.Press.Booklets.Phrases;
using Pattern.Press.Structures.Reading;
using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Booklets.Tests.Composing;

/// <summary>Masses and lengths of tape as they are printed, against the factors of NIST SP 811 (2008), appendix B.9.</summary>
public class AmountsTests
{
    // Ounce (avoirdupois) to gram: 2.834 952 E+01. Foot to metre: 3.048 E-01, exactly. NIST SP 811 (2008), appendix B.9.
    private const double GramsPerOunce = 28.34952;
    private const double MetresPerFoot = 0.3048;

    private static readonly Amounts Amounts = new(PhraseBook.Load(Resources.OfProgram.PhrasesFolder, "en-GB", new Problems())!, "£");

    private static string Said(IReadOnlyList<Inline> inlines) => string.Concat(inlines.Select(inline => inline switch
    {
        TextInline text => text.Text,
        MeasureInline measure => measure.Text,
        _ => "?",
    }));

    private static (double Metric, double Imperial) Read(string said, string metric, string imperial)
    {
        var match = Regex.Match(said, $@"^([\d.]+)\u00A0{metric}\u00A0\(([\d.]+)\u00A0{imperial}\)$");
        Assert.True(match.Success, said);
        return (double.Parse(match.Groups[1].Value, CultureInfo.InvariantCulture), double.Parse(match.Groups[2].Value, CultureInfo.InvariantCulture));
    }

    // Pound (avoirdupois) to kilogram: 4.535 924 E-01, 16 oz to the pound. NIST SP 811 (2008), appendix B.9.
    [Theory]
    [InlineData(453.5924, "454 g (16 oz)")]
    [InlineData(226.7962, "227 g (8 oz)")]
    [InlineData(28.34952, "28 g (1 oz)")]
    [InlineData(2.834952, "2.8 g (0.1 oz)")]
    public void Known_masses_are_printed_in_grams_and_ounces(double grams, string said) =>
        Assert.Equal(said, Said(Amounts.Mass(grams)).Replace('\u00A0', ' '));

    [Fact]
    public void Any_mass_is_right_in_both_units_to_the_last_figure_printed() =>
        Gen.Double[0.5, 2000].Sample(grams =>
        {
            var (metric, ounces) = Read(Said(Amounts.Mass(grams)), "g", "oz");
            Assert.Equal(grams, metric, (grams < 10 ? 0.05 : 0.5) + 1e-6);
            Assert.Equal(grams / GramsPerOunce, ounces, 0.05 + 1e-4);
        }, iter: 500);

    [Theory]
    [InlineData(3048, "3.1 m (10 ft)")]
    [InlineData(3049, "3.1 m (11 ft)")]
    [InlineData(304.8, "0.4 m (1 ft)")]
    [InlineData(10_000, "10 m (33 ft)")]
    public void Known_lengths_of_tape_are_printed_in_metres_and_feet(double millimetres, string said) =>
        Assert.Equal(said, Said(Amounts.Tape((decimal)millimetres)).Replace('\u00A0', ' '));

    [Fact]
    public void Any_length_of_tape_is_enough_in_both_units_and_little_more() =>
        Gen.Int[1, 200_000].Sample(millimetres =>
        {
            var (metres, feet) = Read(Said(Amounts.Tape(millimetres)), "m", "ft");
            Assert.InRange(metres - (millimetres / 1000.0), -1e-9, 0.1);
            Assert.InRange(feet - (millimetres / 1000.0 / MetresPerFoot), -1e-9, 1);
        }, iter: 500);
}
