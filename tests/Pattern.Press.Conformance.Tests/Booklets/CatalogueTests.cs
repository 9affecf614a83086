using Pattern.Press.Booklets.Cataloguing;
using Pattern.Press.Booklets.Content;
using Pattern.Press.Booklets.Themes;
using Pattern.Press.Conformance.Text;
using Pattern.Press.Measure;
using Pattern.Press.Structures;
using Pattern.Press.Structures.Reading;
using Pattern.Press.Typesetting.Export.Pdf;

namespace Pattern.Press.Conformance.Booklets;

/// <summary>The printed catalogue of structures, held against the same conditions as every booklet.</summary>
public sealed class CatalogueTests
{
    public static MatrixTheoryData<string, string> Prints { get; } = new(["a4", "letter"], ThemeReader.Names(Resources.OfProgram.ThemesFolder));

    [Theory]
    [MemberData(nameof(Prints))]
    public void The_catalogue_conforms_and_says_what_was_set(string paper, string theme)
    {
        var problems = new Problems();
        var structures = Catalogue.Open(Resources.OfProgram.StructuresFolder, problems).All(problems);
        var pages = new CataloguePress(Resources.OfProgram).LayOut(structures, PaperSize.Find(paper)!, theme, problems);
        Assert.True(pages is not null, string.Join(Environment.NewLine, problems.All));
        var file = PdfExporter.ToBytes(pages!);
        Assert.Empty(PdfConformance.Check(file));
        SetText.MatchesFile(pages!, file);
    }
}
