using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Fonts;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Structure;
using SkiaSharp;

namespace Pattern.Press.Typesetting.Tests.Layout;

/// <summary>A short book with every kind of block, inline and part.</summary>
internal static class SampleBook
{
    public static Book Make() => new()
    {
        Title = "A box for a lantern",
        Author = "Orrin Vale",
        Subject = "How to make a folded box for a small paper lantern.",
        Language = "en-GB",
        RunningTitle = "A box for a lantern",
        Paper = (210, 297),
        Parts =
        [
            new FixedPart([Cover()], null) { Title = "Cover" },
            new FlowPart(Opening()) { Title = "Before you begin" },
            new FlowPart(Measurements()) { Title = "Measurements" },
            new FlowPart([.. Enumerable.Range(1, 5).Select(Step)]) { Title = "Steps" },
            new FixedPart([Template(1), Template(2)], "T") { Title = "Templates" },
            new FlowPart(Closing()) { Title = "Credits" },
        ],
    };

    public static TextInline Words(string text) => new(text);

    public static ParagraphBlock Paragraph(string text) => new([Words(text)]);

    public static ImageData Picture(int width, int height)
    {
        using var bitmap = new SKBitmap(width, height);
        bitmap.Erase(new SKColor(0xb9, 0xc9, 0xc2));
        using var packed = bitmap.Encode(SKEncodedImageFormat.Png, 100);
        return new ImageData(ImageFormat.Png, packed.ToArray(), width, height);
    }

    private static FixedPage Cover() => new()
    {
        Width = 210,
        Height = 297,
        Contents =
        [
            new FixedContent(null, [new PathItem(PathBuilder.Rectangle(0, 0, 210, 120), TestStyles.Plain.Palette.Tint, null)]),
            new FixedContent(Role.H1, [new TextItem(Shaper.Shape("A box for a lantern", TestStyles.Plain.Display.Bold, 34), 34, 80, Colour.Black)]),
        ],
        Destination = "cover",
        Bookmark = "Cover",
    };

    private static FixedPage Template(int number) => new()
    {
        Width = 210,
        Height = 297,
        Contents =
        [
            new FixedContent(Role.Figure, [new PathItem(PathBuilder.Rectangle(20, 20, 170, 250), null, TestStyles.Plain.Lines.CutStroke)], "A template.")
            {
                Box = (20, 20, 170, 250),
            },
        ],
        Bookmark = $"Template {number}",
        BookmarkLevel = number,
    };

    private static Block[] Opening() =>
    [
        new HeadingBlock(1, [Words("Before you begin")], "Before you begin"),
        new ParagraphBlock(
            [Words("This small box keeps a paper lantern and a tea light flat in a drawer, and opens into a stand for it. You need one sheet of stiff card, a bone folder, and an evening without hurry.")],
            ParagraphKind.Lead),
        new ParagraphBlock(
        [
            Words("Every measurement is given twice. Work in "), new TextInline("one", Emphasis.Italic),
            Words(" column and stay with it: the two are fitted separately, so "), new MeasureInline("58 mm"), Words(" in the first and "),
            new MeasureInline("2 1/4 in"), Words(" in the second are both right, though not equal. The finished box is "),
            new MeasureInline("3 1/2 × 2 3/8 × 1 15/16 in"), Words(", or "), new MeasureInline("90 × 60 × 50 mm"),
            Words(". If a word is new to you, the key is on page "), new PageNumberInline("key"), Words("; the drawings of "),
            new LinkInline([Words("the first step")], "step-1", false), Words(" show how score lines look, and more patterns are at "),
            new LinkInline([Words("example.org/patterns")], "https://example.org/patterns", true), Words("."),
        ]),
        new ContentsBlock(2),
        new HeadingBlock(2, [Words("Print at actual size")], "Print at actual size"),
        new ParagraphBlock(
        [
            Words("In the print window choose "), new TextInline("Actual size", Emphasis.Bold), Words(" or type "),
            new TextInline("100%", Emphasis.Literal), Words(" as the scale. Then lay a ruler on the check square of the first template: its sides are exactly "),
            new MeasureInline("50 mm"), Words(". If they are not, nothing else will fit either."),
        ]),
        new CalloutBlock(CalloutKind.Caution, "Sharp blades", [Paragraph("A craft knife cuts card because it is sharper than it looks. Cut away from the hand that holds the ruler, change the blade before it drags, and put the cap on when you stop to fold.")]),
        new CalloutBlock(CalloutKind.Tip, "Score first, cut later", [Paragraph("A sheet is easier to hold while it is still whole. Score every line, then cut.")]),
        new HeadingBlock(3, [Words("What you need on the table")]),
        new ListBlock(ListKind.Checklist, 1,
        [
            [new ParagraphBlock([Words("stiff card, "), new MeasureInline("220 g/m²"), Words(", two sheets")])],
            [Paragraph("a bone folder, or the back of a butter knife wrapped in a scrap of paper so that it does not shine the surface of a dark card")],
            [Paragraph("glue that stays open for a minute")],
        ]),
        new HeadingBlock(3, [Words("How a template page works")]),
        new ListBlock(ListKind.Numbered, 8,
        [
            [Paragraph("Trim the right edge of the first tile along its grey line.")],
            [Paragraph("Lay it over the second tile so that the crosses meet."), new ListBlock(ListKind.Bulleted, 1, [[Paragraph("Hold both against a window.")], [Paragraph("Tape on the back, never on the front, for tape lifts the surface when the pencil lines are rubbed out."), new ListBlock(ListKind.Bulleted, 1, [[Paragraph("Low tack is enough.")]])]])],
            [Paragraph("Prick the corners through with a needle and join them with a score on the card.")],
        ]),
        new QuoteBlock([new ParagraphBlock([Words("Measure with the ruler you will cut with; two rulers are "), new TextInline("two", Emphasis.Italic), Words(" opinions. What the first says at the left edge of the card the second denies at the right.")])]),
        new RuleBlock(),
        new LiteralBlock(["base:  86 x 86 mm   1 x", "lid:   92 x 92 mm   1 x", "mats:  54 x 54 mm   8 x"]),
        new ImageBlock(Picture(1200, 500), "A plain ground.", [Words("A picture stands where the text stands.")], FigureWidth.Medium),
    ];

