using Pattern.Press.Booklets.Content;
using Pattern.Press.Booklets.Markdown;
using Pattern.Press.Structures.Reading;
using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Booklets.Composing;

/// <summary>
/// Short texts that a maker wrote in front matter: emphasis, values and measurements in them are set as in the words.
/// </summary>
internal sealed class MakersWords(BookletSource source, IBindings bindings, MarkdownOptions options, Problems problems)
{
    private readonly Whereabouts _written = Whereabouts.In(source);

    /// <summary>A text of one paragraph from the front matter of any file.</summary>
    public IReadOnlyList<Inline> Inlines(string text) => Inlines(text, file: null);

    /// <summary>A text of one paragraph from the front matter of a file.</summary>
    /// <param name="text">The text.</param>
    /// <param name="file">The file; null where it may be any.</param>
    public IReadOnlyList<Inline> Inlines(string text, string? file)
    {
        var found = new Problems();
        var place = new Place(file ?? BookletReader.FileName);
        var inlines = MarkdownReader.ToInlines(new MarkdownText(text, place), source.Folder, bindings, found, options);
        if (found.All.Count == 0)
            return inlines;

        // YAML folds lines, so where a text starts is looked up once something in it is wrong.
        place = _written.Find(text, file) ?? place;
        problems.AddRange(found.All.Select(problem => problem with { File = place.File, Line = place.Line, Column = 0 }));
        return inlines;
    }
}
