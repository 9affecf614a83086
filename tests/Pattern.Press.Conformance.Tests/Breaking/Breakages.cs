namespace Pattern.Press.Conformance.Breaking;

/// <summary>At least one way of breaking a file for every condition of the checklist.</summary>
internal static class Breakages
{
    private const string Catalog = "<</Type /Catalog ";
    private const string Fonts = "/Resources <</Font 64 0 R ";
    private const string Photograph = "/Filter /DCTDecode";

    // The first bytes of the trailer’s identifier, behind which the trailer can be changed without moving anything.
    private const string Identifier = "/ID[<00><00>]";

    public static IReadOnlyList<Breakage> All { get; } = [.. Content(), .. Structure(), .. Document(), .. Bytes(), .. Pages(), .. Annotations(), .. Fonting()];

    private static IEnumerable<Breakage> Content() =>
    [
        new("01-003", "an artifact in a figure", file => file
            .Replace("/Figure<</MCID 22>>BDC\n", "/Figure<</MCID 22>>BDC\n/Artifact BMC\n").Replace("/I0 Do Q\n", "/I0 Do Q\nEMC\n").Build()),
        Breakage.More("01-004", "/Artifact<</Type/Layout>>BDC\n", "/Span<</MCID 77>>BDC\nEMC\n"),
        Breakage.Words("01-005", "/Artifact", "/Nothing"),
        Breakage.Words("01-005", "/H1<</MCID 0>>BDC", "/H1<<>>BDC"),
        Breakage.Without("PDF 14.6", "/I0 Do Q\nEMC\n"),
        Breakage.Words("PDF 14.6", "/I0 Do Q\nEMC\n", "/I0 Do Q\nEMC\nEMC\n"),
        Breakage.Words("PDF 14.6", "/P<</MCID 21>>BDC\nBT\n", "BT\n/P<</MCID 21>>BDC\n"),
        Breakage.Words("PDF 14.7.4a", "<</MCID 22>>", "<</MCID 21>>"),
        new("PDF 14.7.4a", "tagged content in tagged content", file => file
            .Replace("/Figure<</MCID 22>>BDC\n", "/Figure<</MCID 22>>BDC\n/Span<</MCID 77>>BDC\n").Replace("/I0 Do Q\n", "/I0 Do Q\nEMC\n").Build()),
        Breakage.Words("PDF 14.7.4b", "/K [ 22 ]", "/K [ 99 ]"),
        Breakage.Words("PDF 14.7.4b", "/K [ 22 ]", "/K [ 21 ]"),
        Breakage.Words("PDF 14.7.4c", "/Nums [ 0 ", "/Nums [ 9 "),
        Breakage.Words("PDF 14.7.4c", "/StructParents 1", "/StructParents 0"),
        Breakage.Words("PDF 14.7.4c", "/StructParent 3", "/StructParent 4"),
        Breakage.Without("PDF 14.7.4c", "/StructParents 2"),
        Breakage.Without("PDF 14.7.4c", "/ParentTreeNextKey 5"),
        Breakage.Words("Press marks", "/BBox [ 56.6929 303.3071 226.7717", "/BBox [ 56.6929 303.3071 200"),
    ];

