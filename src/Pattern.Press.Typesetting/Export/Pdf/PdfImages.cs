using System.Security.Cryptography;
using Pattern.Press.Typesetting.Pages;

namespace Pattern.Press.Typesetting.Export.Pdf;

/// <summary>The pictures that a document uses, each written once, in the order of their first use.</summary>
internal sealed class PdfImages(PdfFile file)
{
    private readonly Dictionary<ImageData, PdfImage> _byData = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<string, PdfImage> _byContent = new(StringComparer.Ordinal);
    private readonly Dictionary<string, int> _profiles = new(StringComparer.Ordinal);
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
            var profile = pixels.Profile is { } bytes ? WriteProfile(bytes, pixels.IsGrey) : 0;
            using var entries = new PdfBuffer();
            if (pixels.Alpha is { } alpha)
            {
                var mask = file.Reserve();
                WriteEntries(entries, pixels);
                entries.Raw("/ColorSpace/DeviceGray/Filter/FlateDecode"u8);
                file.Stream(mask, entries.Span, alpha, isToBePacked: false);
                entries.Clear();
                entries.Raw("/SMask "u8).Ref(mask);
            }

            WriteEntries(entries, pixels);
            entries.Raw("/ColorSpace"u8);
            if (profile > 0)
                entries.Raw("[/ICCBased "u8).Ref(profile).Byte((byte)']');
            else
                entries.Raw(pixels.IsGrey ? "/DeviceGray"u8 : "/DeviceRGB"u8);
            entries.Raw(pixels.IsJpeg ? "/Filter/DCTDecode"u8 : "/Filter/FlateDecode"u8);
            file.Stream(image.Id, entries.Span, pixels.Colours, isToBePacked: false);
        }
    }

    private static void WriteEntries(PdfBuffer to, EncodedImage pixels) => to
        .Raw("/Type/XObject/Subtype/Image/Width "u8).Int(pixels.Width).Raw("/Height "u8).Int(pixels.Height).Raw("/BitsPerComponent 8"u8);

    /// <summary>Writes a profile, once for all pictures that have it.</summary>
    private int WriteProfile(byte[] profile, bool grey)
    {
        var content = Convert.ToHexString(SHA256.HashData(profile));
        if (!_profiles.TryGetValue(content, out var id))
        {
            id = file.Reserve();
            _profiles.Add(content, id);
            file.Stream(id, grey ? "/N 1/Alternate/DeviceGray"u8 : "/N 3/Alternate/DeviceRGB"u8, profile);
        }

        return id;
    }
}
