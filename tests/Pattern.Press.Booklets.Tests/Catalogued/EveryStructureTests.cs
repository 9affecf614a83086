using Pattern.Press.Booklets.Cataloguing;
using Pattern.Press.Booklets.Content;
using Pattern.Press.Booklets.Figures;
using Pattern.Press.Booklets.Tests.Figures;
using Pattern.Press.Measure;
using Pattern.Press.Structures;
using Pattern.Press.Structures.Fitting;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Booklets.Tests.Catalogued;

/// <summary>
/// What has to hold of the figures of every structure of the catalogue, in several sizes; of its words,
/// <see cref="Composing.SpokenStructures"/>. A new file is found by itself.
/// </summary>
public class EveryStructureTests
{
    // How much larger than the structure's example the item is.
    private static readonly decimal[] Sizes = [0.8m, 1, 1.3m];

    private static readonly FigureShow[] Shows = [FigureShow.Flat, FigureShow.Scores, FigureShow.Diagonals, FigureShow.Waste, FigureShow.Folds, FigureShow.Glue];
    private static readonly Resources Program = new(Repository.Root);

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
}
