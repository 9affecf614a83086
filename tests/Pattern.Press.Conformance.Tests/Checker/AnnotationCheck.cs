using UglyToad.PdfPig.Tokens;

namespace Pattern.Press.Conformance;

/// <summary>Checks the annotations: links, and nothing else (Matterhorn 28; ISO 19005-2, 6.3).</summary>
internal static class AnnotationCheck
{
    // ISO 32000-1, table 169.
    private static readonly HashSet<string> _kinds = new(
        ["Text", "Link", "FreeText", "Line", "Square", "Circle", "Polygon", "PolyLine", "Highlight", "Underline", "Squiggly", "StrikeOut", "Stamp", "Caret", "Ink", "Popup",
         "FileAttachment", "Sound", "Movie", "Widget", "Screen", "PrinterMark", "TrapNet", "Watermark", "3D", "Redact"],
        StringComparer.Ordinal);

    private static readonly HashSet<string> _forbidden = new(["3D", "Sound", "Screen", "Movie"], StringComparer.Ordinal);

    /// <summary>Runs the checks.</summary>
    /// <param name="objects">The file.</param>
    /// <param name="owners">The types of the elements that annotations belong to, by the annotation's object.</param>
    /// <param name="findings">Takes what is found.</param>
    public static void Run(PdfObjects objects, IReadOnlyDictionary<long, string> owners, Findings findings)
    {
        for (var i = 0; i < objects.Pages.Count; i++)
        {
            var page = objects.Pages[i].Page;
            if (objects.Array(page, "Annots") is not { Length: > 0 } annotations)
                continue;
            var where = $"page {i + 1}";
            if (objects.Name(page, "Tabs") is not { } tabs)
                findings.Report("28-008", $"There are annotations but no tab order on {where}.");
            else if (tabs != "S")
                findings.Report("28-009", $"The tab order on {where} is not that of the structure.");
            foreach (var reference in annotations.Data)
                Check(objects, (DictionaryToken)objects.Resolve(reference), owners.GetValueOrDefault(PdfObjects.Reference(reference)), page, where, findings);
        }
    }

    private static void Check(PdfObjects objects, DictionaryToken annotation, string? owner, DictionaryToken page, string where, Findings findings)
    {
        var kind = objects.Name(annotation, "Subtype") ?? "";
        var described = !string.IsNullOrWhiteSpace(objects.Text(annotation, "Contents"));
        if (!_kinds.Contains(kind))
            findings.Report("28-006", $"An annotation on {where} is of the kind “{kind}”.");
        if (_forbidden.Contains(kind) || !_kinds.Contains(kind))
            findings.Report("A 6.3.1", $"An annotation on {where} is of the kind “{kind}”.");
        if (kind == "TrapNet")
            findings.Report("28-007", $"There is an annotation for trapping on {where}.");
        if (kind == "PrinterMark" && owner is not null)
            findings.Report("28-017", $"A printer’s mark on {where} belongs to an element {owner}.");
        if (kind == "Link")
        {
            if (owner != "Link")
                findings.Report("28-011", $"A link on {where} belongs to {owner ?? "no element"}.");
            if (!described)
                findings.Report("28-012", $"A link on {where} has no description.");
            if (objects.Rectangle(annotation, "Rect") is not { } area || !area.IsWithin(objects.Rectangle(page, "MediaBox")!.Value))
                findings.Report("Press links", $"A link lies off {where}.");
        }
        else if (kind == "Widget")
        {
            if (owner != "Form")
                findings.Report("28-010", $"A field on {where} belongs to {owner ?? "no element"}.");
            if (string.IsNullOrWhiteSpace(objects.Text(annotation, "TU")))
                findings.Report("28-005", $"A field on {where} has no description.");
        }
        else if (kind is not ("PrinterMark" or "Popup"))
        {
            if (owner != "Annot")
                findings.Report("28-002", $"An annotation {kind} on {where} belongs to {owner ?? "no element"}.");
            if (!described)
                findings.Report("28-004", $"An annotation {kind} on {where} has no description.");
        }

        if (kind is not ("Link" or "Popup") && !annotation.ContainsKey(NameToken.Create("AP")))
            findings.Report("A 6.3.3", $"An annotation {kind} on {where} does not say how it looks.");

        // Printed, and neither invisible nor hidden nor without a view (ISO 32000-1, table 165).
        if (((int)(objects.Number(annotation, "F") ?? 0) & 0b1_0010_0111) != 0b100)
            findings.Report("A 6.3.2", $"An annotation on {where} is not printed.");
    }
}
