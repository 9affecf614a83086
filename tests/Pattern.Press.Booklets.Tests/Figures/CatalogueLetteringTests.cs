using Pattern.Press.Booklets.Content;
using Pattern.Press.Booklets.Tests.Figures.Solid;

namespace Pattern.Press.Booklets.Tests.Figures;

/// <summary>Flat figures of every piece of the catalogue; a new structure is found by itself.</summary>
public sealed class CatalogueLetteringTests
{
    public static TheoryData<string> Structures => CatalogueKits.Ids;

    [Theory]
    [MemberData(nameof(Structures))]
    public void No_lettering_of_any_piece_touches_a_line_or_other_lettering(string id)
    {
        foreach (var part in CatalogueKits.Of(id).Kit.Pieces)
        {
            foreach (var show in new[] { FigureShow.Flat, FigureShow.Sheet, FigureShow.Scores, FigureShow.Waste, FigureShow.Folds, FigureShow.Glue })
            {
                foreach (var width in new[] { 62.0, 82, 165 })
                    FlatDrawingTests.AssertClear(new Reading(FlatDrawingTests.Drawing(part.Piece, null, show).Draw(width, 160, Samples.Styles).Items));
            }
        }
    }
}
