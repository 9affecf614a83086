using Pattern.Press.Typesetting.Export.Pdf;
using Pattern.Press.Typesetting.Pages;
using UglyToad.PdfPig;

namespace Pattern.Press.Typesetting.Tests.Export;

/// <summary>Writes documents and reads them back.</summary>
internal static class Pdf
{
    public static byte[] Write(PressDocument document)
    {
        using var file = new MemoryStream();
        PdfExporter.Write(document, file);
        return file.ToArray();
    }

    public static PdfDocument Read(PressDocument document) => PdfDocument.Open(Write(document));
}
