using Pattern.Press.Booklets.Content;
using Pattern.Press.Booklets.Markdown;
using Pattern.Press.Structures.Reading;
using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Booklets.Tests.Markdown;

/// <summary>Reads Markdown as the body of a file whose front matter is nine lines long.</summary>
internal static class Reading
{
    public const string FileName = "steps/02-fold.md";
    public const int LinesBefore = 9;

    public static MarkdownOptions Options { get; } = new() { TipTitle = "Tip", CautionTitle = "Take care", Piece = "base" };

    public static (IReadOnlyList<Block> Blocks, Problems Problems) Read(string text, string folder = "/nowhere", MarkdownOptions? options = null)
    {
        var problems = new Problems();
        var blocks = MarkdownReader.ToBlocks(new MarkdownText(text, new Place(FileName, LinesBefore + 1, 1)), folder, new Known(), problems, options ?? Options);
        return (blocks, problems);
    }

    /// <summary>Blocks of a text in which nothing is wrong.</summary>
    public static IReadOnlyList<Block> Blocks(string text)
    {
        var (blocks, problems) = Read(text);
        Assert.Empty(problems.All);
        return blocks;
    }

    /// <summary>A short notation of blocks, so that tests can say a shape in one line.</summary>
    public static string Shape(IEnumerable<Block> blocks) => string.Join(" ", blocks.Select(Shape));

    public static string Shape(Block block) => block switch
    {
        HeadingBlock heading => $"h{heading.Level}({Shape(heading.Content)})",
        ParagraphBlock paragraph => $"p({Shape(paragraph.Content)})",
        ListBlock { Kind: ListKind.Numbered } list => $"ol{list.Start}[{string.Join("; ", list.Items.Select(Shape))}]",
        ListBlock { Kind: ListKind.Checklist } list => $"check[{string.Join("; ", list.Items.Select(Shape))}]",
        ListBlock list => $"ul[{string.Join("; ", list.Items.Select(Shape))}]",
        QuoteBlock quote => $"quote[{Shape(quote.Content)}]",
        CalloutBlock callout => $"{callout.Kind}“{callout.Title}”[{Shape(callout.Content)}]".ToLowerInvariant(),
        LiteralBlock literal => $"literal({string.Join("⏎", literal.Lines)})",
        RuleBlock => "rule",
        FigureBlock figure => $"figure({figure.AlternativeText})",
        ImageBlock image => $"image({image.AlternativeText}; {Shape(image.Caption)}; {image.Width})",
        TableBlock table => $"table({string.Join("", table.Columns.Select(c => c.ToString()[0]))}: {string.Join(" / ", table.Header.Concat(table.Rows).Select(row => string.Join(" | ", row.Cells.Select(cell => Shape(cell.Content)))))})",
        _ => block.GetType().Name,
    };

    public static string Shape(IEnumerable<Inline> inlines) => string.Concat(inlines.Select(Shape));

    private static string Shape(Inline inline) => inline switch
    {
        TextInline text => Mark(text.Text, text.Emphasis),
        MeasureInline measure => Mark("⟨" + measure.Text + "⟩", measure.Emphasis),
        BreakInline => "⏎",
        LinkInline link => $"[{Shape(link.Content)}→{link.Target}{(link.IsAddress ? "" : "#")}]",
        _ => inline.GetType().Name,
    };

    private static string Mark(string text, Emphasis emphasis)
    {
        if (emphasis.HasFlag(Emphasis.Literal))
            text = "`" + text + "`";
        if (emphasis.HasFlag(Emphasis.Italic))
            text = "*" + text + "*";
        if (emphasis.HasFlag(Emphasis.Bold))
            text = "**" + text + "**";
        return text;
    }

    /// <summary>A model with a few values.</summary>
    private sealed class Known : IBindings
    {
        public IReadOnlyCollection<string> Names => ["base.sheet", "item.name", "size.wall_height"];

        public IReadOnlyList<Inline>? Value(string name) => name switch
        {
            "size.wall_height" => [new MeasureInline("64 mm"), new TextInline(" ("), new MeasureInline("2 1/2 in"), new TextInline(")")],
            "base.sheet" => [new MeasureInline("225 × 215 mm")],
            "item.name" => [new TextInline("tin")],
            _ => null,
        };

        public Block? Figure(FigureSource figure, Problems problems)
        {
            if (figure.Subject == "nothing")
            {
                problems.Error(figure.Place, "There is no part “nothing”.");
                return null;
            }

            var words = $"{figure.Subject} {figure.Show} {string.Join("+", figure.Emphasise)} {figure.Caption}".TrimEnd();
            return new FigureBlock(new Nothing(), words, []);
        }
    }

    private sealed class Nothing : IDrawing
    {
        public DrawnFigure Draw(double maxWidth, double maxHeight, Typesetting.Styles.StyleSheet styles) => new(0, 0, []);
    }
}
