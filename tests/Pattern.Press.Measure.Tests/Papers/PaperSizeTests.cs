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

    [Theory]
    [InlineData("a4", "a4", "A4")]
    [InlineData("330 x 483 mm", "330x483mm", "330 × 483 mm")]
    [InlineData("483×330mm", "330x483mm", "330 × 483 mm")]
    [InlineData("48.3 x 33 cm", "330x483mm", "330 × 483 mm")]
    [InlineData("13 x 19 in", "13x19in", "13 × 19 in")]
    [InlineData("8 1/2 x 13\"", "8.5x13in", "8 1/2 × 13 in")]
    [InlineData("148.5 x 210 mm", "148.5x210mm", "148.5 × 210 mm")]
    [InlineData("297 x 210 mm", "a4", "A4")]
    [InlineData("11 x 8.5 in", "letter", "Letter")]
    public void A_paper_is_read_by_its_name_or_its_two_sides(string text, string id, string name)
    {
        Assert.True(PaperSize.TryParse(text, out var paper, out var problem), problem);
        Assert.Equal(id, paper.Id);
        Assert.Equal(name, paper.Name);
        Assert.Equal("", problem);
        Assert.True(paper.Size.Width <= paper.Size.Height);

        // What it is called in commands is read as itself.
        Assert.True(PaperSize.TryParse(paper.Id, out var again, out _));
        Assert.Equal(paper, again);
    }

    [Theory]
    [InlineData("foolscap", "")]
    [InlineData("330", "")]
    [InlineData("330 x 483 x 20 mm", "")]
    [InlineData("330 x 483", "“330 x 483” has no unit; write 330 x 483 mm or 330 x 483 in.")]
    [InlineData("330,5 x 483 mm", "comma")]
    [InlineData("139 x 300 mm", "5 1/2 in (139.7 mm) and 8 in (203.2 mm) up to 2 m")]
    [InlineData("180 x 200 mm", "of no use")]
    [InlineData("180 x 2000.5 mm", "of no use")]
    [InlineData("-330 x 483 mm", "of no use")]
    [InlineData("99999999999999999999999999999 x 483 mm", "far too long")]
    public void A_paper_that_cannot_be_is_refused_with_what_can(string text, string problem)
    {
        Assert.False(PaperSize.TryParse(text, out _, out var said));
        if (problem.Length == 0)
            Assert.Equal("", said);
        else
            Assert.Contains(problem, said, StringComparison.Ordinal);
    }
}
