using System.Globalization;
using Pattern.Press.Booklets.Content;
using Pattern.Press.Booklets.Markdown;
using Pattern.Press.Booklets.Phrases;
using Pattern.Press.Structures.Reading;
using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Booklets.Composing;

/// <summary>
/// Numbers the figures of a booklet in reading order, once all of it is composed, and fills in what links say of figures,
/// steps and pages. A figure without a caption has no number: there is nowhere to print it.
/// </summary>
internal sealed class Numbering
{
    /// <summary>Before the name of a figure, in the name of the place it is.</summary>
    public const string FigurePrefix = "figure-";

    private readonly PhraseBook _phrases;
    private readonly Problems _problems;
    private readonly Func<string, Place?>? _written;
    private readonly Dictionary<Block, int> _numbers = new(ReferenceEqualityComparer.Instance);
    private readonly SortedDictionary<string, int> _figures = new(StringComparer.Ordinal);
    private readonly SortedDictionary<string, int> _steps = new(StringComparer.Ordinal);
    private readonly HashSet<string> _withoutNumber = new(StringComparer.Ordinal);

    private Numbering(PhraseBook phrases, IReadOnlyList<StepSource> steps, Problems problems, Func<string, Place?>? written)
    {
        (_phrases, _problems, _written) = (phrases, problems, written);
        foreach (var step in steps)
            _steps[Parts.StepsPart.Destination(step)] = step.Number;
    }

    /// <summary>The parts with figures numbered and references filled in.</summary>
    /// <param name="parts">The parts in reading order.</param>
    /// <param name="phrases">The program's own words.</param>
    /// <param name="steps">The steps.</param>
    /// <param name="problems">Takes what is wrong.</param>
    /// <param name="written">Finds where a maker wrote something that the program set in a block of its own; null where nobody knows.</param>
    public static IReadOnlyList<BookPart> Apply(IReadOnlyList<BookPart> parts, PhraseBook phrases, IReadOnlyList<StepSource> steps, Problems problems, Func<string, Place?>? written = null)
    {
        var numbering = new Numbering(phrases, steps, problems, written);
        foreach (var flow in parts.OfType<FlowPart>())
            numbering.Count(flow.Blocks);
        return [.. parts.Select(part => part is FlowPart flow ? flow with { Blocks = numbering.Fill(flow.Blocks) } : part)];
    }

    private void Count(IEnumerable<Block> blocks)
    {
        foreach (var block in blocks)
        {
            switch (block)
            {
                case FigureBlock figure:
                    Number(figure, figure.Caption);
                    break;
                case ImageBlock image:
                    Number(image, image.Caption);
                    break;
                case ListBlock list:
                    Count(list.Items.SelectMany(item => item));
                    break;
                case CalloutBlock callout:
                    Count(callout.Content);
                    break;
                case QuoteBlock quote:
                    Count(quote.Content);
                    break;
                case KeepTogetherBlock group:
                    Count(group.Content);
                    break;
                case PageShareBlock share:
                    Count(share.Content);
                    break;
                case ColumnsBlock columns:
                    Count(columns.Content);
                    break;
                case FigureRowBlock row:
                    Count(row.Figures);
                    break;
                case BesideBlock beside:
                    Count([.. beside.Text, beside.Figure]);
                    break;
            }
        }
    }

    private void Number(Block figure, IReadOnlyList<Inline> caption)
    {
        if (caption.Count == 0)
        {
            if (figure.Destination is { } unnumbered)
                _withoutNumber.Add(unnumbered);
            return;
        }

        var number = _numbers.Count + 1;
        _numbers.Add(figure, number);
        if (figure.Destination is not { } name || _figures.TryAdd(name, number))
            return;

        // The same picture may stand in two places, and a link leads to the first; a name that a maker gave is given once.
        if (figure is FigureBlock)
            _problems.Error(PlaceOf(figure.Source, name), $"Another figure is named “{name[FigurePrefix.Length..]}” already.", "Give each a name of its own.");
    }

    private List<Block> Fill(IReadOnlyList<Block> blocks) => [.. blocks.Select(Fill)];

