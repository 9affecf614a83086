using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Structure;

namespace Pattern.Press.Typesetting.Tests.Layout;

public class PageShareTests
{
    private const double Width = 160;

    [Fact]
    public void Two_halves_fill_a_page_and_the_second_starts_half_way_down_it()
    {
        var document = BookPages.LayOut(40, Width, Half("a", 3), Half("b", 5), Half("c", 2));
        Assert.Equal(2, document.Pages.Count);
        var words = BookPages.WordsOf(document.Pages[0]).ToDictionary(word => word.Text.Trim());
        var text = (document.Pages[0].Height - TestStyles.Plain.Spacing.Top - TestStyles.Plain.Spacing.Bottom + TestStyles.Plain.Spacing.Gutter) / 2;
        Assert.Equal(text, words["b1"].Y - words["a1"].Y, 0.01);
        Assert.Equal(["c1", "c2"], BookPages.TextOf(document.Pages[1]));
    }

    [Fact]
    public void Its_figure_is_as_large_as_the_half_lets_it_be()
    {
        double Drawn(int lines) => BookPages.All(
            BookPages.LayOut(60, Width, new PageShareBlock([BookPages.Lines(lines, "a"), new FigureBlock(new SampleDrawing(1), "A sheet.", [])], 2), Half("b", 1)).Structure)
            .Single(element => element.Role == Role.Figure).Box!.Value.Height;
        Assert.True(Drawn(2) > Drawn(10) && Drawn(10) > Drawn(14), $"{Drawn(2)} {Drawn(10)} {Drawn(14)}");
        Assert.Single(BookPages.LayOut(60, Width, new PageShareBlock([BookPages.Lines(14, "a"), new FigureBlock(new SampleDrawing(1), "A sheet.", [])], 2), Half("b", 1)).Pages);
    }

    [Fact]
    public void What_needs_more_than_a_half_takes_it_and_what_needs_more_than_a_page_flows_on()
    {
        var document = BookPages.LayOut(20, Width, Half("a", 14), Half("b", 2));
        Assert.Equal(["b1", "b2"], BookPages.TextOf(document.Pages[1]));
        document = BookPages.LayOut(20, Width, Half("a", 30));
        Assert.Equal(Enumerable.Range(1, 30).Select(i => $"a{i}"), document.Pages.SelectMany(BookPages.TextOf));
    }

    private static PageShareBlock Half(string word, int lines) => new([BookPages.Lines(lines, word)], 2);
}
