using System.Globalization;
using System.Text;
using Pattern.Press.Typesetting.Pages;

namespace Pattern.Press.Typesetting.Export.Pdf;

/// <summary>
/// What the file says about itself in XMP (ISO 16684-1): title, author, and that it follows PDF/A-2a (ISO 19005-2, 6.6.4)
/// and PDF/UA-1 (ISO 14289-1, 5), whose property PDF/A wants described because it does not know it (6.6.2.3).
/// </summary>
internal static class XmpPacket
{
    public static byte[] Write(PressDocument document)
    {
        var xml = new StringBuilder(4096);
        xml.Append("<?xpacket begin=\"\uFEFF\" id=\"W5M0MpCehiHzreSzNTczkc9d\"?>\n")
            .Append("<x:xmpmeta xmlns:x=\"adobe:ns:meta/\">\n")
            .Append("<rdf:RDF xmlns:rdf=\"http://www.w3.org/1999/02/22-rdf-syntax-ns#\">\n")
            .Append("<rdf:Description rdf:about=\"\" xmlns:dc=\"http://purl.org/dc/elements/1.1/\" xmlns:xmp=\"http://ns.adobe.com/xap/1.0/\" xmlns:pdf=\"http://ns.adobe.com/pdf/1.3/\" xmlns:pdfaid=\"http://www.aiim.org/pdfa/ns/id/\" xmlns:pdfuaid=\"http://www.aiim.org/pdfua/ns/id/\">\n")
            .Append("<pdfaid:part>2</pdfaid:part>\n<pdfaid:conformance>A</pdfaid:conformance>\n<pdfuaid:part>1</pdfuaid:part>\n")
            .Append("<dc:format>application/pdf</dc:format>\n")
            .Append("<dc:title><rdf:Alt><rdf:li xml:lang=\"x-default\">").Append(Escape(document.Title)).Append("</rdf:li></rdf:Alt></dc:title>\n");
        if (document.Author.Length > 0)
            xml.Append("<dc:creator><rdf:Seq><rdf:li>").Append(Escape(document.Author)).Append("</rdf:li></rdf:Seq></dc:creator>\n");
        if (document.Subject.Length > 0)
            xml.Append("<dc:description><rdf:Alt><rdf:li xml:lang=\"x-default\">").Append(Escape(document.Subject)).Append("</rdf:li></rdf:Alt></dc:description>\n");
        xml.Append("<dc:language><rdf:Bag><rdf:li>").Append(Escape(document.Language)).Append("</rdf:li></rdf:Bag></dc:language>\n");
        if (document.Date is { } date)
        {
            var day = date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
            xml.Append("<xmp:CreateDate>").Append(day).Append("</xmp:CreateDate>\n<xmp:ModifyDate>").Append(day).Append("</xmp:ModifyDate>\n");
        }

        xml.Append("<xmp:CreatorTool>").Append(PdfExporter.Producer).Append("</xmp:CreatorTool>\n")
            .Append("<pdf:Producer>").Append(PdfExporter.Producer).Append("</pdf:Producer>\n")
            .Append("</rdf:Description>\n")
            .Append(Extension)
            .Append("</rdf:RDF>\n</x:xmpmeta>\n<?xpacket end=\"w\"?>");
        return Encoding.UTF8.GetBytes(xml.ToString());
    }

    private const string Extension = """
        <rdf:Description rdf:about="" xmlns:pdfaExtension="http://www.aiim.org/pdfa/ns/extension/" xmlns:pdfaSchema="http://www.aiim.org/pdfa/ns/schema#" xmlns:pdfaProperty="http://www.aiim.org/pdfa/ns/property#">
        <pdfaExtension:schemas><rdf:Bag><rdf:li rdf:parseType="Resource">
        <pdfaSchema:schema>PDF/UA identification schema</pdfaSchema:schema>
        <pdfaSchema:namespaceURI>http://www.aiim.org/pdfua/ns/id/</pdfaSchema:namespaceURI>
        <pdfaSchema:prefix>pdfuaid</pdfaSchema:prefix>
        <pdfaSchema:property><rdf:Seq><rdf:li rdf:parseType="Resource">
        <pdfaProperty:name>part</pdfaProperty:name>
        <pdfaProperty:valueType>Integer</pdfaProperty:valueType>
        <pdfaProperty:category>internal</pdfaProperty:category>
        <pdfaProperty:description>The part of ISO 14289 that the file follows</pdfaProperty:description>
        </rdf:li></rdf:Seq></pdfaSchema:property>
        </rdf:li></rdf:Bag></pdfaExtension:schemas>
        </rdf:Description>

        """;

    private static string Escape(string text)
    {
        var escaped = new StringBuilder(text.Length + 16);
        foreach (var c in text)
        {
            _ = c switch
            {
                '&' => escaped.Append("&amp;"),
                '<' => escaped.Append("&lt;"),
                '>' => escaped.Append("&gt;"),

                // XML has no way to write control characters.
                < ' ' => escaped.Append(' '),
                _ => escaped.Append(c),
            };
        }

        return escaped.ToString();
    }
}
