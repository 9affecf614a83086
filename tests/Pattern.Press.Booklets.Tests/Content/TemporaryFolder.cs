using Pattern.Press.Booklets.Content;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Booklets.Tests.Content;

/// <summary>A folder that is gone after the test, with a booklet in it that has nothing wrong.</summary>
public sealed class TemporaryFolder : IDisposable
{
    public const string Booklet = """
        ---
        title: A box for a bar of soap
        maker: The Thursday Table
        date: 2026-11-12
        item:
          name: bar of soap
          width: 80 mm
          depth: 50 mm
          height: 30 mm
        structure: explosion-box
        sizes:
          lid_depth: 20 mm
        stocks:
          card:
            name: Smooth card
            weight: 250 g/m2
            sheet: A4
        ---

        A box that opens.
        """;

    public const string Step = """
        ---
        title: Cut the card
        piece: base
        ---

        Cut one piece.
        """;

    private readonly DirectoryInfo _root = Directory.CreateTempSubdirectory("pattern-press-");

    public TemporaryFolder()
    {
        Write("booklet.md", Booklet);
        Write("steps/01-cut.md", Step);
    }

    /// <summary>The booklet's folder; what lies beside it is outside.</summary>
    public string Path => System.IO.Path.Combine(_root.FullName, "soap-box");

    public string Write(string file, string text) => Write(file, System.Text.Encoding.UTF8.GetBytes(text));

    public string Write(string file, byte[] bytes)
    {
        var path = System.IO.Path.GetFullPath(System.IO.Path.Combine(Path, file));
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(path)!);
        File.WriteAllBytes(path, bytes);
        return path;
    }

    public void Delete(string file) => File.Delete(System.IO.Path.Combine(Path, file));

    /// <summary>Changes a line of booklet.md and reads the folder.</summary>
    public (BookletSource? Source, Problems Problems) ReadWith(string line, string instead)
    {
        Assert.Contains(line, Booklet, StringComparison.Ordinal);
        Write("booklet.md", Booklet.Replace(line, instead, StringComparison.Ordinal));
        return Read();
    }

    public (BookletSource? Source, Problems Problems) Read()
    {
        var problems = new Problems();
        return (BookletReader.Read(Path, problems), problems);
    }

    public void Dispose() => _root.Delete(recursive: true);
}
