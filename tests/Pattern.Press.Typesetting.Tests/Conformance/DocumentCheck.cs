using System.Text;
using System.Xml;
using System.Xml.Linq;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Tokens;

namespace Pattern.Press.Typesetting.Tests.Conformance;

/// <summary>Checks what the file says about itself as a whole.</summary>
internal static class DocumentCheck
{
    private static readonly XNamespace _dc = "http://purl.org/dc/elements/1.1/";
    private static readonly XNamespace _pdfUa = "http://www.aiim.org/pdfua/ns/id/";
    private static readonly XNamespace _pdfA = "http://www.aiim.org/pdfa/ns/id/";
    private static readonly XNamespace _schema = "http://www.aiim.org/pdfa/ns/schema#";

    public static void Run(PdfDocument document, PdfObjects objects, List<Finding> findings)
    {
        var catalog = objects.Catalog;
        if (document.Version is < 1.7 or > 1.7)
            findings.Add(new Finding("ISO 14289-1, 6.1", "The version is not 1.7."));
        CheckMetadata(document, objects, findings);

        // 07-001 and 07-002: the window shows the title.
        var preferences = objects.Dictionary(catalog, "ViewerPreferences");
        if (objects.Get<BooleanToken>(preferences, "DisplayDocTitle") is not { } shown)
            findings.Add(new Finding("07-001", "Viewer preferences do not say whether the title is shown."));
        else if (!shown.Data)
            findings.Add(new Finding("07-002", "The title is not shown."));

        // 11-006: a language for everything that has none of its own.
        if (string.IsNullOrWhiteSpace(objects.Text(catalog, "Lang")))
            findings.Add(new Finding("11-001", "The document has no language."));
        var marks = objects.Dictionary(catalog, "MarkInfo");
        if (objects.Get<BooleanToken>(marks, "Marked") is not { Data: true })
            findings.Add(new Finding("ISO 14289-1, 7.1", "The document is not marked as tagged."));
        if (objects.Get<BooleanToken>(marks, "Suspects") is { Data: true })
            findings.Add(new Finding("01-007", "The document says that its tags are suspect."));
        CheckColour(objects, findings);
        var trailer = document.Structure.Trailer;
        if (trailer?.Identifier is not { Count: 2 })
            findings.Add(new Finding("ISO 19005-2, 6.1.3", "The file has no identifier."));
        if (document.IsEncrypted)
            findings.Add(new Finding("26-001", "The file is encrypted."));
    }

    private static void CheckMetadata(PdfDocument document, PdfObjects objects, List<Finding> findings)
    {
        if (objects.Get<StreamToken>(objects.Catalog, "Metadata") is not { } stream)
        {
            findings.Add(new Finding("06-001", "There is no XMP metadata."));
            return;
        }

        if (stream.StreamDictionary.ContainsKey(NameToken.Create("Filter")))
            findings.Add(new Finding("ISO 19005-2, 6.6.2.1", "The metadata are packed."));
        XDocument xmp;
        try
        {
            xmp = XDocument.Parse(Encoding.UTF8.GetString(objects.Data(stream)));
        }
        catch (XmlException problem)
        {
            findings.Add(new Finding("06-001", $"The metadata are no XML: {problem.Message}"));
            return;
        }

        string? Value(XName name) => xmp.Descendants(name).FirstOrDefault()?.Value.Trim();
        if (Value(_pdfUa + "part") != "1")
            findings.Add(new Finding("06-002", "The metadata do not name PDF/UA-1."));
        if (string.IsNullOrWhiteSpace(Value(_dc + "title")))
            findings.Add(new Finding("06-003", "The metadata have no title."));
        if (Value(_pdfA + "part") != "2" || Value(_pdfA + "conformance") != "A")
            findings.Add(new Finding("ISO 19005-2, 6.6.4", "The metadata do not name PDF/A-2a."));
        if (!xmp.Descendants(_schema + "namespaceURI").Any(schema => schema.Value == _pdfUa.NamespaceName))
            findings.Add(new Finding("ISO 19005-2, 6.6.2.3", "The property that names PDF/UA is not described."));
        Agree("title", Value(_dc + "title"), document.Information.Title);
        Agree("author", Value(_dc + "creator"), document.Information.Author);
        Agree("subject", Value(_dc + "description"), document.Information.Subject);

        void Agree(string what, string? inXmp, string? inInformation)
        {
            if ((inXmp ?? "") != (inInformation ?? ""))
                findings.Add(new Finding("ISO 19005-2, 6.6.3", $"The {what} is “{inXmp}” in one place and “{inInformation}” in another."));
        }
    }

    private static void CheckColour(PdfObjects objects, List<Finding> findings)
    {
        var intent = objects.Array(objects.Catalog, "OutputIntents")?.Data.Select(objects.Resolve).OfType<DictionaryToken>()
            .FirstOrDefault(intent => objects.Name(intent, "S") == "GTS_PDFA1");
        if (objects.Get<StreamToken>(intent, "DestOutputProfile") is not { } profile)
        {
            findings.Add(new Finding("ISO 19005-2, 6.2.3", "There is no output intent with a profile."));
            return;
        }

        // ISO 15076-1, 7.2: length, class, space and mark in the head of the profile.
        var bytes = objects.Data(profile);
        var sound = bytes.Length > 132 &&
            System.Buffers.Binary.BinaryPrimitives.ReadInt32BigEndian(bytes) == bytes.Length &&
            Encoding.ASCII.GetString(bytes, 12, 12) is "mntrRGB XYZ " &&
            Encoding.ASCII.GetString(bytes, 36, 4) == "acsp" &&
            bytes[8] is 2 or 4;
        if (!sound || objects.Number(profile.StreamDictionary, "N") != 3)
            findings.Add(new Finding("ISO 19005-2, 6.2.3", "The output profile is no profile of a screen."));
    }
}
