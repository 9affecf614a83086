using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Export.Pdf;
using Pattern.Press.Typesetting.Fonts;
using Pattern.Press.Typesetting.Layout;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Structure;
using Pattern.Press.Typesetting.Styles;
using Pattern.Press.Typesetting.Tests.Export;

namespace Pattern.Press.Conformance.Features;

/// <summary>A small document that shows one thing a booklet can hold.</summary>
/// <param name="Name">What it shows.</param>
/// <param name="Structure">The structure its file must have below the section, in the words of the standard.</param>
/// <param name="Blocks">What is in it, below a heading.</param>
internal sealed record Feature(string Name, string Structure, IReadOnlyList<Block> Blocks)
{
    public static IReadOnlyList<Feature> All { get; } =
    [
        new("headings", "H2 P H3 P H4 P H2 P",
            [Heading(2, "Cutting"), Paragraph("Along the lines."), Heading(3, "Straight cuts"), Paragraph("With a ruler."), Heading(4, "Long ones"), Paragraph("In two goes."), Heading(2, "Folding"), Paragraph("By hand.")]),
        new("paragraphs", "P P P",
            [
                new ParagraphBlock([Words("A box that opens like a flower.")], ParagraphKind.Lead),
                Paragraph("Plain text of the body that is long enough to fill more than one line of the page, whatever face the theme sets it in, because it goes on and on."),
                new ParagraphBlock([Words("Small print.")], ParagraphKind.Small),
            ]),
        new("emphasis", "P(Span Code)",
            [new ParagraphBlock([Words("Fold "), new TextInline("once", Emphasis.Italic), Words(" and "), new TextInline("firmly", Emphasis.Bold), Words("; type "), new TextInline("100%", Emphasis.Literal)])]),
        new("lines", "P", [new ParagraphBlock([Words("First line"), new BreakInline(), Words("and second line.")])]),
        new("nested lists", "L(LI(Lbl LBody(P L(LI(Lbl LBody(P L(LI(Lbl LBody(P)))))))) LI(Lbl LBody(P)))",
            [new ListBlock(ListKind.Numbered, 3,
            [
                [Paragraph("Turn the sheet."), new ListBlock(ListKind.Bulleted, 1, [[Paragraph("By a quarter."), new ListBlock(ListKind.Bulleted, 1, [[Paragraph("To the left.")]])]])],
                [Paragraph("Fold it.")],
            ])]),
        new("checklists", "L(LI(LBody(P)) LI(LBody(P)))", [new ListBlock(ListKind.Checklist, 1, [[Paragraph("A knife")], [Paragraph("A ruler")]])]),
        new("tables with spans", "Table(Caption THead(TR(TH TH)) TBody(TR(TH TD TD) TR(TD)))",
            [new TableBlock(
                [ColumnAlignment.Left, ColumnAlignment.Right, ColumnAlignment.Right],
                [new TableRow([new TableCell([Words("Piece")]), new TableCell([Words("Cut size")], ColumnSpan: 2)])],
                [
                    new TableRow([new TableCell([Words("Lid")], IsHeader: true), new TableCell([new MeasureInline("92 mm")]), new TableCell([new MeasureInline("3 5/8 in")])]),
                    new TableRow([new TableCell([Words("Mats are cut from what is left over")], ColumnSpan: 3)]),
                ])
            {
                Caption = [Words("Sizes of the pieces")],
            }]),
        new("tables over pages", $"Table(THead(TR(TH TH)) TBody({string.Join(' ', Enumerable.Repeat("TR(TH TD)", 80))}))",
            [new TableBlock(
                [ColumnAlignment.Left, ColumnAlignment.Right],
                [new TableRow([new TableCell([Words("Line")]), new TableCell([Words("At")])])],
                [.. Enumerable.Range(1, 80).Select(i => new TableRow([new TableCell([Words($"Line {i}")], IsHeader: true), new TableCell([new MeasureInline($"{i} mm")])]))])]),
        new("links", "P(Span Link Span Link Span)",
            [new ParagraphBlock(
            [
                Words("Turn to "), new LinkInline([Words("the first page, where the heading of this small document stands, which takes more words than fit on a single line of it")], "top", false),
                Words(" or write to "), new LinkInline([Words("example.org/box")], "https://example.org/box?piece=lid&size=2", true), Words("."),
            ])]),
        new("references to pages", "P", [new ParagraphBlock([Words("The key is on page "), new PageNumberInline("top"), Words(".")])]),
        new("pictures", "Figure Figure Div(Figure Caption)",
            [
                new ImageBlock(Sample.Photograph, "A smooth field of colours.", [], FigureWidth.Small),
                new ImageBlock(Sample.Cutout, "A disc with soft edges.", [], FigureWidth.Small),
                new ImageBlock(Sample.Photograph, "The same field again.", [Words("Shown twice, stored once")], FigureWidth.Small),
            ]),
        new("figures", "Div(Figure Caption) Figure",
            [
                new FigureBlock(new Leaf(), "A leaf, 40 mm wide.", [Words("A leaf of paper")], FigureWidth.Medium),
                new FigureBlock(new Leaf(), "Another leaf.", [], FigureWidth.Small),
            ]),
        new("rows of figures", "Div(Figure Caption) Div(Figure Caption)",
            [new FigureRowBlock([new FigureBlock(new Leaf(), "The first leaf.", [Words("First")]), new FigureBlock(new Leaf(), "The second leaf.", [Words("Second")])])]),
        new("text beside a figure", "P P Figure",
            [new BesideBlock([Paragraph("Fold the leaf."), Paragraph("Open it again.")], new FigureBlock(new Leaf(), "A leaf.", []))]),
        new("fractions", "P",
            [new ParagraphBlock([Words("Cut "), new MeasureInline("2 1/4 in"), Words(" and "), new MeasureInline("3 15/16 × 1/2 in"), Words(" (or "), new MeasureInline("58 × 101 mm"), Words("), no more.")])]),
        new("ligatures", "P", [Paragraph("The office fixes five baffling flaps, first offset by fifty; Thirty fjords affirm it.")]),
        new("signs", "P", [Paragraph("“Quotes”, ‘quotes’, naïve café — 3′ 6″ – ½ × ¼ … 20 °C ± 1, −5, 100 %, 250 g/m², €3, Łódź and straße.")]),
        new("callouts", "Div(P P L(LI(Lbl LBody(P)))) Div(P P)",
            [
                new CalloutBlock(CalloutKind.Caution, "Sharp blades", [Paragraph("Cut away from your hand."), new ListBlock(ListKind.Bulleted, 1, [[Paragraph("Cap the knife.")]])]),
                new CalloutBlock(CalloutKind.Tip, "Score first", [Paragraph("A whole sheet is easier to hold.")]),
            ]),
        new("quotes and literal lines", "BlockQuote(P) P(Code)", [new QuoteBlock([Paragraph("Measure with the ruler you cut with.")]), new LiteralBlock(["base 86 x 86", "lid  92 x 92"])]),
        new("rules and breaks", "P P P", [Paragraph("Before."), new RuleBlock(), Paragraph("After."), new PageBreakBlock(), Paragraph("On the next page.")]),
        new("contents", "H2 TOC(TOCI(P(Link) TOC(TOCI(P(Link)))) TOCI(P(Link))) H2",
            [new HeadingBlock(2, [Words("Contents")]), new ContentsBlock(2), new HeadingBlock(2, [Words("Folding")], "Folding")]),
        new("parts of a page", "H2 P Figure Table(THead(TR(TH TH)) TBody(TR(TH TD))) H2 P",
            [
                new PageShareBlock(
                    [
                        Heading(2, "A tray"),
                        new BesideBlock([Paragraph("For soap.")], new FigureBlock(new Leaf(), "A leaf.", [])),
                        new TableBlock(
                            [ColumnAlignment.Left, ColumnAlignment.Left],
                            [new TableRow([new TableCell([Words("Size")]), new TableCell([Words("Usually")])])],
                            [new TableRow([new TableCell([Words("Height")], IsHeader: true), new TableCell([new MeasureInline("20 mm")])])]),
                    ],
                    2),
                new PageShareBlock([Heading(2, "A box"), Paragraph("For tea.")], 2),
            ]),
        new("steps", "H2 P",
            [new KeepTogetherBlock([new HeadingBlock(2, [Words("Fold the lid")], "Fold the lid") { Overline = "Step 3" }, Paragraph("Fold it.")])]),
    ];

