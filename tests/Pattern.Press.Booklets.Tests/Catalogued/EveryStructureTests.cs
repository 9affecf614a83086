using Pattern.Press.Booklets.Cataloguing;
using Pattern.Press.Booklets.Composing;
using Pattern.Press.Booklets.Composing.Parts;
using Pattern.Press.Booklets.Content;
using Pattern.Press.Booklets.Figures;
using Pattern.Press.Booklets.Phrases;
using Pattern.Press.Booklets.Tests.Composing;
using Pattern.Press.Booklets.Tests.Figures;
using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Structures;
using Pattern.Press.Structures.Fitting;
using Pattern.Press.Structures.Reading;
using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Booklets.Tests.Catalogued;

/// <summary>
/// What has to hold of the figures and the score schedule of every structure of the catalogue, in several sizes. A new
/// file is found by itself.
/// </summary>
public class EveryStructureTests
{
    private const double Near = 1e-3;

    // How much larger than the structure's example the item is.
    private static readonly decimal[] Sizes = [0.8m, 1, 1.3m];

    private static readonly FigureShow[] Shows = [FigureShow.Flat, FigureShow.Scores, FigureShow.Diagonals, FigureShow.Waste, FigureShow.Folds, FigureShow.Glue];
    private static readonly Resources Program = new(Repository.Root);
    private static readonly PhraseBook Phrases = PhraseBook.Load(Program.PhrasesFolder, "en-GB", new Problems())!;

    public static TheoryData<string> Ids => [.. Catalogue.Open(Program.StructuresFolder, new Problems()).Ids];

    [Theory]
    [MemberData(nameof(Ids))]
    public void Lettering_of_its_figures_never_touches_lettering_or_a_line(string id)
    {
        var drawn = 0;
        foreach (var (metric, imperial) in Fits(id))
        {
            foreach (var part in metric.Kit.Pieces)
            {
                var other = imperial.Kit.Parts.First(there => there.Piece.Id == part.Piece.Id).Piece;
                foreach (var show in Shows)
                {
                    var figure = FlatDrawingTests.Drawing(part.Piece, other, show).Draw(150, 160, Samples.Styles);
                    FlatDrawingTests.AssertClear(new Figures.Reading(figure.Items));
                    drawn++;
                }
            }
        }

        Assert.True(drawn >= Shows.Length);
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Somebody_with_the_sheet_and_the_words_alone_scores_every_fold_and_no_card_beside(string id)
    {
        foreach (var (metric, _) in Fits(id))
        {
            // Curves are traced, not scored along a ruler.
            foreach (var piece in metric.Kit.Pieces.Select(part => part.Piece).Where(piece => piece.Folds.Count > 0 && piece.Folds.All(fold => fold.Bulge == 0)))
            {
                var bench = new SpokenBench(piece.Sheet);
                foreach (var action in Actions(piece))
                    bench.Do(action);
                foreach (var fold in piece.Folds)
                    Assert.All(Along(new Edge(fold.From, fold.To)), point => Assert.Contains(bench.Scores, score => score.DistanceTo(point) < Near));
                foreach (var point in bench.Scores.SelectMany(Along))
                {
                    var isThere = piece.Folds.Any(fold => new Edge(fold.From, fold.To).DistanceTo(point) < Near)
                        || piece.Cuts.Any(cut => cut.DistanceTo(point) < Near)
                        || piece.Waste.Any(waste => waste.Outline.Contains(point));
                    Assert.True(isThere, $"{piece.Id}: {point} is scored and should not be.");
                }
            }
        }
    }

    private static IEnumerable<(Model Metric, Model Imperial)> Fits(string id)
    {
        var structure = Catalogue.Open(Program.StructuresFolder, new Problems()).Find(id, default, new Problems())!;
        var found = 0;
        foreach (var size in Sizes)
        {
            if (Fit(structure, size, Ruler.WholeMillimetres) is not { } metric || Fit(structure, size, Ruler.SixteenthInches) is not { } imperial)
                continue;
            found++;
            yield return (metric, imperial);
        }

        Assert.True(found > 0);
    }

    private static Model? Fit(Structure structure, decimal size, Ruler ruler)
    {
        var example = structure.Examples[0];
        Length Larger(Length length) => Ruler.WholeMillimetres.Round(Length.FromNanometres((long)(length.Nanometres * size)), Rounding.Up);
        var item = example with { Width = Larger(example.Width), Depth = Larger(example.Depth), Height = Larger(example.Height) };
        var problems = new Problems();
        var model = structure.Fit(
            new FitRequest { Ruler = ruler, Item = item, Given = new Dictionary<string, GivenValue>(), Stocks = CataloguePress.UsualStocks(structure) },
            problems);
        return problems.HasErrors ? null : model;
    }

    private static IEnumerable<string> Actions(Piece piece) =>
        new ScoringWords(Phrases, new ValueText(Ruler.WholeMillimetres, Ruler.SixteenthInches, Phrases), Ruler.WholeMillimetres).Of(piece, null).Select(Text);

    private static string Text(IReadOnlyList<Inline> inlines) => string.Concat(inlines.Select(inline => inline switch
    {
        TextInline text => text.Text,
        MeasureInline measure => measure.Text,
        _ => "?",
    })).Replace('\u00A0', ' ');

    private static IEnumerable<Point> Along(Edge edge) => Enumerable.Range(0, 21).Select(i => edge.At((i + 0.5) / 21));
}
