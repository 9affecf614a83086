using System.Text;
using System.Xml;
using System.Xml.Linq;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Tokens;

namespace Pattern.Press.Conformance;

/// <summary>Checks what the file says about itself in XMP and in the document information (ISO 19005-2, 6.6).</summary>
internal static class MetadataCheck
{
    private static readonly XNamespace _rdf = "http://www.w3.org/1999/02/22-rdf-syntax-ns#";
    private static readonly XNamespace _dc = "http://purl.org/dc/elements/1.1/";
    private static readonly XNamespace _xmp = "http://ns.adobe.com/xap/1.0/";
    private static readonly XNamespace _pdf = "http://ns.adobe.com/pdf/1.3/";
    private static readonly XNamespace _pdfUa = "http://www.aiim.org/pdfua/ns/id/";
    private static readonly XNamespace _pdfA = "http://www.aiim.org/pdfa/ns/id/";
    private static readonly XNamespace _extension = "http://www.aiim.org/pdfa/ns/extension/";
    private static readonly XNamespace _schema = "http://www.aiim.org/pdfa/ns/schema#";
    private static readonly XNamespace _property = "http://www.aiim.org/pdfa/ns/property#";

    // The properties of XMP that our files may use, with the kind of list they are (ISO 16684-1, 8); null for plain text.
    private static readonly Dictionary<XName, string?> _standard = new()
    {
        [_dc + "title"] = "Alt",
        [_dc + "description"] = "Alt",
        [_dc + "creator"] = "Seq",
        [_dc + "language"] = "Bag",
        [_dc + "format"] = null,
        [_xmp + "CreateDate"] = null,
        [_xmp + "ModifyDate"] = null,
        [_xmp + "MetadataDate"] = null,
        [_xmp + "CreatorTool"] = null,
        [_pdf + "Producer"] = null,
        [_pdf + "Keywords"] = null,
        [_pdfA + "part"] = null,
        [_pdfA + "conformance"] = null,
        [_extension + "schemas"] = "Bag",
    };

    public static void Run(PdfDocument document, PdfObjects objects, Findings findings)
    {
        if (objects.Get<StreamToken>(objects.Catalog, "Metadata") is not { } stream)
        {
            findings.Report("06-001", "There is no XMP metadata.");
            return;
        }

        if (stream.StreamDictionary.ContainsKey(NameToken.Create("Filter")))
            findings.Report("Press packed", "The metadata are packed.");
        XDocument xmp;
        try
        {
            xmp = XDocument.Parse(Encoding.UTF8.GetString(objects.Data(stream)));
        }
        catch (XmlException problem)
        {
            findings.Report("A 6.6.2b", $"The metadata are no XML: {problem.Message}");
            return;
        }

        if (xmp.Nodes().OfType<XProcessingInstruction>().FirstOrDefault(head => head.Target == "xpacket")?.Data is not { } packet ||
            packet.Contains("bytes=", StringComparison.Ordinal) || packet.Contains("encoding=", StringComparison.Ordinal))
            findings.Report("A 6.6.2a", "The head of the metadata says how they are stored.");
        if (Value(xmp, _pdfUa + "part") != "1")
            findings.Report("06-002", "The metadata do not name PDF/UA-1.");
        if (string.IsNullOrWhiteSpace(Value(xmp, _dc + "title")))
            findings.Report("06-003", "The metadata have no title.");
        if (Value(xmp, _pdfA + "part") != "2" || Value(xmp, _pdfA + "conformance") != "A")
            findings.Report("A 6.6.4", "The metadata do not name PDF/A-2a.");
        CheckProperties(xmp, findings);
        CheckInformation(document, xmp, findings);
    }

    private static string? Value(XDocument xmp, XName name) => xmp.Descendants(name).FirstOrDefault()?.Value.Trim();

    private static void CheckProperties(XDocument xmp, Findings findings)
    {
        var described = xmp.Descendants(_schema + "namespaceURI")
            .SelectMany(uri => uri.Parent!.Descendants(_property + "name").Select(name => XNamespace.Get(uri.Value) + name.Value))
            .ToHashSet();
        foreach (var property in xmp.Descendants(_rdf + "Description").SelectMany(description => description.Elements()))
        {
            if (described.Contains(property.Name))
                continue;
            if (!_standard.TryGetValue(property.Name, out var kind))
                findings.Report("A 6.6.2c", $"The property {property.Name} is neither standard nor described.");
            else if (kind is null ? property.HasElements : property.Elements().SingleOrDefault()?.Name != _rdf + kind)
                findings.Report("A 6.6.2d", $"The property {property.Name} is not {kind ?? "plain text"}.");
        }
    }

    /// <summary>ISO 19005-2, 6.6.3: what stands in both places is the same.</summary>
    private static void CheckInformation(PdfDocument document, XDocument xmp, Findings findings)
    {
        var information = document.Information;
        Agree("title", Value(xmp, _dc + "title"), information.Title);
        Agree("author", Value(xmp, _dc + "creator"), information.Author);
        Agree("subject", Value(xmp, _dc + "description"), information.Subject);
        Agree("maker", Value(xmp, _xmp + "CreatorTool"), information.Creator);
        Agree("writer", Value(xmp, _pdf + "Producer"), information.Producer);
        Agree("date", Day(Value(xmp, _xmp + "CreateDate")), Day(information.CreationDate));
        Agree("date of change", Day(Value(xmp, _xmp + "ModifyDate")), Day(information.ModifiedDate));

        void Agree(string what, string? inXmp, string? inInformation)
        {
            if ((inXmp ?? "") != (inInformation ?? ""))
                findings.Report("A 6.6.3", $"The {what} is “{inXmp}” in one place and “{inInformation}” in another.");
        }
    }

    /// <summary>A date of either kind as its digits: <c>2024-03-09</c> and <c>D:20240309</c> are the same day.</summary>
    private static string? Day(string? date) => date is null ? null : string.Concat(date.Where(char.IsAsciiDigit));
}
