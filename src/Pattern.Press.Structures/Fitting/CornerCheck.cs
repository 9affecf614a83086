using System.Globalization;
using Pattern.Press.Measure;
using Pattern.Press.Structures.Formulas;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Structures.Fitting;

/// <summary>
/// Tries a structure at the corners of its parameters' ranges: no length that is cut or scored may come out below nothing
/// for values that a maker is allowed to choose. Every parameter is tried at its least and at its most (or with each of
/// its words) alone, in pairs, and all together, as far as the bound on the work lets it.
/// </summary>
internal sealed class CornerCheck
{
    private const int MostCorners = 600;

    // Formulas worked out in all; the largest structure of the catalogue takes a third of it.
    private const int MostWork = 400_000;

    private readonly Structure _structure;
    private readonly Problems _problems;
    private readonly HashSet<Place> _told = [];
    private readonly IReadOnlyList<(Formula Size, IReadOnlyList<Formula> When)> _sizes;
    private int _left;

    private CornerCheck(Structure structure, Problems problems)
    {
        (_structure, _problems) = (structure, problems);
        var pieces = structure.Definition.Pieces;
        _sizes =
        [
            .. pieces.SelectMany(piece => piece.Form.Sizes.Select(size => (size.Size, Conditions(piece.When, size.When)))),
            .. structure.Definition.Mats.SelectMany(mat => mat.Form.Sizes
                .Select(size => (size, Conditions(pieces.FirstOrDefault(piece => piece.Id == mat.Goes)?.When, mat.When)))),
        ];
        var formulas = _sizes.Count + structure.Definition.Order.Count + (2 * structure.Parameters.Count) + (2 * structure.Definition.Checks.Count);
        _left = Math.Clamp(MostWork / (4 * formulas), 8, MostCorners);

        static IReadOnlyList<Formula> Conditions(params Formula?[] all) => [.. all.OfType<Formula>()];
    }

    /// <summary>Tries the corners and notes every formula that gives a length below nothing, once, with the corner.</summary>
    public static void Try(Structure structure, Problems problems)
    {
        var check = new CornerCheck(structure, problems);
        foreach (var ruler in new[] { Ruler.WholeMillimetres, Ruler.SixteenthInches })
        {
            // Pairs are tried on one ruler: what the other rounds differently shows at single corners already.
            foreach (var settings in check.Settings(pairs: ruler.System == UnitSystem.Metric))
                check.Look(ruler, settings);
        }
    }

    private IEnumerable<IReadOnlyList<Setting>> Settings(bool pairs)
    {
        yield return [];
        var choices = _structure.Parameters.Select(parameter => (IReadOnlyList<Setting>)[.. Ends(parameter)]).Where(ends => ends.Count > 0).ToList();
        var ranges = choices.Where(ends => ends[0].Fixed is null).ToList();
        yield return [.. ranges.Select(ends => ends[0])];
        yield return [.. ranges.Select(ends => ends[^1])];
        foreach (var setting in choices.SelectMany(ends => ends))
            yield return [setting];
        for (var one = 0; pairs && one < choices.Count; one++)
        {
            for (var other = one + 1; other < choices.Count; other++)
            {
                foreach (var first in choices[one])
                {
                    foreach (var second in choices[other])
                        yield return [first, second];
                }
            }
        }
    }

    private static IEnumerable<Setting> Ends(Parameter parameter) => parameter.Kind switch
    {
        ParameterKind.YesNo => [new(parameter, false, Quantity.Of(false)), new(parameter, true, Quantity.Of(true))],
        ParameterKind.Choice => parameter.Choices.Select(word => new Setting(parameter, false, Quantity.Of(word))),
        ParameterKind.Number when parameter.LeastFormula is null || parameter.MostFormula is null => [],
        _ => [new(parameter, false, null), new(parameter, true, null)],
    };

    private void Look(Ruler ruler, IReadOnlyList<Setting> settings)
    {
        foreach (var item in _structure.Examples)
        {
            if (_left-- <= 0)
                return;
            if (Corner.At(_structure, item, ruler, settings) is not { } corner)
                continue;
            foreach (var (size, when) in _sizes)
                Look(size, when, corner, item, settings);

            // Further items are for a structure that does not take the first one.
            return;
        }
    }

    private void Look(Formula size, IReadOnlyList<Formula> when, Corner corner, Item item, IReadOnlyList<Setting> settings)
    {
        try
        {
            if (_told.Contains(size.Place) || when.Any(condition => !condition.Evaluate(corner.Values).Flag))
                return;
            if (size.Evaluate(corner.Values) is not { Kind: Kind.Length, Amount: < 0 } below)
                return;
            _told.Add(size.Place);
            var needed = Needed(size);
            IReadOnlyList<Setting> said = [.. settings.Where(setting => needed.Contains(setting.Parameter.Name))];
            _problems.Error(
                size.Place,
                $"“{size.Text}” comes out at {LengthFormat.Format(below.Length, corner.Values.Ruler)}, less than nothing, {Where(corner, item, said)}.",
                said.Count == 0
                    ? "Work it out so that it is at least 0 mm, such as max(0 mm, …)."
                    : $"Keep {(said.Count == 1 ? "it" : "them")} from that with “least” or “most”, or write max(0 mm, …).");
        }
        catch (Exception nothing) when (nothing is FormulaException or OverflowException)
        {
            // What gives nothing is told of when the structure is fitted.
        }
    }

    // What a formula comes from, however many steps away.
    private HashSet<string> Needed(Formula formula)
    {
        var needed = new HashSet<string>(StringComparer.Ordinal);
        var next = new Queue<string>(formula.Names);
        while (next.TryDequeue(out var name))
        {
            if (!needed.Add(name) || !_structure.Definition.ByName.TryGetValue(name, out var definition))
                continue;
            foreach (var one in definition.Formulas.SelectMany(other => other.Names))
                next.Enqueue(one);
        }

        return needed;
    }

    private static string Where(Corner corner, Item item, IReadOnlyList<Setting> settings)
    {
        var thing = string.Create(CultureInfo.InvariantCulture, $"for an item of {Size(item)}");
        if (settings.Count == 0)
            return $"with nothing set, {thing}";
        var words = settings.Select(setting => $"“{setting.Parameter.Name}” is {Said(corner, setting)}").ToList();
        return $"where {(words.Count == 1 ? words[0] : $"{string.Join(", ", words.SkipLast(1))} and {words[^1]}")}, {thing}";
    }

    private static string Said(Corner corner, Setting setting)
    {
        var value = corner.Values.Find(setting.Parameter.Name) ?? default;
        return value.Kind switch
        {
            Kind.YesNo => value.Flag ? "yes" : "no",
            Kind.Word => value.Word ?? "",
            Kind.Length => $"{LengthFormat.Format(value.Length, corner.Values.Ruler)} (its {(setting.IsMost ? "most" : "least")})",
            _ => string.Create(CultureInfo.InvariantCulture, $"{value.Amount:0.###} (its {(setting.IsMost ? "most" : "least")})"),
        };
    }

    private static string Size(Item item)
    {
        var ruler = Ruler.WholeMillimetres;
        var (width, depth, height) = (LengthFormat.Number(item.Width, ruler), LengthFormat.Number(item.Depth, ruler), LengthFormat.Format(item.Height, ruler));
        return item.Shape == ItemShape.Round ? $"{width} mm across and {height} tall" : $"{width} × {depth} × {height}";
    }
}
