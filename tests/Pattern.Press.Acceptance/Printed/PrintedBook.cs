using System.Globalization;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Tokens;

namespace Pattern.Press.Acceptance.Printed;

/// <summary>A finished file, read back by a reader that shares nothing with the writer.</summary>
public sealed class PrintedBook
{
    public PrintedBook(byte[] file)
    {
        using var document = PdfDocument.Open(file);
        var catalogue = document.Structure.Catalog.CatalogDictionary;
        (Title, Author) = (document.Information.Title ?? "", document.Information.Author ?? "");
        Language = catalogue.TryGet(NameToken.Create("Lang"), out var language) ? Text(language) : "";
        var labels = Labels(document, catalogue);
        var places = new PrintedPlaces(document, catalogue);
        Links = places.Links;
        Bookmarks = places.Bookmarks;
        Pages = [.. document.GetPages().Select((page, i) => new PrintedPage(page, labels[i]))];
    }

    public string Title { get; }

    public string Author { get; }

    public string Language { get; }

    public IReadOnlyList<PrintedPage> Pages { get; }

    /// <summary>Every link to a place in the file.</summary>
    public IReadOnlyList<PrintedLink> Links { get; }

    /// <summary>Every bookmark, those inside others after them.</summary>
    public IReadOnlyList<PrintedBookmark> Bookmarks { get; }

    /// <summary>The pages whose label starts with a T.</summary>
    public IEnumerable<PrintedPage> TemplatePages => Pages.Where(page => page.Label.StartsWith('T'));

    /// <summary>All level text of the pages that are no templates, in the order of the file, headers and footers included.</summary>
    public string Body => string.Join(' ', Pages.Where(page => !page.Label.StartsWith('T')).Select(page => page.Text));

    // ISO 32000-1, 12.4.2: ranges of pages, each with a prefix, a style and a first number.
    private static string[] Labels(PdfDocument document, DictionaryToken catalogue)
    {
        var labels = new string[document.NumberOfPages];
        Assert.True(catalogue.TryGet(NameToken.Create("PageLabels"), out var tree), "The file has no page labels.");
        var numbers = (ArrayToken)Resolved(document, ((DictionaryToken)Resolved(document, tree)).Data["Nums"]);
        var (prefix, counts, first, from) = ("", false, 1, 0);
        var range = 0;
        for (var page = 0; page < labels.Length; page++)
        {
            while (range < numbers.Length && ((NumericToken)numbers.Data[range]).Int == page)
            {
                var says = (DictionaryToken)Resolved(document, numbers.Data[range + 1]);
                prefix = says.Data.TryGetValue("P", out var before) ? Text(before) : "";
                counts = says.Data.TryGetValue("S", out var style) && ((NameToken)style).Data == "D";
                first = says.Data.TryGetValue("St", out var start) ? ((NumericToken)start).Int : 1;
                (from, range) = (page, range + 2);
            }

            labels[page] = prefix + (counts ? (first + page - from).ToString(CultureInfo.InvariantCulture) : "");
        }

        return labels;
    }

    private static IToken Resolved(PdfDocument document, IToken token) =>
        token is IndirectReferenceToken reference ? document.Structure.GetObject(reference.Data).Data : token;

    private static string Text(IToken token) => token switch
    {
        StringToken text => text.Data,
        HexToken text => text.Data,
        _ => "",
    };
}
