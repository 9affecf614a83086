using CsCheck;
using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Fonts;
using Pattern.Press.Typesetting.Layout;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Structure;

namespace Pattern.Press.Typesetting.Tests.Layout;

public class ParagraphTests
{
    private const string Prose =
        "Lay the sheet on the board with its long side against the fence and press the folder along every mark, once and " +
        "firmly, because a line that is gone over twice is two lines and will not fold where you want it. Turn the sheet " +
        "by a quarter, then do the same for the other pair of marks. The corners come free when both pairs are scored.";

    private static readonly ParagraphBlock Measured = new(
    [
        new TextInline("The sheet is "), new MeasureInline("225 × 215 mm"), new TextInline(", the wall "), new MeasureInline("2 1/4 in"),
        new TextInline(" high and the lid ("), new MeasureInline("3 15/16 in"), new TextInline(") a hair larger than the "),
        new MeasureInline("58 mm"), new TextInline(" of the floor."),
    ]);

    [Fact]
    public void A_measurement_never_breaks_whatever_the_width()
    {
        Gen.Double[22, 150].Sample(width =>
        {
            var lines = BookPages.LayOut(40, width, Measured).Pages.SelectMany(BookPages.TextOf).ToArray();
            foreach (var measurement in (string[])["225 × 215 mm", "2 1/4 in", "3 15/16 in", "58 mm"])
                Assert.Contains(lines, line => line.Contains(measurement, StringComparison.Ordinal));
            Assert.Contains(lines, line => line.Contains("(3 15/16 in)", StringComparison.Ordinal));
        }, iter: 60);
    }

    [Fact]
    public void No_word_is_lost_or_doubled_at_the_ends_of_lines()
    {
        Gen.Double[30, 170].Sample(width =>
        {
            var words = BookPages.WordsOf(BookPages.LayOut(60, width, BookPages.Paragraph(Prose)).Pages[0]);
            // As it is read out, the space at the end of each line included.
            Assert.Equal(Prose, string.Concat(words.Select(line => line.Text)));
        }, iter: 40);
    }

    [Fact]
    public void A_fraction_is_set_as_one_and_stands_close_to_its_whole_number_but_reads_as_written()
    {
        var page = BookPages.LayOut(10, 120, new ParagraphBlock([new MeasureInline("2 1/4 in")])).Pages[0];
        var run = ((TextItem)page.Items.OfType<TaggedItem>().Single().Items.Single()).Run;
        Assert.Equal("2 1/4 in", run.Text);
        var plain = Shaper.Shape("1/4", run.Face, run.Size);
        var fraction = run.Glyphs.Where(glyph => glyph.Start is >= 2 and < 5).ToArray();
        Assert.True(fraction.Sum(glyph => glyph.Advance) < 0.8 * plain.Glyphs.Sum(glyph => glyph.Advance), "The figures of a fraction are small.");
        var spaces = run.Glyphs.Where(glyph => run.Text[glyph.Start] == ' ').ToArray();
        Assert.True(spaces[0].Advance < spaces[1].Advance, "The space before a fraction is narrower than the one before the unit.");
        Assert.Equal(run.Text.Length, run.Glyphs.Sum(glyph => glyph.Length));
    }

    [Fact]
    public void Justified_lines_all_end_at_the_margin_except_the_last()
    {
        Gen.Double[92, 170].Sample(width =>
        {
            var styles = TestStyles.Display;
            var page = BookPages.LayOut(60, width, styles, [], BookPages.Paragraph(Prose)).Pages[0];
            var lines = BookPages.WordsOf(page);
            foreach (var line in lines.SkipLast(1))
                Assert.Equal(styles.Spacing.Left + width, line.Right, 0.01);
            Assert.True(lines[^1].Right <= styles.Spacing.Left + width + 0.01);
        }, iter: 40);
    }

    [Fact]
    public void Ragged_lines_stay_inside_the_margin_and_their_spaces_are_all_alike()
    {
        Gen.Double[30, 170].Sample(width =>
        {
            var page = BookPages.LayOut(60, width, BookPages.Paragraph(Prose)).Pages[0];
            Assert.All(BookPages.WordsOf(page), line => Assert.True(line.Right <= TestStyles.Plain.Spacing.Left + width + 0.01));
            var spaces = page.Items.OfType<TaggedItem>().SelectMany(item => item.Items).OfType<TextItem>()
                .SelectMany(item => item.Run.Glyphs.SkipLast(1).Where(glyph => item.Run.Text[glyph.Start] == ' ').Select(glyph => glyph.Advance))
                .ToArray();
            Assert.True(spaces.Max() - spaces.Min() <= 1, "Rounded to a font unit, all spaces are equal.");
        }, iter: 20);
    }

