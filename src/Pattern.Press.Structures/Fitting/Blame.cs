using Pattern.Press.Structures.Files;
using Pattern.Press.Structures.Formulas;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Structures.Fitting;

/// <summary>Finds the place in the maker's own file that a problem should point to.</summary>
internal sealed class Blame(Structure structure, FitRequest request)
{
    private readonly IReadOnlyDictionary<string, INamedDefinition> _definitions = structure.Definition.ByName;

    /// <summary>Where the item is, or the structure's file when even that is unknown.</summary>
    public Place Fallback => request.ItemPlace.File is null ? structure.Place : request.ItemPlace;

    /// <summary>
    /// The place of the nearest value the maker gave among those that formulas come from, searched in the order in which
    /// the formulas name them; the item if there is none.
    /// </summary>
    public Place Of(params IEnumerable<Formula?> formulas)
    {
        var given = Needed(formulas).FirstOrDefault(request.Given.ContainsKey);
        return given is null ? Fallback : request.Given[given].Place;
    }

    /// <summary>
    /// Every name that formulas need, nearest first. What a given value would otherwise have come from is not needed.
    /// </summary>
    public IEnumerable<string> Needed(params IEnumerable<Formula?> formulas)
    {
        var next = new Queue<string>(formulas.OfType<Formula>().SelectMany(formula => formula.Names));
        var seen = new HashSet<string>(StringComparer.Ordinal);
        while (next.TryDequeue(out var name))
        {
            if (!seen.Add(name))
                continue;
            yield return name;
            if (request.Given.ContainsKey(name) || !_definitions.TryGetValue(name, out var definition))
                continue;
            foreach (var needed in definition.Formulas.SelectMany(formula => formula.Names))
                next.Enqueue(needed);
        }
    }
}
