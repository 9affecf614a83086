using Pattern.Press.Booklets.Content;
using Pattern.Press.Booklets.Markdown;
using Pattern.Press.Structures.Reading;
using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Booklets.Composing;

/// <summary>
/// Short texts that a maker wrote in front matter: emphasis, values and measurements in them are set as in the words.
/// </summary>
internal sealed class MakersWords(BookletContext context, IBindings bindings, MarkdownOptions options, Problems problems)
{
    /// <summary>A text of one paragraph from <c>booklet.md</c>.</summary>
    public IReadOnlyList<Inline> Inlines(string text) => Inlines(text, new Place("booklet.md"));

    /// <summary>A text of one paragraph from a file.</summary>
    public IReadOnlyList<Inline> Inlines(string text, Place place) =>
        MarkdownReader.ToInlines(new MarkdownText(text, place), context.Source.Folder, bindings, problems, options);
}
