using CsCheck;
using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Structure;
using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Typesetting.Tests.Layout;

/// <summary>Steps on pages: kept whole, with their figures, as many to a page as fit, and no figure too small to read.</summary>
public class StepPagesTests
{
    private const double Width = 160;

    [Fact]
    public void A_step_that_fits_a_page_is_not_divided_wherever_it_would_start()
    {
        Gen.Select(Gen.Int[0, 30], Gen.Int[3, 12], Gen.Double[0.3, 1.2]).Sample((above, lines, proportion) =>
        {
            var document = BookPages.LayOut(40, Width, [.. Text(above), Step("a", lines, proportion), Step("b", lines, proportion)]);
            foreach (var word in new[] { "a", "b" })
                Assert.Single(document.Pages, page => Lines(page, word).Count > 0);
        }, iter: 60);
    }

    [Fact]
    public void A_step_and_its_figure_are_on_one_page()
    {
        Gen.Select(Gen.Int[0, 30], Gen.Int[3, 12], Gen.Double[0.3, 1.2]).Sample((above, lines, proportion) =>
        {
            var document = BookPages.LayOut(40, Width, [.. Text(above), Step("a", lines, proportion)]);
            var page = document.Pages.Single(page => Lines(page, "a").Count > 0);
            Assert.Contains(page.Items.OfType<TaggedItem>(), item => item.Element.Role == Role.Figure);
        }, iter: 60);
    }

    [Fact]
    public void No_page_ends_above_a_step_that_would_have_fitted_below_it()
    {
        Gen.Int[2, 12].Array[2, 9].Sample(lines =>
        {
            const int page = 24;
            var steps = lines.Select((count, i) => new KeepTogetherBlock([BookPages.Lines(count, $"s{i}-")])).ToArray();
            var document = BookPages.LayOut(page, Width, steps);
            for (var i = 1; i < document.Pages.Count; i++)
            {
                var first = BookPages.TextOf(document.Pages[i])[0];
                var next = lines[first[1] - '0'];
                var foot = document.Pages[i].Height - TestStyles.Plain.Spacing.Bottom;
                var room = (foot - BookPages.WordsOf(document.Pages[i - 1])[^1].Y - TestStyles.Plain.Spacing.Block) / (TestStyles.Plain.Scale.Leading * 25.4 / 72);
                Assert.True(room < next + 0.5, $"{room:0.0} lines are left, and the next step has {next}.");
            }
        }, iter: 80);
    }

    [Fact]
    public void A_heading_that_goes_along_to_the_next_page_is_counted_in_what_that_page_holds()
    {
        // After thirty lines of text neither the heading nor a step has room. Heading, lead and both steps fit a page of
        // their own only with small figures.
        Block[] part = [new HeadingBlock(1, [new TextInline("Steps")]), BookPages.Lines(1, "lead")];
        double Height(double lines, params IReadOnlyList<Block> blocks) => BookPages.LayOut(lines, Width, blocks).Pages.Count;
        var least = Enumerable.Range(20, 60).First(lines => Height(lines, [.. part, Step("a", 4, 1), Step("b", 4, 1)]) == 1);
        var document = BookPages.LayOut(least, Width, [.. Text(least - 2), .. part, Step("a", 4, 1), Step("b", 4, 1)]);
        Assert.Equal(2, document.Pages.Count);
        Assert.Equal("Steps", BookPages.TextOf(document.Pages[1])[0]);
    }

    [Fact]
    public void A_group_with_a_large_figure_fills_what_is_left_of_the_page_and_is_not_divided_where_it_fits_one()
    {
        Gen.Select(Gen.Int[0, 38], Gen.Int[1, 14]).Sample((above, lines) =>
        {
            var document = BookPages.LayOut(40, Width, [.. Text(above), Large(lines, 1)]);
            var page = document.Pages.Single(page => Lines(page, "g").Count > 0 && HasFigure(page));
            Assert.Equal(lines, Lines(page, "g").Count);
        }, iter: 40);

        double Drawn(int above) => BookPages.All(BookPages.LayOut(40, Width, [.. Text(above), Large(4, 1)]).Structure)
            .Single(element => element.Role == Role.Figure).Box!.Value.Height;
        Assert.True(Drawn(4) > Drawn(14) && Drawn(14) > Drawn(20), $"{Drawn(4)} {Drawn(14)} {Drawn(20)}");
    }

