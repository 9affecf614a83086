using System.Globalization;
using Pattern.Press.Booklets.Figures;
using Pattern.Press.Booklets.Phrases;
using Pattern.Press.Measure;
using Pattern.Press.Plans.Cutting;
using Pattern.Press.Plans.Materials;
using Pattern.Press.Plans.Sheets;
using Pattern.Press.Structures.Fitting;
using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Booklets.Composing.Parts;

/// <summary>How the sheets are cut up: a drawing of every layout with its cuts in order.</summary>
internal sealed class SheetsPart
{
    // An offcut narrower than this is no use for anything but testing a pen. Common practice, no source.
    private static readonly Length NarrowestOffcut = Length.FromMillimetres(25);

    private readonly BookletContext _context;
    private readonly ValueText _values;
    private readonly PhraseBook _phrases;
    private readonly SortedDictionary<string, string> _letters = new(StringComparer.Ordinal);
    private readonly SortedDictionary<string, Size> _otherSizes = new(StringComparer.Ordinal);

    private SheetsPart(BookletContext context, ValueText values)
    {
        (_context, _values, _phrases) = (context, values, context.Phrases);
        foreach (var item in CutList.Make(context.Primary.Kit, 1).Groups.SelectMany(group => group.Items))
            _letters[item.Part.Piece.Id] = item.Letter;
        foreach (var part in context.Secondary.Kit.Parts)
            _otherSizes[part.Piece.Id] = part.Piece.Sheet;
    }

    private Ruler Ruler => _context.Primary.Kit.Ruler;

    /// <summary>Composes the part.</summary>
    public static FlowPart Compose(BookletContext context, ValueText values) => new SheetsPart(context, values).Compose();

    private FlowPart Compose()
    {
        var needs = _context.Materials.Primary.Stocks;
        var figures = needs.SelectMany(need => need.Plan.Layouts.Select(layout => (Need: need, layout.Sheet, layout.Count))).ToList();
        var distances = figures.Select(figure => OtherColumn.Distances(figure.Sheet, wanted => _otherSizes[wanted.Part!.Piece.Id])).ToList();
        var how = new List<Inline>(_phrases.Inlines("sheets.how"));
        if (distances.Exists(found => found is not null))
            Add(how, _phrases.Inlines("sheets.other_fits"));
        if (distances.Exists(found => found is null))
        {
            var system = _context.Source.Primary == UnitSystem.Metric ? "system.metric_word" : "system.imperial_word";
            var sheets = _context.Materials.Secondary.Stocks.Sum(need => need.Sheets).ToString(CultureInfo.InvariantCulture);
            Add(how, _phrases.Inlines("sheets.other_own", ("system", Words.Plain(_phrases[system])), ("count", Words.Plain(sheets))));
        }

        if (needs.Any(need => need.Stock.Grain is not null))
            Add(how, _phrases.Inlines("sheets.grain"));
        var blocks = new List<Block>
        {
            Words.Heading(1, _phrases["sheets.title"], "sheets"),
            Words.Paragraph(_phrases.Plural("sheets.lead", _context.Source.Kits), ParagraphKind.Lead),
            new ParagraphBlock(how),
            new ParagraphBlock(Key()),
        };
        var drawn = figures.Select((figure, i) => Figure(figure.Need, figure.Sheet, figure.Count, distances[i])).ToList();
        for (var i = 0; i < drawn.Count; i += 2)
            blocks.Add(i + 1 < drawn.Count ? new FigureRowBlock([drawn[i], drawn[i + 1]]) : drawn[i] with { Width = FigureWidth.Small });
        // A class has its sheets on pages of their own; a maker's go below the part before, as a whole, if they fit there.
        return _context.IsForSeveral
            ? new FlowPart(blocks) { Title = _phrases["sheets.title"] }
            : new FlowPart([new KeepTogetherBlock(blocks)], FlowsOn: true) { Title = _phrases["sheets.title"] };
    }

