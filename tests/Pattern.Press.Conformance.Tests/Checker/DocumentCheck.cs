using System.Buffers.Binary;
using System.Text;
using System.Text.RegularExpressions;
using UglyToad.PdfPig.Tokens;

namespace Pattern.Press.Conformance;

/// <summary>Checks what the root of the file says about the whole.</summary>
internal static partial class DocumentCheck
{
    public static void Run(PdfObjects objects, Findings findings)
    {
        var catalog = objects.Catalog;
        var preferences = objects.Dictionary(catalog, "ViewerPreferences");
        if (objects.Get<BooleanToken>(preferences, "DisplayDocTitle") is not { } shown)
            findings.Report("07-001", "Viewer preferences do not say whether the title is shown.");
        else if (!shown.Data)
            findings.Report("07-002", "The title is not shown.");
        if (objects.Name(preferences, "PrintScaling") != "None" || objects.Get<BooleanToken>(preferences, "PickTrayByPDFSize") is not { Data: true })
            findings.Report("Press printing", "Viewer preferences do not ask for true size on the right paper.");
        var marks = objects.Dictionary(catalog, "MarkInfo");
        if (objects.Get<BooleanToken>(marks, "Marked") is not { Data: true })
            findings.Report("UA 7.1a", "The document is not marked as tagged.");
        if (objects.Get<BooleanToken>(marks, "Suspects") is { Data: true })
            findings.Report("01-007", "The document says that its tags are suspect.");
        CheckLanguages(objects, findings);
        CheckColour(objects, findings);
    }

    /// <summary>
    /// The language of bookmarks, descriptions and metadata is the document's (ISO 14289-1, 7.2); that of text is checked
    /// with the structure.
    /// </summary>
    private static void CheckLanguages(PdfObjects objects, Findings findings)
    {
        var language = objects.Text(objects.Catalog, "Lang");
        if (!string.IsNullOrEmpty(language))
        {
            if (!LanguageTag().IsMatch(language))
                findings.Report("A 6.7.4", $"The language of the document is “{language}”.");
            return;
        }

        findings.Report("11-006", "The document has no language, and so its metadata have none.");
        if (objects.Catalog.ContainsKey(NameToken.Create("Outlines")))
            findings.Report("11-003", "The document has no language, and so its bookmarks have none.");
        if (objects.Pages.Any(page => objects.Array(page.Page, "Annots") is { Length: > 0 }))
            findings.Report("11-004", "The document has no language, and so the descriptions of its links have none.");
    }

    /// <summary>Whether a language is written as BCP 47 (RFC 5646, 2.1) wants it: parts of up to eight letters and digits.</summary>
    public static bool IsLanguage(string tag) => LanguageTag().IsMatch(tag);

    private static void CheckColour(PdfObjects objects, Findings findings)
    {
        var intent = objects.Array(objects.Catalog, "OutputIntents")?.Data.Select(objects.Resolve).OfType<DictionaryToken>()
            .FirstOrDefault(intent => objects.Name(intent, "S") == "GTS_PDFA1");
        if (objects.Get<StreamToken>(intent, "DestOutputProfile") is not { } profile)
        {
            findings.Report("A 6.2.3", "There is no output intent with a profile.");
            return;
        }

        // ISO 15076-1, 7.2: length, class, space and mark in the head of the profile.
        var bytes = objects.Data(profile);
        var sound = bytes.Length > 132 &&
            BinaryPrimitives.ReadInt32BigEndian(bytes) == bytes.Length &&
            Encoding.ASCII.GetString(bytes, 12, 12) is "mntrRGB XYZ " &&
            Encoding.ASCII.GetString(bytes, 36, 4) == "acsp" &&
            bytes[8] is 2 or 4;
        if (!sound || objects.Number(profile.StreamDictionary, "N") != 3)
            findings.Report("A 6.2.3", "The output profile is no profile of a screen.");
    }

    [GeneratedRegex(@"\A[A-Za-z]{2,8}(-[A-Za-z0-9]{1,8})*\z")]
    private static partial Regex LanguageTag();
}
