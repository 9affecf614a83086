namespace Pattern.Press.Measure.Tests.Papers;

public sealed class PaperSizeTests
{
    // ISO 216:2007 in millimetres.
    [Theory]
    [InlineData("a3", 297, 420)]
    [InlineData("a4", 210, 297)]
    [InlineData("a5", 148, 210)]
    public void Metric_papers_are_those_of_the_standard(string id, int width, int height)
    {
        var size = PaperSize.Find(id)!.Size;
        Assert.Equal(new Size(Length.FromMillimetres(width), Length.FromMillimetres(height)), size);

        // ISO 216: the sides are as 1 to √2, each rounded to a millimetre.
        Assert.Equal(Math.Sqrt(2), size.Height.Millimetres / size.Width.Millimetres, 0.007);
    }

    // ASME Y14.1 sizes A and B; Legal from memory. In inches.
    [Theory]
    [InlineData("letter", "8.5", "11")]
    [InlineData("tabloid", "11", "17")]
    [InlineData("legal", "8.5", "14")]
    public void Inch_papers_are_those_of_the_standard(string id, string width, string height) =>
        Assert.Equal(new Size(LengthParser.Parse(width + " in"), LengthParser.Parse(height + " in")), PaperSize.Find(id)!.Size);

    [Fact]
    public void Every_paper_is_upright_and_found_by_its_own_word_in_any_case()
    {
        Assert.Equal(6, PaperSize.All.Count);
        foreach (var paper in PaperSize.All)
        {
            Assert.True(paper.Size.Width < paper.Size.Height);
            Assert.Same(paper, PaperSize.Find(paper.Id));
            Assert.Same(paper, PaperSize.Find(" " + paper.Name.ToUpperInvariant() + " "));
        }

        Assert.Null(PaperSize.Find("foolscap"));
        Assert.Null(PaperSize.Find(""));
    }
}