    private Block Fill(Block block) => block switch
    {
        HeadingBlock heading => heading with { Content = Fill(heading.Content, block.Source) },
        ParagraphBlock paragraph => paragraph with { Content = Fill(paragraph.Content, block.Source) },
        FigureBlock figure => figure with { Caption = Caption(figure, figure.Caption) },
        ImageBlock image => image with { Caption = Caption(image, image.Caption) },
        ListBlock list => list with { Items = [.. list.Items.Select(Fill)] },
        CalloutBlock callout => callout with { Content = Fill(callout.Content) },
        QuoteBlock quote => quote with { Content = Fill(quote.Content) },
        KeepTogetherBlock group => group with { Content = Fill(group.Content) },
        PageShareBlock share => share with { Content = Fill(share.Content) },
        ColumnsBlock columns => columns with { Content = Fill(columns.Content) },
        FigureRowBlock row => row with { Figures = Fill(row.Figures) },
        BesideBlock beside => beside with { Text = Fill(beside.Text), Figure = Fill(beside.Figure) },
        TableBlock table => table with
        {
            Caption = Fill(table.Caption, block.Source),
            Header = [.. table.Header.Select(row => Fill(row, block.Source))],
            Rows = [.. table.Rows.Select(row => Fill(row, block.Source))],
        },
        _ => block,
    };

    private TableRow Fill(TableRow row, BlockSource? source) =>
        row with { Cells = [.. row.Cells.Select(cell => cell with { Content = Fill(cell.Content, source) })] };

    private IReadOnlyList<Inline> Caption(Block figure, IReadOnlyList<Inline> caption)
    {
        var filled = Fill(caption, figure.Source);
        return _numbers.TryGetValue(figure, out var number)
            ? [new TextInline(_phrases.Format("reference.caption", ("n", Whole(number))), Emphasis.Bold), new TextInline(" "), .. filled]
            : filled;
    }

    private IReadOnlyList<Inline> Fill(IReadOnlyList<Inline> inlines, BlockSource? source)
    {
        if (!inlines.Any(inline => inline is LinkInline or ReferenceInline))
            return inlines;
        var filled = new List<Inline>(inlines.Count);
        foreach (var inline in inlines)
        {
            switch (inline)
            {
                case LinkInline { IsAddress: false } link when !IsKnown(link.Target):
                    Refuse(link.Target, source);
                    break;
                case LinkInline link:
                    filled.Add(link with { Content = Fill(link.Content, source) });
                    break;
                case ReferenceInline reference:
                    filled.AddRange(Words(reference));
                    break;
                default:
                    filled.Add(inline);
                    break;
            }
        }

        return filled;
    }

    // What other links lead to was checked where they are written; figures are not known there yet.
    private bool IsKnown(string target) => !target.StartsWith(FigurePrefix, StringComparison.Ordinal) || _figures.ContainsKey(target);

    private void Refuse(string target, BlockSource? source)
    {
        var name = target[FigurePrefix.Length..];
        if (_withoutNumber.Contains(target))
            _problems.Error(PlaceOf(source, target), $"The picture “{name}” has no caption and so no number to refer to.", "Give it one, in quotation marks behind its file: ![…](lid.png \"The lid\").");
        else
            _problems.Error(PlaceOf(source, target), $"There is no figure named “{name}” in this booklet.", _figures.Count > 0 ? Spelling.Advice(name, [.. _figures.Keys.Select(known => known[FigurePrefix.Length..])]) : "Name one with “name:” in its block; a picture has the name of its file.");
    }

    private IReadOnlyList<Inline> Words(ReferenceInline reference)
    {
        var isName = reference.Kind == ReferenceKind.Name;
        var text = _figures.TryGetValue(reference.Target, out var figure) ? Say("reference.figure", figure)
            : _steps.TryGetValue(reference.Target, out var step) ? Say("reference.step", step)
            : null;
        if (text is not null)
            return [new TextInline(text, reference.Emphasis)];
        IReadOnlyList<Inline> page = [new PageNumberInline(reference.Target)];
        return isName ? _phrases.Inlines("reference.page", ("page", page)) : page;

        // A number never parts from its word.
        string Say(string key, int number) => isName ? _phrases.Format(key, ("n", Whole(number))).Replace(' ', '\u00A0') : Whole(number);
    }

    private Place PlaceOf(BlockSource? source, string target) =>
        source is { } known ? new Place(known.File, known.Line) : _written?.Invoke("#" + target) ?? new Place(BookletReader.FileName);

    private static string Whole(int number) => number.ToString(CultureInfo.InvariantCulture);
}
