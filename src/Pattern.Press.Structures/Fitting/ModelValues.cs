using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Structures.Files;
using Pattern.Press.Structures.Formulas;

namespace Pattern.Press.Structures.Fitting;

/// <summary>Collects the values of a fit under the names that texts use.</summary>
internal static class ModelValues
{
    // Scores lie at exact lengths; millimetres in a double come back to them to far less than this.
    private const double Straight = 1e-6;

    public static IReadOnlyDictionary<string, Value> All(Structure structure, FitRequest request, Evaluation values, IReadOnlySet<string> idle, IReadOnlyList<MadePart> parts)
    {
        var all = new SortedDictionary<string, Value>(StringComparer.Ordinal);
        if (request.Item is { } item)
            AddItem(all, item);
        foreach (var definition in structure.Definition.Order)
        {
            if (!idle.Contains(definition.Name) && values.Find(definition.Name) is { } value)
                all[$"size.{definition.Name}"] = Plain(value);
        }

        foreach (var part in parts)
            AddPart(all, part);
        return all;
    }

    /// <summary>The names that <see cref="All"/> may give for a structure, whatever is set.</summary>
    public static IReadOnlyList<string> Names(StructureDefinition definition) =>
    [
        "item.name", "item.width", "item.depth", "item.height", "item.diameter",
        .. definition.Order.Select(named => $"size.{named.Name}"),
        .. definition.Pieces.SelectMany(piece => PartNames(piece.Id).Concat(piece.Marks.Select(mark => $"{piece.Id}.{mark.Name}"))),
        .. definition.Mats.SelectMany(mat => PartNames(mat.Id)),
    ];

    private static IEnumerable<string> PartNames(string id) =>
        new[] { "sheet", "width", "height", "quantity", "scores_across", "scores_down" }.Select(name => $"{id}.{name}");

    private static void AddItem(SortedDictionary<string, Value> all, Item item)
    {
        all["item.name"] = new WordValue(item.Name);
        all["item.width"] = new LengthValue(item.Width);
        all["item.depth"] = new LengthValue(item.Depth);
        all["item.height"] = new LengthValue(item.Height);
        if (item.Shape == ItemShape.Round)
            all["item.diameter"] = new LengthValue(item.Width);
    }

    private static void AddPart(SortedDictionary<string, Value> all, MadePart made)
    {
        var (piece, id) = (made.Part.Piece, made.Part.Piece.Id);
        all[$"{id}.sheet"] = new SizeValue(piece.Sheet);
        all[$"{id}.width"] = new LengthValue(piece.Sheet.Width);
        all[$"{id}.height"] = new LengthValue(piece.Sheet.Height);
        all[$"{id}.quantity"] = new NumberValue(made.Part.Quantity);
        if (piece.Folds.Count > 0)
        {
            all[$"{id}.scores_across"] = Scores(piece, point => point.X);
            all[$"{id}.scores_down"] = Scores(piece, point => point.Y);
        }

        foreach (var (name, lengths) in made.Marks)
            all[$"{id}.{name}"] = new LengthListValue(lengths);
    }

    // The marks of the folds along which a coordinate stays the same.
    private static LengthListValue Scores(Piece piece, Func<Point, double> coordinate) => new(
    [
        .. piece.Folds
            .Where(fold => fold.Bulge == 0 && Math.Abs(coordinate(fold.From) - coordinate(fold.To)) < Straight)
            .Select(fold => Length.FromMillimetres(coordinate(fold.From)))
            .Distinct()
            .Order(),
    ]);

    public static Value Plain(Quantity value) => value.Kind switch
    {
        Kind.Length => new LengthValue(value.Length),
        Kind.Number => new NumberValue(value.Amount),
        Kind.YesNo => new FlagValue(value.Flag),
        _ => new WordValue(value.Word!),
    };
}
