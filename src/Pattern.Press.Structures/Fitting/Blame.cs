using Pattern.Press.Structures.Files;
using Pattern.Press.Structures.Formulas;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Structures.Fitting;

/// <summary>Finds the place in the maker's own file that a problem should point to.</summary>
internal sealed class Blame(Structure structure, FitRequest request)
{
    private readonly Dictionary<string, INamedDefinition> _definitions =
        structure.Definition.Order.ToDictionary(definition => definition.Name, StringComparer.Ordinal);

    /// <summary>Where the item is, or the structure's file when even that is unknown.</summary>
    public Place Fallback => request.ItemPlace.File is null ? structure.Place : request.ItemPlace;

    /// <summary>
    /// The place of the nearest value the maker gave among those that formulas come from, searched in the order in which
    /// the formulas name them; the item if there is none.
    /// </summary>
    public Place Of(params IEnumerable<Formula?> formulas)
    {
        var next = new Queue<string>(formulas.OfType<Formula>().SelectMany(formula => formula.Names));
        var seen = new HashSet<string>(StringComparer.Ordinal);
        while (next.TryDequeue(out var name))
        {
            if (!seen.Add(name))
                continue;
            if (request.Given.TryGetValue(name, out var given))
                return given.Place;
            if (!_definitions.TryGetValue(name, out var definition))
                continue;
            foreach (var needed in definition.Formulas.SelectMany(formula => formula.Names))
                next.Enqueue(needed);
        }

        return Fallback;
    }
}
