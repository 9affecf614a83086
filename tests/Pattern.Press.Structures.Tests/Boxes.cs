using Pattern.Press.Measure;
using Pattern.Press.Structures.Fitting;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Structures.Tests;

/// <summary>The explosion box of the catalogue, and fits of it, as the tests need them.</summary>
internal static class Boxes
{
    /// <summary>The folder of the catalogue.</summary>
    public static string Folder { get; } = FindFolder();

    private static readonly Lazy<Structure> Read = new(() =>
    {
        var problems = new Problems();
        var structure = Catalogue.ReadFile(Path.Combine(Folder, "explosion-box.yaml"), problems);
        Assert.Equal("", Words(problems));
        return structure!;
    });

    /// <summary>The explosion box.</summary>
    public static Structure Explosion => Read.Value;

    /// <summary>Card of 0.3 mm and mats of 0.12 mm.</summary>
    public static IReadOnlyDictionary<string, Stock> Stocks { get; } = StocksOf("0.3 mm", "0.12 mm");

    public static IReadOnlyDictionary<string, Stock> StocksOf(string card, string mats) => new Dictionary<string, Stock>
    {
        ["card"] = Stock("card", card),
        ["mats"] = Stock("mats", mats),
    };

    public static Length L(string text) => LengthParser.Parse(text);

    public static Item Round(string diameter, string height) => new("a tin", ItemShape.Round, L(diameter), L(diameter), L(height));

    public static Item Rectangular(string width, string depth, string height) => new("a soap", ItemShape.Rectangular, L(width), L(depth), L(height));

    /// <summary>A request whose sizes are written as in a booklet, one per line: <c>wall_height: 90 mm</c>.</summary>
    public static FitRequest Request(Ruler ruler, Item? item, string sizes, Problems problems)
    {
        var given = new SortedDictionary<string, GivenValue>(StringComparer.Ordinal);
        foreach (var (name, place, value) in YamlSource.Read(sizes, "booklet.md", problems)!.Entries)
        {
            if (Explosion.ReadGiven(name, place, value, problems) is { } read)
                given[name] = read;
        }

        return new FitRequest { Ruler = ruler, Item = item, ItemPlace = new Place("booklet.md", 90), Given = given, Stocks = Stocks };
    }

    /// <summary>A fit that has to work.</summary>
    public static Model Fit(Ruler ruler, Item? item, string sizes)
    {
        var problems = new Problems();
        var model = Explosion.Fit(Request(ruler, item, sizes, problems), problems);
        Assert.Equal("", Words(problems));
        return model!;
    }

    /// <summary>The problems of a fit that has to fail, one per line.</summary>
    public static string Problems(Ruler ruler, Item? item, string sizes)
    {
        var problems = new Problems();
        var request = Request(ruler, item, sizes, problems);
        if (!problems.HasErrors)
            Explosion.Fit(request, problems);
        return Words(problems);
    }

    public static string Words(Problems problems) => string.Join("\n", problems.All);

    private static Stock Stock(string id, string caliper) =>
        new(id, id, L(caliper), null, new Size(Length.FromMillimetres(305), Length.FromMillimetres(305)));

    private static string FindFolder()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "Pattern.Press.sln")))
                return Path.Combine(folder.FullName, "content", "structures");
        }

        throw new InvalidOperationException("The tests run outside the repository.");
    }
}
