using System.Globalization;
using System.Text.RegularExpressions;
using Markdig.Extensions.CustomContainers;
using Markdig.Extensions.Tables;
using Markdig.Extensions.TaskLists;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;
using Pattern.Press.Booklets.Composing;
using Pattern.Press.Booklets.Content;
using Pattern.Press.Structures.Reading;
using Pattern.Press.Typesetting.Blocks;
using Block = Pattern.Press.Typesetting.Blocks.Block;
using Inline = Pattern.Press.Typesetting.Blocks.Inline;
using ListBlock = Pattern.Press.Typesetting.Blocks.ListBlock;
using MarkdownBlock = Markdig.Syntax.Block;
using MarkdownHeading = Markdig.Syntax.HeadingBlock;
using MarkdownLink = Markdig.Syntax.Inlines.LinkInline;
using MarkdownList = Markdig.Syntax.ListBlock;
using MarkdownParagraph = Markdig.Syntax.ParagraphBlock;
using MarkdownQuote = Markdig.Syntax.QuoteBlock;
using MarkdownTableCell = Markdig.Extensions.Tables.TableCell;
using MarkdownTableRow = Markdig.Extensions.Tables.TableRow;
using ParagraphBlock = Pattern.Press.Typesetting.Blocks.ParagraphBlock;
using TableCell = Pattern.Press.Typesetting.Blocks.TableCell;
using TableRow = Pattern.Press.Typesetting.Blocks.TableRow;

namespace Pattern.Press.Booklets.Markdown;

/// <summary>Turns a syntax tree into blocks.</summary>
internal sealed partial class BlockConverter
{
    private const int DeepestHeading = 4;

    // A picture is printed at no less than 150 pixels to the inch; common practice, no source. The bounds are the page
    // widths in pixels at which a picture fills the text's width (about 170 mm), and six tenths of it.
    private const int PixelsForFullWidth = 1000;
    private const int PixelsForMediumWidth = 600;

    private static readonly string[] ContainerKinds = ["tip", "caution", "figure"];

    private readonly ConversionContext _context;
    private readonly InlineConverter _inlines;
    private readonly int _shallowest;
    private int _lastHeading;

    public BlockConverter(ConversionContext context, MarkdownDocument document)
    {
        _context = context;
        _inlines = new InlineConverter(context);
        _shallowest = document.Descendants<MarkdownHeading>().Select(heading => heading.Level).DefaultIfEmpty(1).Min();
        _lastHeading = context.Options.TopHeading - 1;
    }

    public IReadOnlyList<Block> Convert(IEnumerable<MarkdownBlock> blocks)
    {
        var result = new List<Block>();
        foreach (var block in blocks)
            Add(block, result);
        return result;
    }

    private void Add(MarkdownBlock block, List<Block> result)
    {
        var source = new BlockSource(_context.Text.Start.File, Place(block).Line);
        switch (block)
        {
            case MarkdownHeading heading:
                if (Heading(heading) is { } made)
                    result.Add(made with { Source = source });
                break;
            case MarkdownParagraph paragraph:
                result.AddRange(Paragraph(paragraph, source));
                break;
            case MarkdownList list:
                result.Add(List(list) with { Source = source });
                break;
            case CustomContainer container:
                if (Container(container) is { } contained)
                    result.Add(contained with { Source = contained.Source ?? source });
                break;
            case MarkdownQuote quote when Mark(quote) is { } mark:
                if (Marked(quote, mark) is { } told)
                    result.Add(told with { Source = source });
                break;
            case MarkdownQuote quote:
                result.Add(new Typesetting.Blocks.QuoteBlock(Convert(quote)) { Source = source });
                break;
            case Table table:
                result.Add(TableOf(table) with { Source = source });
                break;
            case CodeBlock code:
                if (code is FencedCodeBlock { ClosingFencedCharCount: 0 })
                    _context.Problems.Warning(Place(block), "The literal lines that start here are never closed; all that follows is taken for them.", "Put a line of the same marks below the last one.");
                result.Add(new LiteralBlock(Lines(code)) { Source = source });
                break;
            case ThematicBreakBlock:
                result.Add(new RuleBlock { Source = source });
                break;
            case HtmlBlock html:
                _context.RefuseHtml(html.Span.Start, html.Lines.Count > 0 ? html.Lines.Lines[0].Slice.ToString().Trim() : "");
                break;
            case LinkReferenceDefinitionGroup or LinkReferenceDefinition or BlankLineBlock:
                break;
            case ContainerBlock container:
                result.AddRange(Convert(container));
                break;
            default:
                _context.Problems.Error(Place(block), "This kind of Markdown cannot be set in a booklet.");
                break;
        }
    }

