using Pattern.Press.Structures.Fitting;
using Pattern.Press.Structures.Formulas;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Structures.Files;

/// <summary>Reads a structure's file.</summary>
internal static class StructureReader
{
    /// <summary>The longest file, in characters; the largest structure needs a twentieth of it.</summary>
    public const int MostCharacters = 200_000;

    private const int MostEntries = 200;

    private static readonly string[] Shapes = ["round", "rectangular"];

    private static readonly KnownTexts<(string Text, string Id, string File), Structure> Known = new();

    /// <summary>Reads a structure; null after noting everything that is wrong with it.</summary>
    public static Structure? Read(string text, string id, string file, Problems problems) => Known.Get(
        (text, id, file),
        found =>
        {
            var structure = text.Length <= MostCharacters
                ? Everything(text, id, file, found)
                : TooLong(file, found);
            return found.HasErrors ? null : structure;
        },
        problems);

    private static Structure? TooLong(string file, Problems problems)
    {
        problems.Error(new Place(file), $"The file is longer than {MostCharacters / 1000} thousand characters.");
        return null;
    }

    private static Structure? Everything(string text, string id, string file, Problems problems)
    {
        if (YamlSource.Read(text, file, problems) is not { } map)
            return null;
        var reading = new FileReading(file, problems);
        var title = map.Need("title", "Say what the structure is called.")?.AsText() ?? "";
        var suits = map.Need("suits", "Say in a sentence what it suits.")?.AsText() ?? "";
        var takes = Takes(map, problems);
        var example = map.Find("example") is { } item ? ExampleReader.Read(item, takes, problems) : null;
        GivenNames(reading);
        var stocks = Stocks(map, reading);
        var named = Named(map, reading);
        var uses = stocks.Select(stock => stock.Use.Id).ToList();
        var (ids, pieces, mats) = Parts(map, uses, reading);
        var assembly = AssemblyReader.Read(map, ids, pieces, reading);
        var words = StepWordsReader.Read(map, ids, reading);
        var checks = reading.Section(map, "checks", MostEntries)
            .Select(entry => Check(entry.Key, entry.KeyPlace, entry.Value, reading)).OfType<CheckDefinition>().ToList();
        map.RefuseTheRest();

        var order = Ordering.Order(named, problems);
        FindKinds(order, reading);
        reading.CheckFormulas();
        if (problems.HasErrors)
            return null;
        foreach (var definition in named.OfType<ParameterDefinition>())
            ParameterReader.CheckPlainLimits(definition.Parameter, reading);
        if (problems.HasErrors)
            return null;
        return new Structure(
            id,
            title,
            suits,
            new Place(file),
            [.. named.OfType<ParameterDefinition>().Select(definition => definition.Parameter)],
            stocks,
            new StructureDefinition { Takes = takes, Example = example, ExamplePlace = map.Find("example")?.Place ?? new Place(file), Order = order, Pieces = pieces, Mats = mats, Checks = checks, Assembly = assembly, Words = words, Names = reading.Names });
    }

    private static List<ItemShape> Takes(YamlMap map, Problems problems)
    {
        var takes = new List<ItemShape>();
        foreach (var item in map.Need("takes", "List the shapes of item it takes: takes: [round, rectangular].")?.AsList() ?? [])
        {
            if (item.AsChoice(Shapes) is { } shape)
                takes.Add(shape == "round" ? ItemShape.Round : ItemShape.Rectangular);
        }

        if (takes.Count == 0)
            problems.Error(map.Place, "The structure takes no item at all.", "List the shapes of item it takes: takes: [round, rectangular].");
        return takes;
    }

    // What a formula may use beside the structure's own names.
    private static void GivenNames(FileReading reading)
    {
        reading.Names.Add("item.given", Kind.YesNo);
        reading.Names.Add("item.shape", Kind.Word, Shapes);
        reading.Names.Add("item.width", Kind.Length);
        reading.Names.Add("item.depth", Kind.Length);
        reading.Names.Add("item.height", Kind.Length);
        reading.Names.Add("ruler.step", Kind.Length);
        reading.Names.Add("ruler.metric", Kind.YesNo);
    }

