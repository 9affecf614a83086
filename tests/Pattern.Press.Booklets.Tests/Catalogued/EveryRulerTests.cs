using Pattern.Press.Booklets.Cataloguing;
using Pattern.Press.Booklets.Composing;
using Pattern.Press.Booklets.Content;
using Pattern.Press.Booklets.Phrases;
using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Nets.Folding.Proofs;
using Pattern.Press.Plans.Measuring;
using Pattern.Press.Plans.Scoring;
using Pattern.Press.Structures;
using Pattern.Press.Structures.Fitting;
using Pattern.Press.Structures.Reading;
using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Booklets.Tests.Catalogued;

/// <summary>
/// What has to hold of every structure of the catalogue on every ruler that makers use: as printed, the parts along each
/// side add up to the sheet, and rounding leaves the item its ease. A new file is found by itself.
/// </summary>
public class EveryRulerTests
{
    private static readonly Resources Program = new(Repository.Root);
    private static readonly PhraseBook Phrases = PhraseBook.Load(Program.PhrasesFolder, "en-GB", new Problems())!;

    private static readonly Ruler[] Rulers =
    [
        new(UnitSystem.Metric, Length.Millimetre / 2), Ruler.WholeMillimetres,
        new(UnitSystem.Imperial, Length.Inch / 8), Ruler.SixteenthInches, new(UnitSystem.Imperial, Length.Inch / 32),
    ];

    // Items that are no whole number of anything on any of the rulers.
    private static readonly decimal[] Sizes = [0.913m, 1.237m];

    public static TheoryData<string> Ids => [.. Catalogue.Open(Program.StructuresFolder, new Problems()).Ids];

    [Theory]
    [MemberData(nameof(Ids))]
    public void As_printed_the_parts_along_each_side_add_up_to_the_sheet(string id)
    {
        foreach (var (model, ruler, _, _) in Fits(id))
        {
            foreach (var piece in model.Kit.Pieces.Select(part => part.Piece))
            {
                foreach (var (across, side) in new[] { (true, FenceSide.Top), (false, FenceSide.Right) })
                {
                    var sheet = across ? piece.Sheet.Width : piece.Sheet.Height;
                    var marks = ScoreSchedule.Marks(piece, side);
                    Length[] stops = [Length.Zero, .. marks, sheet];
                    Assert.True(stops.Zip(stops.Skip(1)).All(pair => pair.First < pair.Second), $"{ruler}: the marks of the {piece.Name} do not rise.");
                    Assert.All(ScoreSchedule.For(piece).IsByPoints ? [sheet] : stops, stop => Assert.True(ruler.Marks(stop), $"{ruler}: {piece.Name} {stop.Millimetres} mm"));

                    // A line across the sheet, from panel to panel, wherever it meets upright ones and nothing else.
                    foreach (var row in Rows(piece, across))
                    {
                        var sum = row.Aggregate(Length.Zero, (total, panel) => total + AsPrinted(Along(piece, panel, across), ruler));
                        Assert.True(AsPrinted(sheet, ruler) == sum, $"{ruler}: {string.Join(" + ", row.Select(panel => panel.Name))} of the {piece.Name} are {sum.Millimetres} mm, not {sheet.Millimetres}.");
                    }
                }
            }
        }
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Rounding_never_eats_the_ease(string id)
    {
        foreach (var (model, ruler, item, stocks) in Fits(id))
        {
            var proofs = ModelProofs.Of(model, item, stocks);
            Assert.All(proofs, proof => Assert.True(proof.Verdict != Verdict.Fails, $"{ruler} {proof.Kind} {proof.Piece} {proof.Other}: {proof.Found} against {proof.Limit}"));
        }
    }

    // Rows of upright panels that together reach from one edge of the sheet to the other.
    private static IEnumerable<IReadOnlyList<Panel>> Rows(Piece piece, bool across)
    {
        if (ScoreSchedule.For(piece).IsByPoints)
            yield break;
        var length = (across ? piece.Sheet.Width : piece.Sheet.Height).Millimetres;
        foreach (var at in piece.Panels.Select(panel => panel.Outline.Bounds).Select(box => across ? (box.Top + box.Bottom) / 2 : (box.Left + box.Right) / 2).Distinct())
        {
            var row = piece.Panels.Where(panel => across ? panel.Outline.Bounds.Top < at && at < panel.Outline.Bounds.Bottom : panel.Outline.Bounds.Left < at && at < panel.Outline.Bounds.Right)
                .OrderBy(panel => across ? panel.Outline.Bounds.Left : panel.Outline.Bounds.Top).ToList();
            if (row.TrueForAll(panel => IsUpright(panel) && panel.Role == PanelRole.Panel) && Math.Abs(row.Sum(panel => Extent(panel, across)) - length) < 1e-6)
                yield return row;
        }
    }

    private static bool IsUpright(Panel panel) =>
        panel.Outline.Edges.All(edge => edge.Bulge == 0 && (Math.Abs(edge.From.X - edge.To.X) < 1e-9 || Math.Abs(edge.From.Y - edge.To.Y) < 1e-9)) && panel.Outline.Edges.Count == 4;

    private static double Extent(Panel panel, bool across) =>
        across ? panel.Outline.Bounds.Right - panel.Outline.Bounds.Left : panel.Outline.Bounds.Bottom - panel.Outline.Bounds.Top;

    // What the table of measurements says of a panel, in the direction asked for.
    private static Length Along(Piece piece, Panel panel, bool across)
    {
        var size = PanelSize.Of(piece, panel);
        var hangsOn = piece.Folds.FirstOrDefault(fold => fold.Child == panel.Name);
        var isTurned = hangsOn is not null && Math.Abs(hangsOn.From.X - hangsOn.To.X) < 1e-6;
        return across != isTurned ? size.Width : size.Height;
    }

    private static Length AsPrinted(Length length, Ruler ruler)
    {
        var text = string.Concat(new ValueText(ruler, ruler, Phrases).One(new LengthValue(length), ruler).OfType<MeasureInline>().Select(measure => measure.Text));
        return LengthParser.Parse(text.Replace('\u00A0', ' ').Replace('\u202F', ' '));
    }

    private static IEnumerable<(Model Model, Ruler Ruler, Item Item, IEnumerable<Stock> Stocks)> Fits(string id)
    {
        var structure = Catalogue.Open(Program.StructuresFolder, new Problems()).Find(id, default, new Problems())!;
        var stocks = CataloguePress.UsualStocks(structure);
        foreach (var ruler in Rulers)
        {
            foreach (var size in Sizes)
            {
                var example = structure.Examples[0];
                Length Larger(Length length) => Length.Max(Length.Millimetre, Length.FromNanometres((long)(length.Nanometres * size)));
                var item = example with { Width = Larger(example.Width), Depth = Larger(example.Depth), Height = Larger(example.Height) };
                var one = new Problems();
                var model = structure.Fit(new FitRequest { Ruler = ruler, Item = item, Given = new Dictionary<string, GivenValue>(), Stocks = stocks }, one);
                Assert.True(!one.HasErrors, $"{id} {ruler} × {size}: {string.Join(Environment.NewLine, one.All)}");
                yield return (model!, ruler, item, stocks.Values);
            }
        }
    }
}
