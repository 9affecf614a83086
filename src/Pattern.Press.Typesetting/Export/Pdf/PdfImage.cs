namespace Pattern.Press.Typesetting.Export.Pdf;

/// <summary>A picture as a document uses it.</summary>
/// <param name="Number">Its number in the document; the picture is called I with this number.</param>
/// <param name="Id">The number of its object.</param>
/// <param name="Pixels">Its pixels.</param>
internal sealed record PdfImage(int Number, int Id, EncodedImage Pixels);