    private Place Place(MarkdownBlock block) => _context.Places.At(Math.Clamp(block.Span.Start, 0, _context.Text.Text.Length));

    private Typesetting.Blocks.HeadingBlock? Heading(MarkdownHeading heading)
    {
        var content = _inlines.Convert(heading.Inline);
        if (content.Count == 0)
        {
            _context.Problems.Error(Place(heading), "The heading has no words.", "Write them after the #, or delete the line.");
            return null;
        }

        var level = _context.Options.TopHeading + heading.Level - _shallowest;
        if (level > _lastHeading + 1)
        {
            _context.Problems.Warning(Place(heading), "The heading is more than one level below the one before it.", $"Write it with {new string('#', Math.Max(1, heading.Level - (level - _lastHeading - 1)))}.");
            level = _lastHeading + 1;
        }

        if (level > DeepestHeading)
        {
            var levels = DeepestHeading - _context.Options.TopHeading + 1;
            _context.Problems.Warning(Place(heading), $"Headings here have at most {(levels == 1 ? "one level" : $"{levels} levels")}; this one is deeper.", "It is set as one of the deepest level there is.");
            level = DeepestHeading;
        }

        _lastHeading = level;
        var words = InlineConverter.Text(content);
        return new Typesetting.Blocks.HeadingBlock(level, content, _context.Options.Bookmarks ? words : null)
        {
            Destination = _context.Destination(words),
        };
    }

    // Pictures are inlines in Markdown but stand by themselves in print: a paragraph is parted around them.
    private IEnumerable<Block> Paragraph(MarkdownParagraph paragraph, BlockSource source)
    {
        if (paragraph.Inline is null)
            yield break;
        var words = new List<Markdig.Syntax.Inlines.Inline>();
        foreach (var inline in paragraph.Inline)
        {
            if (inline is not MarkdownLink { IsImage: true } image)
            {
                words.Add(inline);
                continue;
            }

            if (Words() is { } above)
                yield return above;
            if (Image(image) is { } picture)
                yield return picture with { Source = source with { Line = _context.Places.At(image.Span.Start).Line } };
        }

        if (Words() is { } rest)
            yield return rest;

        ParagraphBlock? Words()
        {
            var content = _inlines.Convert(words);
            words.Clear();
            return content.Count > 0 ? new ParagraphBlock(content) { Source = source } : null;
        }
    }

    private ImageBlock? Image(MarkdownLink image)
    {
        var place = _context.Places.At(image.Span.Start);
        var words = InlineConverter.Text(_inlines.Convert(image)).Trim();
        if (words.Length == 0)
            _context.Problems.Error(place, "The picture has no words that say what it shows.", "Write them between the brackets, for readers who cannot see it: ![The lid half folded](lid.png).");
        if (PictureReader.Read(_context.Folder, image.Url ?? "", place, _context.Problems) is not { } picture || words.Length == 0)
            return null;
        var width = picture.PixelWidth >= PixelsForFullWidth ? FigureWidth.Full
            : picture.PixelWidth >= PixelsForMediumWidth ? FigureWidth.Medium
            : FigureWidth.Small;
        IReadOnlyList<Inline> caption = string.IsNullOrWhiteSpace(image.Title)
            ? []
            : MarkdownReader.ToInlines(new MarkdownText(image.Title, place), _context.Folder, _context.Bindings, _context.Problems, _context.Options);
        return new ImageBlock(picture, words, caption, width)
        {
            Destination = Numbering.FigurePrefix + ConversionContext.Slug(Path.GetFileNameWithoutExtension(Uri.UnescapeDataString(image.Url ?? ""))),
        };
    }

