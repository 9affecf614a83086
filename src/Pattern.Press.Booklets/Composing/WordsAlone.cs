using Pattern.Press.Booklets.Content;
using Pattern.Press.Booklets.Markdown;
using Pattern.Press.Booklets.Phrases;
using Pattern.Press.Structures;
using Pattern.Press.Structures.Fitting;
using Pattern.Press.Structures.Reading;
using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Booklets.Composing;

/// <summary>
/// Finds what is wrong in the words of a booklet of which no model could be made, so that a maker sees it together with
/// what is wrong in the front matter. A name counts as known when some fit of the structure could have it, and every name
/// does when the structure is not known, so that nothing is told which follows from the other mistakes.
/// </summary>
internal sealed class WordsAlone : IBindings
{
    private readonly BookletSource _source;
    private readonly PhraseBook _phrases;
    private readonly MarkdownOptions _options;
    private readonly Structure? _structure;
    private readonly SortedSet<string> _names = new(StringComparer.Ordinal);

    private WordsAlone(BookletSource source, PhraseBook phrases, Structure? structure)
    {
        (_source, _phrases, _structure, _options) = (source, phrases, structure, BookletLinks.Options(source, phrases));
        if (structure is null)
            return;
        _names.UnionWith(structure.ValueNames);
        _names.UnionWith(source.Stocks.Keys.Concat(structure.Stocks.Select(stock => stock.Id)).Select(use => use + ".name"));
        if (source is { CanBeFitted: true, Item: null })
            _names.RemoveWhere(name => name.StartsWith("item.", StringComparison.Ordinal));
        else if (source is { CanBeFitted: true, Item.Shape: ItemShape.Rectangular })
            _names.Remove("item.diameter");
    }

    /// <inheritdoc/>
    public IReadOnlyCollection<string> Names => _names;

    /// <summary>Reads all words that would be printed and notes what is wrong in them.</summary>
    /// <param name="source">The booklet.</param>
    /// <param name="phrases">The program's own words, of any language.</param>
    /// <param name="structure">The structure; null when it is not known.</param>
    /// <param name="problems">Takes what is wrong.</param>
    public static void Check(BookletSource source, PhraseBook phrases, Structure? structure, Problems problems) =>
        new WordsAlone(source, phrases, structure).Check(problems);

    /// <inheritdoc/>
    public IReadOnlyList<Inline>? Value(string name) => name switch
    {
        "page" or "number" => null,
        _ when _structure is null || _names.Contains(name) => [new TextInline("0")],
        _ => null,
    };

    /// <inheritdoc/>
    public Block? Figure(FigureSource figure, Problems problems)
    {
        if (figure.Subject is { Length: > 0 } piece and not Nets.Assembly.Item && !IsKnownPiece(piece, figure.Place, problems))
            return null;

        IReadOnlyList<Inline> caption = figure.Caption.Length > 0
            ? MarkdownReader.ToInlines(new MarkdownText(figure.Caption, figure.Place), _source.Folder, this, problems, _options)
            : [new TextInline("0")];
        return new FigureBlock(new Nothing(), "", caption)
        {
            Source = new BlockSource(figure.Place.File, figure.Place.Line),
            Destination = figure.Name.Length > 0 ? Numbering.FigurePrefix + figure.Name : null,
        };
    }

    private void Check(Problems problems)
    {
        var makers = new MakersWords(_source, this, _options, problems);
        bool Prints(BookletPart part) => !_source.Without.Contains(part);
        var blocks = new List<Block>();
        blocks.AddRange(MarkdownReader.ToBlocks(_source.Introduction, _source.Folder, this, problems, _options with { TopHeading = 2 }));
        foreach (var text in FrontMatterWords(Prints))
            blocks.Add(new ParagraphBlock(makers.Inlines(text)));
        if (Prints(BookletPart.Steps))
            blocks.AddRange(_source.Steps.SelectMany(step => Step(step, makers, problems)));

        var written = Whereabouts.In(_source);

        // With a step or the introduction missing, a figure that a link leads to may stand there.
        if (_source.UnreadSteps.Count == 0)
            Numbering.Apply([new FlowPart(blocks)], _phrases, _source.Steps, problems, link => written.Find(link));
    }

    private IEnumerable<string> FrontMatterWords(Func<BookletPart, bool> prints)
    {
        if (prints(BookletPart.Licence))
        {
            foreach (var text in _source.Credits.Append(_source.Licence).Where(text => text.Length > 0))
                yield return text;
        }

        foreach (var text in prints(BookletPart.Before) ? _source.Cautions : [])
            yield return text;
        if (!prints(BookletPart.Materials))
            yield break;
        foreach (var text in _source.Extras.Select(extra => extra.Name).Concat(_source.Tools).Concat(_source.Steps.SelectMany(step => step.Tools)).Append(_source.Adhesive?.Name ?? "").Where(text => text.Length > 0))
            yield return text;
    }

    private IEnumerable<Block> Step(StepSource step, MakersWords makers, Problems problems)
    {
        var destination = Parts.StepsPart.Destination(step);
        if (step.Caution.Length > 0)
            yield return new ParagraphBlock(makers.Inlines(step.Caution, step.File));
        foreach (var block in MarkdownReader.ToBlocks(step.Body, _source.Folder, this, problems, _options with { TopHeading = 3, DestinationPrefix = destination + "-", Piece = step.Piece }))
            yield return block;
        if ((step.Piece is not { } piece || IsKnownPiece(piece, step.PiecePlace, problems)) && step.Figure is { } asked && Figure(asked, problems) is { } figure)
            yield return figure;
    }

    private bool IsKnownPiece(string piece, Place place, Problems problems) =>
        _structure is null || UnknownPiece.IsKnown(piece, place, _structure.PieceNames, problems);

    private sealed class Nothing : IDrawing
    {
        public DrawnFigure Draw(double maxWidth, double maxHeight, StyleSheet styles) => new(0, 0, []);
    }
}
