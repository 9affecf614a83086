using UglyToad.PdfPig;

namespace Pattern.Press.Conformance;

/// <summary>
/// Reads a PDF file back and looks for everything in the <see cref="Checklist"/>: the conditions of PDF/UA-1 and PDF/A-2a
/// that a program can decide.
/// </summary>
public static class PdfConformance
{
    /// <summary>What is wrong with a file; nothing if it conforms.</summary>
    public static IReadOnlyList<Finding> Check(byte[] file)
    {
        ArgumentNullException.ThrowIfNull(file);
        var findings = new Findings();

        // Nothing else can be read in an encrypted file.
        if (!FileCheck.Run(file, findings))
            return findings.All;
        using var document = PdfDocument.Open(file);
        var objects = new PdfObjects(document);
        ObjectCheck.Run(document, objects, findings);
        DocumentCheck.Run(objects, findings);
        MetadataCheck.Run(document, objects, findings);
        NavigationCheck.Run(objects, findings);
        ResourceCheck.Run(objects, findings);
        var marks = ContentCheck.Run(objects, findings);
        var owners = StructureCheck.Run(objects, marks, findings);
        AnnotationCheck.Run(objects, owners, findings);
        FontCheck.Run(objects, findings);
        return findings.All;
    }
}