    /// <summary>The file of the document in a theme.</summary>
    public byte[] File(StyleSheet styles)
    {
        using var file = new MemoryStream();
        PdfExporter.Write(Pages(styles), file);
        return file.ToArray();
    }

    /// <summary>The pages of the document in a theme.</summary>
    public PressDocument Pages(StyleSheet styles)
    {
        var problems = new List<LayoutProblem>();
        var pages = BookLayout.LayOut(Book(styles), styles, problems);
        Assert.Empty(problems);
        return pages;
    }

    private Book Book(StyleSheet styles) => new()
    {
        Title = $"A small document: {Name}",
        Author = "Orrin Vale",
        Subject = "It shows one thing.",
        Language = "en-GB",
        RunningTitle = "A small document",
        Paper = (210, 297),
        Parts =
        [
            new FlowPart([new HeadingBlock(1, [Words("A small document")], "A small document") { Destination = "top" }, .. Blocks]) { Title = Name },
            new FixedPart([Template(styles)], "T") { Title = "Templates" },
        ],
    };

    private static FixedPage Template(StyleSheet styles) => new()
    {
        Width = 210,
        Height = 297,
        Bookmark = "Template",
        Destination = "template",
        Contents =
        [
            new FixedContent(Role.P, [new TextItem(Shaper.Shape("Template", styles.Text.Regular, 9), 20, 20, styles.Palette.Text)]),
            new FixedContent(Role.Figure, [new PathItem(PathBuilder.Rectangle(20, 30, 100, 60), null, styles.Lines.CutStroke)], "A sheet, 100 mm × 60 mm.") { Box = (20, 30, 100, 60) },
        ],
    };

    private static TextInline Words(string text) => new(text);

    private static ParagraphBlock Paragraph(string text) => new([Words(text)]);

    private static HeadingBlock Heading(int level, string text) => new(level, [Words(text)]);

    /// <summary>A round leaf with its fold and some lettering.</summary>
    private sealed class Leaf : IDrawing
    {
        public DrawnFigure Draw(double maxWidth, double maxHeight, StyleSheet styles)
        {
            var side = Math.Min(40, Math.Min(maxWidth, maxHeight));
            return new DrawnFigure(side, side,
            [
                new PathItem(PathBuilder.Circle(side / 2, side / 2, (side / 2) - 1), styles.Lines.Card, styles.Lines.CutStroke),
                new PathItem(PathBuilder.Line(1, side / 2, side - 1, side / 2), null, styles.Lines.ValleyStroke),
                new TextItem(Shaper.Shape("LEAF", styles.Text.Regular, styles.Scale.Drawing), side / 3, side / 3, styles.Palette.Text),
            ]);
        }
    }
}