    [Fact]
    public void A_group_with_a_large_figure_too_long_for_the_rest_of_a_page_does_not_leave_the_page_all_but_empty()
    {
        var document = BookPages.LayOut(40, Width, [.. Text(4), Large(28, 1)]);
        Assert.True(HasFigure(document.Pages[0]));
        document = BookPages.LayOut(40, Width, [.. Text(20), Large(26, 1)]);
        Assert.False(HasFigure(document.Pages[0]));
        Assert.Equal(26, Lines(document.Pages[1], "g").Count);
    }

    private static bool HasFigure(Page page) => page.Items.OfType<TaggedItem>().Any(item => item.Element.Role == Role.Figure);

    private static KeepTogetherBlock Large(int lines, double proportion) =>
        new([new FigureBlock(new SampleDrawing(proportion), "A sheet.", []), BookPages.Lines(lines, "g")]) { HasLargeFigures = true };

    [Fact]
    public void Two_steps_share_the_second_page_where_the_first_holds_only_one_however_its_figures_are_made()
    {
        // Three steps, of which a page holds two: not one on each.
        var least = Enumerable.Range(20, 60).First(lines => BookPages.LayOut(lines, Width, Step("a", 4, 1), Step("b", 4, 1)).Pages.Count == 1);
        var document = BookPages.LayOut(least, Width, Step("a", 4, 1), Step("b", 4, 1), Step("c", 4, 1));
        Assert.Equal(2, document.Pages.Count);
        Assert.Equal(4, Lines(document.Pages[0], "b").Count);
    }

    [Fact]
    public void A_figure_whose_lettering_has_no_room_beside_the_text_takes_the_whole_width_below_it()
    {
        var needs = new LetteredDrawing(0.3, 120);
        var document = BookPages.LayOut(60, Width, Step("a", 12, needs));
        var figure = Box(document);
        Assert.True(figure.Width >= 120, $"The figure is {figure.Width:0} mm wide, where its lettering needs 120 mm.");
        Assert.All(Lines(document.Pages[0], "a"), line => Assert.True(line.Y < figure.Y));
        var modest = Box(BookPages.LayOut(60, Width, Step("a", 12, new LetteredDrawing(0.3, 40)), new PageBreakBlock(), BookPages.Lines(1, "z")));
        Assert.True(modest.X > 100, "A figure that can be read beside the text stands there.");
    }

    [Fact]
    public void No_figure_is_made_too_small_to_read_so_that_a_page_holds_one_step_more()
    {
        var small = new LetteredDrawing(1, 60);
        for (var lines = 24; lines < 60; lines += 4)
        {
            var document = BookPages.LayOut(lines, Width, Step("a", 4, small), Step("b", 4, small), Step("c", 4, small));
            Assert.All(Boxes(document), box => Assert.True(box.Width >= 60, $"On pages of {lines} lines a figure is {box.Width:0} mm wide, where its lettering needs 60 mm."));
        }
    }

    [Fact]
    public void A_drawing_of_a_step_that_stands_alone_goes_across_the_page_and_one_that_says_no_more_then_stays_beside_the_text()
    {
        var alone = BookPages.LayOut(60, Width, Step("a", 6, 0.6));
        var shared = BookPages.LayOut(60, Width, Step("a", 6, 0.6), BookPages.Lines(30, "t"));
        var plain = BookPages.LayOut(60, Width, Step("a", 6, new PlainDrawing(0.6)));
        Assert.True(Box(alone).Width > Width * 0.6, $"Alone on its page the figure is {Box(alone).Width:0} mm wide.");
        Assert.All(Lines(alone.Pages[0], "a"), line => Assert.True(line.Y < Box(alone).Y));
        Assert.All(new[] { shared, plain }, document => Assert.True(Box(document).X > Width * 0.4, $"The figure stands {Box(document).X:0} mm from the left."));
    }

