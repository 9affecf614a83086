using System.IO.Compression;
using System.Runtime.CompilerServices;
using Pattern.Press.Typesetting.Pages;
using SkiaSharp;

namespace Pattern.Press.Typesetting.Export.Pdf;

/// <summary>A picture in a form that PDF takes: a JPEG file, or colours and transparency packed with Flate.</summary>
internal sealed record EncodedImage
{
    // Packing a picture takes longer than all the rest of a booklet; it is kept as long as the picture itself.
    private static readonly ConditionalWeakTable<ImageData, EncodedImage> _known = [];

    /// <summary>Pixels across, as stored.</summary>
    public required int Width { get; init; }

    /// <summary>Pixels down, as stored.</summary>
    public required int Height { get; init; }

    /// <summary>Whether the colours are a JPEG file.</summary>
    public required bool IsJpeg { get; init; }

    /// <summary>Whether there is one grey component, not three.</summary>
    public required bool IsGrey { get; init; }

    /// <summary>The colours.</summary>
    public required byte[] Colours { get; init; }

    /// <summary>How opaque the pixels are; null if all are.</summary>
    public byte[]? Alpha { get; init; }

    /// <summary>The ICC profile of the colours; null for sRGB.</summary>
    public byte[]? Profile { get; init; }

    /// <summary>Which corner the stored pixels start from, seen upright: cameras that were held turned say so.</summary>
    public SKEncodedOrigin Origin { get; init; } = SKEncodedOrigin.TopLeft;

    /// <summary>The form of a picture.</summary>
    /// <exception cref="ArgumentException">The file cannot be read as a picture.</exception>
    public static EncodedImage Of(ImageData data) => _known.GetValue(data, Encode);

    private static EncodedImage Encode(ImageData data)
    {
        using var file = SKData.CreateCopy(data.Bytes.Span);
        using var codec = SKCodec.Create(file) ?? throw new ArgumentException("A picture cannot be read.");
        if (codec.EncodedFormat == SKEncodedImageFormat.Jpeg && JpegHeader.Read(data.Bytes.Span) is { CanPassThrough: true } jpeg)
        {
            return new EncodedImage
            {
                Width = jpeg.Width,
                Height = jpeg.Height,
                IsJpeg = true,
                IsGrey = jpeg.Components == 1,
                Colours = data.Bytes.ToArray(),
                Profile = jpeg.Profile,
                Origin = codec.EncodedOrigin,
            };
        }

        return Decode(codec);
    }

    private static EncodedImage Decode(SKCodec codec)
    {
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

        return new EncodedImage
        {
            Width = info.Width,
            Height = info.Height,
            IsJpeg = false,
            IsGrey = grey,
            Colours = PdfFile.Deflate(colours),
            Alpha = alpha is null ? null : PdfFile.Deflate(alpha),
            Origin = codec.EncodedOrigin,
        };
    }
}
