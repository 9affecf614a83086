using Pattern.Press.Conformance;
using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Export.Pdf;
using Pattern.Press.Typesetting.Layout;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Structure;
using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Typesetting.Tests.Layout;

public class BookTests
{
    public static TheoryData<string> Sheets => ["plain", "display"];

    [Fact]
    public void Contents_name_the_page_of_every_heading_with_a_bookmark()
    {
        var document = BookPages.LayOut(14, 120,
            new ContentsBlock(2),
            new PageBreakBlock(), new HeadingBlock(1, [new TextInline("First")], "First"), BookPages.Lines(20, "a"),
            new HeadingBlock(2, [new TextInline("Second")], "Second"), BookPages.Lines(12, "b"),
            new HeadingBlock(3, [new TextInline("Deep")], "Deep"), BookPages.Lines(2, "c"),
            new HeadingBlock(1, [new TextInline("Unlisted")]), BookPages.Lines(2, "d"));
        var entries = BookPages.TextOf(document.Pages[0]);
        Assert.Equal([$"First {PageOf(document, "First")}", $"Second {PageOf(document, "Second")}"], entries);
        Assert.NotEqual(PageOf(document, "First"), PageOf(document, "Second"));
        Assert.Equal("TOC(TOCI(P(Link) TOC(TOCI(P(Link)))))", BookPages.Shape(document.Structure.Children[0].Children[0]));
    }

    [Fact]
    public void Contents_link_to_the_places_they_name()
    {
        var document = BookPages.LayOut(14, 120, new ContentsBlock(1), new PageBreakBlock(), new HeadingBlock(1, [new TextInline("First")], "First"));
        var link = Assert.Single(document.Pages[0].Links);
        Assert.Equal(link.Target, Assert.Single(document.Pages[1].Destinations).Name);
        Assert.Equal(Role.Link, link.Element.Role);
    }

    [Fact]
    public void The_number_of_a_page_in_the_text_is_that_page_even_when_it_moves_the_text()
    {
        // The number makes the first paragraph longer or shorter, and so may move the heading it names.
        for (var filler = 1; filler < 24; filler++)
        {
            Block[] blocks =
            [
                new ParagraphBlock([new TextInline(string.Concat(Enumerable.Repeat("word ", filler)) + "page "), new PageNumberInline("end"), new TextInline(".")]),
                .. Enumerable.Range(0, 11).Select(i => BookPages.Lines(9, $"a{i}-")),
                new HeadingBlock(1, [new TextInline("End")]) { Destination = "end" },
            ];
            var document = BookPages.LayOut(10, 60, blocks);
            var text = string.Concat(BookPages.WordsOf(document.Pages[0]).TakeWhile(line => !line.Text.StartsWith('a')).Select(line => line.Text));
            Assert.EndsWith($"page {PageOf(document, "End")}.", text, StringComparison.Ordinal);

            // The room for it is its own, too: what follows it stands where it ends.
            var runs = document.Pages[0].Items.OfType<TaggedItem>().SelectMany(item => item.Items).OfType<TextItem>().ToArray();
            var number = Array.FindIndex(runs, run => run.Run.Text == PageOf(document, "End"));
            Assert.Equal(runs[number].X + runs[number].Run.Width, runs[number + 1].X, 0.001);
        }
    }

    [Fact]
    public void Body_pages_count_from_one_after_the_cover_and_templates_by_themselves()
    {
        var book = BookPages.Book(10, 100, TestStyles.Plain,
            new FixedPart([Fixed()], null), new FlowPart([BookPages.Lines(12, "a")]), new FixedPart([Fixed(), Fixed()], "T"),
            new FlowPart([BookPages.Lines(2, "b")]), new FixedPart([Fixed()], "T"));
        var document = BookLayout.LayOut(book, TestStyles.Plain, []);
        Assert.Equal(["", "1", "2", "T1", "T2", "3", "T3"], document.Pages.Select(page => page.Label));
    }

