namespace Pattern.Press.Typesetting.Pages;

/// <summary>How a picture's bytes are packed.</summary>
public enum ImageFormat
{
    /// <summary>PNG.</summary>
    Png,

    /// <summary>JPEG.</summary>
    Jpeg,
}

/// <summary>
/// A picture file, as read. Exporters turn a photograph upright if its file says that the camera was held turned; widths and
/// heights here are those of the upright picture.
/// </summary>
/// <param name="Format">How its bytes are packed.</param>
/// <param name="Bytes">The file.</param>
/// <param name="PixelWidth">Pixels across.</param>
/// <param name="PixelHeight">Pixels down.</param>
public sealed record ImageData(ImageFormat Format, ReadOnlyMemory<byte> Bytes, int PixelWidth, int PixelHeight);
