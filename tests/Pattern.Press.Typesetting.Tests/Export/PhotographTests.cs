using Pattern.Press.Conformance;
using Pattern.Press.Typesetting.Export.Png;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Structure;
using SkiaSharp;
using UglyToad.PdfPig.Tokens;

namespace Pattern.Press.Typesetting.Tests.Export;

/// <summary>Photographs as cameras write them: turned, and with a colour profile.</summary>
public class PhotographTests
{
    private static readonly SKColor[] _quarters = [SKColors.Red, SKColors.Lime, SKColors.Blue, SKColors.Black];

    /// <summary>
    /// Where the quarters red (stored at the top left), green (top right), blue (bottom left) and black (bottom right) are
    /// seen, row by row, after the definition of tag 274 in Exif 2.3 (from memory).
    /// </summary>
    [Theory]
    [InlineData(1, "RGBK")]
    [InlineData(2, "GRKB")]
    [InlineData(3, "KBGR")]
    [InlineData(4, "BKRG")]
    [InlineData(5, "RBGK")]
    [InlineData(6, "BRKG")]
    [InlineData(7, "KGBR")]
    [InlineData(8, "GKRB")]
    public void A_photograph_taken_turned_stands_upright(int orientation, string seen)
    {
        var picture = new ImageData(ImageFormat.Jpeg, WithSegment(Quarters(), 0xE1, Exif(orientation)), 64, 64);
        var document = Sample.OnePage(new StructureElement(Role.Document), new ImageItem(picture, 0, 0, 210, 210));
        using var poppler = Tools.PdfToPicture(Pdf.Write(document), 1, 100);
        using var own = SKBitmap.Decode(PngExporter.Render(document.Pages[0], 100));
        Assert.Equal(seen, Seen(poppler));
        Assert.Equal(seen, Seen(own));
    }

    [Fact]
    public void A_photograph_keeps_its_colour_profile()
    {
        var picture = new ImageData(ImageFormat.Jpeg, WithSegment(Quarters(), 0xE2, [.. "ICC_PROFILE\0"u8, 1, 1, .. Profile()]), 64, 64);
        var root = new StructureElement(Role.Document);
        var figure = root.Add(Role.Figure);
        figure.AlternativeText = "Four coloured squares.";
        figure.Box = (0, 0, 50, 50);
        var file = Pdf.Write(Sample.OnePage(root, new TaggedItem(figure, [new ImageItem(picture, 0, 0, 50, 50)])));
        Assert.Empty(PdfConformance.Check(file));
        using var document = UglyToad.PdfPig.PdfDocument.Open(file);
        var space = Assert.Single(document.GetPage(1).GetImages()).ImageDictionary.Data["ColorSpace"];
        var objects = new PdfObjects(document);
        var array = (ArrayToken)objects.Resolve(space);
        Assert.Equal("ICCBased", ((NameToken)array.Data[0]).Data);
        Assert.Equal(Profile(), objects.Data((StreamToken)objects.Resolve(array.Data[1])));
    }

    [Fact]
    public void A_damaged_profile_is_left_out()
    {
        var damaged = Profile();
        damaged[0] ^= 1;
        var picture = new ImageData(ImageFormat.Jpeg, WithSegment(Quarters(), 0xE2, [.. "ICC_PROFILE\0"u8, 1, 1, .. damaged]), 64, 64);
        using var document = Pdf.Read(Sample.OnePage(new StructureElement(Role.Document), new ImageItem(picture, 0, 0, 50, 50)));
        Assert.Equal("DeviceRGB", ((NameToken)Assert.Single(document.GetPage(1).GetImages()).ImageDictionary.Data["ColorSpace"]).Data);
    }

    /// <summary>A profile of a screen: the one that every file names for its own colours.</summary>
    private static byte[] Profile()
    {
        using var document = Pdf.Read(Sample.OnePage(new StructureElement(Role.Document)));
        var objects = new PdfObjects(document);
        var intent = (DictionaryToken)objects.Resolve(objects.Array(objects.Catalog, "OutputIntents")!.Data[0]);
        return objects.Data(objects.Get<StreamToken>(intent, "DestOutputProfile")!);
    }

    private static string Seen(SKBitmap picture) => string.Concat(new[] { (25, 25), (75, 25), (25, 75), (75, 75) }.Select(at =>
    {
        var pixel = picture.GetPixel(at.Item1, at.Item2);
        return (pixel.Red > 128, pixel.Green > 128, pixel.Blue > 128) switch
        {
            (true, false, false) => 'R',
            (false, true, false) => 'G',
            (false, false, true) => 'B',
            (false, false, false) => 'K',
            _ => '?',
        };
    }));

    private static byte[] Quarters()
    {
        using var bitmap = new SKBitmap(new SKImageInfo(64, 64, SKColorType.Rgba8888, SKAlphaType.Opaque));
        for (var y = 0; y < 64; y++)
        {
            for (var x = 0; x < 64; x++)
                bitmap.SetPixel(x, y, _quarters[(y / 32 * 2) + (x / 32)]);
        }

        using var data = bitmap.Encode(SKEncodedImageFormat.Jpeg, 95);
        return data.ToArray();
    }

    private static byte[] Exif(int orientation) =>
    [
        .. "Exif\0\0MM\0*"u8, 0, 0, 0, 8, 0, 1, 0x01, 0x12, 0, 3, 0, 0, 0, 1, 0, (byte)orientation, 0, 0, 0, 0, 0, 0,
    ];

    private static byte[] WithSegment(byte[] jpeg, byte marker, byte[] content)
    {
        var length = content.Length + 2;
        return [.. jpeg[..2], 0xFF, marker, (byte)(length >> 8), (byte)length, .. content, .. jpeg[2..]];
    }
}
