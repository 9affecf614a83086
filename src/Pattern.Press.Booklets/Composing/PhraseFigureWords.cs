using Pattern.Press.Booklets.Figures;
using Pattern.Press.Booklets.Phrases;

namespace Pattern.Press.Booklets.Composing;

/// <summary>The words of figures, from the phrases.</summary>
public sealed class PhraseFigureWords(PhraseBook phrases) : IFigureWords
{
    /// <inheritdoc/>
    public string DecimalMark => phrases.DecimalMark;

    /// <inheritdoc/>
    public string Say(string key, params ReadOnlySpan<(string Name, string Value)> values)
    {
        // A figure offers every value it has; the phrase takes those it needs.
        var needed = phrases.NamesIn(phrases.Find(key));
        var taken = new List<(string, string)>();
        foreach (var value in values)
        {
            if (needed.Contains(value.Name, StringComparer.Ordinal))
                taken.Add(value);
        }

        return phrases.Format(key, [.. taken]);
    }
}
