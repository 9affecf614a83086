using System.Globalization;
using System.Text.RegularExpressions;
using Pattern.Press.Acceptance.Printed;
using Pattern.Press.Booklets.Cataloguing;
using Pattern.Press.Booklets.Content;
using Pattern.Press.Booklets.Themes;
using Pattern.Press.Measure;
using Pattern.Press.Structures;
using Pattern.Press.Structures.Fitting;
using Pattern.Press.Structures.Reading;
using UglyToad.PdfPig;
using Structure = Pattern.Press.Structures.Structure;

namespace Pattern.Press.Acceptance.Cataloguing;

/// <summary>The printed catalogue of structures, read back.</summary>
public sealed class PrintedCatalogue
{
    private static readonly IReadOnlyList<Structure> All = Catalogue.Open(Resources.OfProgram.StructuresFolder, new Problems()).All(new Problems());

    public static MatrixTheoryData<string, string> Prints { get; } = new(["a4", "letter"], ThemeReader.Names(Resources.OfProgram.ThemesFolder));

    [Theory]
    [MemberData(nameof(Prints))]
    public void Every_structure_has_half_a_page_and_the_contents_lead_to_it(string paper, string theme)
    {
        var printed = new PrintedBook(Make(All, paper, theme));
        Assert.Equal(1 + ((All.Count + 1) / 2), printed.Pages.Count);
        for (var i = 0; i < All.Count; i++)
        {
            var page = 2 + (i / 2);
            Assert.Contains(All[i].Suits, printed.Pages[page - 1].Text, StringComparison.Ordinal);
            Assert.Matches($@"{Regex.Escape(All[i].Title)}[ .]*{page.ToString(CultureInfo.InvariantCulture)}\b", printed.Pages[0].Text);
        }
    }

    [Theory]
    [MemberData(nameof(Prints))]
    public void Every_parameter_stands_with_its_meaning_and_what_it_comes_to_in_both_units(string paper, string theme)
    {
        var printed = new PrintedBook(Make(All, paper, theme));
        for (var i = 0; i < All.Count; i++)
        {
            var (structure, text) = (All[i], printed.Pages[1 + (i / 2)].Text);
            var (metric, imperial) = (Fit(structure, Ruler.WholeMillimetres), Fit(structure, Ruler.SixteenthInches));
            Assert.NotEmpty(metric.Parameters);
            foreach (var (here, there) in metric.Parameters.Zip(imperial.Parameters))
            {
                Assert.Contains($"{here.Parameter.Name} {here.Parameter.Means}", text, StringComparison.Ordinal);
                if (here.Value is not LengthValue { Length: var length })
                    continue;
                var value = $"{LengthFormat.Format(length, Ruler.WholeMillimetres)} ({LengthFormat.Format(((LengthValue)there.Value!).Length, Ruler.SixteenthInches)})";
                Assert.Contains($"{here.Parameter.Means} {value}", Plain(text), StringComparison.Ordinal);
                if ((here.Least, here.Most) is (LengthValue { Length: var least }, LengthValue { Length: var most }) && most > least)
                    Assert.Contains($"{value} {LengthFormat.Number(least, Ruler.WholeMillimetres)} to {LengthFormat.Format(most, Ruler.WholeMillimetres)}", Plain(text), StringComparison.Ordinal);
            }

            foreach (var part in metric.Kit.Pieces)
                Assert.Contains($"{part.Piece.Name.ToLowerInvariant()} {LengthFormat.Format(part.Piece.Sheet, Ruler.WholeMillimetres)}", Plain(text), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void The_same_catalogue_has_the_same_bytes_and_every_entry_its_bookmark()
    {
        var file = Make(All, "a4", "handout");
        Assert.Equal(file, Make(All, "a4", "handout"));
        using var read = PdfDocument.Open(file);
        Assert.True(read.TryGetBookmarks(out var bookmarks));
        Assert.Equal(All.Select(structure => structure.Title), bookmarks.GetNodes().Select(node => node.Title));
    }

    [Fact]
    public void An_example_that_cannot_be_is_a_problem_and_nothing_is_made()
    {
        var folder = Directory.CreateTempSubdirectory("pattern-press-");
        try
        {
            var text = File.ReadAllText(Path.Combine(Resources.OfProgram.StructuresFolder, "open-tray.yaml"));
            File.WriteAllText(Path.Combine(folder.FullName, "tray.yaml"), Regex.Replace(text, "(?m)^example:.*$", "example: {name: piano, width: 900 mm, depth: 900 mm, height: 900 mm}"));
            var problems = new Problems();
            var structures = Catalogue.Open(folder.FullName, problems).All(problems);
            Assert.Empty(problems.All);
            Assert.Null(new CataloguePress(Resources.OfProgram).Make(structures, PaperSize.A4, null, problems));
            Assert.Contains(problems.All, problem => problem.File == "tray.yaml" && problem.Message.Contains("can be at most", StringComparison.Ordinal));
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }

    private static byte[] Make(IReadOnlyList<Structure> structures, string paper, string theme)
    {
        var problems = new Problems();
        var made = new CataloguePress(Resources.OfProgram).Make(structures, PaperSize.Find(paper)!, theme, problems);
        Assert.True(made is not null, string.Join(Environment.NewLine, problems.All));
        return made!.Value.File;
    }

    private static Model Fit(Structure structure, Ruler ruler)
    {
        var problems = new Problems();
        foreach (var item in structure.Examples)
        {
            var model = structure.Fit(new FitRequest { Ruler = ruler, Item = item, Given = new Dictionary<string, GivenValue>(), Stocks = CataloguePress.UsualStocks(structure) }, problems);
            if (model is not null)
                return model;
        }

        throw new InvalidOperationException(string.Join(Environment.NewLine, problems.All));
    }

    // Spaces between a number and its unit do not break, and a fraction's are narrow.
    private static string Plain(string text) => text.Replace('\u00A0', ' ').Replace('\u202F', ' ');
}
