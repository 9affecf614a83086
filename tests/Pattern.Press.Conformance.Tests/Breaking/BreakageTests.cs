using Pattern.Press.Typesetting.Tests.Export;

namespace Pattern.Press.Conformance.Breaking;

public class BreakageTests
{
    private static readonly PlainPdf _sample = new(Pdf.Write(Sample.Document()));

    [Fact]
    public void A_document_with_everything_conforms() =>
        Assert.Empty(PdfConformance.Check(Pdf.Write(Sample.Document())));

    [Fact]
    public void A_file_taken_apart_and_put_together_still_conforms() =>
        Assert.Empty(PdfConformance.Check(_sample.Copy().Build()));

    /// <summary>The checks find what they are there for: each file is broken in one way.</summary>
    [Theory]
    [InlineData("/Artifact", "/Nothing", "01-005")]
    [InlineData("/H1<</MCID 0>>BDC", "/H1<<>>BDC", "01-005")]
    [InlineData("/S /LBody", "/S /Words", "02-001")]
    [InlineData("<pdfuaid:part>1</pdfuaid:part>", "", "06-002")]
    [InlineData("dc:title>", "dc:name>", "06-003")]
    [InlineData("/DisplayDocTitle true", "", "07-001")]
    [InlineData("/DisplayDocTitle true", "/DisplayDocTitle false", "07-002")]
    [InlineData("/S /THead", "/S /TR", "09-004")]
    [InlineData("/S /LI", "/S /P", "09-005")]
    [InlineData("/Lang (en-GB)", "", "11-001")]
    [InlineData("/Alt (A disc with soft edges.)", "", "13-004")]
    [InlineData("/S /H1", "/S /H2", "14-002")]
    [InlineData("/S /H2", "/S /H3", "14-003")]
    [InlineData("/Scope /Row", "", "15-003")]
    [InlineData("/ColSpan 2", "/ColSpan 3", "UA 7.2")]
    [InlineData("/ID (note0001)", "", "19-003")]
    [InlineData("/Tabs /S", "", "28-008")]
    [InlineData("/Tabs /S", "/Tabs /R", "28-009")]
    [InlineData("/S /Link", "/S /Span", "28-011")]
    [InlineData("/Contents (Template 1)", "", "28-012")]
    [InlineData("/CIDToGIDMap /Identity", "", "31-005")]
    [InlineData("/FontFile2", "/FontFile9", "31-009")]
    [InlineData("/ToUnicode", "/ToNothing", "31-027")]
    [InlineData("<pdfaid:conformance>A</pdfaid:conformance>", "", "A 6.6.4")]
    [InlineData("/S /GTS_PDFA1", "/S /GTS_PDFX", "A 6.2.3")]
    [InlineData("/F 4", "/F 2", "A 6.3.2")]
    [InlineData("/ListNumbering /Decimal", "/ListNumbering /None", "16-001")]
    [InlineData("/Nums [ 0 ", "/Nums [ 9 ", "PDF 14.7.4c")]
    [InlineData("/Author (Mirabel Thorn)", "/Author (Somebody)", "A 6.6.3")]
    public void A_broken_file_is_found_out(string old, string with, string checkpoint)
    {
        var broken = _sample.Copy().Replace(old, with).Build();
        Assert.Contains(PdfConformance.Check(broken), finding => finding.Checkpoint == checkpoint);
    }
}