    [Fact]
    public void Steps_move_closer_before_a_page_more_is_taken()
    {
        static KeepTogetherBlock Part(string word) => new([new HeadingBlock(2, [new TextInline("Step")]), BookPages.Lines(6, word)]);
        var (apart, close) = (
            Enumerable.Range(10, 30).First(lines => BookPages.LayOut(lines, Width, Part("a"), BookPages.Lines(1, "t"), Part("b"), BookPages.Lines(1, "u")).Pages.Count == 1) - 2,
            Enumerable.Range(10, 30).First(lines => BookPages.LayOut(lines, Width, Part("a"), Part("b")).Pages.Count == 1));
        Assert.True(close <= apart, $"Two steps take a page of {close} lines, where {apart} hold them apart.");
        var tight = BookPages.LayOut(close, Width, Part("a"), Part("b"));
        var roomy = BookPages.LayOut(close + 4, Width, Part("a"), Part("b"));
        static double Gap(PressDocument document) => Lines(document.Pages[0], "b")[0].Y - Lines(document.Pages[0], "a")[^1].Y;
        Assert.True(Gap(tight) < Gap(roomy), $"{Gap(tight):0.0} mm and {Gap(roomy):0.0} mm");
    }

    [Fact]
    public void Blocks_that_would_leave_the_page_before_them_all_but_empty_are_divided()
    {
        // Four lines of forty above, and thirty-eight to come.
        var document = BookPages.LayOut(40, Width, BookPages.Lines(4, "t"), new KeepTogetherBlock([BookPages.Lines(19, "a"), BookPages.Lines(19, "b")]));
        Assert.Equal(2, document.Pages.Count);
        Assert.Contains("a1", BookPages.TextOf(document.Pages[0]));
    }

    [Fact]
    public void Blocks_that_keep_with_what_stands_above_them_take_it_along_whole()
    {
        var document = BookPages.LayOut(40, Width, [.. Text(20), BookPages.Lines(2, "lead"), new KeepTogetherBlock([BookPages.Lines(30, "a")]) { KeepsWithPrevious = true }]);
        Assert.Equal(["lead1", "lead2", "a1"], BookPages.TextOf(document.Pages[1]).Take(3));
        Assert.Equal(30, Lines(document.Pages[1], "a").Count);
    }

    [Fact]
    public void A_figure_that_goes_first_stands_above_its_text_where_they_are_not_side_by_side()
    {
        Block Beside(bool first) => new BesideBlock([BookPages.Lines(4, "a")], Figure(new SampleDrawing(0.6))) { FigureFirst = first };
        var above = BookPages.LayOut(40, 80, Beside(true));
        Assert.All(Lines(above.Pages[0], "a"), line => Assert.True(line.Y > Box(above).Y + Box(above).Height));
        Assert.Equal("Document(Sect(Div(Figure Caption) P))", BookPages.Shape(above.Structure));
        var below = BookPages.LayOut(40, 80, Beside(false));
        Assert.All(Lines(below.Pages[0], "a"), line => Assert.True(line.Y < Box(below).Y));
    }

    [Fact]
    public void Items_of_lists_are_not_broken_across_columns()
    {
        Gen.Int[1, 5].Array[2, 8].Sample(lines =>
        {
            var items = lines.Select((count, i) => (IReadOnlyList<Block>)[BookPages.Lines(count, $"i{i}-")]).ToList();
            var document = BookPages.LayOut(60, Width, new ColumnsBlock([new ListBlock(ListKind.Bulleted, 1, items)], 2));
            var words = BookPages.WordsOf(document.Pages[0]).Where(word => word.Text.StartsWith('i')).ToList();
            Assert.All(words.GroupBy(word => word.Text[1]), item => Assert.Single(item.Select(word => Math.Round(word.X, 3)).Distinct()));
            Assert.Equal(lines.Sum(), words.Count);
        }, iter: 60);
    }

