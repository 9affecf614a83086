using Pattern.Press.Booklets.Figures;
using Pattern.Press.Booklets.Phrases;

namespace Pattern.Press.Booklets.Composing;

/// <summary>The words of figures, from the phrases.</summary>
internal sealed class PhraseFigureWords(PhraseBook phrases) : IFigureWords
{
    /// <inheritdoc/>
    public string Say(string key, params ReadOnlySpan<(string Name, string Value)> values)
    {
        // A figure offers every value it has; the phrase takes those it needs.
        var mapped = Map(key);
        var needed = PhraseBook.Names(phrases.Find(mapped));
        var taken = new List<(string, string)>();
        foreach (var value in values)
        {
            if (needed.Contains(value.Name, StringComparer.Ordinal))
                taken.Add(value);
        }

        return phrases.Format(mapped, [.. taken]);
    }

    internal static string Map(string key)
    {
        key = key.Replace('-', '_').Replace(".many", ".other", StringComparison.Ordinal);
        key = key switch
        {
            "alt.folds" => "alternative.fold_list", "alt.mats" => "alternative.mat_list",
            "alt.glue.one" => "alternative.glue_areas.one", "alt.glue.other" => "alternative.glue_areas.other",
            "alt.waste.one" => "alternative.waste_areas.one", "alt.waste.other" => "alternative.waste_areas.other",
            _ => key,
        };
        return key.Replace("alt.flat.", "alternative.", StringComparison.Ordinal).Replace("alt.", "alternative.", StringComparison.Ordinal).Replace("figure.", "drawing.", StringComparison.Ordinal);
    }
}
