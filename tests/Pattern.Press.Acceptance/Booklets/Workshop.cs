using System.Collections.Concurrent;
using Pattern.Press.Acceptance.Architecture;
using Pattern.Press.Acceptance.Printed;
using Pattern.Press.Booklets;
using Pattern.Press.Booklets.Content;
using Pattern.Press.Booklets.Phrases;
using Pattern.Press.Measure;
using Pattern.Press.Structures;
using Pattern.Press.Structures.Fitting;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Acceptance.Booklets;

/// <summary>Booklets from the content folder, each built and read back once however many tests look at it.</summary>
public static class Workshop
{
    private static readonly ConcurrentDictionary<string, Lazy<Finished>> _finished = new(StringComparer.Ordinal);

    public static string ContentFolder { get; } = Path.Combine(DependencyArrows.RepositoryRoot(), "content");

    /// <summary>Every folder of content that holds a booklet.</summary>
    public static IReadOnlyList<string> Names { get; } =
    [
        .. Directory.GetDirectories(ContentFolder)
            .Where(folder => File.Exists(Path.Combine(folder, "booklet.md")))
            .Select(folder => Path.GetFileName(folder)!)
            .Order(StringComparer.Ordinal),
    ];

    /// <summary>Every booklet on every paper that it names.</summary>
    public static TheoryData<string, string> Files
    {
        get
        {
            var data = new TheoryData<string, string>();
            foreach (var name in Names)
            {
                foreach (var paper in BookletReader.Read(FolderOf(name), new Problems())!.Papers)
                    data.Add(name, paper.Id);
            }

            return data;
        }
    }

    public static TheoryData<string> Booklets => [.. Names];

    public static string FolderOf(string name) => Path.Combine(ContentFolder, name);

    public static Finished Of(string name) => _finished.GetOrAdd(name, key => new Lazy<Finished>(() => Finished.Make(FolderOf(key)))).Value;

    public static Finished Of(string name, string paper, out PrintedBook printed)
    {
        var finished = Of(name);
        printed = finished.Printed[paper];
        return finished;
    }

    /// <summary>Builds a folder's files, on the papers that it names.</summary>
    public static IReadOnlyList<BuiltBooklet> Build(string folder) => Build(folder, []);

    /// <summary>Builds a folder's files on other papers.</summary>
    public static IReadOnlyList<BuiltBooklet> Build(string folder, IReadOnlyList<PaperSize> papers)
    {
        var problems = new Problems();
        var built = new BookletPress(Resources.OfProgram).Build(folder, new BuildOptions { Papers = papers }, problems);
        Assert.True(built is not null, string.Join(Environment.NewLine, problems.All));
        return built!;
    }
}

/// <summary>A booklet's files with what they must say: the content, and both fits made from it here, not by the press.</summary>
public sealed record Finished(
    BookletSource Source,
    Model Metric,
    Model Imperial,
    PhraseBook Phrases,
    IReadOnlyList<BuiltBooklet> Files,
    IReadOnlyDictionary<string, PrintedBook> Printed)
{
    public Model Primary => Source.Primary == UnitSystem.Metric ? Metric : Imperial;

    public Model Secondary => Source.Primary == UnitSystem.Metric ? Imperial : Metric;

    public static Finished Make(string folder)
    {
        var problems = new Problems();
        var source = BookletReader.Read(folder, problems)!;
        var structure = Catalogue.Open(Resources.OfProgram.StructuresFolder, problems).Find(source.Structure, source.StructurePlace, problems)!;
        var given = source.Sizes.ToDictionary(size => size.Name, size => structure.ReadGiven(size.Name, size.Place, size.Value, problems)!, StringComparer.Ordinal);
        Model Fit(Ruler ruler) => structure.Fit(new FitRequest { Ruler = ruler, Item = source.Item, Given = given, Stocks = source.Stocks }, problems)!;
        var (metric, imperial) = (Fit(source.MetricRuler), Fit(source.ImperialRuler));
        var phrases = PhraseBook.Load(Resources.OfProgram.PhrasesFolder, source.Language, problems)!;
        var files = Workshop.Build(folder);
        Assert.False(problems.HasErrors, string.Join(Environment.NewLine, problems.All));
        Assert.Equal(source.Papers.Select(paper => $"{source.Name}-{paper.Id}.pdf"), files.Select(file => file.FileName));
        return new Finished(
            source,
            metric,
            imperial,
            phrases,
            files,
            source.Papers.Zip(files).ToDictionary(pair => pair.First.Id, pair => new PrintedBook(pair.Second.Bytes), StringComparer.Ordinal));
    }
}
