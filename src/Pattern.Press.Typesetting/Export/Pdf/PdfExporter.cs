using Pattern.Press.Typesetting.Pages;

namespace Pattern.Press.Typesetting.Export.Pdf;

/// <summary>Writes finished pages as a tagged PDF 1.7 file that is both PDF/UA-1 and PDF/A-2a.</summary>
public static class PdfExporter
{
    /// <summary>Writes a document. The same document gives the same bytes.</summary>
    public static void Write(PressDocument document, Stream output) => throw new NotImplementedException();
}
