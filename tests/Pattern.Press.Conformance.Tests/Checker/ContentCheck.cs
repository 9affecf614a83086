using UglyToad.PdfPig.Graphics.Operations.MarkedContent;
using UglyToad.PdfPig.Tokens;

namespace Pattern.Press.Conformance;

/// <summary>Checks that all content of the pages is either tagged or an artifact.</summary>
internal static class ContentCheck
{
    // ISO 19005-2, 6.1.13.
    private const int DeepestState = 28;

    // The operators that leave a mark on the page (ISO 32000-1, annex A).
    private static readonly HashSet<string> _painting = new(
        ["Tj", "TJ", "'", "\"", "S", "s", "f", "F", "f*", "B", "B*", "b", "b*", "sh", "Do", "BI", "EI"],
        StringComparer.Ordinal);

    /// <summary>Runs the checks; returns the marked content found, by page object and identifier, with what it paints.</summary>
    public static Dictionary<(long Page, int Mark), List<Box>> Run(PdfObjects objects, Findings findings)
    {
        var marks = new Dictionary<(long Page, int Mark), List<Box>>();
        for (var i = 0; i < objects.Pages.Count; i++)
            CheckPage(objects, i, marks, findings);
        return marks;
    }

    private static void CheckPage(PdfObjects objects, int index, Dictionary<(long Page, int Mark), List<Box>> marks, Findings findings)
    {
        var (number, page) = objects.Pages[index];
        var where = $"page {index + 1}";
        var open = new Stack<(bool IsArtifact, int? Mark)>();
        var area = new PaintedArea();
        var (deepest, tagged) = (0, false);
        int? textStartedAt = null;
        foreach (var operation in objects.Operations(index))
        {
            var painted = area.Follow(operation);
            deepest = Math.Max(deepest, area.Depth);
            switch (operation)
            {
                case BeginMarkedContent begin:
                    Open(begin.Name.Data, null);
                    break;
                case BeginMarkedContentWithProperties begin:
                    Open(begin.Name.Data, begin.Properties);
                    break;
                case EndMarkedContent:
                    if (!open.TryPop(out _))
                        findings.Report("PDF 14.6", $"Marked content ends on {where} that has not begun.");
                    if (open.Count < textStartedAt)
                        findings.Report("PDF 14.6", $"Marked content ends on {where} inside a text object but began outside it.");
                    break;
                default:
                    if (operation.Operator == "BT")
                        textStartedAt = open.Count;
                    if (operation.Operator == "ET")
                    {
                        if (open.Count != textStartedAt)
                            findings.Report("PDF 14.6", $"A text object ends on {where} inside marked content that began in it.");
                        textStartedAt = null;
                    }

                    if (!_painting.Contains(operation.Operator))
                        break;
                    if (!open.Any(mark => mark.IsArtifact || mark.Mark is not null))
                        findings.Report("01-005", $"Content on {where} ({operation.Operator}) is neither tagged nor an artifact.");
                    if (painted is { } box && open.Select(mark => mark.Mark).FirstOrDefault(mark => mark is not null) is { } owner)
                        marks[(number, owner)].Add(box);
                    break;
            }
        }

        if (open.Count > 0)
            findings.Report("PDF 14.6", $"Marked content does not end on {where}.");
        if (deepest > DeepestState)
            findings.Report("A 6.1.13d", $"States are saved {deepest} deep on {where}.");
        if (tagged && objects.Number(page, "StructParents") is null)
            findings.Report("PDF 14.7.4c", $"There is no way from the content of {where} to its elements.");

        void Open(string tag, DictionaryToken? properties)
        {
            var artifact = tag == "Artifact";
            var mark = objects.Number(properties, "MCID") is { } id ? (int)id : (int?)null;
            if (artifact && open.Any(outer => outer.Mark is not null))
                findings.Report("01-003", $"There is an artifact inside tagged content on {where}.");
            if (mark is { } identifier)
            {
                tagged = true;
                if (open.Any(outer => outer.IsArtifact))
                    findings.Report("01-004", $"There is tagged content inside an artifact on {where}.");
                if (open.Any(outer => outer.Mark is not null))
                    findings.Report("PDF 14.7.4a", $"There is tagged content inside tagged content on {where}.");
                if (!marks.TryAdd((number, identifier), []))
                    findings.Report("PDF 14.7.4a", $"The identifier {identifier} stands twice on {where}.");
            }

            open.Push((artifact, mark));
        }
    }
}
