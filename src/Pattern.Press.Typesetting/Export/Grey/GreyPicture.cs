using Pattern.Press.Typesetting.Pages;
using SkiaSharp;

namespace Pattern.Press.Typesetting.Export.Grey;

/// <summary>Turns the colours of a picture into greys of the same luminance.</summary>
internal static class GreyPicture
{
    // High enough that nobody sees a difference in print.
    private const int JpegQuality = 92;

    /// <summary>The picture in greys, upright.</summary>
    /// <exception cref="ArgumentException">The file cannot be read as a picture.</exception>
    public static ImageData Of(ImageData image)
    {
        using var file = SKData.CreateCopy(image.Bytes.Span);
        using var decoded = SKImage.FromEncodedData(file) ?? throw new ArgumentException("A picture cannot be read.");
        using var sRgb = SKColorSpace.CreateSrgb();
        using var bitmap = new SKBitmap(new SKImageInfo(decoded.Width, decoded.Height, SKColorType.Rgba8888, SKAlphaType.Unpremul, sRgb));
        if (!decoded.ReadPixels(bitmap.Info, bitmap.GetPixels(), bitmap.RowBytes, 0, 0))
            throw new ArgumentException("A picture is damaged.");
        var pixels = bitmap.GetPixelSpan();
        var greys = new byte[decoded.Width * decoded.Height];
        var opaque = true;
        for (var i = 0; i < greys.Length; i++)
        {
            var pixel = pixels.Slice(4 * i, 4);
            greys[i] = new Colour(pixel[0], pixel[1], pixel[2]).Grey.Red;
            opaque &= pixel[3] == 255;
        }

        return opaque ? Opaque(image.Format, greys, decoded.Width, decoded.Height) : Transparent(bitmap, greys);
    }

    private static ImageData Opaque(ImageFormat format, byte[] greys, int width, int height)
    {
        using var grey = new SKBitmap(new SKImageInfo(width, height, SKColorType.Gray8, SKAlphaType.Opaque));
        for (var y = 0; y < height; y++)
            greys.AsSpan(y * width, width).CopyTo(Row(grey, y));
        return Packed(grey, format, width, height);
    }

    private static ImageData Transparent(SKBitmap bitmap, byte[] greys)
    {
        for (var y = 0; y < bitmap.Height; y++)
        {
            var row = Row(bitmap, y);
            for (var x = 0; x < bitmap.Width; x++)
                row.Slice(4 * x, 3).Fill(greys[(y * bitmap.Width) + x]);
        }

        return Packed(bitmap, ImageFormat.Png, bitmap.Width, bitmap.Height);
    }

    private static unsafe Span<byte> Row(SKBitmap bitmap, int y) =>
        new((byte*)bitmap.GetPixels() + ((long)y * bitmap.RowBytes), bitmap.RowBytes);

    private static ImageData Packed(SKBitmap bitmap, ImageFormat format, int width, int height)
    {
        using var image = SKImage.FromBitmap(bitmap);
        using var packed = format == ImageFormat.Jpeg ? image.Encode(SKEncodedImageFormat.Jpeg, JpegQuality) : image.Encode(SKEncodedImageFormat.Png, 100);
        return new ImageData(format, packed.ToArray(), width, height);
    }
}
