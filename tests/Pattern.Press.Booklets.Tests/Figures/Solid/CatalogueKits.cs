using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Structures;
using Pattern.Press.Structures.Fitting;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Booklets.Tests.Figures.Solid;

/// <summary>One kit of every structure of the catalogue, with a platform and everything else that can be chosen.</summary>
internal static class CatalogueKits
{
    private static readonly Lazy<IReadOnlyList<(string Id, Kit Kit, Item Item)>> Made = new(Make);

    public static IReadOnlyList<(string Id, Kit Kit)> All => [.. Made.Value.Select(one => (one.Id, one.Kit))];

    public static TheoryData<string> Ids => [.. Made.Value.Select(one => one.Id)];

    public static (Kit Kit, Item Item) Of(string id)
    {
        var (_, kit, item) = Made.Value.Single(one => one.Id == id);
        return (kit, item);
    }

    private static List<(string Id, Kit Kit, Item Item)> Make()
    {
        var folder = Path.Combine(Repository.Root, "content", "structures");
        var kits = new List<(string, Kit, Item)>();
        foreach (var structure in Structures.Catalogue.Open(folder, new Problems()).All(new Problems()))
        {
            var flat = structure.Id is "card-and-envelope" or "envelope";
            var shape = structure.Takes[0];
            var item = new Item("thing", shape, Mm(70), Mm(shape == ItemShape.Round ? 70 : 55), Mm(flat ? 1 : 40));
            var stocks = structure.Stocks.ToDictionary(use => use.Id, use => new Stock(use.Id, use.Id, Mm(use.Id == "card" ? 0.3 : 0.12), null, new Size(Mm(1000), Mm(1000))), StringComparer.Ordinal);
            var given = new SortedDictionary<string, GivenValue>(StringComparer.Ordinal);
            foreach (var parameter in structure.Parameters.Where(parameter => parameter.Kind == ParameterKind.YesNo))
                given[parameter.Name] = new GivenValue(new FlagValue(true), default);
            var problems = new Problems();
            var model = structure.Fit(new FitRequest { Ruler = Ruler.WholeMillimetres, Item = item, Given = given, Stocks = stocks }, problems);
            Assert.False(problems.HasErrors, $"{structure.Id}: {string.Join("; ", problems.All.Select(problem => problem.Message))}");
            kits.Add((structure.Id, model!.Kit, item));
        }

        return kits;
    }

    private static Length Mm(double millimetres) => Length.FromMillimetres(millimetres);
}
