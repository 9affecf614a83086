using UglyToad.PdfPig;

namespace Pattern.Press.Typesetting.Tests.Conformance;

/// <summary>
/// Reads a PDF file back and looks for everything that a program can decide and that can apply to files without forms,
/// scripts and media: the failure conditions of the Matterhorn Protocol 1.1 for PDF/UA-1, and the clauses of PDF/A-2a
/// (ISO 19005-2) on metadata, colour, fonts and annotations.
/// </summary>
public static class PdfConformance
{
    /// <summary>What is wrong with a file; nothing if it conforms.</summary>
    public static IReadOnlyList<Finding> Check(byte[] file)
    {
        ArgumentNullException.ThrowIfNull(file);
        using var document = PdfDocument.Open(file);
        var objects = new PdfObjects(document);
        var findings = new List<Finding>();
        DocumentCheck.Run(document, objects, findings);
        var marks = ContentCheck.Run(objects, findings);
        StructureCheck.Run(objects, marks, findings);
        FontCheck.Run(objects, findings);
        return findings;
    }
}
