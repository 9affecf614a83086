namespace Pattern.Press.Nets.Building;

/// <summary>Names the panels of a scored sheet in words that a maker can find them by.</summary>
internal static class PanelNames
{
    /// <summary>
    /// The kind alone if there is one of it; else with where it lies seen from the root; else with the panel it hangs from;
    /// else with a number, from the root outwards.
    /// </summary>
    public static IReadOnlyDictionary<Region, string> Of(IReadOnlyList<Region> regions)
    {
        var names = new Dictionary<Region, string>();
        var root = regions.First(region => region.Level == 0).Outline.Bounds;
        var inOrder = regions.OrderBy(region => region.Level)
            .ThenBy(region => Math.Round(region.Outline.Centroid.Y, 4)).ThenBy(region => region.Outline.Centroid.X).ToArray();
        var ofKind = regions.ToLookup(region => region.Cell.Kind, StringComparer.Ordinal);
        var placed = regions.ToLookup(region => Placed(region, root), StringComparer.Ordinal);
        foreach (var region in inOrder)
        {
            var name = region.Cell.Kind;
            if (ofKind[name].Count() > 1)
            {
                name = Placed(region, root);
                var sharing = placed[name].ToArray();
                if (sharing.Length > 1)
                    name = Apart(region, name, sharing, inOrder, names);
            }

            names.Add(region, Unused(name, names.Values));
        }

        return names;
    }

    private static string Apart(Region region, string name, Region[] sharing, Region[] inOrder, Dictionary<Region, string> names)
    {
        var parents = sharing.Select(other => other.Parent).ToArray();
        var byParent = parents.Distinct().Count() == sharing.Length && !parents.Any(parent => parent is null || sharing.Contains(parent));
        return byParent
            ? $"{name} on the {names[region.Parent!]}"
            : $"{name} {1 + Array.IndexOf([.. inOrder.Where(sharing.Contains)], region)}";
    }

    private static string Placed(Region region, Bounds root)
    {
        var centre = region.Outline.Centroid;
        var words = new[]
        {
            centre.Y < root.Top - LineWork.Tolerance ? "upper" : centre.Y > root.Bottom + LineWork.Tolerance ? "lower" : null,
            centre.X < root.Left - LineWork.Tolerance ? "left" : centre.X > root.Right + LineWork.Tolerance ? "right" : null,
        }.OfType<string>().ToArray();
        return string.Join(' ', words.Length == 0 ? ["middle", region.Cell.Kind] : [.. words, region.Cell.Kind]);
    }

    private static string Unused(string name, IEnumerable<string> taken)
    {
        var used = taken.ToHashSet(StringComparer.Ordinal);
        var free = name;
        for (var number = 2; used.Contains(free); number++)
            free = $"{name} {number}";
        return free;
    }
}
