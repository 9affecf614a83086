using Pattern.Press.Typesetting.Pages;
using SkiaSharp;

namespace Pattern.Press.Typesetting.Export.Png;

/// <summary>Draws a finished page as a PNG picture. Safe to use from several threads.</summary>
public static class PngExporter
{
    private const int MostPixels = 200_000_000;

    /// <summary>Draws a page on white at a width in pixels; the height follows.</summary>
    /// <param name="page">The page.</param>
    /// <param name="pixelWidth">The width of the picture in pixels, 1 or more.</param>
    /// <returns>The PNG file.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The width is below 1, or the picture would have over 200 million pixels.</exception>
    public static byte[] Render(Page page, int pixelWidth)
    {
        ArgumentNullException.ThrowIfNull(page);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(pixelWidth);
        // Rounded up, so that nothing is cut off; a row that is all but empty is not begun.
        var height = Math.Max(1, Math.Ceiling((pixelWidth * page.Height / page.Width) - 0.001));
        if (height * pixelWidth > MostPixels)
            throw new ArgumentOutOfRangeException(nameof(pixelWidth), "The picture would be too large.");
        using var colours = SKColorSpace.CreateSrgb();
        using var bitmap = new SKBitmap(new SKImageInfo(pixelWidth, (int)height, SKColorType.Rgba8888, SKAlphaType.Opaque, colours));
        using (var canvas = new SKCanvas(bitmap))
        {
            canvas.Clear(SKColors.White);
            canvas.Scale((float)(pixelWidth / page.Width));
            using var painter = new PagePainter(canvas);
            painter.Draw(page.Items);
        }

        using var data = bitmap.Encode(SKEncodedImageFormat.Png, 100);
        return data.ToArray();
    }
}
