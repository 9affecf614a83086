namespace Pattern.Press.Nets.Checks;

/// <summary>Finds regions of a flat sheet that lie over each other.</summary>
internal static class OverlappingRegions
{
    /// <summary>A region by what a maker calls it, its outline first, then its holes anticlockwise.</summary>
    public readonly record struct Region(string Name, IReadOnlyList<Outline> Outlines);

    /// <summary>A sentence for each two that overlap.</summary>
    /// <param name="regions">The regions.</param>
    /// <param name="apart">So many of the first are known not to overlap each other.</param>
    public static IEnumerable<string> Problems(IReadOnlyList<Region> regions, int apart = 0)
    {
        Bounds[] bounds = [.. regions.Select(region => region.Outlines[0].Bounds)];
        for (var i = 0; i < regions.Count; i++)
        {
            for (var j = Math.Max(i + 1, i < apart ? apart : 0); j < regions.Count; j++)
            {
                if (!bounds[i].Overlaps(bounds[j], LineWork.Tolerance))
                    continue;
                var (a, b) = (regions[i].Outlines, regions[j].Outlines);
                if (Overlap.Area(a, b) > Overlap.Slack(a, b))
                    yield return $"On the flat sheet {regions[i].Name} and {regions[j].Name} overlap.";
            }
        }
    }
}