    private static List<StockDefinition> Stocks(YamlMap map, FileReading reading)
    {
        var stocks = new List<StockDefinition>();
        foreach (var (id, place, value) in reading.Section(map, "stocks", 20))
        {
            if (!reading.NameIsSound(id, place))
                continue;
            string? means;
            YamlItem? when = null;
            if (value.IsMap && value.AsMap() is { } entry)
            {
                means = entry.Need("means", "Say what it is for.")?.AsText();
                when = entry.Find("when");
                entry.RefuseTheRest();
            }
            else
            {
                means = value.AsText();
            }

            reading.Names.Add($"{id}.caliper", Kind.Length);
            var needed = when is null ? null : reading.Formula(when, Kind.YesNo);
            stocks.Add(new StockDefinition(new StockUse(id, means ?? "", when?.Scalar), needed));
        }

        if (stocks.Count == 0)
            reading.Problems.Error(map.Place, "“stocks” is missing.", "Name what it is made from: stocks: {card: Stiff card.}");
        return stocks;
    }

    private static List<INamedDefinition> Named(YamlMap map, FileReading reading)
    {
        var named = new List<INamedDefinition>();
        foreach (var (name, place, value) in reading.Section(map, "parameters", MostEntries))
        {
            if (ParameterReader.Read(name, place, value, reading) is { } parameter)
                named.Add(parameter);
        }

        foreach (var (name, place, value) in reading.Section(map, "values", MostEntries))
        {
            if (!reading.NameIsSound(name, place))
                continue;
            if (reading.Names.Add(name, null) < 0)
                reading.Problems.Error(place, $"The name “{name}” is used twice.");
            else if (value.Scalar is not { } text)
                reading.Problems.Error(value.Place, "A formula is needed here.");
            else if (Formula.Read(text, value.TextPlace, reading.Problems) is { } formula)
                named.Add(new ValueDefinition(name, place, formula));
        }

        return named;
    }

    private static (List<string> Ids, List<PieceDefinition> Pieces, List<MatDefinition> Mats) Parts(YamlMap map, List<string> stocks, FileReading reading)
    {
        var entries = reading.Section(map, "pieces", MostEntries);
        var ids = entries.Select(entry => entry.Key).ToList();
        var pieces = entries
            .Select(entry => PartReader.Piece(entry.Key, entry.KeyPlace, entry.Value, stocks, reading)).OfType<PieceDefinition>().ToList();
        if (entries.Count == 0)
            reading.Problems.Error(map.Place, "“pieces” is missing.", "Describe at least one piece.");
        var mats = new List<MatDefinition>();
        foreach (var (id, place, value) in reading.Section(map, "mats", MostEntries))
        {
            if (ids.Contains(id))
                reading.Problems.Error(place, $"“{id}” is a piece already; a mat needs a name of its own.");
            else if (PartReader.Mat(id, place, value, stocks, ids, pieces, reading) is { } mat)
                mats.Add(mat);
        }

        return (ids, pieces, mats);
    }

    private static CheckDefinition? Check(string name, Place place, YamlItem value, FileReading reading)
    {
        if (value.AsMap() is not { } map)
            return null;
        var when = map.Find("when") is { } condition ? reading.Formula(condition, Kind.YesNo) : null;
        var found = map.Need("found", "Write a formula for what there is.") is { } there ? reading.Formula(there, Kind.Length) : null;
        var least = map.Need("least", "Write a formula for the least there must be.") is { } bound ? reading.Formula(bound, Kind.Length) : null;
        var advice = map.Find("advice") is { } sentence ? TextTemplate.Read(sentence, reading) : null;
        map.RefuseTheRest();
        return found is null || least is null ? null : new CheckDefinition(name, place, when, found, least, advice);
    }

    // A value is of the kind its formula gives, which is known once what it needs is known.
    private static void FindKinds(IReadOnlyList<INamedDefinition> order, FileReading reading)
    {
        foreach (var definition in order)
        {
            if (definition is ValueDefinition value)
                reading.Names.SetKind(reading.Names.Find(value.Name), value.Formula.Check(reading.Names, reading.Problems));
        }
    }
}
