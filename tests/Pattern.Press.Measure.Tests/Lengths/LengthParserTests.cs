using System.Globalization;
using CsCheck;

namespace Pattern.Press.Measure.Tests.Lengths;

public sealed class LengthParserTests
{
    [Theory]
    [InlineData("58 mm", "58")]
    [InlineData("58mm", "58")]
    [InlineData("  58  mm ", "58")]
    [InlineData("58.5 mm", "58.5")]
    [InlineData("058.50 mm", "58.5")]
    [InlineData("58 MM", "58")]
    [InlineData("5.8 cm", "58")]
    [InlineData("5.8 Cm", "58")]
    [InlineData("0.058 m", "58")]
    [InlineData("58\u00A0mm", "58")]
    [InlineData("58\u202Fmm", "58")]
    [InlineData("+58 mm", "58")]
    [InlineData("-58 mm", "-58")]
    [InlineData("\u221258 mm", "-58")]
    [InlineData("0 mm", "0")]
    [InlineData(".5 mm", "0.5")]
    [InlineData("0.000001 mm", "0.000001")]
    [InlineData("2 1/4 in", "57.15")]
    [InlineData("2 1/4 IN", "57.15")]
    [InlineData("2 1/4\"", "57.15")]
    [InlineData("2¼\"", "57.15")]
    [InlineData("2 ¼ in", "57.15")]
    [InlineData("2¼”", "57.15")]
    [InlineData("2¼″", "57.15")]
    [InlineData("2-1/4\"", "57.15")]
    [InlineData("-2-1/4\"", "-57.15")]
    [InlineData("2 1⁄4 in", "57.15")]
    [InlineData("2 1 / 4 in", "57.15")]
    [InlineData("2.25 in", "57.15")]
    [InlineData("2.25in.", "57.15")]
    [InlineData("2.25 inches", "57.15")]
    [InlineData("1 inch", "25.4")]
    [InlineData(".5 in", "12.7")]
    [InlineData("½ in", "12.7")]
    [InlineData("1/2\"", "12.7")]
    [InlineData("-1/2\"", "-12.7")]
    [InlineData("7⅞ in", "200.025")]
    [InlineData("9/8 in", "28.575")]
    [InlineData("1/64 in", "0.396875")]
    [InlineData("⅓ in", "8.466667")]
    public void A_length_is_read_however_a_maker_writes_it(string text, string millimetres)
    {
        Assert.True(LengthParser.TryParse(text, out var length, out var problem), problem);
        Assert.Equal("", problem);
        Assert.Equal(Length.FromMillimetres(decimal.Parse(millimetres, CultureInfo.InvariantCulture)), length);
        Assert.Equal(length, LengthParser.Parse(text));
    }

    [Theory]
    [InlineData("58", "“58” has no unit; write 58 mm or 58 in.")]
    [InlineData("2.25", "“2.25” has no unit; write 2.25 mm or 2.25 in.")]
    [InlineData("2¼", "“2¼” has no unit; write 2 1/4 in.")]
    [InlineData("1/2", "“1/2” has no unit; write 1/2 in.")]
    [InlineData("58,5 mm", "“58,5 mm” uses a comma; write a point for decimals, such as 58.5 mm.")]
    [InlineData("1,000 mm", "“1,000 mm” uses a comma; write a point for decimals, such as 58.5 mm.")]
    [InlineData("1/0 in", "“1/0 in” divides by zero; write a fraction such as 2 1/4 in.")]
    [InlineData("2 1/00 in", "“2 1/00 in” divides by zero; write a fraction such as 2 1/4 in.")]
    [InlineData("2 1/4 mm", "“2 1/4 mm” is a fraction of a metric unit; write it with a decimal point, such as 58.5 mm.")]
    [InlineData("½ CM", "“½ CM” is a fraction of a metric unit; write it with a decimal point, such as 58.5 mm.")]
    [InlineData("99999999999999999999 mm", "“99999999999999999999 mm” is far too long to be a length on paper.")]
    [InlineData("999999999999999999999999999999999999 in", "“999999999999999999999999999999999999 in” is far too long to be a length on paper.")]
    [InlineData("9300000000000 mm", "“9300000000000 mm” is far too long to be a length on paper.")]
    public void What_is_wrong_is_said_with_what_to_write(string text, string expected)
    {
        Assert.False(LengthParser.TryParse(text, out var length, out var problem));
        Assert.Equal(expected, problem);
        Assert.Equal(Length.Zero, length);
        Assert.Equal(expected, Assert.Throws<FormatException>(() => LengthParser.Parse(text)).Message);
    }

    [Theory]
    [InlineData("")]
    [InlineData("   ")]
    [InlineData("mm")]
    [InlineData("wide")]
    [InlineData("58 furlongs")]
    [InlineData("58 mmm")]
    [InlineData("58 mm mm")]
    [InlineData("5 8 mm")]
    [InlineData("58. mm")]
    [InlineData("5.8.1 cm")]
    [InlineData("2.5 1/4 in")]
    [InlineData("2 - 1/4 in")]
    [InlineData("2--1/4 in")]
    [InlineData("2 1/4 1/2 in")]
    [InlineData("2½¼ in")]
    [InlineData("1/2/3 in")]
    [InlineData("--58 mm")]
    [InlineData("1e3 mm")]
    [InlineData("0x10 mm")]
    [InlineData("٥٨ mm")]
    [InlineData("５８ mm")]
    [InlineData("NaN mm")]
    [InlineData("∞ mm")]
    public void Junk_is_not_a_length(string text)
    {
        Assert.False(LengthParser.TryParse(text, out _, out var problem));
        Assert.Equal($"“{text}” is not a length; write a number and its unit, such as 58 mm or 2 1/4 in.", problem);
    }

    [Fact]
    public void No_text_whatever_makes_it_fail_in_any_other_way() =>
        Gen.OneOf(Gen.String, Gen.Char["0123456789 ./-+,¼½\"mcin\u00A0e"].Array[0, 12].Select(letters => new string(letters))).Sample(text =>
        {
            if (LengthParser.TryParse(text, out _, out var problem))
                Assert.Equal("", problem);
            else
                Assert.EndsWith(".", problem, StringComparison.Ordinal);
        });
}
