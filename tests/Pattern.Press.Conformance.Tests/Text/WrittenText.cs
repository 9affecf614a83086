using System.Globalization;
using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Conformance.Text;

/// <summary>The words of blocks as they were written, worked out without any layout.</summary>
internal static class WrittenText
{
    /// <summary>Paragraphs, headings, labels and cells in reading order, without the lettering of drawings.</summary>
    /// <param name="blocks">The blocks.</param>
    /// <param name="bullets">In how many bulleted lists they stand.</param>
    public static IEnumerable<string> Paragraphs(IEnumerable<Block> blocks, int bullets = 0) => blocks.SelectMany(block => Paragraphs(block, bullets));

    /// <summary>The words of inline text.</summary>
    public static string Words(IEnumerable<Inline> content) => string.Concat(content.Select(part => part switch
    {
        TextInline text => text.Text,
        MeasureInline measure => measure.Text,
        BreakInline => " ",
        LinkInline link => Words(link.Content),
        PageNumberInline => "1",
        _ => throw new ArgumentException("There is a kind of inline text that this test does not know.", nameof(content)),
    }));

    private static IEnumerable<string> Paragraphs(Block block, int bullets) => block switch
    {
        HeadingBlock heading => [$"{heading.Overline} {Words(heading.Content)}"],
        ParagraphBlock paragraph => [Words(paragraph.Content)],
        ListBlock list => list.Items.SelectMany((item, i) => Paragraphs(item, bullets + (list.Kind == ListKind.Bulleted ? 1 : 0)).Prepend(Label(list, i, bullets))),
        TableBlock table => Rows(table),
        CalloutBlock callout => Paragraphs(callout.Content).Prepend(callout.Title),
        QuoteBlock quote => Paragraphs(quote.Content),
        LiteralBlock literal => [string.Join(' ', literal.Lines)],
        KeepTogetherBlock group => Paragraphs(group.Content),
        PageShareBlock share => Paragraphs(share.Content),
        BesideBlock beside => Paragraphs(beside.Text).Concat(Paragraphs(beside.Figure, 0)),
        FigureRowBlock row => Paragraphs(row.Figures),
        FigureBlock figure => [Words(figure.Caption)],
        ImageBlock image => [Words(image.Caption)],
        RuleBlock or PageBreakBlock => [],
        _ => throw new ArgumentException("There is a kind of block that this test does not know.", nameof(block)),
    };

    private static IEnumerable<string> Rows(TableBlock table) =>
        table.Header.Concat(table.Rows).SelectMany(row => row.Cells).Select(cell => Words(cell.Content)).Prepend(Words(table.Caption));

    private static string Label(ListBlock list, int index, int bullets) => list.Kind switch
    {
        ListKind.Numbered => string.Create(CultureInfo.InvariantCulture, $"{list.Start + index}."),
        ListKind.Bulleted => bullets == 0 ? "•" : "–",
        _ => "",
    };
}
