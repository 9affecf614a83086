using Pattern.Press.Booklets.Composing;
using Pattern.Press.Booklets.Content;
using Pattern.Press.Booklets.Figures;
using Pattern.Press.Booklets.Phrases;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Booklets.Tests.Figures;

/// <summary>The English words that the program travels with, for drawing and reading back.</summary>
internal sealed class EnglishWords : IFigureWords
{
    private static readonly PhraseFigureWords Words = new(PhraseBook.Load(Resources.OfProgram.PhrasesFolder, "en-GB", new Problems())!);

    /// <inheritdoc/>
    public string Say(string key, params ReadOnlySpan<(string Name, string Value)> values) => Words.Say(key, values);
}
