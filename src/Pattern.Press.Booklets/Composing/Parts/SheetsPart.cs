using System.Globalization;
using Pattern.Press.Booklets.Figures;
using Pattern.Press.Booklets.Markdown;
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

    // As many settings as are read in one breath below a drawing; more stand as a list of their own.
    private const int MostCutsInCaption = 6;
    private const int ListColumns = 2;

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
        var others = figures.Select(figure => OtherColumn.Of(figure.Sheet, wanted => _otherSizes[wanted.Part!.Piece.Id])).ToList();
        var how = new List<Inline>(_phrases.Inlines("sheets.how"));
        if (others.Exists(found => found is not null))
            Add(how, _phrases.Inlines("sheets.other_fits"));
        if (others.Exists(found => found is null))
        {
            var system = _context.Source.Primary == UnitSystem.Metric ? "system.metric_word" : "system.imperial_word";
            var sheets = _context.Materials.Secondary.Stocks.Sum(need => need.Sheets).ToString(CultureInfo.InvariantCulture);
            Add(how, _phrases.Inlines("sheets.other_own", ("system", Words.Plain(_phrases[system])), ("count", Words.Plain(sheets))));
        }

        if (needs.Any(need => need.Stock.Grain is not null))
            Add(how, _phrases.Inlines("sheets.grain"));
        var drawn = figures.Select((figure, i) => Figure(figure.Need, figure.Sheet, figure.Count, others[i], Name(i))).ToList();
        var lists = figures.Select((figure, i) => List(figure.Sheet, others[i], Name(i))).ToList();
        var rows = new List<Block>();
        for (var i = 0; i < drawn.Count; i += 2)
        {
            var isPair = i + 1 < drawn.Count;
            Block row = isPair ? new FigureRowBlock([drawn[i], drawn[i + 1]]) : drawn[i] with { Width = FigureWidth.Small };
            List<Block> below = [.. lists[i].Select(InColumns), .. isPair ? lists[i + 1].Select(InColumns) : []];
            if (!isPair && lists[i].Count > 0)
                rows.Add(new KeepTogetherBlock([new BesideBlock(lists[i], drawn[i])]));
            else
                rows.Add(below.Count > 0 ? new KeepTogetherBlock([row, .. below]) : row);
        }

        // The first drawings stand with the words that explain them.
        var blocks = new List<Block>
        {
            new KeepTogetherBlock(
            [
                Words.Heading(1, _phrases["sheets.title"], "sheets"),
                Words.Paragraph(_phrases.Plural("sheets.lead", _context.Source.Kits), ParagraphKind.Lead),
                new ParagraphBlock(how),
                new ParagraphBlock(Key()),
                .. rows.Take(1),
            ]),
        };
        blocks.AddRange(rows.Skip(1));
        // A class has its sheets on pages of their own; a maker's go below the part before, if they fit there.
        return new FlowPart(blocks, FlowsOn: !_context.IsForSeveral) { Title = _phrases["sheets.title"] };
    }

    // With a space, so that no figure of a maker's has the same.
    private static string Name(int index) => string.Create(CultureInfo.InvariantCulture, $"{Numbering.FigurePrefix}sheet {index + 1}");

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

    private FigureBlock Figure(StockNeed need, PlannedSheet sheet, int count, OtherColumn? other, string name)
    {
        var drawing = new SheetPlanDrawing(sheet, need.Plan.Sheet, wanted => _letters[wanted.Part!.Piece.Id], need.Stock.Grain is not null);
        var stock = Words.Plain(need.Stock.Name);
        var caption = new List<Inline>(count == 1
            ? _phrases.Inlines("sheets.caption.one", ("stock", stock))
            : _phrases.Inlines("sheets.caption.other", ("stock", stock), ("count", Words.Plain(count.ToString(CultureInfo.InvariantCulture)))));
        if (sheet.Operations.Count <= MostCutsInCaption)
            Add(caption, _phrases.Inlines("sheets.cuts", ("cuts", Joined([.. Cuts(sheet, other).Select(Numbered)]))));
        // Offcuts alike are said once; the three largest sizes are worth a word.
        var offcuts = sheet.Offcuts
            .Select((offcut, i) => (Here: Down(offcut.Size, Ruler), There: other is null ? null : Down(other.Offcuts[i], _values.Other(Ruler))))
            .Where(offcut => offcut.Here.Size.Shorter >= NarrowestOffcut)
            .GroupBy(offcut => offcut)
            .Take(3)
            .Select(alike => (Both: _values.Both(alike.Key.Here, alike.Key.There), Count: alike.Count()))
            .Select(alike => alike.Count == 1
                ? alike.Both
                : _phrases.Inlines("sheets.left_over_alike", ("count", Words.Plain(alike.Count.ToString(CultureInfo.InvariantCulture))), ("size", alike.Both)))
            .ToList();
        if (offcuts.Count > 0)
            Add(caption, _phrases.Inlines("sheets.left_over", ("offcuts", Joined(offcuts))));
        var alternative = _phrases.Format(
            "sheets.alternative",
            ("stock", need.Stock.Name),
            ("size", _values.SoldAs(need.Stock.Sheet)),
            ("pieces", string.Join(_phrases["list.semicolon"] + " ", sheet.Rectangles.GroupBy(r => r.Wanted.Name, StringComparer.Ordinal).Select(Counted))),
            ("cuts", sheet.Operations.Count.ToString(CultureInfo.InvariantCulture)));
        return new FigureBlock(drawing, alternative, caption) { Destination = name };
    }

    private string Counted(IGrouping<string, PlacedRectangle> alike) =>
        _phrases.Format("alternative.times", ("count", alike.Count().ToString(CultureInfo.InvariantCulture)), ("what", alike.Key));

    // On the ruler, and never more than there is.
    private static SizeValue Down(Size size, Ruler ruler) => new(new Size(ruler.Round(size.Width, Rounding.Down), ruler.Round(size.Height, Rounding.Down)));

    private IReadOnlyList<Block> List(PlannedSheet sheet, OtherColumn? other, string name)
    {
        if (sheet.Operations.Count <= MostCutsInCaption)
            return [];
        IReadOnlyList<Inline> figure = [new LinkInline([new ReferenceInline(name, ReferenceKind.Name)], name, IsAddress: false)];
        var items = Cuts(sheet, other).Select(cut => (IReadOnlyList<Block>)[new ParagraphBlock(cut.Words)]);
        return [new ParagraphBlock(_phrases.Inlines("sheets.list", ("figure", figure))), new ListBlock(ListKind.Numbered, 1, [.. items])];
    }

    private static Block InColumns(Block block) => block is ListBlock list ? Words.InColumns(ListColumns, [list]) : block;

    private IReadOnlyList<Inline> Numbered((int Number, IReadOnlyList<Inline> Words) cut) =>
        _phrases.Inlines("sheets.cut", ("number", Words.Plain(cut.Number.ToString(CultureInfo.InvariantCulture))), ("cut", cut.Words));

    private IEnumerable<(int Number, IReadOnlyList<Inline> Words)> Cuts(PlannedSheet sheet, OtherColumn? other) => sheet.Operations.Select((operation, i) =>
    {
        (string, IReadOnlyList<Inline>)[] gaps = [("at", _values.Both(new LengthValue(operation.Distance), other is null ? null : new LengthValue(other.Distances[i])))];
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
        return (operation.Number, (IReadOnlyList<Inline>)[.. cut, new TextInline(times + parts)]);
    });

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
