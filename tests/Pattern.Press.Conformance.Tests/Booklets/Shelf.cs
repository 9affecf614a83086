using System.Collections.Concurrent;
using Pattern.Press.Booklets;
using Pattern.Press.Booklets.Content;
using Pattern.Press.Booklets.Themes;
using Pattern.Press.Measure;
using Pattern.Press.Structures.Reading;
using Pattern.Press.Typesetting.Export.Pdf;

namespace Pattern.Press.Conformance.Booklets;

/// <summary>Every booklet in the content folder on two papers in every theme, each built once however many tests look at it.</summary>
internal static class Shelf
{
    private static readonly ConcurrentDictionary<(string Name, string Paper, string Theme), Lazy<(LaidOutBooklet Pages, byte[] File)>> _built = new();

    /// <summary>The names, papers and themes.</summary>
    public static TheoryData<string, string, string> All
    {
        get
        {
            var data = new TheoryData<string, string, string>();
            foreach (var folder in Directory.GetDirectories(ContentFolder()).Where(folder => File.Exists(Path.Combine(folder, "booklet.md"))).Order(StringComparer.Ordinal))
            {
                foreach (var paper in (PaperSize[])[PaperSize.A4, PaperSize.Letter])
                {
                    foreach (var theme in ThemeReader.Names(Resources.OfProgram.ThemesFolder))
                        data.Add(Path.GetFileName(folder), paper.Id, theme);
                }
            }

            return data;
        }
    }

    /// <summary>A booklet's pages and its file.</summary>
    public static (LaidOutBooklet Pages, byte[] File) Of(string name, string paper, string theme) =>
        _built.GetOrAdd((name, paper, theme), key => new(() => Build(key.Name, key.Paper, key.Theme))).Value;

    /// <summary>Builds a booklet’s pages and its file anew.</summary>
    public static (LaidOutBooklet Pages, byte[] File) Build(string name, string paper, string theme)
    {
        var problems = new Problems();
        var options = new BuildOptions { Papers = [PaperSize.Find(paper)!], Theme = theme };
        var pages = new BookletPress(Resources.OfProgram).LayOut(Path.Combine(ContentFolder(), name), options, problems);
        Assert.True(pages is not null, string.Join(Environment.NewLine, problems.All));
        using var file = new MemoryStream();
        PdfExporter.Write(pages[0].Document, file);
        return (pages[0], file.ToArray());
    }

    private static string ContentFolder()
    {
        for (var at = new DirectoryInfo(AppContext.BaseDirectory); at is not null; at = at.Parent)
        {
            if (File.Exists(Path.Combine(at.FullName, "Pattern.Press.sln")))
                return Path.Combine(at.FullName, "content");
        }

        throw new DirectoryNotFoundException("The content folder was not found.");
    }
}
