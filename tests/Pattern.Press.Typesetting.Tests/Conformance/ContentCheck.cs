using UglyToad.PdfPig.Graphics.Operations.MarkedContent;
using UglyToad.PdfPig.Tokens;

namespace Pattern.Press.Typesetting.Tests.Conformance;

/// <summary>Checks that all content of the pages is either tagged or an artifact, and what the annotations say.</summary>
internal static class ContentCheck
{
    // The operators that leave a mark on the page (ISO 32000-1, annex A).
    private static readonly HashSet<string> _painting = new(
        ["Tj", "TJ", "'", "\"", "S", "s", "f", "F", "f*", "B", "B*", "b", "b*", "sh", "Do", "BI", "EI"],
        StringComparer.Ordinal);

    /// <summary>Runs the checks; returns the marked content found: page object and identifier.</summary>
    public static List<(long Page, int Mark)> Run(PdfObjects objects, List<Finding> findings)
    {
        var marks = new List<(long Page, int Mark)>();
        for (var i = 0; i < objects.Pages.Count; i++)
        {
            CheckPage(objects, i, marks, findings);
            CheckAnnotations(objects, i, findings);
        }

        return marks;
    }

    private static void CheckPage(PdfObjects objects, int index, List<(long Page, int Mark)> marks, List<Finding> findings)
    {
        var (number, page) = objects.Pages[index];
        var where = $"page {index + 1}";
        var open = new Stack<(bool IsArtifact, int? Mark)>();
        var inText = false;
        var textStartedAt = 0;
        var seen = new HashSet<int>();
        foreach (var operation in objects.Operations(index))
        {
            switch (operation)
            {
                case BeginMarkedContent begin:
                    Open(begin.Name.Data, null);
                    break;
                case BeginMarkedContentWithProperties begin:
                    Open(begin.Name.Data, begin.Properties);
                    break;
                case EndMarkedContent:
                    if (open.Count == 0)
                        findings.Add(new Finding("ISO 32000-1, 14.6", $"Marked content ends on {where} that has not begun."));
                    else
                        open.Pop();
                    if (inText && open.Count < textStartedAt)
                        findings.Add(new Finding("ISO 32000-1, 14.6", $"Marked content ends on {where} inside a text object but began outside it."));
                    break;
                default:
                    if (operation.Operator == "BT")
                        (inText, textStartedAt) = (true, open.Count);
                    if (operation.Operator == "ET")
                    {
                        inText = false;
                        if (open.Count != textStartedAt)
                            findings.Add(new Finding("ISO 32000-1, 14.6", $"A text object ends on {where} inside marked content that began in it."));
                    }

                    // 01-005: content is an artifact or belongs to an element.
                    if (_painting.Contains(operation.Operator) && !open.Any(mark => mark.IsArtifact || mark.Mark is not null))
                        findings.Add(new Finding("01-005", $"Content on {where} ({operation.Operator}) is neither tagged nor an artifact."));
                    break;
            }
        }

        if (open.Count > 0)
            findings.Add(new Finding("ISO 32000-1, 14.6", $"Marked content does not end on {where}."));
        if (seen.Count > 0 && objects.Number(page, "StructParents") is null)
            findings.Add(new Finding("ISO 32000-1, 14.7.4.4", $"There is no way from the content of {where} to its elements."));

        void Open(string tag, DictionaryToken? properties)
        {
            var artifact = tag == "Artifact";
            var mark = objects.Number(properties, "MCID") is { } id ? (int)id : (int?)null;
            if (artifact && open.Any(outer => outer.Mark is not null))
                findings.Add(new Finding("01-003", $"There is an artifact inside tagged content on {where}."));
            if (mark is { } tagged)
            {
                if (open.Any(outer => outer.IsArtifact))
                    findings.Add(new Finding("01-004", $"There is tagged content inside an artifact on {where}."));
                if (open.Any(outer => outer.Mark is not null))
                    findings.Add(new Finding("ISO 32000-1, 14.7.4.2", $"There is tagged content inside tagged content on {where}."));
                if (!seen.Add(tagged))
                    findings.Add(new Finding("ISO 32000-1, 14.7.4.2", $"The identifier {tagged} stands twice on {where}."));
                marks.Add((number, tagged));
            }

            open.Push((artifact, mark));
        }
    }

    private static void CheckAnnotations(PdfObjects objects, int index, List<Finding> findings)
    {
        var (_, page) = objects.Pages[index];
        if (objects.Array(page, "Annots") is not { Length: > 0 } annotations)
            return;
        if (objects.Name(page, "Tabs") is not { } tabs)
            findings.Add(new Finding("28-008", $"Page {index + 1} has annotations but no tab order."));
        else if (tabs != "S")
            findings.Add(new Finding("28-009", $"The tab order of page {index + 1} is not that of the structure."));
        foreach (var annotation in annotations.Data.Select(objects.Resolve).OfType<DictionaryToken>())
        {
            if (objects.Name(annotation, "Subtype") == "Link" && string.IsNullOrWhiteSpace(objects.Text(annotation, "Contents")))
                findings.Add(new Finding("28-012", $"A link on page {index + 1} has no description."));
            if (objects.Number(annotation, "StructParent") is null)
                findings.Add(new Finding("28-011", $"An annotation on page {index + 1} belongs to no element."));

            // ISO 19005-2, 6.3.2: printed, and neither hidden nor invisible.
            if (((int)(objects.Number(annotation, "F") ?? 0) & 0b100111) != 0b100)
                findings.Add(new Finding("ISO 19005-2, 6.3.2", $"An annotation on page {index + 1} is not printed."));
        }
    }
}
