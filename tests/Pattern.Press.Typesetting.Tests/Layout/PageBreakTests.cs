using CsCheck;
using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Layout;
using Pattern.Press.Typesetting.Pages;

namespace Pattern.Press.Typesetting.Tests.Layout;

public class PageBreakTests
{
    private const double Width = 120;

    [Fact]
    public void A_heading_at_the_foot_of_a_page_moves_to_the_next_with_its_paragraph()
    {
        // Eight lines fill the page but for four; the heading takes about three, so only one line could stand below it.
        var document = BookPages.LayOut(12, Width, BookPages.Lines(8, "a"), new HeadingBlock(3, [new TextInline("Head")]), BookPages.Lines(4, "b"));
        Assert.DoesNotContain("Head", BookPages.TextOf(document.Pages[0]));
        Assert.Equal(["Head", "b1", "b2", "b3", "b4"], BookPages.TextOf(document.Pages[1]));
    }

    [Fact]
    public void A_heading_stays_where_two_lines_fit_below_it()
    {
        var document = BookPages.LayOut(12, Width, BookPages.Lines(6, "a"), new HeadingBlock(3, [new TextInline("Head")]), BookPages.Lines(5, "b"));
        Assert.Equal(["Head", "b1", "b2"], BookPages.TextOf(document.Pages[0])[6..9]);
    }

    [Fact]
    public void A_heading_takes_along_a_paragraph_of_one_line_and_what_follows_it()
    {
        var document = BookPages.LayOut(12, Width,
            BookPages.Lines(7, "a"), new HeadingBlock(3, [new TextInline("Head")]), BookPages.Lines(1, "b"), BookPages.Lines(2, "c"));
        Assert.Equal(["Head", "b1", "c1", "c2"], BookPages.TextOf(document.Pages[1]));
    }

    [Fact]
    public void Two_headings_in_succession_stay_together()
    {
        var document = BookPages.LayOut(14, Width,
            BookPages.Lines(8, "a"), new HeadingBlock(2, [new TextInline("One")]), new HeadingBlock(3, [new TextInline("Two")]), BookPages.Lines(3, "b"));
        Assert.Equal(["One", "Two", "b1", "b2", "b3"], BookPages.TextOf(document.Pages[1]));
    }

    [Fact]
    public void An_overline_stays_with_its_heading_and_is_read_before_it()
    {
        var document = BookPages.LayOut(12, Width,
            BookPages.Lines(9, "a"), new HeadingBlock(2, [new TextInline("Head")]) { Overline = "Step 3" }, BookPages.Lines(2, "b"));
        Assert.Equal(["Step 3", "Head", "b1", "b2"], BookPages.TextOf(document.Pages[1]));
        Assert.Equal("Document(Sect(P H1 P))", BookPages.Shape(document.Structure));
    }

    [Fact]
    public void No_paragraph_leaves_a_single_line_on_a_page()
    {
        Gen.Select(Gen.Int[1, 9].Array[1, 12], Gen.Int[6, 15]).Sample((paragraphs, lines) =>
        {
            var blocks = paragraphs.Select((count, i) => BookPages.Lines(count, $"p{i}-")).ToArray();
            var document = BookPages.LayOut(lines, Width, blocks);
            foreach (var page in document.Pages)
            {
                foreach (var group in BookPages.TextOf(page).GroupBy(line => line[..line.IndexOf('-', StringComparison.Ordinal)]))
                {
                    var whole = paragraphs[int.Parse(group.Key[1..], System.Globalization.CultureInfo.InvariantCulture)];
                    Assert.True(group.Count() >= Math.Min(2, whole), $"{group.Key} leaves {group.Count()} of {whole} lines on a page.");
                }
            }

            // And nothing is lost on the way.
            Assert.Equal(paragraphs.Sum(), document.Pages.Sum(page => BookPages.TextOf(page).Length));
        }, iter: 100);
    }

    [Fact]
    public void Pages_hold_as_many_lines_as_fit_and_no_more()
    {
        var document = BookPages.LayOut(10, Width, BookPages.Lines(25, "a"));
        Assert.Equal([10, 10, 5], document.Pages.Select(page => BookPages.TextOf(page).Length));
        var bottom = document.Pages[0].Height - TestStyles.Plain.Spacing.Bottom;
        Assert.All(document.Pages.SelectMany(BookPages.WordsOf), line => Assert.True(line.Y < bottom));
    }

    [Fact]
    public void Baselines_of_running_text_are_a_leading_apart()
    {
        var lines = BookPages.WordsOf(BookPages.LayOut(10, Width, BookPages.Lines(5, "a")).Pages[0]);
        var leading = TestStyles.Plain.Scale.Leading * 25.4 / 72;
        Assert.All(lines.Zip(lines.Skip(1)), pair => Assert.Equal(leading, pair.Second.Y - pair.First.Y, 1e-9));
    }

