using Pattern.Press.Booklets.Composing;
using Pattern.Press.Booklets.Content;
using Pattern.Press.Booklets.Svg;
using Pattern.Press.Measure;
using Pattern.Press.Structures.Reading;
using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Export.Grey;
using Pattern.Press.Typesetting.Export.Pdf;
using Pattern.Press.Typesetting.Layout;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Booklets;

/// <summary>Makes booklets: from a content folder to finished files, in memory. Safe to use from several threads.</summary>
/// <param name="resources">Where the catalogue, the phrases and the themes lie.</param>
public sealed class BookletPress(Resources resources)
{
    /// <summary>Makes a booklet, one file for each paper.</summary>
    /// <param name="folder">The content folder.</param>
    /// <param name="options">What is wanted different from what the booklet says.</param>
    /// <param name="problems">Where everything that is wrong goes, in one go.</param>
    /// <param name="progress">Hears what is going on, a few words each time.</param>
    /// <returns>The files, or null when there are errors.</returns>
    public IReadOnlyList<BuiltBooklet>? Build(string folder, BuildOptions options, Problems problems, IProgress<string>? progress = null)
    {
        progress?.Report("reading and fitting");
        var context = Preparation.Prepare(folder, options, resources, problems);
        return context is null ? null : LayOut(context, problems, progress, page => new BuiltBooklet(
            FileName(page, options),
            PdfExporter.ToBytes(page.Document),
            page.Document.Pages.Count,
            page.TemplatePages));
    }

    /// <summary>Does everything but write: reads, fits, composes and lays out, and so finds every problem there is.</summary>
    /// <param name="folder">The content folder.</param>
    /// <param name="options">What is wanted different from what the booklet says.</param>
    /// <param name="problems">Where everything that is wrong goes, in one go.</param>
    /// <returns>What was proven, each a line with the numbers found.</returns>
    public IReadOnlyList<string> Check(string folder, BuildOptions options, Problems problems)
    {
        var context = Preparation.Prepare(folder, options, resources, problems);
        if (context is null)
            return [];
        LayOut(context, problems, progress: null, page => page);
        var own = OwnFigures.Compare(context, problems);
        return [.. Proofs.Lines(context), .. own];
    }

    /// <summary>Draws every piece and mat at true size, each as an SVG file of its own.</summary>
    /// <param name="folder">The content folder.</param>
    /// <param name="options">What is wanted different from what the booklet says.</param>
    /// <param name="problems">Where everything that is wrong goes, in one go.</param>
    /// <returns>The files, or null when there are errors.</returns>
    public IReadOnlyList<PieceFile>? Pieces(string folder, BuildOptions options, Problems problems)
    {
        var context = Preparation.Prepare(folder, options, resources, problems);
        return context is null || problems.HasErrors ? null : PieceFiles.Make(context);
    }

    /// <summary>Lays a booklet out on its papers, without writing it: for previews and tests.</summary>
    public IReadOnlyList<LaidOutBooklet>? LayOut(string folder, BuildOptions options, Problems problems, IProgress<string>? progress = null)
    {
        progress?.Report("reading and fitting");
        var context = Preparation.Prepare(folder, options, resources, problems);
        return context is null ? null : LayOut(context, problems, progress, page => page);
    }

    // What is made of the pages of a paper does not wait for the other papers' pages.
    private static List<T>? LayOut<T>(BookletContext context, Problems problems, IProgress<string>? progress, Func<LaidOutBooklet, T> make)
    {
        progress?.Report("laying out");
        var books = Composer.Compose(context, problems);
        var words = new BookWords(books.Count == 0 ? "" : books[0].Book.Language);
        var made = AtOnce.Select(books, book =>
        {
            var misfits = new List<LayoutProblem>();
            var document = BookLayout.LayOut(book.Book, book.Styles, misfits, words);
            var templates = book.Book.Parts.OfType<FixedPart>().Where(part => part.LabelPrefix is not null).Sum(part => part.Pages.Count);
            var pages = context.Options.Grey ? GreyPages.Of(document) : document;
            var booklet = new LaidOutBooklet(context.Source.Name, book.Paper, pages, templates, book.Styles);
            return (Made: misfits.Count == 0 && !problems.HasErrors ? make(booklet) : default, Misfits: misfits);
        });
        Misfits.Report(made.SelectMany(one => one.Misfits), context.Source, problems);
        return problems.HasErrors ? null : [.. made.Select(one => one.Made!)];
    }

    // What is not the whole booklet in its colours does not take the place of it.
    private static string FileName(LaidOutBooklet booklet, BuildOptions options) =>
        $"{booklet.Name}{(options.OnlyTemplates ? "-templates" : "")}-{booklet.Paper.Id}{(options.Grey ? "-grey" : "")}.pdf";
}

/// <summary>A booklet laid out for one paper.</summary>
/// <param name="Name">The booklet's name.</param>
/// <param name="Paper">The paper.</param>
/// <param name="Document">The pages.</param>
/// <param name="TemplatePages">How many of them are templates.</param>
/// <param name="Styles">The look they were laid out in.</param>
public sealed record LaidOutBooklet(string Name, PaperSize Paper, PressDocument Document, int TemplatePages, StyleSheet Styles);
