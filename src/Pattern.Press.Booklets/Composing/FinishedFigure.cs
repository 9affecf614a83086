using System.Collections.Concurrent;
using Pattern.Press.Booklets.Figures;
using Pattern.Press.Booklets.Figures.Solid;
using Pattern.Press.Booklets.Phrases;
using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Structures.Fitting;

namespace Pattern.Press.Booklets.Composing;

/// <summary>Drawings of things that stand in space, folded from one fit, with their words, which give the sizes of both.</summary>
internal sealed class FinishedFigure
{
    private readonly Kit _kit;
    private readonly Kit _other;
    private readonly Item? _goesIn;
    private readonly PhraseBook _phrases;
    private readonly ValueText _values;
    private readonly Lazy<(IReadOnlyList<Length> Here, IReadOnlyList<Length> There)> _outside;

    // The cover of every paper and some steps show the same thing.
    private readonly ConcurrentDictionary<FinishedShow, Lazy<FinishedDrawing>> _finished = new();

    /// <summary>Drawings for a booklet.</summary>
    public FinishedFigure(BookletContext context, ValueText values)
        : this(context.Primary, context.Secondary, context.Source.Item, [.. context.Source.Stocks.Values], context.Phrases, values)
    {
    }

    /// <summary>Drawings of a fit.</summary>
    /// <param name="here">The fit that is drawn.</param>
    /// <param name="there">The same thing fitted on the other ruler.</param>
    /// <param name="goesIn">What goes inside, if it is known.</param>
    /// <param name="stocks">What it is made of.</param>
    /// <param name="phrases">The words.</param>
    /// <param name="values">Sets measurements.</param>
    public FinishedFigure(Model here, Model there, Item? goesIn, IReadOnlyList<Stock> stocks, PhraseBook phrases, ValueText values)
    {
        (_kit, _other, _goesIn, _phrases, _values) = (here.Kit, there.Kit, goesIn, phrases, values);
        _outside = new(() => (FinishedSizes.Of(here, goesIn, stocks), FinishedSizes.Of(there, goesIn, stocks)));
    }

    /// <summary>How large the finished thing is outside, in both fits.</summary>
    public (IReadOnlyList<Length> Here, IReadOnlyList<Length> There) Outside => _outside.Value;

    /// <summary>The finished thing, open in front and closed behind.</summary>
    public FinishedDrawing Finished(FinishedShow show = FinishedShow.Both) =>
        _finished.GetOrAdd(show, show => new(() => new FinishedDrawing(_kit, _goesIn, show))).Value;

    /// <summary>The moment when a part goes on or in; null when it goes nowhere.</summary>
    public SolidDrawing? Inserting(string part) => FinishedDrawing.Inserting(_kit, _goesIn, part);

    /// <summary>What that shows.</summary>
    public string DescribeInserting(string part)
    {
        var assembly = _kit.Assembly;
        var entry = assembly.Find(part)!;
        var values = new[] { ("piece", Name(part)), ("other", Name(entry.To!)) };
        var way = entry.Goes switch
        {
            GoesWhere.Over => _phrases.Format("alternative.goes_over", values),
            GoesWhere.Around => _phrases.Format("alternative.goes_around", values),
            GoesWhere.On => _phrases.Format("alternative.goes_on", values),
            GoesWhere.Beside when !entry.IsPutIn => _phrases.Format("alternative.goes_beside", values),
            _ => _phrases.Format("alternative.goes_inside", values),
        };
        return $"{way} {Whole()}";
    }

    private string Whole() => _phrases.Format("alternative.whole", ("size", FinishedSize()));

    private string FinishedSize()
    {
        var (here, there) = Outside;
        var sizes = here.Select((size, i) => Both(size, here.Count == there.Count ? there[i] : null)).ToList();
        return sizes.Count == 2
            ? _phrases.Format("alternative.flat_size", ("width", sizes[0]), ("height", sizes[1]))
            : _phrases.Format("alternative.size", ("width", sizes[0]), ("depth", sizes[1]), ("height", sizes[2]));
    }

    private string Name(string part) => part == Assembly.Item
        ? _goesIn?.Name ?? ""
        : (_kit.Parts.FirstOrDefault(one => one.Piece.Id == part)?.Piece.Name ?? part).ToLowerInvariant();

    /// <summary>What the drawing of the finished thing shows.</summary>
    public string Describe(FinishedDrawing drawing)
    {
        var facts = drawing.Facts;
        var size = FinishedSize();
        return (facts.Show, facts.Item) switch
        {
            (FinishedShow.Closed, _) => _phrases.Format("alternative.closed", ("size", size)),
            (FinishedShow.Apart, _) => $"{_phrases.Format("alternative.exploded", ("pieces", _phrases.Join([.. facts.Pieces.Select(Name)])))} {Whole()}",
            (FinishedShow.Open or FinishedShow.Opened, { } inside) => _phrases.Format("alternative.open_with_item", ("item", inside.Name), ("size", size)),
            (FinishedShow.Open or FinishedShow.Opened, _) => _phrases.Format("alternative.open", ("size", size)),
            (_, { } item) => _phrases.Format("alternative.finished_with_item", ("item", item.Name), ("size", size)),
            _ => _phrases.Format("alternative.finished", ("size", size)),
        };
    }

