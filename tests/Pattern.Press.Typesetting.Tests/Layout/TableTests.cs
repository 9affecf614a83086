using CsCheck;
using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Layout;
using Pattern.Press.Typesetting.Layout.Elements;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Structure;

namespace Pattern.Press.Typesetting.Tests.Layout;

public class TableTests
{
    [Fact]
    public void The_header_is_shown_again_on_every_page_but_read_only_once()
    {
        var document = BookPages.LayOut(12, 120, Table(20));
        Assert.True(document.Pages.Count > 1);
        Assert.Contains("Name", BookPages.TextOf(document.Pages[0]));
        foreach (var page in document.Pages.Skip(1))
        {
            Assert.DoesNotContain("Name", BookPages.TextOf(page));
            var header = BookPages.Unread(page).First(words => words.Text.StartsWith("Name", StringComparison.Ordinal));
            Assert.True(header.Y < BookPages.WordsOf(page).Min(words => words.Y));
        }

        Assert.Equal(20, document.Pages.Sum(page => BookPages.TextOf(page).Count(words => words.StartsWith("row", StringComparison.Ordinal))));
    }

    [Fact]
    public void No_row_stands_alone_below_the_header_or_on_the_last_page()
    {
        // Every case of small tables, for what precedes them pulls at their rows; some of large ones.
        for (var rows = 2; rows <= 9; rows++)
        {
            for (var lines = 8; lines <= 16; lines++)
            {
                for (var before = 0; before <= 9; before++)
                    Check(rows, lines, before);
            }
        }

        Gen.Select(Gen.Int[10, 30], Gen.Int[8, 16], Gen.Int[0, 9]).Sample(Check, iter: 60);

        static void Check(int rows, int lines, int before)
        {
            var document = BookPages.LayOut(lines, 120, [BookPages.Lines(before + 1, "a"), Table(rows)]);
            foreach (var page in document.Pages)
            {
                var count = BookPages.TextOf(page).Count(words => words.StartsWith("row", StringComparison.Ordinal));
                Assert.True(count != 1, $"A page holds one row of {rows}.");
            }
        }
    }

    [Fact]
    public void The_first_row_of_a_group_stays_with_the_next()
    {
        for (var before = 0; before < 12; before++)
        {
            var table = Table(12, starts: [5]);
            var document = BookPages.LayOut(12, 120, [BookPages.Lines(before + 1, "a"), table]);
            var page = document.Pages.First(p => BookPages.TextOf(p).Contains("row 5"));
            Assert.Contains("row 6", BookPages.TextOf(page));
        }
    }

    [Fact]
    public void Numbers_end_below_each_other_with_figures_of_equal_width()
    {
        var block = new TableBlock([ColumnAlignment.Left, ColumnAlignment.Right], [],
        [
            new TableRow([new TableCell([new TextInline("a")]), new TableCell([new MeasureInline("111 mm")])]),
            new TableRow([new TableCell([new TextInline("b")]), new TableCell([new MeasureInline("98 mm")])]),
        ]);
        var words = BookPages.WordsOf(BookPages.LayOut(20, 120, block).Pages[0]);
        var numbers = words.Where(line => line.Text.EndsWith("mm", StringComparison.Ordinal)).ToArray();
        Assert.Equal(numbers[0].Right, numbers[1].Right, 1e-6);
        var figures = BookPages.LayOut(20, 120, block).Pages[0].Items.OfType<TaggedItem>().SelectMany(item => item.Items).OfType<TextItem>()
            .SelectMany(item => item.Run.Glyphs.Where(glyph => char.IsAsciiDigit(item.Run.Text[glyph.Start])).Select(glyph => glyph.Advance));
        Assert.Single(figures.Distinct());
    }

    [Fact]
    public void The_structure_has_heads_scopes_spans_and_a_cell_for_every_column()
    {
        var block = new TableBlock(
            [ColumnAlignment.Left, ColumnAlignment.Right, ColumnAlignment.Right],
            [new TableRow([Cell("Name"), Cell("Size", span: 2)])],
            [new TableRow([new TableCell([new TextInline("floor")], IsHeader: true), Cell("1"), Cell("2")]), new TableRow([Cell("wall")])])
        {
            Caption = [new TextInline("Sizes")],
        };
        var document = BookPages.LayOut(20, 120, block);
        Assert.Equal("Document(Sect(Table(Caption THead(TR(TH TH)) TBody(TR(TH TD TD) TR(TD TD TD)))))", BookPages.Shape(document.Structure));
        var heads = BookPages.All(document.Structure).Where(element => element.Role == Role.TH).ToArray();
        Assert.Equal([HeaderScope.Column, HeaderScope.Column, HeaderScope.Row], heads.Select(head => head.Scope!.Value));
        Assert.Equal([1, 2, 1], heads.Select(head => head.ColumnSpan));
        Assert.Equal("Sizes", BookPages.TextOf(document.Pages[0])[0]);
    }

    [Fact]
    public void A_row_with_too_many_cells_is_a_problem()
    {
        var problems = new List<LayoutProblem>();
        BookPages.LayOut(20, 120, TestStyles.Plain, problems, new TableBlock([ColumnAlignment.Left], [], [new TableRow([Cell("a"), Cell("b")])]));
        Assert.Contains("more cells", Assert.Single(problems).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Columns_use_no_more_than_there_is_and_no_less_than_their_widest_word()
    {
        Gen.Select(Gen.Select(Gen.Double[2, 20], Gen.Double[0, 90]).Array[1, 6], Gen.Double[60, 200]).Sample((cells, width) =>
        {
            var wishes = cells.Select((cell, i) => new CellWish(i, 1, cell.Item1, cell.Item1 + cell.Item2)).ToArray();
            var widths = ColumnWidths.Share(cells.Length, wishes, width);
            Assert.True(widths.Sum() <= width + 1e-9);
            if (cells.Sum(cell => cell.Item1) <= width)
                Assert.All(wishes, wish => Assert.True(widths[wish.Column] >= wish.Min - 1e-9));
            if (wishes.Sum(wish => wish.Max) <= width)
                Assert.All(wishes, wish => Assert.True(widths[wish.Column] >= wish.Max - 1e-9));
        }, iter: 500);
    }

    [Fact]
    public void Where_a_word_is_too_wide_for_the_table_only_its_own_column_is_short_of_room() =>
        Assert.Equal([12.0, 68, 20], ColumnWidths.Share(3, [new CellWish(0, 1, 12, 30), new CellWish(1, 1, 90, 90), new CellWish(2, 1, 20, 20)], 100));

    [Fact]
    public void A_short_column_keeps_its_words_on_one_line_beside_a_long_one() =>
        Assert.Equal([25.0, 75.0], ColumnWidths.Share(2, [new CellWish(0, 1, 12, 25), new CellWish(1, 1, 20, 300)], 100));

    private static TableCell Cell(string text, int span = 1) => new([new TextInline(text)], ColumnSpan: span);

    private static TableBlock Table(int rows, params int[] starts) => new(
        [ColumnAlignment.Left, ColumnAlignment.Right],
        [new TableRow([Cell("Name"), Cell("Size")])],
        [.. Enumerable.Range(1, rows).Select(i => new TableRow([Cell($"row {i}"), Cell($"{i} mm")], starts.Contains(i)))]);
}
