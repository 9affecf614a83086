using System.Buffers.Binary;
using Pattern.Press.Typesetting.Pages;

namespace Pattern.Press.Booklets.Markdown;

/// <summary>Checks that bytes are a whole PNG or JPEG picture that can be printed, and finds how large it is.</summary>
public static class Picture
{
    /// <summary>The most bytes a picture may have: 20 MiB.</summary>
    public const int MostBytes = 20 << 20;

    private const int MostPixels = 12_000;

    private static ReadOnlySpan<byte> PngSignature => [0x89, (byte)'P', (byte)'N', (byte)'G', 0x0D, 0x0A, 0x1A, 0x0A];

    /// <summary>Reads a picture.</summary>
    /// <param name="bytes">The whole file.</param>
    /// <param name="problem">What is wrong, as the end of a sentence about the file: <c>is a GIF picture</c>.</param>
    /// <returns>The picture, or null.</returns>
    public static ImageData? Read(byte[] bytes, out string problem)
    {
        ArgumentNullException.ThrowIfNull(bytes);
        var span = bytes.AsSpan();
        ImageData? image = null;
        if (span.StartsWith(PngSignature))
            image = ReadPng(bytes, out problem);
        else if (span is [0xFF, 0xD8, 0xFF, ..])
            image = ReadJpeg(bytes, out problem);
        else
            problem = Other(span) is { } other ? $"is {other}" : "is not a picture";
        if (image is null || (image.PixelWidth is >= 1 and <= MostPixels && image.PixelHeight is >= 1 and <= MostPixels))
            return image;
        problem = image.PixelWidth == 0 || image.PixelHeight == 0
            ? "has no pixels"
            : $"has {image.PixelWidth} × {image.PixelHeight} pixels, and more than {MostPixels} on a side cannot be printed";
        return null;
    }

    private static string? Other(ReadOnlySpan<byte> bytes)
    {
        if (bytes.StartsWith("GIF8"u8))
            return "a GIF picture";
        if (bytes.StartsWith("RIFF"u8) && bytes.Length > 12 && bytes[8..].StartsWith("WEBP"u8))
            return "a WebP picture";
        if (bytes.StartsWith("II*\0"u8) || bytes.StartsWith("MM\0*"u8))
            return "a TIFF picture";
        if (bytes.StartsWith("BM"u8))
            return "a BMP picture";
        if (bytes.StartsWith("%PDF"u8))
            return "a PDF file";
        if (bytes.Length > 12 && bytes[4..].StartsWith("ftyp"u8))
            return "a HEIC or AVIF picture, or a film";
        var start = bytes[..Math.Min(bytes.Length, 300)];
        return start.IndexOf("<svg"u8) >= 0 ? "an SVG drawing" : null;
    }

    // PNG (ISO/IEC 15948), 5.3 and 11.2: chunks of length, type, data and a checksum over type and data.
    private static ImageData? ReadPng(byte[] bytes, out string problem)
    {
        problem = "is a PNG picture that breaks off or is damaged";
        var (width, height) = (0, 0);
        var hasData = false;
        for (var at = PngSignature.Length; at + 12 <= bytes.Length;)
        {
            var length = BinaryPrimitives.ReadUInt32BigEndian(bytes.AsSpan(at));
            if (length > bytes.Length - at - 12)
                return null;
            var typeAndData = bytes.AsSpan(at + 4, (int)length + 4);
            if (Checksum(typeAndData) != BinaryPrimitives.ReadUInt32BigEndian(bytes.AsSpan(at + 8 + (int)length)))
                return null;
            var type = typeAndData[..4];
            var data = typeAndData[4..];
            if (width == 0 && height == 0)
            {
                if (!type.SequenceEqual("IHDR"u8) || data.Length != 13)
                    return null;
                width = (int)Math.Min(BinaryPrimitives.ReadUInt32BigEndian(data), int.MaxValue);
                height = (int)Math.Min(BinaryPrimitives.ReadUInt32BigEndian(data[4..]), int.MaxValue);
                if (width == 0 || height == 0)
                    return new ImageData(ImageFormat.Png, bytes, width, height);
            }

            hasData |= type.SequenceEqual("IDAT"u8);
            if (type.SequenceEqual("IEND"u8))
            {
                if (!hasData)
                    return null;
                problem = "";
                return new ImageData(ImageFormat.Png, bytes, width, height);
            }

            at += (int)length + 12;
        }

        return null;
    }

    // The CRC-32 of ISO 3309, as PNG uses it.
    private static uint Checksum(ReadOnlySpan<byte> bytes)
    {
        var crc = uint.MaxValue;
        foreach (var b in bytes)
            crc = CrcTable[(byte)(crc ^ b)] ^ (crc >> 8);
        return ~crc;
    }

    private static readonly uint[] CrcTable = [.. Enumerable.Range(0, 256).Select(n =>
    {
        var c = (uint)n;
        for (var k = 0; k < 8; k++)
            c = (c & 1) != 0 ? 0xEDB88320 ^ (c >> 1) : c >> 1;
        return c;
    })];

    // JPEG (ITU-T T.81), annex B: markers with segments, the frame header SOFn among them, before the entropy-coded data.
    private static ImageData? ReadJpeg(byte[] bytes, out string problem)
    {
        problem = "is a JPEG picture that breaks off or is damaged";
        if (bytes.AsSpan().LastIndexOf([(byte)0xFF, (byte)0xD9]) < 0)
            return null;
        for (var at = 2; at + 4 <= bytes.Length;)
        {
            if (bytes[at] != 0xFF)
                return null;
            var marker = bytes[at + 1];
            if (marker == 0xFF)
            {
                at++;
                continue;
            }

            var length = BinaryPrimitives.ReadUInt16BigEndian(bytes.AsSpan(at + 2));
            if (length < 2 || at + 2 + length > bytes.Length || marker is 0xD9 or 0xDA)
                return null;
            if (marker is >= 0xC0 and <= 0xCF and not (0xC4 or 0xC8 or 0xCC))
            {
                if (length < 8)
                    return null;
                var (precision, components) = (bytes[at + 4], bytes[at + 9]);
                problem = (marker, precision, components) switch
                {
                    ( > 0xC2, _, _) => "is a JPEG picture of a rare kind that few programs read",
                    (_, not 8, _) => "is a JPEG picture with more than 8 bits for each colour",
                    (_, _, 1 or 3) => "",
                    _ => "is a JPEG picture in printer’s colours (CMYK)",
                };
                return problem.Length > 0 ? null : new ImageData(
                    ImageFormat.Jpeg,
                    bytes,
                    BinaryPrimitives.ReadUInt16BigEndian(bytes.AsSpan(at + 7)),
                    BinaryPrimitives.ReadUInt16BigEndian(bytes.AsSpan(at + 5)));
            }

            at += 2 + length;
        }

        return null;
    }
}
