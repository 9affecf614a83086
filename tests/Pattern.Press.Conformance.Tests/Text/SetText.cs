using System.Text;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Structure;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using PdfPage = UglyToad.PdfPig.Content.Page;

namespace Pattern.Press.Conformance.Text;

/// <summary>The text that layout put on pages, and whether a file gives the same back.</summary>
internal static class SetText
{
    /// <summary>
    /// Compares what another reader takes out of a file, glyph by glyph in drawing order and element by element in reading
    /// order, with what was set: nothing doubled, nothing lost, nothing in another place.
    /// </summary>
    public static void MatchesFile(PressDocument document, byte[] file)
    {
        using var read = PdfDocument.Open(file);
        var objects = new PdfObjects(read);
        var pages = Enumerable.Range(1, document.Pages.Count).Select(read.GetPage).ToList();
        foreach (var (set, page) in document.Pages.Zip(pages))
            Assert.Equal(Plain(string.Concat(Runs(set.Items).Select(item => item.Run.Text))), string.Concat(page.Letters.Select(letter => letter.Value)).Replace("\u2060", "", StringComparison.Ordinal));

        var marks = Marks(pages);
        Assert.Equal(Plain(InReadingOrder(document)), string.Concat(ReadStructure.Order(objects).Select(mark => marks[mark])));
    }

    /// <summary>What a file’s marked content says, by page, counted from 1, and identifier.</summary>
    public static Dictionary<(int Page, int Mark), string> Marks(IEnumerable<PdfPage> pages) => pages
        .SelectMany(page => All(page.GetMarkedContents()).Select(mark => (page.Number, Mark: mark)))
        .Where(found => found.Mark.MarkedContentIdentifier >= 0)
        .ToDictionary(found => (found.Number, found.Mark.MarkedContentIdentifier), found => Said(found.Mark));

    /// <summary>The letters of a file’s marked content, by page, counted from 1, and identifier.</summary>
    public static Dictionary<(int Page, int Mark), IReadOnlyList<Letter>> Letters(IEnumerable<PdfPage> pages) => pages
        .SelectMany(page => All(page.GetMarkedContents()).Select(mark => (page.Number, Mark: mark)))
        .Where(found => found.Mark.MarkedContentIdentifier >= 0)
        .ToDictionary(found => (found.Number, found.Mark.MarkedContentIdentifier), found => found.Mark.Letters);

    /// <summary>What was set in the order of the structure.</summary>
    public static string InReadingOrder(PressDocument document)
    {
        var own = new Dictionary<StructureElement, StringBuilder>(ReferenceEqualityComparer.Instance);
        foreach (var tagged in document.Pages.SelectMany(page => Tagged(page.Items)))
        {
            if (!own.TryGetValue(tagged.Element, out var text))
                own[tagged.Element] = text = new StringBuilder();
            foreach (var item in Runs(tagged.Items))
                text.Append(item.Run.Text);
        }

        var all = new StringBuilder();
        Read(document.Structure);
        return all.ToString();

        void Read(StructureElement element)
        {
            if (own.TryGetValue(element, out var text))
                all.Append(text);
            foreach (var child in element.Children)
                Read(child);
        }
    }

    /// <summary>All runs of text, in drawing order.</summary>
    public static IEnumerable<TextItem> Runs(IEnumerable<PageItem> items) => items.SelectMany(item => item switch
    {
        TextItem text => [text],
        GroupItem group => Runs(group.Items),
        TaggedItem tagged => Runs(tagged.Items),
        ArtifactItem artifact => Runs(artifact.Items),
        _ => [],
    });

    /// <summary>Spaces that layout treats in their own way are spaces to readers.</summary>
    public static string Plain(string text) => string.Concat(text.Select(c => c is '\u00A0' or '\u202F' or '\u2007' or '\u2009' or '\u200A' ? ' ' : c));

    private static IEnumerable<TaggedItem> Tagged(IEnumerable<PageItem> items) => items.SelectMany(item => item switch
    {
        TaggedItem tagged => [tagged],
        GroupItem group => Tagged(group.Items),
        _ => Enumerable.Empty<TaggedItem>(),
    });

    private static IEnumerable<MarkedContentElement> All(IEnumerable<MarkedContentElement> marks) =>
        marks.SelectMany(mark => All(mark.Children).Prepend(mark));

    private static string Said(MarkedContentElement mark) => mark.ActualText ?? string.Concat(mark.Letters.Select(letter => letter.Value));
}
