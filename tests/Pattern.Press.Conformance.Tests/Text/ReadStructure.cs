using UglyToad.PdfPig.Tokens;

namespace Pattern.Press.Conformance.Text;

/// <summary>Reads a file's structure: what it is made of, and the marked content in reading order.</summary>
internal static class ReadStructure
{
    /// <summary>The types of the elements: <c>Document(Sect(H1 P))</c>.</summary>
    public static string Shape(PdfObjects objects) => string.Join(' ', objects.Elements(Root(objects)).Select(element => Shape(objects, element)));

    /// <summary>The marked content of leaves and of what they stand in, in reading order: page, counted from 1, and identifier.</summary>
    public static IEnumerable<(int Page, int Mark)> Order(PdfObjects objects) =>
        objects.Elements(Root(objects)).SelectMany(element => Order(objects, element));

    /// <summary>The marked content of each paragraph, heading, label and cell, in reading order; figures are left out.</summary>
    public static IEnumerable<IReadOnlyList<(int Page, int Mark)>> Paragraphs(PdfObjects objects) =>
        objects.Elements(Root(objects)).SelectMany(element => Paragraphs(objects, element));

    private static IEnumerable<IReadOnlyList<(int Page, int Mark)>> Paragraphs(PdfObjects objects, DictionaryToken element)
    {
        if (objects.Name(element, "S") == "Figure")
            return [];
        var parts = objects.Elements(element).ToList();
        return parts.All(part => objects.Name(part, "S") is "Span" or "Link" or "Code")
            ? [[.. Order(objects, element)]]
            : parts.SelectMany(part => Paragraphs(objects, part));
    }

    private static DictionaryToken Root(PdfObjects objects) => objects.Dictionary(objects.Catalog, "StructTreeRoot")!;

    private static string Shape(PdfObjects objects, DictionaryToken element)
    {
        var parts = objects.Elements(element).Select(part => Shape(objects, part)).ToList();
        return parts.Count == 0 ? objects.Name(element, "S")! : $"{objects.Name(element, "S")}({string.Join(' ', parts)})";
    }

    private static IEnumerable<(int Page, int Mark)> Order(PdfObjects objects, DictionaryToken element)
    {
        var own = PdfObjects.Reference(element, "Pg");
        foreach (var kid in objects.Kids(element).Select(objects.Resolve))
        {
            switch (kid)
            {
                case NumericToken mark:
                    yield return (PageOf(objects, own), mark.Int);
                    break;
                case DictionaryToken part when objects.Name(part, "Type") == "MCR":
                    yield return (PageOf(objects, PdfObjects.Reference(part, "Pg")), (int)objects.Number(part, "MCID")!.Value);
                    break;
                case DictionaryToken part when objects.Name(part, "S") is not null:
                    foreach (var inner in Order(objects, part))
                        yield return inner;
                    break;
                default:
                    break;
            }
        }
    }

    private static int PageOf(PdfObjects objects, long number) => 1 + objects.Pages.FindIndex(page => page.Number == number);
}