    private ListBlock List(MarkdownList list)
    {
        var items = new List<IReadOnlyList<Block>>();
        var hasBoxes = false;
        foreach (var item in list.OfType<ListItemBlock>())
        {
            hasBoxes |= item.FirstOrDefault() is MarkdownParagraph { Inline.FirstChild: TaskList };
            items.Add(Convert(item));
        }

        var kind = hasBoxes ? ListKind.Checklist : list.IsOrdered ? ListKind.Numbered : ListKind.Bulleted;
        var start = int.TryParse(list.OrderedStart, NumberStyles.None, CultureInfo.InvariantCulture, out var first) ? first : 1;
        return new ListBlock(kind, start, items);
    }

    private TableBlock TableOf(Table table)
    {
        var header = new List<TableRow>();
        var rows = new List<TableRow>();
        foreach (var row in table.OfType<MarkdownTableRow>())
        {
            var cells = row.OfType<MarkdownTableCell>().Select(Cell).ToList();
            (row.IsHeader ? header : rows).Add(new TableRow(cells) { Source = new BlockSource(_context.Text.Start.File, Place(row).Line) });
        }

        var count = header.Concat(rows).Select(row => row.Cells.Count).DefaultIfEmpty(0).Max();
        return new TableBlock(
            [.. Enumerable.Range(0, count).Select(column => Alignment(table, rows, column))],
            [.. header.Select(Fill)],
            [.. rows.Select(Fill)]);

        // Short rows get empty cells, so that every column has one.
        TableRow Fill(TableRow row) => row with { Cells = [.. row.Cells, .. Enumerable.Repeat(new TableCell([]), count - row.Cells.Count)] };
    }

    private TableCell Cell(MarkdownTableCell cell)
    {
        var content = new List<Inline>();
        foreach (var block in cell)
        {
            if (block is MarkdownParagraph paragraph)
                content.AddRange(_inlines.Convert(paragraph.Inline));
        }

        return new TableCell(content);
    }

    // What the maker asks for by colons; else a column of nothing but figures stands to the right.
    private static ColumnAlignment Alignment(Table table, List<TableRow> rows, int column)
    {
        switch (column < table.ColumnDefinitions.Count ? table.ColumnDefinitions[column].Alignment : null)
        {
            case TableColumnAlign.Left:
                return ColumnAlignment.Left;
            case TableColumnAlign.Center:
                return ColumnAlignment.Centre;
            case TableColumnAlign.Right:
                return ColumnAlignment.Right;
        }

        var texts = rows
            .Select(row => column < row.Cells.Count ? InlineConverter.Text(row.Cells[column].Content) : "")
            .Where(text => text.Length > 0)
            .ToList();
        return texts.Count > 0 && texts.TrueForAll(Measurements.IsFigure) ? ColumnAlignment.Right : ColumnAlignment.Left;
    }

    private Block? Container(CustomContainer container)
    {
        var place = Place(container);
        var kind = container.Info ?? "";
        if (container.ClosingFencedCharCount == 0)
        {
            _context.Problems.Error(place, "The container that starts here is never closed.", "Put a line “:::” below its last line.");
            return null;
        }

        switch (kind)
        {
            case "tip":
                return Callout(container, CalloutKind.Tip, _context.Options.TipTitle);
            case "caution":
                return Callout(container, CalloutKind.Caution, _context.Options.CautionTitle);
            case "figure":
                return Figure(container, place);
            case "":
                _context.Problems.Error(place, "The container has no name.", $"Write one after the colons: {string.Join(", ", ContainerKinds.Select(k => "::: " + k))}.");
                return null;
            default:
                _context.Problems.Error(place, $"There is no container “{kind}”.", Spelling.Advice(kind, ContainerKinds));
                return null;
        }
    }

