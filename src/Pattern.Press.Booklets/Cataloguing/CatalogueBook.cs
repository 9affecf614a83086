using Pattern.Press.Booklets.Composing;
using Pattern.Press.Booklets.Composing.Parts;
using Pattern.Press.Booklets.Phrases;
using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Structures;
using Pattern.Press.Structures.Fitting;
using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Booklets.Cataloguing;

/// <summary>Composes the printed catalogue: a page of contents, then two structures to a page.</summary>
internal sealed class CatalogueBook(PhraseBook phrases, PaperSize paper)
{
    private const int OnAPage = 2;
    private readonly ValueText _values = new(Ruler.WholeMillimetres, Ruler.SixteenthInches, phrases);

    /// <summary>Composes the book.</summary>
    public Book Compose(IReadOnlyList<ShownStructure> structures)
    {
        var entries = structures.Select(shown => (Block)new PageShareBlock(Entry(shown), OnAPage)).ToList();
        return new Book
        {
            Title = phrases["catalogue.title"],
            Subject = phrases["catalogue.subject"],
            Language = phrases.Language,
            RunningTitle = phrases["catalogue.title"],
            Paper = (paper.Size.Width.Millimetres, paper.Size.Height.Millimetres),
            Parts =
            [
                new FlowPart(
                [
                    Words.Subheading(1, phrases["catalogue.title"], "catalogue"),
                    Words.Phrase(phrases, "catalogue.lead", ParagraphKind.Lead),
                    new LiteralBlock([phrases["catalogue.draft"]]),
                    Words.Subheading(2, phrases["contents.title"]),
                    new ContentsBlock(2),
                    Words.Subheading(2, phrases["catalogue.reading.title"]),
                    Words.Bullets(
                    [
                        phrases.Inlines("catalogue.reading.left_out"),
                        phrases.Inlines("catalogue.reading.range"),
                        phrases.Inlines("catalogue.reading.units"),
                        phrases.Inlines("catalogue.reading.stocks"),
                    ]),
                ]) { Title = phrases["contents.title"] },
                new FlowPart(entries) { Title = phrases["catalogue.structures"] },
            ],
        };
    }

    private List<Block> Entry(ShownStructure shown)
    {
        var structure = shown.Structure;
        var figure = new FinishedFigure(shown.Metric, shown.Imperial, shown.Item, [.. CataloguePress.UsualStocks(shown.Structure).Values], phrases, _values);
        var drawing = figure.Finished();
        return
        [
            Words.Heading(2, structure.Title, "structure-" + structure.Id),
            new BesideBlock(
                [
                    Words.Paragraph(structure.Suits),
                    Words.Phrase(
                        phrases,
                        Takes(structure),
                        ParagraphKind.Body,
                        ("id", [new TextInline(structure.Id, Emphasis.Literal)])),
                    Example(shown, figure),
                    Words.Phrase(phrases, "catalogue.cut", ParagraphKind.Body, ("parts", Parts(shown))),
                ],
                new FigureBlock(drawing, figure.Describe(drawing), [])),
            Parameters(shown),
        ];
    }

    private static string Takes(Structure structure) =>
        structure.Takes.Count > 1 ? "catalogue.takes.both" : structure.Takes[0] == ItemShape.Round ? "catalogue.takes.round" : "catalogue.takes.rectangular";

    private ParagraphBlock Example(ShownStructure shown, FinishedFigure figure)
    {
        var item = shown.Item;
        var size = item.Shape == ItemShape.Round
            ? phrases.Inlines("catalogue.example.round", ("across", Both(item.Width)), ("height", Both(item.Height)))
            : Both([item.Width, item.Depth, item.Height], [Nearest(item.Width), Nearest(item.Depth), Nearest(item.Height)]);
        var (here, there) = figure.Outside;
        return Words.Phrase(
            phrases,
            here.Count == 2 ? "catalogue.example.flat" : "catalogue.example.finished",
            ParagraphKind.Body,
            ("item", Words.Plain(item.Name)),
            ("size", size),
            ("outside", Both(here, there)));
    }

    // An item has one size; on the inch ruler it is said to the nearest mark.
    private static Length Nearest(Length length) => Ruler.SixteenthInches.Round(length, Rounding.Nearest);

    private IReadOnlyList<Inline> Both(IReadOnlyList<Length> here, IReadOnlyList<Length> there) =>
        [new MeasureInline(_values.Sides(here, Ruler.WholeMillimetres)), new TextInline(" "), new MeasureInline($"({_values.Sides(there, Ruler.SixteenthInches)})")];

    private IReadOnlyList<Inline> Both(Length length) =>
        _values.Both(new LengthValue(length), new LengthValue(Nearest(length)));