    private static IEnumerable<Breakage> Structure() =>
    [
        Breakage.Words("02-001", "/S /LBody", "/S /Words"),
        new("02-003", "two types mapped to each other", file => file
            .Replace("/S /LBody", "/S /Words").Replace("/Type /StructTreeRoot", "/Type /StructTreeRoot /RoleMap <</Words /Lines /Lines /Words >>").Build()),
        Breakage.More("02-004", "/Type /StructTreeRoot", " /RoleMap <</Caption /P >>"),
        Breakage.Words("09-004", "/S /THead", "/S /TR"),
        Breakage.Words("09-004", "/S /TBody", "/S /Sect"),
        Breakage.Words("09-004", "/S /TH ", "/S /P "),
        Breakage.Words("09-005", "/S /LI ", "/S /P "),
        Breakage.Words("09-005", "/S /L ", "/S /Sect "),
        Breakage.Words("09-006", "/S /LI ", "/S /TOCI "),
        Breakage.Words("09-006", "/S /L ", "/S /TOC "),
        Breakage.Words("09-007", "/S /Caption", "/S /RT"),
        Breakage.Words("09-008", "/S /Caption", "/S /WT"),
        Breakage.Without("11-001", "/Lang (en-GB)"),
        Breakage.Without("11-002", "/Lang (en-GB)"),
        Breakage.Without("11-003", "/Lang (en-GB)"),
        Breakage.Without("11-004", "/Lang (en-GB)"),
        Breakage.Without("11-006", "/Lang (en-GB)"),
        Breakage.Words("A 6.7.4", "/Lang (en-GB)", "/Lang (British English)"),
        Breakage.More("A 6.7.4", "/S /Caption", " /Lang (e)"),
        Breakage.Without("13-004", "/Alt (A disc with soft edges.)"),
        Breakage.Words("14-002", "/S /H1", "/S /H2"),
        Breakage.Words("14-003", "/S /H2", "/S /H3"),
        new("14-006", "two headings without a level", file => file.Replace("/S /H1", "/S /H").Replace("/S /H2", "/S /H").Build()),
        Breakage.Words("14-007", "/S /H2", "/S /H"),
        Breakage.Without("15-003", "/Scope /Row"),
        Breakage.Words("15-005", "/S /TH ", "/S /TD "),
        Breakage.Words("UA 7.2", "/ColSpan 2", "/ColSpan 3"),
        Breakage.Words("UA 7.2", "/ColSpan 2", "/ColSpan 2 /RowSpan 2"),
        Breakage.Words("16-001", "/ListNumbering /Decimal", "/ListNumbering /None"),
        Breakage.Without("16-001", "/ListNumbering /Decimal"),
        new("17-002", "a formula without words", file => file.Replace("/S /Figure", "/S /Formula").Replace("/Alt (A disc with soft edges.)", "").Build()),
        Breakage.Without("19-003", "/ID (note0001)"),
        Breakage.Words("19-004", "/S /Caption", "/S /Note /ID (note0001)"),
        Breakage.Words("PDF 14.7.2b", "/Names [ (note0001)", "/Names [ (note0002)"),
        Breakage.Words("UA 7.3", "/O /Layout /BBox", "/O /Layout /Box"),
        Breakage.Words("UA 7.3", "/BBox [ 56.6929", "/BBox [ -6.6929"),
        Breakage.Words("UA 7.3", "/BBox [ 56.6929", "/BBox [ 556.6929"),
        Breakage.Words("PDF 14.7.2a", "/S /Caption /P 57 0 R", "/S /Caption /P 56 0 R"),
        Breakage.Words("PDF 14.7.2a", "/K [ 22 ]", "/K [ 22 58 0 R ]"),
        Breakage.Words("Press empty", "/ID (note0001) /K [ 25 ]", "/ID (note0001) /K [ ]"),
        Breakage.Words("UA 7.1b", "/StructTreeRoot 7 0 R", ""),
    ];