    [Fact]
    public void A_part_starts_a_page_unless_it_flows_on()
    {
        var book = BookPages.Book(10, 100, TestStyles.Plain,
            new FlowPart([BookPages.Lines(2, "a")]) { Title = "One" }, new FlowPart([BookPages.Lines(2, "b")], FlowsOn: true), new FlowPart([BookPages.Lines(2, "c")]));
        var document = BookLayout.LayOut(book, TestStyles.Plain, []);
        Assert.Equal([["a1", "a2", "b1", "b2"], ["c1", "c2"]], document.Pages.Select(BookPages.TextOf));
        Assert.Equal("Document(Sect(P) Sect(P) Sect(P))", BookPages.Shape(document.Structure));
        Assert.Equal("One", document.Structure.Children[0].Title);
    }

    [Fact]
    public void Heading_levels_in_the_structure_begin_at_one_and_skip_none()
    {
        // ISO 14289-1, 7.4.2.
        var document = BookPages.LayOut(30, 100,
            new HeadingBlock(2, [new TextInline("a")]), new HeadingBlock(4, [new TextInline("b")]), new HeadingBlock(1, [new TextInline("c")]), new HeadingBlock(3, [new TextInline("d")]));
        Assert.Equal("Document(Sect(H1 H2 H1 H2))", BookPages.Shape(document.Structure));
    }

    [Fact]
    public void The_outline_is_nested_by_level_and_leads_to_places_with_names_of_their_own()
    {
        var document = BookPages.LayOut(30, 100,
            new HeadingBlock(1, [new TextInline("A")], "A"), new HeadingBlock(2, [new TextInline("B")], "B") { Destination = "heading-3" },
            new HeadingBlock(2, [new TextInline("C")], "C"), new HeadingBlock(1, [new TextInline("D")], "D"));
        Assert.Equal("A(B C) D", Outline(document.Bookmarks));
        var places = document.Pages.SelectMany(page => page.Destinations.Select(place => place.Name)).ToArray();
        Assert.Equal(4, places.Distinct().Count());
        Assert.All(Targets(document.Bookmarks), target => Assert.Contains(target, places));
    }

    [Fact]
    public void Items_of_lists_have_hanging_labels_and_nest_in_the_structure()
    {
        var document = BookPages.LayOut(30, 100, new ListBlock(ListKind.Numbered, 9,
        [
            [BookPages.Lines(2, "a")],
            [BookPages.Lines(1, "b"), new ListBlock(ListKind.Bulleted, 1, [[BookPages.Lines(1, "c")]])],
        ]));
        Assert.Equal("Document(Sect(L(LI(Lbl LBody(P)) LI(Lbl LBody(P L(LI(Lbl LBody(P))))))))", BookPages.Shape(document.Structure));
        var lines = BookPages.WordsOf(document.Pages[0]);
        var nine = lines.Single(line => line.Text == "9.");
        var ten = lines.Single(line => line.Text == "10.");
        var texts = lines.Where(line => line.Text.Trim() is "a1" or "a2" or "b1").ToArray();
        Assert.Equal(nine.Right, ten.Right, 1e-6);
        Assert.Single(texts.Select(line => Math.Round(line.X, 6)).Distinct());
        Assert.True(ten.Right < texts[0].X);
        Assert.Equal(nine.Y, texts[0].Y, 1e-9);
        Assert.Equal([ListNumbering.Decimal, ListNumbering.Disc], BookPages.All(document.Structure).Where(e => e.Role == Role.L).Select(e => e.Numbering!.Value));
    }

    [Fact]
    public void Boxes_to_tick_are_drawn_and_not_read()
    {
        var document = BookPages.LayOut(30, 100, new ListBlock(ListKind.Checklist, 1, [[BookPages.Lines(1, "a")], [BookPages.Lines(1, "b")]]));
        Assert.Equal("Document(Sect(L(LI(LBody(P)) LI(LBody(P)))))", BookPages.Shape(document.Structure));
        Assert.Equal(2, document.Pages[0].Items.OfType<ArtifactItem>().Where(item => item.Kind == ArtifactKind.Layout).SelectMany(item => item.Items).Count());
    }

    [Fact]
    public void A_figure_stands_beside_its_text_with_its_top_near_the_first_line()
    {
        var (text, box, _) = Beside(width: 150, lines: 5, proportion: 0.8);
        Assert.True(box.X > text.Max(line => line.Right));
        Assert.InRange(box.Y, text[0].Y - 4, text[0].Y);
        Assert.Equal(0.42, box.Width / (150 - TestStyles.Plain.Spacing.Gutter), 0.001);
    }

