using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Pages;

namespace Pattern.Press.Typesetting.Tests.Layout;

public class ColumnsTests
{
    private const double Width = 160;

    private static double Middle(Page page) => page.Width / 2;

    [Fact]
    public void Twelve_lines_in_two_columns_are_six_and_six_read_down_the_first_then_the_second()
    {
        var document = BookPages.LayOut(20, Width, new ColumnsBlock([BookPages.Lines(12, "a")], 2), BookPages.Lines(1, "z"));
        var words = BookPages.WordsOf(document.Pages[0]);
        Assert.Equal(Enumerable.Range(1, 12).Select(i => $"a{i}").Append("z1"), words.Select(word => word.Text.Trim()));
        var (left, right) = (words.Take(6).ToList(), words.Skip(6).Take(6).ToList());
        Assert.All(left, word => Assert.True(word.X < Middle(document.Pages[0])));
        Assert.All(right, word => Assert.True(word.X > Middle(document.Pages[0])));
        Assert.Equal(left.Select(word => word.Y), right.Select(word => word.Y));

        // What follows stands below both.
        Assert.True(words[^1].Y > left[^1].Y && words[^1].X < Middle(document.Pages[0]));
    }

    [Fact]
    public void A_list_and_its_heading_stay_in_one_column()
    {
        var document = BookPages.LayOut(30, Width, new ColumnsBlock(
        [
            new KeepTogetherBlock([new HeadingBlock(3, [new TextInline("Also")]), BookPages.Lines(2, "a")]),
            new KeepTogetherBlock([new HeadingBlock(3, [new TextInline("Tools")]), BookPages.Lines(6, "b")]),
        ], 2));
        var words = BookPages.WordsOf(document.Pages[0]).ToDictionary(word => word.Text.Trim());
        Assert.Equal(words["Also"].X, words["a2"].X);
        Assert.Equal(words["Tools"].X, words["b6"].X);
        Assert.True(words["Tools"].X > words["Also"].X);
        // Their tops are level, though a heading has more room above it in running text.
        Assert.Equal(words["Also"].Y, words["Tools"].Y, 6);
    }

    [Fact]
    public void A_narrow_page_has_fewer_columns()
    {
        var document = BookPages.LayOut(20, 100, new ColumnsBlock([BookPages.Lines(6, "a")], 3));
        Assert.Single(BookPages.WordsOf(document.Pages[0]).Select(word => Math.Round(word.X, 3)).Distinct());
        document = BookPages.LayOut(20, Width, new ColumnsBlock([BookPages.Lines(6, "a")], 3));
        Assert.Equal(2, BookPages.WordsOf(document.Pages[0]).Select(word => Math.Round(word.X, 3)).Distinct().Count());
    }

    [Fact]
    public void More_than_a_page_holds_runs_on_in_one_column_and_nothing_is_lost()
    {
        var document = BookPages.LayOut(10, Width, new ColumnsBlock([BookPages.Lines(25, "a")], 2));
        Assert.Equal(Enumerable.Range(1, 25).Select(i => $"a{i}"), document.Pages.SelectMany(BookPages.TextOf));
    }

    [Fact]
    public void The_contents_may_stand_in_columns_and_lead_to_their_pages()
    {
        var headings = Enumerable.Range(1, 8).SelectMany(i => new Block[] { new PageBreakBlock(), new HeadingBlock(1, [new TextInline($"Part {i}")], $"Part {i}"), BookPages.Lines(2, $"p{i}-") });
        var document = BookPages.LayOut(30, Width, [new ColumnsBlock([new ContentsBlock(1)], 2), .. headings]);
        var page = document.Pages[0];
        Assert.Equal(8, page.Links.Count);
        Assert.Equal(4, page.Links.Count(link => link.X < Middle(page) && link.X + link.Width < Middle(page)));
        Assert.Equal(4, page.Links.Count(link => link.X > Middle(page)));
        Assert.Contains("Part 8 9", BookPages.TextOf(page).Select(line => System.Text.RegularExpressions.Regex.Replace(line, " +", " ")));
    }

    [Fact]
    public void A_place_inside_a_column_can_be_led_to()
    {
        var document = BookPages.LayOut(20, Width,
            new ParagraphBlock([new LinkInline([new TextInline("there")], "inside", false)]),
            new ColumnsBlock([BookPages.Lines(4, "a"), BookPages.Lines(4, "b") with { Destination = "inside" }], 2));
        Assert.Contains(document.Pages[0].Destinations, place => place.Name == "inside");
    }
}