    [Fact]
    public void Columns_of_a_list_are_as_level_as_its_items_allow()
    {
        var items = Enumerable.Range(0, 6).Select(i => (IReadOnlyList<Block>)[BookPages.Lines(2, $"i{i}-")]).ToList();
        var words = BookPages.WordsOf(BookPages.LayOut(60, Width, new ColumnsBlock([new ListBlock(ListKind.Bulleted, 1, items)], 2)).Pages[0])
            .Where(word => word.Text.StartsWith('i')).GroupBy(word => Math.Round(word.X, 3)).ToList();
        Assert.Equal([6, 6], words.Select(column => column.Count()));
        Assert.Equal(words[0].Max(word => word.Y), words[1].Max(word => word.Y), 6);
    }

    [Fact]
    public void Contents_that_run_over_their_page_by_a_few_lines_take_a_column_more()
    {
        PressDocument With(bool more) => BookPages.LayOut(24, Width,
            [
                new ColumnsBlock([new ContentsBlock(1)], 1) { MoreToFit = more },
                .. Enumerable.Range(1, 20).SelectMany(i => new Block[] { new PageBreakBlock(), new HeadingBlock(1, [new TextInline($"Part {i}")], $"Part {i}"), BookPages.Lines(2, $"p{i}-") }),
            ]);
        Assert.True(BookPages.TextOf(With(false).Pages[1])[0].StartsWith("Part ", StringComparison.Ordinal) && With(false).Pages.Count == 22);
        var document = With(true);
        Assert.Equal(21, document.Pages.Count);
        Assert.Equal(2, BookPages.WordsOf(document.Pages[0]).Where(word => word.Text.StartsWith("Part", StringComparison.Ordinal)).Select(word => Math.Round(word.X)).Distinct().Count());
    }

    private static Block[] Text(int lines) => lines == 0 ? [] : [BookPages.Lines(lines, "t")];

    private static KeepTogetherBlock Step(string word, int lines, double proportion) => Step(word, lines, new SampleDrawing(proportion));

    private static KeepTogetherBlock Step(string word, int lines, IDrawing drawing) =>
        new([new BesideBlock([BookPages.Lines(lines, word)], Figure(drawing))]);

    private static FigureBlock Figure(IDrawing drawing) => new(drawing, "A sheet.", [new TextInline("Figure")]);

    private static List<WordsOnPage> Lines(Page page, string word) =>
        [.. BookPages.WordsOf(page).Where(line => line.Text.Length > word.Length && line.Text.StartsWith(word, StringComparison.Ordinal) && char.IsAsciiDigit(line.Text[word.Length]))];

    private static (double X, double Y, double Width, double Height) Box(PressDocument document) => Boxes(document)[0];

    private static List<(double X, double Y, double Width, double Height)> Boxes(PressDocument document) =>
        [.. BookPages.All(document.Structure).Where(element => element.Role == Role.Figure).Select(element => element.Box!.Value)];

    /// <summary>A sheet that shows the same however large it is.</summary>
    private sealed class PlainDrawing(double heightToWidth) : IDrawing
    {
        public bool GainsFromSize => false;

        public DrawnFigure Draw(double maxWidth, double maxHeight, StyleSheet styles) => new SampleDrawing(heightToWidth).Draw(maxWidth, maxHeight, styles);
    }

    /// <summary>A sheet whose lettering has room only from a width on.</summary>
    private sealed class LetteredDrawing(double heightToWidth, double needs) : IDrawing
    {
        public DrawnFigure Draw(double maxWidth, double maxHeight, StyleSheet styles)
        {
            var drawn = new SampleDrawing(heightToWidth).Draw(maxWidth, maxHeight, styles);
            return new DrawnFigure(drawn.Width, drawn.Height, () => drawn.Items, () => drawn.Width < needs ? 1 : 0);
        }
    }
}