    [Theory]
    [InlineData(80, 5, 0.8)] // too narrow a column
    [InlineData(150, 5, 0.2)] // a figure much wider than high
    [InlineData(150, 40, 0.8)] // a text much longer than the figure
    public void Text_and_figure_are_stacked_where_they_would_not_sit_well_side_by_side(double width, int lines, double proportion)
    {
        var (text, box, shape) = Beside(width, lines, proportion);
        Assert.True(box.Y > text.Max(line => line.Y));
        Assert.Equal("Document(Sect(P Figure))", shape);
    }

    [Fact]
    public void Figures_stand_at_the_left_of_ragged_books_and_in_the_middle_of_justified_ones()
    {
        Assert.Equal(TestStyles.Plain.Spacing.Left, FigureLeft(TestStyles.Plain), 1e-9);
        Assert.Equal(TestStyles.Display.Spacing.Left + (100 * 0.3), FigureLeft(TestStyles.Display), 1e-9);

        static double FigureLeft(StyleSheet styles)
        {
            var document = BookPages.LayOut(40, 100, styles, [], new FigureBlock(new SampleDrawing(0.5), "A sheet.", [], FigureWidth.Small));
            return BookPages.All(document.Structure).Single(element => element.Role == Role.Figure).Box!.Value.X;
        }
    }