    private static IEnumerable<Breakage> Document() =>
    [
        Breakage.More("01-007", "/Marked true", " /Suspects true"),
        Breakage.Words("UA 7.1a", "/Marked true", "/Marked false"),
        Breakage.Words("06-001", "/Metadata 97 0 R", ""),
        Breakage.Without("06-002", "<pdfuaid:part>1</pdfuaid:part>"),
        Breakage.Words("06-003", "dc:title>", "dc:rights>"),
        Breakage.Without("07-001", "/DisplayDocTitle true"),
        Breakage.Words("07-002", "/DisplayDocTitle true", "/DisplayDocTitle false"),
        Breakage.Without("Press printing", "/PrintScaling /None"),
        Breakage.Words("Press printing", "/PickTrayByPDFSize true", "/PickTrayByPDFSize false"),
        Breakage.More("Press packed", "<</Type /Metadata", " /Filter [ ]"),
        Breakage.More("A 6.6.2a", "id=\"W5M0MpCehiHzreSzNTczkc9d\"", " encoding=\"UTF-8\""),
        Breakage.Words("A 6.6.2b", "</rdf:RDF>", "</rdf:RDX>"),
        Breakage.More("A 6.6.2c", "<dc:format>application/pdf</dc:format>", "<xmp:Mood>calm</xmp:Mood>"),
        Breakage.Words("A 6.6.2c", "<pdfaProperty:name>part", "<pdfaProperty:name>parts"),
        Breakage.Words("A 6.6.2d", "rdf:Alt>", "rdf:Bag>"),
        Breakage.Words("A 6.6.3", "/Author (Mirabel Thorn)", "/Author (Somebody)"),
        Breakage.Words("A 6.6.3", "/Subject (A lidded box of card.)", ""),
        Breakage.Words("A 6.6.3", "/Producer (Pattern Press)", "/Producer (Pattern)"),
        Breakage.Words("A 6.6.3", "/Creator (Pattern Press)", "/Creator (Pattern)"),
        Breakage.Words("A 6.6.3", "/CreationDate (D:20240309)", "/CreationDate (D:20240310)"),
        Breakage.Words("A 6.6.3", "/ModDate (D:20240309)", ""),
        Breakage.Words("A 6.6.3", "/Title <FEFF0054", "/Title <FEFF0055"),
        Breakage.Words("A 6.6.4", "<pdfaid:conformance>A<", "<pdfaid:conformance>B<"),
        Breakage.Words("A 6.6.4", "<pdfaid:part>2<", "<pdfaid:part>1<"),
        Breakage.Words("A 6.2.3", "/S /GTS_PDFA1", "/S /GTS_PDFX"),
        Breakage.Words("A 6.2.3", "mntrRGB XYZ", "mntrCMYKXYZ"),
        Breakage.Words("A 6.2.3", "/N 3 ", "/N 4 "),
        Breakage.More("A 6.1.12", Catalog, "/Perms <</Other 2 0 R >>"),
        Breakage.More("A 6.4", Catalog, "/AcroForm <</Fields [ ] >>"),
        Breakage.More("25-001", Catalog, "/AcroForm <</Fields [ ] /XFA (x) >>"),
        Breakage.More("A 6.5.2", Catalog, "/AA <<>> "),
        Breakage.More("A 6.5.1", Catalog, "/OpenAction <</S /JavaScript /JS (x) >>"),
        Breakage.Words("A 6.5.1", "/S /URI", "/S /Launch"),
        Breakage.Words("A 6.8", "/Names <</Dests", "/Names <</EmbeddedFiles <<>> /Dests"),
        Breakage.Object("21-001", "<</Type /Filespec /F (a.txt) /EF <<>> >>"),
        Breakage.More("A 6.10", Catalog, "/AlternatePresentations <<>> "),
        Breakage.More("A 6.10", "<</Type /Page ", "/PresSteps <<>> "),
        Breakage.More("A 6.11", Catalog, "/Requirements [ ] "),
        Breakage.More("20-001", Catalog, "/OCProperties <</OCGs [ ] /D <<>> >>"),
        Breakage.More("20-002", Catalog, "/OCProperties <</OCGs [ ] /D <</Name (a) >> /Configs [ <<>> ] >>"),
        Breakage.More("20-003", Catalog, "/OCProperties <</OCGs [ ] /D <</Name (a) /AS [ ] >> >>"),
        Breakage.Words("PDF 12.3.2", "/Dest <7431>", "/Dest <7432>"),
        Breakage.Words("PDF 12.3.2", "/Dest <7431>", ""),
        Breakage.Words("PDF 12.3.2", "[ 6 0 R /XYZ", "[ 7 0 R /XYZ"),
        Breakage.Words("PDF 12.3.3", "/Prev ", "/Before "),
        Breakage.Words("PDF 12.3.3", "/Count -1", "/Count -2"),
        Breakage.Words("PDF 12.3.3", "/Title (Making)", "/Title ( )"),
        Breakage.Words("PDF 12.4.2", "/PageLabels <</Nums [ 0", "/PageLabels <</Nums [ 1"),
        Breakage.Words("PDF 7.9.6", "<6D6174657269616C73>", "<216174657269616C73>"),
    ];

