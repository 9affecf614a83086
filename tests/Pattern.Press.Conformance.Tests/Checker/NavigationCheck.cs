using System.Text;
using UglyToad.PdfPig.Tokens;

namespace Pattern.Press.Conformance;

/// <summary>Checks names, bookmarks and page labels (ISO 32000-1, 12.3 and 12.4).</summary>
internal static class NavigationCheck
{
    public static void Run(PdfObjects objects, Findings findings)
    {
        var places = Places(objects, findings);
        CheckOutline(objects, places, findings);
        CheckLabels(objects, findings);
        foreach (var (_, page) in objects.Pages)
        {
            foreach (var link in (objects.Array(page, "Annots")?.Data ?? []).Select(objects.Resolve).OfType<DictionaryToken>())
            {
                if (link.TryGet(NameToken.Create("Dest"), out var target))
                    CheckTarget(objects, objects.Resolve(target), places, "A link", findings);
                else if (objects.Name(link, "Subtype") == "Link" && objects.Dictionary(link, "A") is not { } action)
                    findings.Report("PDF 12.3.2", "A link leads nowhere.");
            }
        }
    }

    private static HashSet<string> Places(PdfObjects objects, Findings findings)
    {
        var names = (objects.Array(objects.Dictionary(objects.Dictionary(objects.Catalog, "Names"), "Dests"), "Names")?.Data ?? []).ToList();
        var places = new HashSet<string>(StringComparer.Ordinal);
        byte[]? last = null;
        for (var i = 0; i + 1 < names.Count; i += 2)
        {
            var name = PdfObjects.Text(names[i]) ?? "";
            var bytes = Encoding.Latin1.GetBytes(name);
            if (last is not null && last.AsSpan().SequenceCompareTo(bytes) >= 0)
                findings.Report("PDF 7.9.6", $"The name “{name}” does not stand in its place.");
            last = bytes;
            if (objects.Resolve(names[i + 1]) is not ArrayToken { Length: > 1 } place || objects.Pages.All(page => page.Number != PdfObjects.Reference(place.Data[0])))
                findings.Report("PDF 12.3.2", $"The place “{name}” is on no page.");
            places.Add(name);
        }

        return places;
    }

    private static void CheckOutline(PdfObjects objects, HashSet<string> places, Findings findings)
    {
        if (objects.Dictionary(objects.Catalog, "Outlines") is not { } root)
            return;
        CheckLevel(root, PdfObjects.Reference(objects.Catalog, "Outlines"), 0);

        void CheckLevel(DictionaryToken parent, long parentNumber, int depth)
        {
            var (count, previous) = (0, 0L);
            var number = PdfObjects.Reference(parent, "First");
            for (; number > 0 && depth < 10; count++)
            {
                var entry = (DictionaryToken)objects.Object(number);
                if (PdfObjects.Reference(entry, "Parent") != parentNumber || PdfObjects.Reference(entry, "Prev") != previous || string.IsNullOrWhiteSpace(objects.Text(entry, "Title")))
                    findings.Report("PDF 12.3.3", $"The bookmark “{objects.Text(entry, "Title")}” is not joined to its neighbours.");
                if (entry.TryGet(NameToken.Create("Dest"), out var target))
                    CheckTarget(objects, objects.Resolve(target), places, "A bookmark", findings);
                else
                    findings.Report("PDF 12.3.2", $"The bookmark “{objects.Text(entry, "Title")}” leads nowhere.");
                if (entry.ContainsKey(NameToken.Create("First")))
                    CheckLevel(entry, number, depth + 1);
                (previous, number) = (number, PdfObjects.Reference(entry, "Next"));
            }

            if (PdfObjects.Reference(parent, "Last") != previous || Math.Abs(objects.Number(parent, "Count") ?? 0) != count)
                findings.Report("PDF 12.3.3", $"The bookmarks below “{objects.Text(parent, "Title")}” are not as many as is said.");
        }
    }

    private static void CheckTarget(PdfObjects objects, IToken target, HashSet<string> places, string what, Findings findings)
    {
        var leads = target is ArrayToken { Length: > 0 } place
            ? objects.Pages.Any(page => page.Number == PdfObjects.Reference(place.Data[0]))
            : PdfObjects.Text(target) is { } name && places.Contains(name);
        if (!leads)
            findings.Report("PDF 12.3.2", $"{what} leads to {PdfObjects.Text(target) ?? "a page"}, which is not there.");
    }

    private static void CheckLabels(PdfObjects objects, Findings findings)
    {
        var ranges = (objects.Array(objects.Dictionary(objects.Catalog, "PageLabels"), "Nums")?.Data ?? [])
            .Where((_, i) => i % 2 == 0).OfType<NumericToken>().Select(number => number.Int).ToList();
        if (ranges.Count == 0 || ranges[0] != 0 || ranges.Zip(ranges.Skip(1)).Any(pair => pair.First >= pair.Second) || ranges[^1] >= objects.Pages.Count)
            findings.Report("PDF 12.4.2", $"Page labels start at the pages {string.Join(", ", ranges)}.");
    }
}