    [Fact]
    public void Blocks_kept_together_go_to_the_next_page_when_they_do_not_fit_the_rest_of_this_one()
    {
        var document = BookPages.LayOut(12, Width,
            BookPages.Lines(6, "a"), new KeepTogetherBlock([BookPages.Lines(4, "b"), BookPages.Lines(4, "c")]));
        Assert.Equal(6, BookPages.TextOf(document.Pages[0]).Length);
        Assert.Equal(["b1", "b2", "b3", "b4", "c1", "c2", "c3", "c4"], BookPages.TextOf(document.Pages[1]));
    }

    [Fact]
    public void Blocks_kept_together_stay_when_they_fit()
    {
        var document = BookPages.LayOut(16, Width,
            BookPages.Lines(6, "a"), new KeepTogetherBlock([BookPages.Lines(4, "b"), BookPages.Lines(4, "c")]));
        Assert.Single(document.Pages);
    }

    [Fact]
    public void Blocks_kept_together_that_are_longer_than_a_page_are_divided_and_start_where_they_stand()
    {
        var document = BookPages.LayOut(10, Width,
            BookPages.Lines(2, "a"), new KeepTogetherBlock([BookPages.Lines(9, "b"), BookPages.Lines(9, "c")]));
        Assert.Contains("b1", BookPages.TextOf(document.Pages[0]));
        Assert.Equal(20, document.Pages.Sum(page => BookPages.TextOf(page).Length));
    }

    [Fact]
    public void A_heading_with_blocks_kept_together_that_fill_a_page_never_stands_alone()
    {
        var document = BookPages.LayOut(10, Width,
            BookPages.Lines(2, "a"), new HeadingBlock(2, [new TextInline("Head")]), new KeepTogetherBlock([BookPages.Lines(5, "b"), BookPages.Lines(4, "c")]));
        var at = document.Pages.Select(BookPages.TextOf).Single(lines => lines.Contains("Head")).ToList();
        Assert.Equal("b1", at[at.IndexOf("Head") + 1]);
        Assert.Equal("b2", at[at.IndexOf("Head") + 2]);
    }

    [Fact]
    public void A_callout_that_fits_a_page_is_not_divided_and_its_ground_is_behind_all_of_it()
    {
        var document = BookPages.LayOut(12, Width,
            BookPages.Lines(8, "a"), new CalloutBlock(CalloutKind.Caution, "Knives", [BookPages.Lines(3, "b")]));
        Assert.Equal(["Knives", "b1", "b2", "b3"], BookPages.TextOf(document.Pages[1]));
        var ground = GroundOf(document.Pages[1]);
        var lines = BookPages.WordsOf(document.Pages[1]);
        Assert.True(ground.Top < lines[0].Y - 2 && ground.Bottom > lines[^1].Y + 1);
    }

    [Fact]
    public void A_callout_longer_than_a_page_is_divided_with_its_ground_on_each_page()
    {
        var document = BookPages.LayOut(8, Width, new CalloutBlock(CalloutKind.Tip, "Long", [BookPages.Lines(12, "b")]));
        Assert.True(document.Pages.Count > 1);
        foreach (var page in document.Pages)
        {
            var ground = GroundOf(page);
            Assert.All(BookPages.WordsOf(page), line => Assert.InRange(line.Y, ground.Top, ground.Bottom));
            Assert.True(ground.Bottom <= page.Height - TestStyles.Plain.Spacing.Bottom + 0.01);
        }
    }

    [Fact]
    public void A_long_list_of_cautions_stays_on_one_page_if_it_fits_one()
    {
        var items = Enumerable.Range(1, 7).Select(i => (IReadOnlyList<Block>)[BookPages.Lines(2, $"i{i}-")]).ToList();
        for (var above = 1; above < 20; above++)
        {
            var document = BookPages.LayOut(20, Width,
                BookPages.Lines(above, "a"), new CalloutBlock(CalloutKind.Caution, "Care", [new ListBlock(ListKind.Bulleted, 1, items)]));
            var page = document.Pages.Single(page => BookPages.TextOf(page).Contains("Care"));
            Assert.Equal([1, 2, 3, 4, 5, 6, 7], ItemsOn(page));
        }
    }

    [Fact]
    public void A_table_of_six_rows_is_not_divided_and_one_of_seven_is()
    {
        Assert.Equal([0, 6], RowsByPage(6));
        var seven = RowsByPage(7);
        Assert.Equal(7, seven.Sum());
        Assert.True(seven[0] >= 2);
    }

    [Fact]
    public void A_note_that_keeps_with_a_table_takes_its_last_two_rows_along()
    {
        var note = new CalloutBlock(CalloutKind.Tip, "Note", [BookPages.Lines(2, "n")]);
        var table = Table(8);
        var apart = BookPages.LayOut(14, Width, table, note);
        Assert.Equal("Note", BookPages.TextOf(apart.Pages[1])[0]);
        var kept = BookPages.LayOut(14, Width, table, note with { KeepsWithPrevious = true });
        Assert.Equal(["r7", "r8", "Note", "n1", "n2"], BookPages.TextOf(kept.Pages[1]));
    }

