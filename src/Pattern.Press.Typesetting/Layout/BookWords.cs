using Pattern.Press.Typesetting.Layout.Text;

namespace Pattern.Press.Typesetting.Layout;

/// <summary>
/// The words of a book, shaped: whoever lays out one book on several papers hands the same to all of them, and its words are
/// shaped once. Safe to use from several threads.
/// </summary>
/// <param name="language">The language of the book, as a BCP 47 tag.</param>
public sealed class BookWords(string language)
{
    /// <summary>The styles of words.</summary>
    internal TextStyles Styles { get; } = new(language);

    /// <summary>The paragraphs that were shaped.</summary>
    internal ShapedParagraphs Paragraphs { get; } = new();
}
