using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Structure;

namespace Pattern.Press.Typesetting.Tests.Layout;

public class FigureRowTests
{
    private const double Hair = 1e-6;

    [Fact]
    public void Figures_of_a_row_stand_side_by_side_with_their_tops_level_and_are_read_in_order()
    {
        var document = BookPages.LayOut(60, 160, Row(Figure(0.9, "one"), Figure(0.5, "two")));
        var boxes = Boxes(document);
        Assert.Equal(boxes[0].Y, boxes[1].Y, Hair);
        Assert.True(boxes[0].X + boxes[0].Width < boxes[1].X, "The figures overlap.");
        Assert.True(boxes[1].X + boxes[1].Width <= TestStyles.Plain.Spacing.Left + 160 + Hair, "The row is wider than the text.");
        Assert.Equal("Document(Sect(Div(Figure Caption) Div(Figure Caption)))", BookPages.Shape(document.Structure));
        Assert.Equal(["one", "two"], BookPages.WordsOf(document.Pages[0]).Select(words => words.Text.Trim()));
    }

    [Fact]
    public void Each_caption_stands_below_its_own_figure()
    {
        var document = BookPages.LayOut(60, 160, Row(Figure(0.9, "one"), Figure(0.5, "two")));
        var words = BookPages.WordsOf(document.Pages[0]);
        Assert.All(Boxes(document).Zip(words), pair =>
        {
            Assert.Equal(pair.First.X, pair.Second.X, 0.01);
            Assert.True(pair.Second.Y > pair.First.Y + pair.First.Height, "A caption is not below its figure.");
        });
    }

    [Fact]
    public void Figures_of_a_row_stand_below_each_other_where_they_would_be_too_narrow()
    {
        var boxes = Boxes(BookPages.LayOut(60, 80, Row(Figure(0.4, "one"), Figure(0.4, "two"))));
        Assert.Equal(boxes[0].X, boxes[1].X, 0.01);
        Assert.True(boxes[1].Y > boxes[0].Y + boxes[0].Height);
    }

    [Fact]
    public void Several_figures_go_below_a_short_text_side_by_side()
    {
        var document = BookPages.LayOut(60, 160, new BesideBlock([BookPages.Lines(3, "a")], Row(Figure(0.9, "one"), Figure(0.9, "two"))));
        var boxes = Boxes(document);
        Assert.Equal(boxes[0].Y, boxes[1].Y, Hair);
        Assert.All(BookPages.WordsOf(document.Pages[0]).Where(words => words.Text.StartsWith('a')), words => Assert.True(words.Y < boxes[0].Y));
    }

    [Fact]
    public void Several_figures_stay_beside_a_text_that_is_as_high_as_they_are()
    {
        var document = BookPages.LayOut(60, 160, new BesideBlock([BookPages.Lines(24, "a")], Row(Figure(0.7, "one"), Figure(0.7, "two"))));
        var boxes = Boxes(document);
        Assert.Equal(boxes[0].X, boxes[1].X, 0.01);
        Assert.All(BookPages.WordsOf(document.Pages[0]).Where(words => words.Text.StartsWith('a')), words => Assert.True(words.Right <= boxes[0].X));
    }

    [Fact]
    public void Figures_are_made_smaller_where_that_lets_a_page_hold_one_step_more()
    {
        var alone = BookPages.LayOut(56, 160, Step("a"));
        // Alone a step takes about 110 mm and with small figures less than 80, two of which fit the 168 mm of a page.
        var two = BookPages.LayOut(34, 160, Step("a"), Step("b"));
        Assert.Single(two.Pages);
        Assert.True(Boxes(two)[0].Height < Boxes(alone)[0].Height - 5, "The figures of two steps on a page are as large as those of one.");
    }

    [Fact]
    public void Figures_stay_large_where_smaller_ones_would_not_let_the_page_hold_more()
    {
        var alone = BookPages.LayOut(30, 160, Step("a"));
        var apart = BookPages.LayOut(30, 160, Step("a"), Step("b"));
        Assert.Equal(2, apart.Pages.Count);
        Assert.Equal(Boxes(alone)[0].Height, Boxes(apart)[0].Height, 0.01);
    }

    private static KeepTogetherBlock Step(string word) =>
        new([BookPages.Lines(1, word + "-"), new BesideBlock([BookPages.Lines(3, word)], Row(Figure(1, "one"), Figure(1, "two")))]);

    private static FigureRowBlock Row(params IReadOnlyList<Block> figures) => new(figures);

    private static FigureBlock Figure(double proportion, string caption) => new(new SampleDrawing(proportion), caption + " sheet", [new TextInline(caption)]);

    private static List<(double X, double Y, double Width, double Height)> Boxes(PressDocument document) =>
        [.. BookPages.All(document.Structure).Where(element => element.Role == Role.Figure).Select(element => element.Box!.Value)];
}