    private static Block[] Measurements()
    {
        string[] parts = ["floor", "wall, long", "wall, short", "gusset", "tab"];
        string[] pieces = ["Base", "Lid", "Platform", "Mats", "Sleeve"];
        var rows = new List<TableRow>();
        for (var p = 0; p < pieces.Length; p++)
        {
            for (var i = 0; i < parts.Length; i++)
            {
                rows.Add(new TableRow(
                [
                    new TableCell(i == 0 ? [Words(pieces[p])] : [], IsHeader: true),
                    new TableCell([Words(parts[i])]),
                    new TableCell([new MeasureInline($"{58 + (7 * i) + p} × {101 - i} mm")]),
                    new TableCell([new MeasureInline($"{2 + i} {1 + (2 * i)}/16 × {1 + p} 1/4 in")]),
                    new TableCell([Words($"{(i * p) + 1}")]),
                ], i == 0));
            }
        }

        return
        [
            new HeadingBlock(1, [Words("Measurements")], "Measurements"),
            Paragraph("Cut sizes, grain along the first figure. Stay in one column from the first cut to the last."),
            new TableBlock(
                [ColumnAlignment.Left, ColumnAlignment.Left, ColumnAlignment.Right, ColumnAlignment.Right, ColumnAlignment.Right],
                [new TableRow([new TableCell([Words("Piece")]), new TableCell([Words("Part")]), new TableCell([Words("Metric")]), new TableCell([Words("Imperial")]), new TableCell([Words("Cut")])])],
                rows)
            {
                Caption = [Words("Parts of one box")],
            },
            new TableBlock(
                [ColumnAlignment.Left, ColumnAlignment.Left],
                [new TableRow([new TableCell([Words("Stock")]), new TableCell([Words("What it is for, and what to use when it cannot be had")])])],
                [
                    new TableRow([new TableCell([Words("Stiff card")]), new TableCell([Words("The base and the lid. Anything from "), new MeasureInline("200 g/m²"), Words(" to "), new MeasureInline("270 g/m²"), Words(" folds well if it is scored; below that the walls bow, and above it the corners of the lid become thick.")])]),
                    new TableRow([new TableCell([Words("Patterned paper")]), new TableCell([Words("The mats. Wrapping paper does, if it is glued all over.")])]),
                ]),
            new TableBlock(
                [ColumnAlignment.Left, ColumnAlignment.Centre, ColumnAlignment.Right],
                [new TableRow([new TableCell([Words("Line")]), new TableCell([Words("Mark")]), new TableCell([Words("At")])])],
                [
                    new TableRow([new TableCell([Words("First")]), new TableCell([Words("A")]), new TableCell([new MeasureInline("12 mm")])]),
                    new TableRow([new TableCell([Words("Second")]), new TableCell([Words("B")]), new TableCell([new MeasureInline("104 mm")])]),
                    new TableRow([new TableCell([Words("All the others are found with the compass")], ColumnSpan: 3)]),
                ]),
        ];
    }

    private static KeepTogetherBlock Step(int number) => new(
    [
        new HeadingBlock(2, [Words(number == 3 ? "Free the four corner squares and fold each gusset inward along its diagonal score" : "Score the base")], $"Score the base {number}")
        {
            Overline = $"Step {number}",
            Destination = $"step-{number}",
        },
        new BesideBlock(
        [
            new ParagraphBlock([Words("Lay the sheet on the board with its long side against the fence. Score at "), new MeasureInline("89 mm"), Words(" and again at "), new MeasureInline("140 mm"), Words(", each time from edge to edge. Press once, firmly; a line that is gone over twice is two lines.")]),
            new ListBlock(ListKind.Numbered, 1,
            [
                [Paragraph("Turn the sheet by a quarter.")],
                [new ParagraphBlock([Words("Score at "), new MeasureInline("3 1/2 in"), Words(" and "), new MeasureInline("5 in"), Words(".")])],
                [Paragraph("Turn it over: valley folds are now on the side that faces you.")],
            ]),
            Paragraph("Do not fold yet."),
        ], new FigureBlock(new SampleDrawing(number == 4 ? 0.2 : 0.85), "A sheet with its scores.", [Words("The base, scored. Dashed lines fold towards you.")])),
        new CalloutBlock(CalloutKind.Tip, number == 2 ? "" : "Check", [Paragraph("The corner squares are equal. If one is longer, the sheet was not square.")]),
    ]);

    private static Block[] Closing() =>
    [
        new HeadingBlock(1, [Words("Key and credits")], "Key and credits") { Destination = "key" },
        new FigureBlock(new SampleDrawing(0.5), "Lines and what they mean.", [], FigureWidth.Medium),
        new HeadingBlock(4, [Words("A heading of the fourth level")]),
        new ParagraphBlock([Words("Words and drawings by Orrin Vale."), new BreakInline(), Words("You may print as many copies as you like for a class.")]),
        new ParagraphBlock([Words("Set in two typefaces under the Open Font Licence.")], ParagraphKind.Small),
        new PageBreakBlock(),
        Paragraph("Notes"),
    ];
}