    private static IEnumerable<Breakage> Bytes() =>
    [
        Breakage.Bytes("A 6.1.2a", "%PDF-1.7", "%PDF-1.6"),
        Breakage.Bytes("A 6.1.2b", "\n%\u00B5\u00B6\u00B5\u00B6\n", "\n%abcd\n"),
        Breakage.Bytes("A 6.1.3a", Identifier, "/ID[<00>]    "),
        Breakage.Bytes("A 6.1.3b", Identifier, Identifier + "/Encrypt 2 0 R"),
        Breakage.Bytes("26-001", Identifier, Identifier + "/Encrypt 2 0 R"),
        new("26-002", "screen readers kept out", file => file.Add("<</Filter /Standard /P -3904 >>", out var number).Build(Identifier, $"{Identifier}/Encrypt {number} 0 R")),
        Breakage.Bytes("A 6.1.3c", "%%EOF\n", "%%EOF\nmore\n"),
        Breakage.Words("A 6.1.6", "/Dest <7431>", "/Dest <743>"),
        Breakage.Bytes("A 6.1.7a", ">>\nstream\n", ">>\nstream "),
        new("A 6.1.7b", "a stream one byte too short", file => ShortStream(file)),
        Breakage.More("A 6.1.7c", "<</Type /Metadata", " /F (elsewhere.xml)"),
        Breakage.Object("A 6.1.7d", "<</Filter /LZWDecode /Length 0 >>\nstream\n\nendstream"),
        Breakage.Bytes("A 6.1.9", "\n8 0 obj\n", "\n8 0 obj "),
        Breakage.Bytes("A 6.1.9", "\n8 0 obj\n", "\n8\t0 obj\n"),
        Breakage.Object("A 6.1.13a", $"({new string('x', 32_768)})"),
        Breakage.Object("A 6.1.13a", $"<{new string('0', 65_538)}>"),
        Breakage.Object("A 6.1.13b", $"/{new string('x', 128)}"),
        Breakage.Object("A 6.1.13c", "[ 2147483648 ]"),
    ];

    private static IEnumerable<Breakage> Pages() =>
    [
        new("A 6.1.13d", "29 states saved", file => file
            .Replace("/I0 Do Q\n", $"/I0 Do Q\n{string.Concat(Enumerable.Repeat("q ", 29))}{string.Concat(Enumerable.Repeat("Q ", 29))}\n").Build()),
        Breakage.Words("A 6.1.13e", "0 0 841.8898 595.2756", "0 0 14401 595.2756"),
        Breakage.Words("A 6.1.13e", "0 0 841.8898 595.2756", "0 0 841.8898 2"),
        Breakage.More("A 6.2.2a", "/I0 Do Q\n", "zz\n"),
        Breakage.More("A 6.2.2b", "/I0 Do Q\n", "/G9 gs\n"),
        Breakage.Words("A 6.2.4", " rg\n", " 0 k\n"),
        Breakage.Words("A 6.2.4", "/ColorSpace /DeviceRGB /Filter /DCTDecode", "/ColorSpace /DeviceCMYK /Filter /DCTDecode"),
        Breakage.More("A 6.2.5", Fonts, "/ExtGState <</G0 <</TR /Identity >> >>"),
        Breakage.More("A 6.2.5", Fonts, "/ExtGState <</G0 <</TR2 /Identity >> >>"),
        Breakage.More("A 6.2.6", Fonts, "/ExtGState <</G0 <</RI /Bright >> >>"),
        Breakage.More("A 6.2.8a", Photograph, " /Interpolate true"),
        Breakage.More("A 6.2.8b", Photograph, " /Alternates [ ]"),
        Breakage.Words("A 6.2.8c", "/BitsPerComponent 8 /ColorSpace /DeviceGray", "/BitsPerComponent 3 /ColorSpace /DeviceGray"),
        Breakage.Object("A 6.2.9", "<</Type /XObject /Subtype /PS /Length 0 >>\nstream\n\nendstream"),
        Breakage.More("A 6.2.10a", Fonts, "/ExtGState <</G0 <</BM /Glow >> >>"),
        Breakage.Without("A 6.2.10b", "/Group <</S /Transparency /CS /DeviceRGB >>"),
        Breakage.More("A 6.2.10b", Fonts, "/ExtGState <</G0 <</ca .5 >> >>"),
        Breakage.Object("30-001", "<</Type /XObject /Subtype /Form /BBox [ 0 0 1 1 ] /Ref <<>> /Length 0 >>\nstream\n\nendstream"),
        new("30-002", "tagged content shown twice", file => file
            .ReplaceObject(Photograph, "<</Type /XObject /Subtype /Form /BBox [ 0 0 1 1 ] /Resources <<>> /Length 0 >>\nstream\n/P<</MCID 0>>BDC\nEMC\nendstream")
            .Replace("/I0 Do Q\n", "/I0 Do /I0 Do Q\n").Build()),
        Breakage.Words("PDF 14.11.2", "/TrimBox", "/ArtBox"),
        Breakage.Words("PDF 14.11.2", "/TrimBox [ 0 0", "/TrimBox [ -9 0"),
    ];

