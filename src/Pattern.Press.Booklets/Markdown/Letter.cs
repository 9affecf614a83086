using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Booklets.Markdown;

/// <summary>
/// One character of a paragraph with how it is set. Paragraphs are worked on letter by letter, so that a quotation mark
/// or a measurement is seen whole even where emphasis starts or ends within it.
/// </summary>
/// <param name="Char">The character; <see cref="Atom"/> stands for a whole inline.</param>
/// <param name="Emphasis">How it is set.</param>
/// <param name="IsFixed">Whether it stays as it is: literal text, or escaped by a backslash.</param>
/// <param name="Link">The number of the link it belongs to, from 1; 0 for none.</param>
/// <param name="Whole">The inline that it stands for.</param>
internal readonly record struct Letter(char Char, Emphasis Emphasis, bool IsFixed = false, int Link = 0, Inline? Whole = null)
{
    /// <summary>Stands for a whole inline: a value, a break.</summary>
    public const char Atom = '\uFFFC';
}