    // The pieces with their sheets; mats are many and small.
    private List<Inline> Parts(ShownStructure shown)
    {
        var inlines = new List<Inline>();
        foreach (var part in shown.Metric.Kit.Pieces)
        {
            if (inlines.Count > 0)
                inlines.Add(new TextInline(phrases["list.semicolon"] + " "));
            var there = shown.Imperial.Kit.Pieces.FirstOrDefault(other => other.Piece.Id == part.Piece.Id);
            var (piece, size) = (("piece", Words.Plain(part.Piece.Name.ToLowerInvariant())), ("size", Sheet(part.Piece, there?.Piece)));
            inlines.AddRange(part.Quantity == 1
                ? phrases.Inlines("catalogue.piece", piece, size)
                : phrases.Inlines("catalogue.pieces", ("count", _values.One(new NumberValue(part.Quantity), Ruler.WholeMillimetres)), piece, size));
        }

        if (shown.Metric.Kit.Parts.Where(part => part.Kind == PartKind.Mat).Sum(part => part.Quantity) is > 0 and var mats)
        {
            inlines.Add(new TextInline(phrases["list.semicolon"] + " "));
            inlines.Add(new TextInline(phrases.Plural("catalogue.mats", mats)));
        }

        return inlines;
    }

    private IReadOnlyList<Inline> Sheet(Piece here, Piece? there) =>
        _values.Both(new SizeValue(here.Sheet), there is null ? null : new SizeValue(there.Sheet));

    private TableBlock Parameters(ShownStructure shown) => new(
        [ColumnAlignment.Left, ColumnAlignment.Left, ColumnAlignment.Left, ColumnAlignment.Left],
        [new TableRow(
        [
            Words.Head(phrases["catalogue.parameter.name"]),
            Words.Head(phrases["catalogue.parameter.means"]),
            Words.Head(phrases["catalogue.parameter.left_out"]),
            Words.Head(phrases["catalogue.parameter.range"]),
        ])],
        [.. shown.Metric.Parameters.Zip(shown.Imperial.Parameters, (here, there) => new TableRow(
        [
            new TableCell([new TextInline(here.Parameter.Name)], IsHeader: true),
            Words.Cell(here.Parameter.Means),
            new TableCell(here.Value is { } value ? _values.Both(value, there.Value) : []),
            new TableCell(Range(here, there)),
        ]))]);

    private List<Inline> Range(FittedParameter here, FittedParameter there)
    {
        var parameter = here.Parameter;
        switch (parameter.Kind)
        {
            case ParameterKind.YesNo:
                return [new TextInline($"{phrases["answer.yes"]} {phrases["list.or"]} {phrases["answer.no"]}")];
            case ParameterKind.Choice:
                return [new TextInline($"{string.Join(phrases["list.comma"], parameter.Choices.SkipLast(1))} {phrases["list.or"]} {parameter.Choices[^1]}")];
            case ParameterKind.Number:
                return [.. Between(here, Ruler.WholeMillimetres)];
        }

        var inlines = Between(here, Ruler.WholeMillimetres).ToList();
        inlines.Add(new TextInline(" ("));
        inlines.AddRange(Between(there, Ruler.SixteenthInches));
        inlines.Add(new TextInline(")"));
        return inlines;
    }

    // The unit is said once, at the end. Where a file sets no limit, the general ones hold: what can be cut at all.
    private IReadOnlyList<Inline> Between(FittedParameter fitted, Ruler ruler)
    {
        if (fitted.Parameter.Kind == ParameterKind.Number)
        {
            return (fitted.Least, fitted.Most) switch
            {
                ({ } from, { } to) => phrases.Inlines("catalogue.range.both", ("least", _values.One(from, ruler)), ("most", _values.One(to, ruler))),
                ({ } from, null) => phrases.Inlines("catalogue.range.least", ("least", _values.One(from, ruler))),
                (null, { } to) => phrases.Inlines("catalogue.range.most", ("most", _values.One(to, ruler))),
                _ => [],
            };
        }

        var (least, most) = ((fitted.Least as LengthValue)?.Length, (fitted.Most as LengthValue)?.Length);
        return (least, most) switch
        {
            ({ } from, { } to) when to > from => phrases.Inlines(
                "catalogue.range.both",
                ("least", [new MeasureInline(_values.Point(LengthFormat.Number(from, ruler)))]),
                ("most", [new MeasureInline(_values.Length(to, ruler))])),
            ({ } from, null) => phrases.Inlines("catalogue.range.least", ("least", [new MeasureInline(_values.Length(from, ruler))])),
            (null, { } to) => phrases.Inlines("catalogue.range.most", ("most", [new MeasureInline(_values.Length(to, ruler))])),
            ({ } from, _) => [new MeasureInline(_values.Length(from, ruler))],
            _ => phrases.Inlines("catalogue.range.any"),
        };
    }
}