    [Fact]
    public void Narrow_columns_are_ragged_even_where_the_book_is_justified()
    {
        var styles = TestStyles.Display;
        var lines = BookPages.WordsOf(BookPages.LayOut(60, 60, styles, [], BookPages.Paragraph(Prose)).Pages[0]);
        Assert.Contains(lines.SkipLast(1), line => line.Right < styles.Spacing.Left + 59);
    }

    [Fact]
    public void A_soft_hyphen_shows_only_where_a_line_ends_and_reads_as_soft()
    {
        var block = BookPages.Paragraph("unfold\u00ADing unfold\u00ADing unfold\u00ADing");
        var wide = BookPages.TextOf(BookPages.LayOut(10, 120, block).Pages[0]);
        Assert.Equal(["unfolding unfolding unfolding"], wide);
        var narrow = BookPages.TextOf(BookPages.LayOut(10, 14, block).Pages[0]);
        Assert.Contains(narrow, line => line.EndsWith('\u00AD'));
        Assert.Equal("unfoldingunfoldingunfolding", string.Concat(narrow).Replace("\u00AD", "", StringComparison.Ordinal).Replace(" ", "", StringComparison.Ordinal));
    }

    [Fact]
    public void A_change_of_type_inside_a_word_gives_no_place_to_break()
    {
        var block = new ParagraphBlock([new TextInline("pre"), new TextInline("fix", Emphasis.Bold), new TextInline("ed word")]);
        var lines = BookPages.TextOf(BookPages.LayOut(10, 16, block).Pages[0]);
        Assert.Equal(["prefixed", "word"], lines);
    }

    [Fact]
    public void Spaces_and_line_ends_in_the_source_are_one_space()
    {
        var block = new ParagraphBlock([new TextInline("  one \n two "), new TextInline("  three  ", Emphasis.Italic)]);
        Assert.Equal(["one two three"], BookPages.TextOf(BookPages.LayOut(10, 120, block).Pages[0]));
    }

    [Fact]
    public void A_link_has_an_element_and_an_area_on_each_of_its_lines()
    {
        var block = new ParagraphBlock(
        [
            new TextInline("See "), new LinkInline([new TextInline("the whole long list of further patterns")], "https://example.org/", true), new TextInline(" there."),
        ]);
        var document = BookPages.LayOut(10, 36, block);
        Assert.Equal("Document(Sect(P(Span Link Span)))", BookPages.Shape(document.Structure));
        var page = document.Pages[0];
        var lines = BookPages.WordsOf(page).Where(line => line.Element!.Role == Role.Link).ToArray();
        Assert.True(lines.Length > 1);
        Assert.Equal(lines.Length, page.Links.Count);
        for (var i = 0; i < lines.Length; i++)
        {
            Assert.Same(lines[i].Element, page.Links[i].Element);
            Assert.Equal(lines[i].X, page.Links[i].X, 0.001);
            Assert.Equal(lines[i].Right, page.Links[i].X + page.Links[i].Width, 0.02);
            Assert.InRange(lines[i].Y, page.Links[i].Y, page.Links[i].Y + page.Links[i].Height);
        }

        Assert.All(page.Links, link => Assert.Equal("the whole long list of further patterns (https://example.org/)", link.Description));
    }

    [Fact]
    public void A_word_wider_than_its_column_is_a_problem_that_names_its_source()
    {
        var problems = new List<LayoutProblem>();
        var source = new BlockSource("booklet.md", 12);
        BookPages.LayOut(10, 30, TestStyles.Plain, problems, BookPages.Paragraph("an incomprehensibilityunmeasurable word") with { Source = source });
        var problem = Assert.Single(problems);
        Assert.Equal(source, problem.Source);
        Assert.Contains("“incomprehensibilityunmeasurable”", problem.Message, StringComparison.Ordinal);
        Assert.Contains("only 30 mm", problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_character_that_the_typeface_lacks_is_a_problem_that_names_it()
    {
        var problems = new List<LayoutProblem>();
        var source = new BlockSource("booklet.md", 3);
        BookPages.LayOut(10, 100, TestStyles.Plain, problems, BookPages.Paragraph("a 折 fold") with { Source = source });
        var problem = Assert.Single(problems);
        Assert.Equal(source, problem.Source);
        Assert.Contains("“折”", problem.Message, StringComparison.Ordinal);
    }
}
