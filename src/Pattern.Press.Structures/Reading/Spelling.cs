namespace Pattern.Press.Structures.Reading;

/// <summary>Finds the word a maker probably meant.</summary>
public static class Spelling
{
    /// <summary>
    /// The candidate nearest to a word by insertions, deletions, changes and swaps of neighbours (at most a third of the
    /// word's length, at least one), or null when none is near.
    /// </summary>
    public static string? Nearest(string word, IEnumerable<string> candidates)
    {
        ArgumentNullException.ThrowIfNull(word);
        var within = Math.Max(1, (word.Length + 2) / 3);
        return candidates
            .Select(candidate => (candidate, distance: Distance(word.ToUpperInvariant(), candidate.ToUpperInvariant())))
            .Where(pair => pair.distance <= within)
            .OrderBy(pair => pair.distance)
            .ThenBy(pair => pair.candidate, StringComparer.Ordinal)
            .Select(pair => pair.candidate)
            .FirstOrDefault();
    }

    /// <summary>A sentence that offers the nearest candidate, or lists them all when none is near and they are few.</summary>
    public static string Advice(string word, IReadOnlyCollection<string> candidates)
    {
        if (Nearest(word, candidates) is { } nearest)
            return $"Did you mean “{nearest}”?";
        return candidates.Count is > 0 and <= 16 ? $"Known here: {string.Join(", ", candidates)}." : "";
    }

    // The restricted Damerau–Levenshtein distance (optimal string alignment).
    private static int Distance(string a, string b)
    {
        var d = new int[a.Length + 1, b.Length + 1];
        for (var i = 0; i <= a.Length; i++)
            d[i, 0] = i;
        for (var j = 0; j <= b.Length; j++)
            d[0, j] = j;
        for (var i = 1; i <= a.Length; i++)
        {
            for (var j = 1; j <= b.Length; j++)
            {
                var change = a[i - 1] == b[j - 1] ? 0 : 1;
                d[i, j] = Math.Min(Math.Min(d[i - 1, j] + 1, d[i, j - 1] + 1), d[i - 1, j - 1] + change);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                    d[i, j] = Math.Min(d[i, j], d[i - 2, j - 2] + 1);
            }
        }

        return d[a.Length, b.Length];
    }
}
