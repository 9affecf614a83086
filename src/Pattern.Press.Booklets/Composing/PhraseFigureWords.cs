using Pattern.Press.Booklets.Figures;
using Pattern.Press.Booklets.Phrases;

namespace Pattern.Press.Booklets.Composing;

/// <summary>The words of figures, from the phrases.</summary>
internal sealed class PhraseFigureWords(PhraseBook phrases) : IFigureWords
{
    /// <inheritdoc/>
    public string Say(string key, params ReadOnlySpan<(string Name, string Value)> values) => phrases.Format(key, values);
}