    private static IEnumerable<Breakage> Annotations() =>
    [
        Kind("28-002", "Square"),
        new("28-004", "a square without words", file => file.Replace("/Subtype /Link", "/Subtype /Square").Replace("/Contents (Template 1)", "").Build()),
        Kind("28-005", "Widget"),
        Kind("28-006", "Sticker"),
        Kind("28-007", "TrapNet"),
        Kind("28-010", "Widget"),
        Kind("28-017", "PrinterMark"),
        Kind("A 6.3.1", "Movie"),
        Kind("A 6.3.3", "Square"),
        Breakage.Without("28-008", "/Tabs /S"),
        Breakage.Words("28-009", "/Tabs /S", "/Tabs /R"),
        Breakage.Words("28-011", "/S /Link", "/S /Span"),
        Breakage.Without("28-012", "/Contents (Template 1)"),
        Breakage.Words("A 6.3.2", "/F 4", "/F 6"),
        Breakage.Without("A 6.3.2", "/F 4"),
        Breakage.Words("Press links", "/Rect [ 88", "/Rect [ -88"),
    ];

    private static IEnumerable<Breakage> Fonting() =>
    [
        Breakage.Without("10-001", "<001D> <0042>\n"),
        Breakage.Words("31-004", "/CIDToGIDMap /Identity", "/CIDToGIDMap /Other"),
        Breakage.Without("31-005", "/CIDToGIDMap /Identity"),
        Breakage.Words("31-006", "/Encoding /Identity-H", "/Encoding /Identity-V"),
        Breakage.Words("31-009", "/FontFile2", "/FontFile9"),
        Breakage.Words("31-011", "[<00BC>8<", "[<FFF0>8<"),
        Breakage.Words("31-011", "[<00BC>8<", "[<00BD>8<"),
        new("31-014", "an empty list of glyphs", file => file
            .Add("<</Length 0 >>\nstream\n\0\0\nendstream", out var number).Replace("/StemV 166", $"/StemV 166 /CIDSet {number} 0 R").Build()),
        Breakage.Words("31-016", "/W [ 29 [ 647 ]", "/W [ 29 [ 650 ]"),
        Breakage.Without("31-016", "/W [ 29 [ 647 ]"),
        Breakage.Words("31-027", "/ToUnicode", "/ToNothing"),
        Breakage.Words("31-028", "<001D> <0042>", "<001D> <0000>"),
        Breakage.Words("31-029", "<001D> <0042>", "<001D> <FEFF>"),
        Breakage.Words("A 6.2.11.7", "<001D> <0042>", "<001D> <E000>"),
        Breakage.Words("31-030", "[<00BC>8<", "[<0000>8<"),
        Breakage.Words("PDF 9.6.4", "/BaseFont /XIVMES+", "/BaseFont /"),
        Breakage.Words("PDF 9.9", "/Length1 1", "/Length1 2"),
        Breakage.Words("Press fonts", "[<00BC>8<", "<00BC> Tj [<"),
    ];

    private static Breakage Kind(string condition, string kind) => Breakage.Words(condition, "/Subtype /Link", $"/Subtype /{kind}");

    /// <summary>The length of the first content, written one less with as many digits.</summary>
    private static byte[] ShortStream(PlainPdf file)
    {
        var text = System.Text.Encoding.Latin1.GetString(file.Build());
        var entry = System.Text.RegularExpressions.Regex.Match(text, @"/Length (\d+)").Groups[1].Value;
        var shorter = (int.Parse(entry, System.Globalization.CultureInfo.InvariantCulture) - 1).ToString(System.Globalization.CultureInfo.InvariantCulture);
        return file.Build($"/Length {entry}", $"/Length {shorter.PadLeft(entry.Length, '0')}");
    }
}
