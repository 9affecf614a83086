using Pattern.Press.Measure;
using Pattern.Press.Structures;
using Pattern.Press.Structures.Fitting;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Acceptance.Templates;

/// <summary>
/// Fits of any structure to sizes that nobody has thought about: an item by lot, then every parameter now and then set to
/// another choice or length. What cannot be made is drawn again with fewer changes.
/// </summary>
public static class FitByLot
{
    private const int Tries = 40;

    /// <summary>The stocks that a structure asks for, with a pattern that has an up now and then.</summary>
    public static IReadOnlyDictionary<string, Stock> Stocks(Structure structure, Random lot)
    {
        ArgumentNullException.ThrowIfNull(structure);
        ArgumentNullException.ThrowIfNull(lot);
        var sheet = new Size(Length.FromMillimetres(2000), Length.FromMillimetres(2000));
        return structure.Stocks.ToDictionary(
            use => use.Id,
            use => new Stock(use.Id, $"Stock for the {use.Id}", Length.FromMillimetres(lot.Next(10, 41) / 100m), null, sheet, OneWay: lot.Next(4) == 0),
            StringComparer.Ordinal);
    }

    /// <summary>A model whose checks all hold.</summary>
    public static Model Make(Structure structure, IReadOnlyDictionary<string, Stock> stocks, Random lot)
    {
        ArgumentNullException.ThrowIfNull(structure);
        ArgumentNullException.ThrowIfNull(lot);
        var ruler = lot.Next(2) == 0 ? Ruler.WholeMillimetres : Ruler.SixteenthInches;
        var said = "";
        for (var i = 0; i < Tries; i++)
        {
            var item = structure.Takes.Count == 0 ? null : ItemFor(structure, lot);
            var needed = structure.Parameters.Where(parameter => parameter.Default is null)
                .ToDictionary(parameter => parameter.Name, parameter => Any(parameter, lot), StringComparer.Ordinal);
            var plain = Fit(structure, stocks, ruler, item, needed, out said);
            if (plain is null)
                continue;
            var changes = Changes(structure, plain, lot);
            for (var share = 1.0; share > 0.1; share /= 2)
            {
                var given = new Dictionary<string, Value>(needed, StringComparer.Ordinal);
                foreach (var (name, value) in changes.Where(_ => lot.NextDouble() < share))
                    given[name] = value;
                if (Fit(structure, stocks, ruler, item, given, out _) is { } changed)
                    return changed;
            }

            return plain;
        }

        throw new InvalidOperationException($"No item by lot goes into the {structure.Title}. {said}");
    }

    private static Item ItemFor(Structure structure, Random lot)
    {
        var shape = structure.Takes[lot.Next(structure.Takes.Count)];
        Length Side(int least, int most) => Length.FromMillimetres(lot.Next(least, most + 1));
        var width = Side(20, 100);
        return new Item("thing", shape, width, shape == ItemShape.Round ? width : Side(20, 90), Side(15, 90));
    }

    private static Dictionary<string, Value> Changes(Structure structure, Model plain, Random lot)
    {
        var changes = new Dictionary<string, Value>(StringComparer.Ordinal);
        foreach (var parameter in structure.Parameters.Where(_ => lot.Next(3) == 0))
        {
            if (!plain.Values.TryGetValue("size." + parameter.Name, out var value))
                continue;
            changes[parameter.Name] = value is LengthValue { Length: var length }
                ? new LengthValue(Length.FromNanometres((long)(length.Nanometres * (0.7 + (0.7 * lot.NextDouble())))))
                : value is NumberValue { Number: var number }
                    ? new NumberValue(Math.Max(1, number + lot.Next(-1, 3)))
                    : Any(parameter, lot);
        }

        return changes;
    }

    private static Value Any(Parameter parameter, Random lot) => parameter.Kind switch
    {
        ParameterKind.Length => new LengthValue(Length.FromMillimetres(lot.Next(30, 121))),
        ParameterKind.Number => new NumberValue(lot.Next(1, 9)),
        ParameterKind.YesNo => new FlagValue(lot.Next(2) == 0),
        _ => new WordValue(parameter.Choices[lot.Next(parameter.Choices.Count)]),
    };

    private static Model? Fit(Structure structure, IReadOnlyDictionary<string, Stock> stocks, Ruler ruler, Item? item, Dictionary<string, Value> given, out string said)
    {
        var problems = new Problems();
        var model = structure.Fit(
            new FitRequest
            {
                Ruler = ruler,
                Item = item,
                Given = given.ToDictionary(pair => pair.Key, pair => new GivenValue(pair.Value, default), StringComparer.Ordinal),
                Stocks = stocks,
            },
            problems);
        said = string.Join(Environment.NewLine, problems.All);
        return problems.HasErrors ? null : model;
    }
}
