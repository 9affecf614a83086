using System.Globalization;
using Pattern.Press.Booklets.Content;
using Pattern.Press.Booklets.Themes;
using Pattern.Press.Structures.Reading;
using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Benchmarks;

/// <summary>
/// A booklet of about 24 pages made of blocks alone: some 4,300 words of mixed text, four tables of 25 rows and 5 columns,
/// and seven drawings of 120 lines. It can be made any number of times as long.
/// </summary>
internal static class LongBook
{
    /// <summary>Drawings in one length.</summary>
    public const int Drawings = 7;

    private const int WordsAbout = 4300;
    private const int Sections = 12;
    private const int ParagraphsInSection = 6;

    // Invented, of usual lengths, with what makes setting harder: fractions, hyphens, dashes, quotation marks.
    private static readonly string[] Lexicon =
    [
        "score", "the", "card", "along", "a", "line", "and", "fold", "it", "towards", "you", "until", "both", "edges", "meet", "then",
        "press", "firmly", "with", "bone", "folder", "before", "glue", "dries", "turn", "sheet", "over", "check", "that", "corners",
        "half-way", "“square”", "well-lit", "patterned", "measurement", "trimming", "neighbouring", "of", "on", "first",
    ];

    /// <summary>The look.</summary>
    public static StyleSheet Styles { get; } =
        ThemeReader.Read(Resources.OfProgram.ThemesFolder, "handout", "en-GB", new Problems())
        ?? throw new InvalidOperationException("The theme cannot be read.");

    /// <summary>The book, so many lengths long.</summary>
    public static Book Make(int lengths = 1) => new()
    {
        Title = "A long book",
        Language = "en-GB",
        RunningTitle = "A long book",
        Paper = (210, 297),
        Parts = [new FlowPart([.. Enumerable.Range(0, lengths).SelectMany(Length)]) { Title = "Text" }],
    };

    /// <summary>A paragraph of so many words.</summary>
    public static ParagraphBlock Paragraph(int seed, int words)
    {
        var text = string.Join(' ', Enumerable.Range(0, words).Select(i => Lexicon[((i * 7) + (seed * 13) + (i * i % 5)) % Lexicon.Length]));
        var half = text.IndexOf(' ', text.Length / 2);
        return new ParagraphBlock(
        [
            new TextInline(text[..half] + " "),
            new MeasureInline(string.Create(CultureInfo.InvariantCulture, $"{(seed % 9) + 2} {1 + (2 * (seed % 8))}/16 in")),
            new TextInline(text[half..], seed % 3 == 0 ? Emphasis.Italic : Emphasis.None),
            new TextInline(seed % 2 == 0 ? " — once more." : "."),
        ]);
    }

    private static IEnumerable<Block> Length(int length)
    {
        const int Each = WordsAbout / (Sections * ParagraphsInSection);
        for (var section = 0; section < Sections; section++)
        {
            var seed = (length * Sections) + section;
            // Two pages for each section.
            if (seed > 0)
                yield return new PageBreakBlock();
            yield return new HeadingBlock(section % 3 == 0 ? 1 : 2, [new TextInline($"Section {seed + 1}")], $"Section {seed + 1}");
            for (var i = 0; i < ParagraphsInSection; i++)
            {
                if (i == ParagraphsInSection / 2)
                    yield return new PageBreakBlock();
                yield return Paragraph((seed * ParagraphsInSection) + i, Each - 2 + (i % 5));
            }

            if (section % 3 == 1)
                yield return Table(seed);
            if (section < Drawings)
                yield return new KeepTogetherBlock([new BesideBlock([Paragraph(seed, 40)], Figure(seed))]);
        }
    }

    private static TableBlock Table(int seed) => new(
        [ColumnAlignment.Left, ColumnAlignment.Left, ColumnAlignment.Right, ColumnAlignment.Right, ColumnAlignment.Right],
        [new TableRow([.. new[] { "Piece", "Where", "Number", "Metric", "Imperial" }.Select(head => new TableCell([new TextInline(head)], IsHeader: true))])],
        [
            .. Enumerable.Range(1, 25).Select(row => new TableRow(
            [
                new TableCell([new TextInline($"Panel {row}")], IsHeader: true),
                new TableCell([new TextInline(Lexicon[row] + " the " + Lexicon[(row + seed) % Lexicon.Length])]),
                new TableCell([new TextInline(row.ToString(CultureInfo.InvariantCulture))]),
                new TableCell([new MeasureInline(string.Create(CultureInfo.InvariantCulture, $"{row * 7} mm"))]),
                new TableCell([new MeasureInline(string.Create(CultureInfo.InvariantCulture, $"{row} {1 + (2 * (row % 4))}/8 in"))]),
            ])),
        ]);

    private static FigureBlock Figure(int seed) => new(new ManyLines(seed), "A hundred and twenty lines.", [new TextInline("Lines to score")]);

    /// <summary>A drawing of 120 lines.</summary>
    private sealed record ManyLines(int Seed) : IDrawing
    {
        public DrawnFigure Draw(double maxWidth, double maxHeight, StyleSheet styles)
        {
            var side = Math.Min(maxWidth, Math.Min(maxHeight, 120));
            var items = new PageItem[120];
            for (var i = 0; i < items.Length; i++)
            {
                var at = side * (i + 0.5) / items.Length;
                var stroke = (i % 3) switch { 0 => styles.Lines.CutStroke, 1 => styles.Lines.ValleyStroke, _ => styles.Lines.MountainStroke };
                items[i] = new PathItem(i % 2 == 0 ? PathBuilder.Line(at, 0, side - at, side) : PathBuilder.Line(0, at, side, side - at), null, stroke);
            }

            return new DrawnFigure(side, side, items);
        }
    }
}
