using System.IO.Compression;
using System.Runtime.CompilerServices;
using Pattern.Press.Typesetting.Pages;
using SkiaSharp;

namespace Pattern.Press.Typesetting.Export.Pdf;

/// <summary>
/// A picture in a form that PDF takes: a JPEG file as it is, or colours and transparency packed with Flate.
/// </summary>
internal sealed record EncodedImage(int Width, int Height, bool IsJpeg, bool IsGrey, byte[] Colours, byte[]? Alpha)
{
    // Packing a picture takes longer than all the rest of a booklet; it is kept as long as the picture itself.
    private static readonly ConditionalWeakTable<ImageData, EncodedImage> _known = [];

    /// <summary>The form of a picture.</summary>
    /// <exception cref="ArgumentException">The file cannot be read as a picture.</exception>
    public static EncodedImage Of(ImageData data) => _known.GetValue(data, Encode);

    private static EncodedImage Encode(ImageData data)
    {
        if (data.Format == ImageFormat.Jpeg && JpegHeader.Read(data.Bytes.Span) is { } jpeg && jpeg.CanPassThrough)
            return new EncodedImage(jpeg.Width, jpeg.Height, true, jpeg.Components == 1, data.Bytes.ToArray(), null);
        return Decode(data);
    }

    private static EncodedImage Decode(ImageData data)
    {
        using var file = SKData.CreateCopy(data.Bytes.Span);
        using var codec = SKCodec.Create(file) ?? throw new ArgumentException("A picture cannot be read.");
        using var sRgb = SKColorSpace.CreateSrgb();
        var info = new SKImageInfo(codec.Info.Width, codec.Info.Height, SKColorType.Rgba8888, SKAlphaType.Unpremul, sRgb);
        using var bitmap = new SKBitmap(info);
        if (codec.GetPixels(info, bitmap.GetPixels()) != SKCodecResult.Success)
            throw new ArgumentException("A picture is damaged.");
        var pixels = bitmap.GetPixelSpan();
        var (grey, opaque) = (true, true);
        for (var i = 0; i < pixels.Length; i += 4)
        {
            grey &= pixels[i] == pixels[i + 1] && pixels[i] == pixels[i + 2];
            opaque &= pixels[i + 3] == 255;
        }

        var count = info.Width * info.Height;
        var colours = new byte[count * (grey ? 1 : 3)];
        var alpha = opaque ? null : new byte[count];
        var to = 0;
        for (var i = 0; i < count; i++)
        {
            var pixel = pixels.Slice(4 * i, 4);
            colours[to++] = pixel[0];
            if (!grey)
            {
                colours[to++] = pixel[1];
                colours[to++] = pixel[2];
            }

            if (alpha is not null)
                alpha[i] = pixel[3];
        }

        return new EncodedImage(
            info.Width,
            info.Height,
            false,
            grey,
            PdfFile.Deflate(colours, CompressionLevel.Optimal),
            alpha is null ? null : PdfFile.Deflate(alpha, CompressionLevel.Optimal));
    }
}
