using System.Security.Cryptography;
using Pattern.Press.Typesetting.Pages;

namespace Pattern.Press.Typesetting.Export.Pdf;

/// <summary>The pictures that a document uses, each written once, in the order of their first use.</summary>
internal sealed class PdfImages(PdfFile file)
{
    private readonly Dictionary<ImageData, PdfImage> _byData = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<string, PdfImage> _byContent = new(StringComparer.Ordinal);
    private readonly List<PdfImage> _order = [];

    public PdfImage Use(ImageData data)
    {
        if (_byData.TryGetValue(data, out var image))
            return image;
        var content = Convert.ToHexString(SHA256.HashData(data.Bytes.Span));
        if (!_byContent.TryGetValue(content, out image))
        {
            image = new PdfImage(_order.Count, file.Reserve(), EncodedImage.Of(data));
            _byContent.Add(content, image);
            _order.Add(image);
        }

        _byData.Add(data, image);
        return image;
    }

    public void Write()
    {
        foreach (var image in _order)
        {
            var pixels = image.Pixels;
            using var entries = new PdfBuffer();
            if (pixels.Alpha is { } alpha)
            {
                var mask = file.Reserve();
                WriteEntries(entries, pixels, "DeviceGray", false);
                file.Stream(mask, entries.Span, alpha, null);
                entries.Clear();
                entries.Raw("/SMask "u8).Ref(mask);
            }

            WriteEntries(entries, pixels, pixels.IsGrey ? "DeviceGray" : "DeviceRGB", pixels.IsJpeg);
            file.Stream(image.Id, entries.Span, pixels.Colours, null);
        }
    }

    private static void WriteEntries(PdfBuffer to, EncodedImage pixels, string space, bool jpeg) => to
        .Raw("/Type/XObject/Subtype/Image/Width "u8).Int(pixels.Width).Raw("/Height "u8).Int(pixels.Height)
        .Raw("/ColorSpace"u8).Name(space).Raw("/BitsPerComponent 8/Filter"u8).Raw(jpeg ? "/DCTDecode"u8 : "/FlateDecode"u8);
}