    private static void Add(List<Inline> inlines, IReadOnlyList<Inline> more)
    {
        inlines.Add(new TextInline(" "));
        inlines.AddRange(more);
    }

    private List<Inline> Key()
    {
        var key = new List<Inline>();
        foreach (var part in _context.Primary.Kit.Parts)
        {
            if (key.Count > 0)
                key.Add(new TextInline(_phrases["list.semicolon"] + " "));
            key.Add(new TextInline(_letters[part.Piece.Id], Emphasis.Bold));
            key.Add(new TextInline("\u00A0" + part.Piece.Name));
        }

        key.Add(new TextInline("."));
        return key;
    }

    private FigureBlock Figure(StockNeed need, PlannedSheet sheet, int count, IReadOnlyList<Length>? other)
    {
        var drawing = new SheetPlanDrawing(sheet, need.Plan.Sheet, wanted => _letters[wanted.Part!.Piece.Id], need.Stock.Grain is not null);
        var stock = Words.Plain(need.Stock.Name);
        var caption = new List<Inline>(count == 1
            ? _phrases.Inlines("sheets.caption.one", ("stock", stock))
            : _phrases.Inlines("sheets.caption.other", ("stock", stock), ("count", Words.Plain(count.ToString(CultureInfo.InvariantCulture)))));
        Add(caption, _phrases.Inlines("sheets.cuts", ("cuts", Cuts(sheet, other))));
        var offcuts = sheet.Offcuts.Where(offcut => offcut.Size.Shorter >= NarrowestOffcut).Take(3).ToList();
        if (offcuts.Count > 0)
            Add(caption, _phrases.Inlines("sheets.left_over", ("offcuts", Joined([.. offcuts.Select(offcut => _values.One(new SizeValue(offcut.Size), Ruler))]))));
        var alternative = _phrases.Format(
            "sheets.alternative",
            ("stock", need.Stock.Name),
            ("size", _values.Size(need.Plan.Sheet, Ruler)),
            ("pieces", _phrases.Join([.. sheet.Rectangles.GroupBy(r => r.Wanted.Name, StringComparer.Ordinal).Select(group => $"{group.Count().ToString(CultureInfo.InvariantCulture)} × {group.Key}")])),
            ("cuts", sheet.Operations.Count.ToString(CultureInfo.InvariantCulture)));
        return new FigureBlock(drawing, alternative, caption);
    }

    private List<Inline> Cuts(PlannedSheet sheet, IReadOnlyList<Length>? other) => Joined([.. sheet.Operations.Select((operation, i) =>
    {
        var number = operation.Number.ToString(CultureInfo.InvariantCulture);
        var at = _values.Both(new LengthValue(operation.Distance), other is null ? null : new LengthValue(other[i]));
        (string, IReadOnlyList<Inline>)[] gaps = [("number", Words.Plain(number)), ("at", at)];
        IReadOnlyList<Inline> cut = (operation.Down, operation.Repeats > 1) switch
        {
            (true, false) => _phrases.Inlines("sheets.down", gaps),
            (false, false) => _phrases.Inlines("sheets.across", gaps),
            (true, true) => _phrases.Inlines("sheets.down_every", gaps),
            _ => _phrases.Inlines("sheets.across_every", gaps),
        };
        var times = operation.Repeats > 1
            ? _phrases.Format("sheets.times", ("count", operation.Repeats.ToString(CultureInfo.InvariantCulture)))
            : "";
        var parts = operation.Parts > 1
            ? _phrases.Format("sheets.parts", ("count", operation.Parts.ToString(CultureInfo.InvariantCulture)))
            : "";
        return (IReadOnlyList<Inline>)[.. cut, new TextInline(times + parts)];
    })]);

    private List<Inline> Joined(IReadOnlyList<IReadOnlyList<Inline>> items)
    {
        var joined = new List<Inline>();
        foreach (var item in items)
        {
            if (joined.Count > 0)
                joined.Add(new TextInline(_phrases["list.semicolon"] + " "));
            joined.AddRange(item);
        }

        return joined;
    }
}
