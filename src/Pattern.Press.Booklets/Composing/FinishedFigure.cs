using System.Collections.Concurrent;
using Pattern.Press.Booklets.Figures;
using Pattern.Press.Booklets.Figures.Solid;
using Pattern.Press.Booklets.Phrases;
using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Structures.Fitting;

namespace Pattern.Press.Booklets.Composing;

/// <summary>Drawings of things that stand in space, folded from the primary fit, with their words.</summary>
internal sealed class FinishedFigure(Kit kit, Item? goesIn, PhraseBook phrases, ValueText values)
{
    // The cover of every paper and some steps show the same thing.
    private readonly ConcurrentDictionary<FinishedShow, Lazy<FinishedDrawing>> _finished = new();

    public FinishedFigure(BookletContext context, ValueText values)
        : this(context.Primary.Kit, context.Source.Item, context.Phrases, values)
    {
    }

    /// <summary>The finished thing, open in front and closed behind.</summary>
    public FinishedDrawing Finished(FinishedShow show = FinishedShow.Both) =>
        _finished.GetOrAdd(show, show => new(() => new FinishedDrawing(kit, goesIn, show))).Value;

    /// <summary>The moment when a part goes on or in; null when it goes nowhere.</summary>
    public SolidDrawing? Inserting(string part) => FinishedDrawing.Inserting(kit, goesIn, part);

    /// <summary>What that shows.</summary>
    public string DescribeInserting(string part)
    {
        var assembly = kit.Assembly;
        var entry = assembly.Find(part)!;
        var values = new[] { ("piece", Name(part)), ("other", Name(entry.To!)) };
        var way = entry.Goes switch
        {
            GoesWhere.Over => phrases.Format("alternative.goes_over", values),
            GoesWhere.Around => phrases.Format("alternative.goes_around", values),
            GoesWhere.On => phrases.Format("alternative.goes_on", values),
            GoesWhere.Beside => phrases.Format("alternative.goes_beside", values),
            _ => phrases.Format("alternative.goes_inside", values),
        };
        return $"{way} {Whole(Finished(FinishedShow.Closed).Facts)}";
    }

    private string Whole(FinishedFacts facts) =>
        phrases.Format("alternative.whole", ("width", Text(facts.Width)), ("depth", Text(facts.Depth)), ("height", Text(facts.Height)));

    private string Name(string part) => part == Assembly.Item
        ? goesIn?.Name ?? ""
        : (kit.Parts.FirstOrDefault(one => one.Piece.Id == part)?.Piece.Name ?? part).ToLowerInvariant();

    /// <summary>What the drawing of the finished thing shows.</summary>
    public string Describe(FinishedDrawing drawing)
    {
        var facts = drawing.Facts;
        var (width, depth, height) = (Text(facts.Width), Text(facts.Depth), Text(facts.Height));
        switch (facts.Show)
        {
            case FinishedShow.Closed:
                return phrases.Format("alternative.closed", ("width", width), ("depth", depth), ("height", height));
            case FinishedShow.Apart:
                return $"{phrases.Format("alternative.exploded", ("pieces", phrases.Join([.. facts.Pieces.Select(Name)])))} {Whole(facts)}";
            case FinishedShow.Open or FinishedShow.Opened:
                return facts.Item is { } inside
                    ? phrases.Format("alternative.open_with_item", ("item", inside.Name), ("width", width), ("depth", depth), ("height", height))
                    : phrases.Format("alternative.open", ("width", width), ("depth", depth), ("height", height));
        }

        return facts.Item is { } item
            ? phrases.Format("alternative.finished_with_item", ("item", item.Name), ("width", width), ("depth", depth), ("height", height))
            : phrases.Format("alternative.finished", ("width", width), ("depth", depth), ("height", height));
    }

    /// <summary>One piece, folded part of the way or wholly, bare or with its mats.</summary>
    public FoldedDrawing Folded(Piece piece, double folded, bool hasMats = false) =>
        new(piece, folded, upsideDown: FinishedThing.IsTurnedOver(kit, piece), mats: hasMats ? MatPlacing.On(piece, kit.Parts) : null, part: kit.Assembly.Find(piece.Id));

    /// <summary>The moment when glued seams of a piece are closed; null where no glue holds it to itself.</summary>
    public GluingDrawing? Gluing(Piece piece, IReadOnlyList<string> kinds) => GluingDrawing.Of(kit, piece, kinds);

    /// <summary>What that shows.</summary>
    public string Describe(GluingDrawing drawing) => drawing.HidesGlue ? $"{Gluing(drawing)} {phrases["alternative.gluing_hidden"]}" : Gluing(drawing);

    private string Gluing(GluingDrawing drawing) => phrases.Format(
        "alternative.gluing", ("piece", drawing.Piece.Name.ToLowerInvariant()), ("glued", phrases.Join(drawing.Kinds)), ("target", phrases.Join(drawing.Targets)), ("sheet", values.Size(drawing.Piece.Sheet, kit.Ruler)));

    /// <summary>
    /// A piece that has all its mats on the outside, its outside up; null for any other. One that holds them like a box or a lid
    /// is folded, so that it is seen what goes where; one with mats in the shapes of its faces lies flat, as it is when they go
    /// on, because folded it would hide many of them.
    /// </summary>
    public FoldedDrawing? WithOutsideMats(Piece piece)
    {
        var mats = MatPlacing.On(piece, kit.Parts);
        if (mats.Count == 0 || mats.Any(mat => mat.Side != SheetSide.Away))
            return null;
        var opening = mats.Any(mat => mat.Part.Inset is not null) ? 0 : 1;
        var part = kit.Assembly.Find(piece.Id);
        return opening == 1 && FoldedDrawing.StandsUp(part)
            ? new FoldedDrawing(piece, mats: mats, part: part)
            : new FoldedDrawing(piece, opening, upsideDown: true, mats: mats, turned: true);
    }

    /// <summary>What the drawing of a piece with its mats on the outside shows.</summary>
    public string Describe(FoldedDrawing drawing, IFigureWords words)
    {
        var facts = drawing.Facts;
        var (name, width, depth) = (facts.Piece.Name.ToLowerInvariant(), Text(facts.Width), Text(facts.Depth));
        var piece = facts.Opening == 0
            ? phrases.Format("alternative.mats_flat", ("piece", name), ("width", width), ("depth", depth))
            : phrases.Format("alternative.mats_outside", ("piece", name), ("width", width), ("depth", depth), ("height", Text(facts.Height)));
        return $"{piece} {AlternativeText.Mats(facts.Mats, words)}";
    }

    /// <summary>What the drawing of a folded piece shows.</summary>
    public string Describe(FoldedDrawing drawing)
    {
        var facts = drawing.Facts;
        var piece = facts.Piece.Name.ToLowerInvariant();
        return facts.Opening < 1
            ? phrases.Format("alternative.half_folded", ("piece", piece), ("width", Text(facts.Width)), ("depth", Text(facts.Depth)), ("height", Text(facts.Height)))
            : phrases.Format("alternative.folded", ("piece", piece), ("width", Text(facts.Width)), ("depth", Text(facts.Depth)), ("height", Text(facts.Height)));
    }

    private string Text(double millimetres)
    {
        var ruler = kit.Ruler;
        return values.Length(ruler.Round(Length.FromMillimetres(millimetres), Rounding.Nearest), ruler);
    }
}
