using Pattern.Press.Acceptance.Printed;
using Pattern.Press.Booklets.Composing;
using Pattern.Press.Booklets.Content;
using Pattern.Press.Booklets.Phrases;
using Pattern.Press.Booklets.Templates;
using Pattern.Press.Booklets.Themes;
using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Plans.Tiling;
using Pattern.Press.Structures.Reading;
using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Export.Pdf;
using Pattern.Press.Typesetting.Layout;
using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Acceptance.Templates;

/// <summary>The template pages of a kit, alone in a file: hundreds of them take the time of a few booklets.</summary>
public static class PrintedKit
{
    private static readonly Lazy<PhraseBook> _phrases = new(() => Sound(problems => PhraseBook.Load(Resources.OfProgram.PhrasesFolder, "en-GB", problems)));
    private static readonly Lazy<StyleSheet[]> _themes = new(() =>
        [.. ThemeReader.Names(Resources.OfProgram.ThemesFolder).Select(name => Sound(problems => ThemeReader.Read(Resources.OfProgram.ThemesFolder, name, "en-GB", problems)))]);

    public static PhraseBook Phrases => _phrases.Value;

    /// <summary>Every theme there is.</summary>
    public static IReadOnlyList<StyleSheet> Themes => _themes.Value;

    /// <summary>The file; throws what the planner throws.</summary>
    public static PrintedBook Print(Kit kit, IReadOnlyDictionary<string, Stock> stocks, Size paper, double margin, double lap, StyleSheet styles)
    {
        var (width, height) = (paper.Width.Millimetres, paper.Height.Millimetres);
        var page = new Pattern.Press.Plans.Tiling.TemplatePage(width, height, margin, TemplatePages.HeadRoom, TemplatePages.FootRoom);
        var part = TemplatePages.Make(new TemplateJob
        {
            Plan = TemplatePlanner.Plan(kit, page, lap),
            Page = page,
            Kit = kit,
            Stocks = stocks,
            Words = new PhraseFigureWords(Phrases),
            Styles = styles,
        });
        var book = new Book { Title = "Templates", Author = "The Long Table", Subject = "", Language = "en-GB", RunningTitle = "", Paper = (width, height), Parts = [part] };
        var misfits = new List<LayoutProblem>();
        var document = BookLayout.LayOut(book, styles, misfits);
        Assert.Empty(misfits);
        using var file = new MemoryStream();
        PdfExporter.Write(document, file);
        return new PrintedBook(file.ToArray());
    }

    private static T Sound<T>(Func<Problems, T?> make)
        where T : class
    {
        var problems = new Problems();
        var made = make(problems);
        Assert.True(made is not null && !problems.HasErrors, string.Join(Environment.NewLine, problems.All));
        return made!;
    }
}
