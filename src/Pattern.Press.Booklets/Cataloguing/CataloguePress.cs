using Pattern.Press.Booklets.Composing;
using Pattern.Press.Booklets.Content;
using Pattern.Press.Booklets.Drafting;
using Pattern.Press.Booklets.Phrases;
using Pattern.Press.Booklets.Themes;
using Pattern.Press.Measure;
using Pattern.Press.Structures;
using Pattern.Press.Structures.Reading;
using Pattern.Press.Typesetting.Export.Pdf;
using Pattern.Press.Typesetting.Layout;
using Pattern.Press.Typesetting.Pages;

namespace Pattern.Press.Booklets.Cataloguing;

/// <summary>Makes the printed catalogue: every structure with a drawing, what it suits, and what can be set about it.</summary>
/// <param name="resources">Where the phrases and the themes lie.</param>
public sealed class CataloguePress(Resources resources)
{
    private const string Language = "en-GB";

    /// <summary>The theme it has when none is named.</summary>
    public const string UsualTheme = "handout";

    /// <summary>The stocks that structures are shown with: of a usual weight for each use.</summary>
    public static IReadOnlyDictionary<string, Stock> UsualStocks(Structure structure)
    {
        ArgumentNullException.ThrowIfNull(structure);
        return DraftStocks.For(structure, null, new Problems()).ToDictionary(stock => stock.Id, stock => stock.AsStock(), StringComparer.Ordinal);
    }

    /// <summary>Makes the catalogue, in memory.</summary>
    /// <param name="structures">What it shows, in its order.</param>
    /// <param name="paper">The paper.</param>
    /// <param name="theme">A theme's name; null for the usual one.</param>
    /// <param name="problems">Where everything goes that is wrong: an example that does not fit, an unknown theme.</param>
    /// <returns>The file and how many pages it has, or null when there are errors.</returns>
    public (byte[] File, int Pages)? Make(IReadOnlyList<Structure> structures, PaperSize paper, string? theme, Problems problems)
    {
        return LayOut(structures, paper, theme, problems) is { } document ? (PdfExporter.ToBytes(document), document.Pages.Count) : null;
    }

    /// <summary>The same, laid out and not written: for tests.</summary>
    public PressDocument? LayOut(IReadOnlyList<Structure> structures, PaperSize paper, string? theme, Problems problems)
    {
        ArgumentNullException.ThrowIfNull(structures);
        ArgumentNullException.ThrowIfNull(paper);
        ArgumentNullException.ThrowIfNull(problems);
        var phrases = PhraseBook.Load(resources.PhrasesFolder, Language, problems);
        var styles = ThemeReader.Read(resources.ThemesFolder, theme ?? UsualTheme, Language, problems, new Place("--theme"));
        var shown = structures.Select(structure => ShownStructure.Of(structure, problems)).OfType<ShownStructure>().ToList();
        if (problems.HasErrors || phrases is null || styles is null)
            return null;
        var misfits = new List<LayoutProblem>();
        var look = PaperFit.On(CatalogueLook.Of(styles), paper);
        var document = BookLayout.LayOut(new CatalogueBook(phrases, paper).Compose(shown), look, misfits);
        foreach (var misfit in misfits)
            problems.Error(new Place("--paper"), misfit.Message);
        return problems.HasErrors ? null : document;
    }
}