    [Fact]
    public void A_link_to_a_place_that_does_not_exist_is_a_problem_that_names_its_source()
    {
        var problems = new List<LayoutProblem>();
        var source = new BlockSource("booklet.md", 4);
        BookPages.LayOut(10, 100, TestStyles.Plain, problems,
            new ParagraphBlock([new LinkInline([new TextInline("there")], "step-99", false)]) { Source = source });
        Assert.Equal(source, Assert.Single(problems).Source);
        Assert.Contains("step-99", problems[0].Message, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Sheets))]
    public void A_book_with_every_kind_of_block_has_sound_pages(string sheet)
    {
        var styles = sheet == "plain" ? TestStyles.Plain : TestStyles.Display;
        var problems = new List<LayoutProblem>();
        var document = BookLayout.LayOut(SampleBook.Make(), styles, problems);
        Assert.Empty(problems);
        var elements = BookPages.All(document.Structure).ToHashSet(ReferenceEqualityComparer.Instance);
        var tagged = document.Pages.SelectMany(page => page.Items).OfType<TaggedItem>().ToArray();
        Assert.All(document.Pages.SelectMany(page => page.Items), item => Assert.True(item is TaggedItem or ArtifactItem));
        Assert.All(tagged, item => Assert.Contains(item.Element, elements));
        Assert.All(tagged.SelectMany(item => item.Items), item => Assert.False(item is TaggedItem or ArtifactItem));
        Assert.All(document.Pages.SelectMany(page => page.Links), link => Assert.Contains(link.Element, elements));
        foreach (var page in document.Pages)
            Assert.All(BookPages.WordsOf(page), words => Assert.True(words.X >= styles.Spacing.Left - 0.01 && words.Right <= page.Width - styles.Spacing.Right + 0.01, words.Text));

        // Leaves of the tree have content; what has parts has its content in them.
        var used = tagged.Select(item => item.Element).ToHashSet(ReferenceEqualityComparer.Instance);
        foreach (var element in BookPages.All(document.Structure))
        {
            if (element.Children.Count > 0)
                Assert.DoesNotContain(element, used);
            else if (element.Role is not (Role.TD or Role.TH))
                Assert.Contains(element, used);
        }

        Assert.All(BookPages.All(document.Structure).Where(e => e.Role == Role.Figure), figure => Assert.True(figure.AlternativeText!.Length > 0 && figure.Box is not null));
    }

    [Theory]
    [MemberData(nameof(Sheets))]
    public void A_book_with_every_kind_of_block_makes_a_conforming_file(string sheet)
    {
        var styles = sheet == "plain" ? TestStyles.Plain : TestStyles.Display;
        using var file = new MemoryStream();
        PdfExporter.Write(BookLayout.LayOut(SampleBook.Make(), styles, []), file);
        Assert.Empty(PdfConformance.Check(file.ToArray()));
    }

    [Fact]
    public void The_same_book_gives_the_same_pages()
    {
        var (one, two) = (Laid(), Laid());
        Assert.Equal(one, two);

        static string[] Laid() => [.. BookLayout.LayOut(SampleBook.Make(), TestStyles.Plain, []).Pages
            .SelectMany(page => BookPages.WordsOf(page).Select(words => FormattableString.Invariant($"{words.Text}|{words.X:R}|{words.Y:R}|{words.Right:R}")))];
    }

    [Fact]
    public void Running_heads_and_page_numbers_stand_in_the_margins_and_are_not_read()
    {
        var book = BookPages.Book(10, 100, TestStyles.Plain, new FlowPart([BookPages.Lines(12, "a")])) with { RunningTitle = "A box" };
        var document = BookLayout.LayOut(book, TestStyles.Plain, []);
        foreach (var page in document.Pages)
        {
            Assert.DoesNotContain(BookPages.WordsOf(page), words => words.Text == "A box");
            var margins = BookPages.Unread(page);
            Assert.Equal(["A box", page.Label], margins.Select(words => words.Text));
            Assert.True(margins[0].Y < TestStyles.Plain.Spacing.Top && margins[1].Y > page.Height - TestStyles.Plain.Spacing.Bottom);
            Assert.Contains(page.Items, item => item is ArtifactItem { Kind: ArtifactKind.Header });
            Assert.Contains(page.Items, item => item is ArtifactItem { Kind: ArtifactKind.Footer });
        }
    }

    [Fact]
    public void A_book_without_text_still_has_a_page() =>
        Assert.Single(BookLayout.LayOut(BookPages.Book(10, 100, TestStyles.Plain), TestStyles.Plain, []).Pages);

    private static FixedPage Fixed() => new() { Width = 210, Height = 297, Contents = [] };

    [Fact]
    public void A_figure_too_wide_to_stand_beside_text_goes_below_it()
    {
        // Two fifths of the column are less than the drawing takes; the column itself is enough.
        var document = BookPages.LayOut(80, 120, new BesideBlock([BookPages.Lines(12, "a")], new FigureBlock(new RigidDrawing(60), "A square.", []) { Width = FigureWidth.Full }));
        var figure = BookPages.All(document.Structure).Single(element => element.Role == Role.Figure).Box!.Value;
        Assert.Equal(TestStyles.Plain.Spacing.Left, figure.X, 0.01);
        Assert.All(BookPages.WordsOf(document.Pages[0]), words => Assert.True(words.Y < figure.Y));
    }

    // A square that is as large as it is, like the one for checking a printer.
    private sealed class RigidDrawing(double side) : IDrawing
    {
        public DrawnFigure Draw(double maxWidth, double maxHeight, StyleSheet styles) =>
            new(side, side, [new PathItem(PathBuilder.Rectangle(0, 0, side, side), null, styles.Lines.CutStroke)]);
    }

    private static (WordsOnPage[] Text, (double X, double Y, double Width, double Height) Box, string Shape) Beside(double width, int lines, double proportion)
    {
        var document = BookPages.LayOut(80, width, new BesideBlock([BookPages.Lines(lines, "a")], new FigureBlock(new SampleDrawing(proportion), "A sheet.", [])));
        var figure = BookPages.All(document.Structure).Single(element => element.Role == Role.Figure);
        return ([.. BookPages.WordsOf(document.Pages[0])], figure.Box!.Value, BookPages.Shape(document.Structure));
    }

    private static string PageOf(PressDocument document, string heading) =>
        document.Pages.Single(page => BookPages.WordsOf(page).Any(words => words.Text.Trim() == heading && words.Element!.Role is Role.H1 or Role.H2 or Role.H3)).Label;

    private static string Outline(IReadOnlyList<Bookmark> bookmarks) =>
        string.Join(" ", bookmarks.Select(mark => mark.Children.Count == 0 ? mark.Title : $"{mark.Title}({Outline(mark.Children)})"));

    private static IEnumerable<string> Targets(IReadOnlyList<Bookmark> bookmarks) =>
        bookmarks.SelectMany(mark => Targets(mark.Children).Prepend(mark.Destination));
}
