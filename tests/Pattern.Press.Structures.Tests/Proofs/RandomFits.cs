using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Structures.Fitting;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Structures.Tests.Proofs;

/// <summary>Fits of any structure of the catalogue, with an item and some parameters chosen by chance.</summary>
internal static class RandomFits
{
    private static readonly string[] Calipers = ["0.2 mm", "0.3 mm", "0.45 mm"];

    public static IReadOnlyList<Structure> Catalogue { get; } = Structures.Catalogue.Open(Boxes.Folder, new Problems()).All(new Problems());

    /// <summary>One fit, on the ruler that chance chose; null where what it chose does not go together.</summary>
    public static RandomFit? Make(Structure structure, int seed) =>
        Make(structure, seed, new Chance(seed).Next(2) == 0 ? Ruler.WholeMillimetres : Ruler.SixteenthInches);

    /// <summary>One fit on a ruler; null where what chance chose does not go together.</summary>
    public static RandomFit? Make(Structure structure, int seed, Ruler ruler)
    {
        // The generator is ours, so that a seed means the same fit on every machine and version.
        var chance = new Chance(seed);
        chance.Next(2);
        var item = ItemFor(structure, chance);
        var stocks = structure.Stocks.ToDictionary(
            use => use.Id,
            use => new Stock(use.Id, use.Id, Boxes.L(use.Id == "card" ? Calipers[chance.Next(3)] : "0.12 mm"), null, new Size(Length.FromMillimetres(1000), Length.FromMillimetres(1000))),
            StringComparer.Ordinal);
        var none = new SortedDictionary<string, GivenValue>(StringComparer.Ordinal);
        if (Fit(structure, ruler, item, none, stocks) is not { } usual)
            return null;
        var given = new SortedDictionary<string, GivenValue>(StringComparer.Ordinal);
        foreach (var parameter in structure.Parameters)
        {
            if (chance.Next(3) == 0 && Other(parameter, usual, ruler, chance) is { } value)
                given[parameter.Name] = new GivenValue(value, default);
        }

        return Fit(structure, ruler, item, given, stocks) is { } model ? new RandomFit(structure.Id, seed, item, given, stocks, model) : null;
    }

    private static Model? Fit(Structure structure, Ruler ruler, Item item, SortedDictionary<string, GivenValue> given, Dictionary<string, Stock> stocks)
    {
        var problems = new Problems();
        var model = structure.Fit(new FitRequest { Ruler = ruler, Item = item, Given = given, Stocks = stocks }, problems);
        return problems.HasErrors ? null : model;
    }

    private static Item ItemFor(Structure structure, Chance chance)
    {
        var shape = structure.Takes[chance.Next(structure.Takes.Count)];
        var (width, depth) = (Length.FromMillimetres(20 + chance.Next(120)), Length.FromMillimetres(20 + chance.Next(120)));
        return new Item("thing", shape, width, shape == ItemShape.Round ? width : depth, Length.FromMillimetres(chance.Next(2) == 0 ? 3 + chance.Next(25) : 15 + chance.Next(120)));
    }

    // A little more or less than usual, on the ruler.
    private static Value? Other(Parameter parameter, Model usual, Ruler ruler, Chance chance)
    {
        switch (parameter.Kind)
        {
            case ParameterKind.YesNo:
                return new FlagValue(chance.Next(2) == 0);
            case ParameterKind.Choice:
                return new WordValue(parameter.Choices[chance.Next(parameter.Choices.Count)]);
            case ParameterKind.Length when usual.Values.GetValueOrDefault($"size.{parameter.Name}") is LengthValue { Length: var length }:
                var other = ruler.Round(Length.FromMillimetres(length.Millimetres * (0.7 + (chance.Next(80) / 100.0))), parameter.Round);
                return other > Length.Zero ? new LengthValue(other) : null;
            case ParameterKind.Number when usual.Values.GetValueOrDefault($"size.{parameter.Name}") is NumberValue { Number: var number } && decimal.IsInteger(number):
                return new NumberValue(Math.Max(1, number - 1 + chance.Next(3)));
            default:
                return null;
        }
    }

    /// <summary>A linear congruential generator, with the constants of Numerical Recipes (from memory).</summary>
    private sealed class Chance(int seed)
    {
        private uint state = (uint)seed * 2654435761;

        public int Next(int below)
        {
            state = (state * 1664525) + 1013904223;
            return (int)((ulong)(state >> 8) * (ulong)below >> 24);
        }
    }
}

/// <summary>What chance chose, and the fit.</summary>
internal sealed record RandomFit(
    string Structure, int Seed, Item Item, SortedDictionary<string, GivenValue> Given, Dictionary<string, Stock> Stocks, Model Model)
{
    public override string ToString() =>
        $"{Structure} {Seed}: {Model.Kit.Ruler.System} {Item.Shape} {Item.Width.Millimetres}×{Item.Depth.Millimetres}×{Item.Height.Millimetres} card {Stocks.Values.First().Caliper.Millimetres} {string.Join(" ", Given.Select(pair => $"{pair.Key}={pair.Value.Value}"))}";
}
