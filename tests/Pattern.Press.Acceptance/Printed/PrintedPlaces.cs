using UglyToad.PdfPig;
using UglyToad.PdfPig.Tokens;

namespace Pattern.Press.Acceptance.Printed;

/// <summary>A place in a file.</summary>
/// <param name="Page">The index of its page, from 0.</param>
/// <param name="Top">Its height, in millimetres from the page's top.</param>
public sealed record PrintedPlace(int Page, double Top);

/// <summary>A link to a place.</summary>
/// <param name="Page">The index of the page that it stands on, from 0.</param>
/// <param name="Area">Left, top, right and bottom, in millimetres from the page's top-left corner.</param>
/// <param name="To">Where it leads.</param>
public sealed record PrintedLink(int Page, (double Left, double Top, double Right, double Bottom) Area, PrintedPlace To);

/// <summary>A bookmark.</summary>
/// <param name="Title">What it says.</param>
/// <param name="To">Where it leads.</param>
public sealed record PrintedBookmark(string Title, PrintedPlace To);

/// <summary>Reads links and bookmarks of a file with their places: ISO 32000-1, 12.3.2 (destinations), 12.3.3 (outline), 12.5.6.5 (links).</summary>
internal sealed class PrintedPlaces
{
    private const double PerPoint = 25.4 / 72;
    private readonly PdfDocument _document;
    private readonly List<(long Number, DictionaryToken Page)> _pages = [];
    private readonly Dictionary<string, ArrayToken> _named = new(StringComparer.Ordinal);

    public PrintedPlaces(PdfDocument document, DictionaryToken catalogue)
    {
        _document = document;
        CollectPages(catalogue.Data["Pages"]);
        if (catalogue.Data.TryGetValue("Names", out var names) && Dictionary(names).Data.TryGetValue("Dests", out var tree))
            CollectNames(Dictionary(tree));
        Links = [.. _pages.SelectMany((page, i) => LinksOf(page.Page, i))];
        Bookmarks = catalogue.Data.TryGetValue("Outlines", out var outline) ? [.. BookmarksIn(Dictionary(outline))] : [];
    }

    public IReadOnlyList<PrintedLink> Links { get; }

    public IReadOnlyList<PrintedBookmark> Bookmarks { get; }

    private void CollectPages(IToken token)
    {
        var node = Dictionary(token);
        if (!node.Data.TryGetValue("Kids", out var kids))
        {
            _pages.Add((((IndirectReferenceToken)token).Data.ObjectNumber, node));
            return;
        }

        foreach (var kid in ((ArrayToken)Resolved(kids)).Data)
            CollectPages(kid);
    }

    private void CollectNames(DictionaryToken node)
    {
        if (node.Data.TryGetValue("Kids", out var kids))
        {
            foreach (var kid in ((ArrayToken)Resolved(kids)).Data)
                CollectNames(Dictionary(kid));
        }

        if (!node.Data.TryGetValue("Names", out var names))
            return;
        var pairs = ((ArrayToken)Resolved(names)).Data;
        for (var i = 0; i + 1 < pairs.Count; i += 2)
            _named.Add(Text(pairs[i]), Resolved(pairs[i + 1]) as ArrayToken ?? (ArrayToken)Resolved(((DictionaryToken)Resolved(pairs[i + 1])).Data["D"]));
    }

    private IEnumerable<PrintedLink> LinksOf(DictionaryToken page, int index)
    {
        if (!page.Data.TryGetValue("Annots", out var annotations))
            yield break;
        var height = Height(page);
        foreach (var annotation in ((ArrayToken)Resolved(annotations)).Data.Select(Dictionary))
        {
            if (!annotation.Data.TryGetValue("Dest", out var destination))
                continue;
            var box = ((ArrayToken)Resolved(annotation.Data["Rect"])).Data.Select(side => ((NumericToken)Resolved(side)).Double).ToList();
            yield return new PrintedLink(index, (box[0] * PerPoint, (height - box[3]) * PerPoint, box[2] * PerPoint, (height - box[1]) * PerPoint), PlaceOf(destination));
        }
    }

    private IEnumerable<PrintedBookmark> BookmarksIn(DictionaryToken parent)
    {
        for (var next = parent.Data.GetValueOrDefault("First"); next is not null;)
        {
            var item = Dictionary(next);
            yield return new PrintedBookmark(Text(item.Data["Title"]), PlaceOf(item.Data["Dest"]));
            foreach (var inner in BookmarksIn(item))
                yield return inner;
            next = item.Data.GetValueOrDefault("Next");
        }
    }

    private PrintedPlace PlaceOf(IToken destination)
    {
        var name = Text(Resolved(destination));
        Assert.True(_named.TryGetValue(name, out var place), $"Nothing in the file is named “{name}”.");
        var number = ((IndirectReferenceToken)place!.Data[0]).Data.ObjectNumber;
        var page = _pages.FindIndex(one => one.Number == number);
        Assert.True(page >= 0, $"“{name}” is on no page.");

        // [page /XYZ left top zoom], or [page /FitH top]; a page as a whole starts at its top.
        var top = ((NameToken)place.Data[1]).Data switch
        {
            "XYZ" => place.Data[3] as NumericToken,
            "FitH" => place.Data[2] as NumericToken,
            _ => null,
        };
        return new PrintedPlace(page, top is null ? 0 : (Height(_pages[page].Page) - top.Double) * PerPoint);
    }

    private double Height(DictionaryToken page) => ((NumericToken)Resolved(((ArrayToken)Resolved(page.Data["MediaBox"])).Data[3])).Double;

    private DictionaryToken Dictionary(IToken token) => (DictionaryToken)Resolved(token);

    private IToken Resolved(IToken token) =>
        token is IndirectReferenceToken reference ? _document.Structure.GetObject(reference.Data).Data : token;

    private static string Text(IToken token) => token switch
    {
        StringToken text => text.Data,
        HexToken text => text.Data,
        _ => "",
    };
}