    [Fact]
    public void A_heading_and_the_words_below_it_keep_with_the_first_rows_of_the_table_they_introduce()
    {
        for (var above = 1; above < 16; above++)
        {
            for (var lines = 0; lines <= 3; lines++)
            {
                var lead = lines == 0 ? [] : new Block[] { BookPages.Lines(lines, "lead") };
                var document = BookPages.LayOut(16, Width,
                    [BookPages.Lines(above, "a"), new HeadingBlock(3, [new TextInline("Head")]), .. lead, Table(9)]);
                var page = BookPages.TextOf(document.Pages.Single(page => BookPages.TextOf(page).Contains("Head")));
                Assert.Equal(lines, page.Count(line => line.StartsWith("lead", StringComparison.Ordinal)));
                Assert.Contains("r2", page);
            }
        }
    }

    [Fact]
    public void Only_the_last_two_lines_of_a_long_paragraph_go_along_with_the_table_below_it()
    {
        var document = BookPages.LayOut(14, Width, BookPages.Lines(12, "a"), Table(9));
        Assert.Equal(["a11", "a12", "r1"], BookPages.TextOf(document.Pages[1])[..3]);
    }

    [Fact]
    public void The_last_words_of_a_step_or_a_list_do_not_go_along_with_a_table_that_follows()
    {
        Block[] groups =
        [
            new KeepTogetherBlock([BookPages.Lines(12, "a")]),
            new ListBlock(ListKind.Bulleted, 1, [[BookPages.Lines(12, "a")]]),
        ];
        foreach (var group in groups)
        {
            var document = BookPages.LayOut(14, Width, group, Table(9));
            Assert.Equal("r1", BookPages.TextOf(document.Pages[1])[0]);
        }
    }

    private static TableBlock Table(int rows) =>
        new([ColumnAlignment.Left], [], [.. Enumerable.Range(1, rows).Select(i => new TableRow([new TableCell([new TextInline($"r{i}")])]))]);

    private static int[] RowsByPage(int rows)
    {
        var document = BookPages.LayOut(14, Width, BookPages.Lines(8, "a"), Table(rows));
        return [.. document.Pages.Select(page => BookPages.TextOf(page).Count(line => line.StartsWith('r')))];
    }

    private static int[] ItemsOn(Page page) =>
        [.. BookPages.TextOf(page).Where(line => line.StartsWith('i')).Select(line => line[1] - '0').Distinct()];

    [Fact]
    public void A_page_break_starts_a_page_and_two_in_succession_are_one()
    {
        var document = BookPages.LayOut(12, Width,
            new PageBreakBlock(), BookPages.Lines(1, "a"), new PageBreakBlock(), new PageBreakBlock(), BookPages.Lines(1, "b"), new PageBreakBlock());
        Assert.Equal([["a1"], ["b1"]], document.Pages.Select(BookPages.TextOf));
    }

    [Fact]
    public void A_figure_stays_with_its_caption()
    {
        var document = BookPages.LayOut(14, Width,
            BookPages.Lines(7, "a"), new FigureBlock(new SampleDrawing(0.25), "A sheet.", [new TextInline("Below")], FigureWidth.Full));
        Assert.Equal(["Below"], BookPages.TextOf(document.Pages[1]));
    }

    [Fact]
    public void A_row_higher_than_a_page_is_a_problem_that_names_its_source()
    {
        var problems = new List<LayoutProblem>();
        var source = new BlockSource("steps/02.md", 30);
        BookPages.LayOut(4, 40, TestStyles.Plain, problems,
            new TableBlock([ColumnAlignment.Left], [], [new TableRow([new TableCell(BookPages.Lines(9, "a").Content)])]) { Source = source });
        var problem = Assert.Single(problems);
        Assert.Equal(source, problem.Source);
        Assert.Contains("mm high", problem.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_drawing_that_does_not_keep_to_its_width_is_a_problem()
    {
        var problems = new List<LayoutProblem>();
        BookPages.LayOut(40, 60, TestStyles.Plain, problems, new FigureBlock(new StubbornDrawing(), "A board.", []));
        Assert.Contains("80 mm wide", Assert.Single(problems).Message, StringComparison.Ordinal);
    }

    private static (double Top, double Bottom) GroundOf(Page page)
    {
        var rectangle = page.Items.OfType<ArtifactItem>().SelectMany(artifact => artifact.Items).OfType<PathItem>()
            .First(path => path.Fill == TestStyles.Plain.Palette.Tint);
        return (rectangle.Path.Points.Min(point => point.Y), rectangle.Path.Points.Max(point => point.Y));
    }

    private sealed class StubbornDrawing : IDrawing
    {
        public DrawnFigure Draw(double maxWidth, double maxHeight, Styles.StyleSheet styles) => new(80, 10, []);
    }
}