    // The way of writing a tip that many know from elsewhere; there are only two kinds, and none is guessed.
    private CalloutBlock? Marked(MarkdownQuote quote, Match mark)
    {
        var written = mark.Groups["mark"].Value;
        var (known, title) = mark.Groups["kind"].Value.ToUpperInvariant() switch
        {
            "TIP" => (CalloutKind.Tip, _context.Options.TipTitle),
            "CAUTION" => (CalloutKind.Caution, _context.Options.CautionTitle),
            _ => ((CalloutKind?)null, ""),
        };
        if (known is not { } kind)
        {
            _context.Problems.Error(Place(quote), $"There is no “{written}”.", "Write “> [!TIP]” for what makes the work easier, “> [!CAUTION]” for what can hurt.");
            return null;
        }

        if (!mark.Groups["alone"].Success)
        {
            _context.Problems.Error(Place(quote), $"“{written}” has to stand on a line of its own at the start of its quotation.", $"Write “> {written}”, and the words in lines below it that start with “>” too.");
            return null;
        }

        var first = ((MarkdownParagraph)quote[0]).Inline!;
        while (first.FirstChild is { } part && part.Span.Start < mark.Index + mark.Length)
            part.Remove();
        if (first.FirstChild is Markdig.Syntax.Inlines.LineBreakInline end)
            end.Remove();
        var content = Convert(quote);
        if (content.Count > 0)
            return new CalloutBlock(kind, title, content);
        _context.Problems.Error(Place(quote), $"“{written}” has no words.", "Write them in lines below it that start with “>” too.");
        return null;
    }

    private Match? Mark(MarkdownQuote quote)
    {
        if (quote.FirstOrDefault() is not MarkdownParagraph { Inline: not null } first || first.Span.Start < 0 || first.Span.Start >= _context.Text.Text.Length)
            return null;
        var match = CalloutMark().Match(_context.Text.Text, first.Span.Start);
        return match.Success ? match : null;
    }

    [GeneratedRegex(@"\G(?<mark>\[!(?<kind>[A-Za-z]+)\])(?<alone>[ \t]*(?=\n|\z))?", RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant)]
    private static partial Regex CalloutMark();

    private CalloutBlock? Callout(CustomContainer container, CalloutKind kind, string usualTitle)
    {
        var content = Convert(container);
        if (content.Count == 0)
        {
            _context.Problems.Error(Place(container), "The container has no words.", "Write them between its two lines of colons.");
            return null;
        }

        var title = string.IsNullOrWhiteSpace(container.Arguments)
            ? usualTitle
            : InlineConverter.Text(MarkdownReader.ToInlines(new MarkdownText(container.Arguments.Trim(), Place(container)), _context.Folder, _context.Bindings, _context.Problems, _context.Options));
        return new CalloutBlock(kind, title, content);
    }

    // The YAML inside is read from the text itself, because Markdown has taken its lines apart. Lines keep their columns:
    // what stands before them, such as the marks of a quotation, becomes spaces, which YAML takes for indentation.
    private Block? Figure(CustomContainer container, Place place)
    {
        var text = _context.Text.Text;
        var lines = text[..(container.Span.End + 1)].Split('\n');
        var first = place.Line - _context.Text.Start.Line;
        var indent = _context.Places.At(container.Span.Start).Column - 1;
        var yaml = string.Join('\n', lines[(first + 1)..^1].Select(line => line.Length <= indent ? "" : new string(' ', indent) + line[indent..]));
        if (YamlSource.Read(yaml, place.File, _context.Problems, place.Line + 1) is not { } map ||
            FigureReader.Read(map, _context.Options.Piece, _context.Problems) is not { } figure)
            return null;
        return _context.Bindings.Figure(figure, _context.Problems);
    }

    private static List<string> Lines(CodeBlock code)
    {
        var lines = new List<string>();
        for (var i = 0; i < code.Lines.Count; i++)
            lines.Add(code.Lines.Lines[i].Slice.ToString().Replace("\t", "    ", StringComparison.Ordinal));
        while (lines.Count > 0 && lines[^1].Length == 0)
            lines.RemoveAt(lines.Count - 1);
        return lines;
    }
}