    /// <summary>One piece, folded part of the way or wholly, bare or with its mats.</summary>
    public FoldedDrawing Folded(Piece piece, double folded, bool hasMats = false) =>
        new(piece, folded, upsideDown: FinishedThing.IsTurnedOver(_kit, piece), mats: hasMats ? MatPlacing.On(piece, _kit.Parts) : null, part: _kit.Assembly.Find(piece.Id));

    /// <summary>The moment when glued seams of a piece are closed; null where no glue holds it to itself.</summary>
    public GluingDrawing? Gluing(Piece piece, IReadOnlyList<string> kinds) => GluingDrawing.Of(_kit, piece, kinds);

    /// <summary>What that shows.</summary>
    public string Describe(GluingDrawing drawing) => drawing.HidesGlue ? $"{Gluing(drawing)} {_phrases["alternative.gluing_hidden"]}" : Gluing(drawing);

    private string Gluing(GluingDrawing drawing) => _phrases.Format(
        "alternative.gluing", ("piece", drawing.Piece.Name.ToLowerInvariant()), ("glued", _phrases.Join(drawing.Kinds)), ("target", _phrases.Join(drawing.Targets)), ("sheet", Both(drawing.Piece.Sheet, Other(drawing.Piece)?.Sheet)));

    /// <summary>
    /// A piece that has all its mats on the outside, its outside up; null for any other. One that holds them like a box or a lid
    /// is folded, so that it is seen what goes where; one with mats in the shapes of its faces lies flat, as it is when they go
    /// on, because folded it would hide many of them.
    /// </summary>
    public FoldedDrawing? WithOutsideMats(Piece piece)
    {
        var mats = MatPlacing.On(piece, _kit.Parts);
        if (mats.Count == 0 || mats.Any(mat => mat.Side != SheetSide.Away))
            return null;
        var opening = mats.Any(mat => mat.Part.Inset is not null) ? 0 : 1;
        var part = _kit.Assembly.Find(piece.Id);
        return opening == 1 && FoldedDrawing.StandsUp(part)
            ? new FoldedDrawing(piece, mats: mats, part: part)
            : new FoldedDrawing(piece, opening, upsideDown: true, mats: mats, turned: true);
    }

    /// <summary>What the drawing of a piece with its mats on the outside shows.</summary>
    public string Describe(FoldedDrawing drawing, IFigureWords words)
    {
        var facts = drawing.Facts;
        var (name, (width, depth, height)) = (facts.Piece.Name.ToLowerInvariant(), Sizes(facts));
        var piece = facts.Opening == 0
            ? _phrases.Format("alternative.mats_flat", ("piece", name), ("width", width), ("depth", depth))
            : _phrases.Format("alternative.mats_outside", ("piece", name), ("width", width), ("depth", depth), ("height", height));
        return $"{piece} {AlternativeText.Mats(facts.Mats, words, _kit.Ruler, _other.Parts, _other.Ruler)}";
    }

    /// <summary>What the drawing of a folded piece shows.</summary>
    public string Describe(FoldedDrawing drawing)
    {
        var facts = drawing.Facts;
        var (width, depth, height) = Sizes(facts);
        return _phrases.Format(
            facts.Opening < 1 ? "alternative.half_folded" : "alternative.folded",
            ("piece", facts.Piece.Name.ToLowerInvariant()), ("width", width), ("depth", depth), ("height", height));
    }

    private (string Width, string Depth, string Height) Sizes(FoldedFacts facts)
    {
        (double Width, double Depth, double Height)? there =
            Other(facts.Piece) is { } other ? FoldedDrawing.SizeOf(other, facts.Opening, facts.UpsideDown, _other.Assembly.Find(other.Id)) : null;
        return (Measured(facts.Width, there?.Width), Measured(facts.Depth, there?.Depth), Measured(facts.Height, there?.Height));
    }

    private string Measured(double here, double? there) =>
        Both(Marked(here, _kit.Ruler), there is { } millimetres ? Marked(millimetres, _other.Ruler) : null);

    private static Length Marked(double millimetres, Ruler ruler) => ruler.Round(Length.FromMillimetres(millimetres), Rounding.Nearest);

    private string Both(Length here, Length? there) =>
        there is { } length ? $"{_values.Length(here, _kit.Ruler)} / {_values.Length(length, _other.Ruler)}" : _values.Length(here, _kit.Ruler);

    private string Both(Size here, Size? there) =>
        there is { } size ? $"{_values.Size(here, _kit.Ruler)} / {_values.Size(size, _other.Ruler)}" : _values.Size(here, _kit.Ruler);

    private Piece? Other(Piece piece) => _other.Parts.FirstOrDefault(part => part.Piece.Id == piece.Id)?.Piece;
}
