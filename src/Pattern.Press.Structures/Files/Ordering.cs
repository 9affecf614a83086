using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Structures.Files;

/// <summary>Brings parameters and values into an order in which each comes after those it needs.</summary>
internal static class Ordering
{
    /// <summary>The definitions in working order; values that need themselves are reported and left out.</summary>
    public static IReadOnlyList<INamedDefinition> Order(IReadOnlyList<INamedDefinition> definitions, Problems problems)
    {
        var byName = definitions.ToDictionary(definition => definition.Name, StringComparer.Ordinal);
        var order = new List<INamedDefinition>();
        var done = new HashSet<string>(StringComparer.Ordinal);
        foreach (var definition in definitions)
            Visit(definition, []);
        return order;

        void Visit(INamedDefinition definition, List<string> path)
        {
            if (done.Contains(definition.Name))
                return;
            path.Add(definition.Name);
            foreach (var formula in definition.Formulas)
            {
                foreach (var name in formula.Names)
                {
                    if (path.IndexOf(name) is >= 0 and var start)
                    {
                        problems.Error(formula.Place, $"“{name}” goes round in a circle: {string.Join(" needs ", path.Skip(start).Append(name))}.", "Work one of them out from something else.");
                        continue;
                    }

                    if (byName.TryGetValue(name, out var needed))
                        Visit(needed, path);
                }
            }

            path.RemoveAt(path.Count - 1);
            if (done.Add(definition.Name))
                order.Add(definition);
        }
    }
}
