using System.Buffers.Binary;
using System.IO.Compression;
using System.Text;
using Pattern.Press.Booklets.Markdown;
using Pattern.Press.Booklets.Tests.Content;
using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Pages;
using SkiaSharp;
using static Pattern.Press.Booklets.Tests.Markdown.Reading;

namespace Pattern.Press.Booklets.Tests.Markdown;

public sealed class PictureTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    // Pictures are made by another library than the one under test.
    private static byte[] Make(SKEncodedImageFormat format, int width, int height)
    {
        using var bitmap = new SKBitmap(width, height);
        bitmap.Erase(SKColors.SeaGreen);
        using var data = bitmap.Encode(format, 90);
        return data.ToArray();
    }

    [Theory]
    [InlineData(SKEncodedImageFormat.Png, ImageFormat.Png)]
    [InlineData(SKEncodedImageFormat.Jpeg, ImageFormat.Jpeg)]
    public void A_picture_is_read_from_the_folder(SKEncodedImageFormat made, ImageFormat format)
    {
        var bytes = Make(made, 640, 480);
        _folder.Write("pictures/my lid.img", bytes);
        var (blocks, problems) = Read("![The *lid*, {{base.sheet}}](pictures/my%20lid.img \"It's a lid\")", _folder.Path);
        Assert.Empty(problems.All);
        var image = Assert.IsType<ImageBlock>(Assert.Single(blocks));
        Assert.Equal((format, 640, 480), (image.Image.Format, image.Image.PixelWidth, image.Image.PixelHeight));
        Assert.Equal(bytes, image.Image.Bytes.ToArray());
        Assert.Equal("image(The lid, 225 × 215 mm; It’s a lid; Medium)", Shape(image));
    }

    [Theory]
    [InlineData(1800, FigureWidth.Full)]
    [InlineData(999, FigureWidth.Medium)]
    [InlineData(120, FigureWidth.Small)]
    public void A_picture_of_few_pixels_is_not_set_large(int pixels, FigureWidth width)
    {
        _folder.Write("a.png", Make(SKEncodedImageFormat.Png, pixels, 10));
        Assert.Equal(width, ((ImageBlock)Read("![A](a.png)", _folder.Path).Blocks[0]).Width);
    }

    [Fact]
    public void A_paragraph_is_parted_around_its_pictures()
    {
        _folder.Write("a.png", Make(SKEncodedImageFormat.Png, 10, 10));
        var (blocks, problems) = Read("Look\n![A](a.png)\nand *see* ![B](a.png)", _folder.Path);
        Assert.Empty(problems.All);
        Assert.Equal("p(Look) image(A; ; Small) p(and *see*) image(B; ; Small)", Shape(blocks));
        Assert.Equal(11, blocks[1].Source!.Value.Line);
    }

    [Theory]
    [InlineData("![A](gusset.png)", 1, "There is no picture gusset.png", "Paths start from")]
    [InlineData("a ![A](pictures/lod.png)", 3, "There is no picture pictures/lod.png", "“pictures/lad.png”")]
    [InlineData("![A](PICTURES/lad.png)", 1, "There is no picture PICTURES/lad.png", "Paths start from")]
    [InlineData("![A](../outside.png)", 1, "lies outside the booklet’s folder", "nothing outside it is read")]
    [InlineData("![A](pictures/../../outside.png)", 1, "lies outside the booklet’s folder", "nothing outside it is read")]
    [InlineData("![A](..%2Foutside.png)", 1, "lies outside the booklet’s folder", "nothing outside it is read")]
    [InlineData("![A](link.png)", 1, "lies outside the booklet’s folder", "nothing outside it is read")]
    [InlineData("![A](linked/outside.png)", 1, "lies outside the booklet’s folder", "nothing outside it is read")]
    [InlineData("![A](circle.png)", 1, "There is no picture circle.png", "")]
    [InlineData("![A](/etc/hostname)", 1, "from the root of the disk", "pictures/lid.png")]
    [InlineData("![A](C:/lid.png)", 1, "from the root of the disk", "pictures/lid.png")]
    [InlineData("![A](https://example.org/a.png)", 1, "nothing is fetched", "Put the picture into the folder")]
    [InlineData("![A](//example.org/a.png)", 1, "nothing is fetched", "Put the picture into the folder")]
    [InlineData("![A](pictures)", 1, "is a folder, not a picture", "Name the picture’s file.")]
    [InlineData("![A]()", 1, "The picture has no name.", "")]
    [InlineData("![A](booklet.md)", 1, "booklet.md is not a picture.", "PNG or JPEG")]
    [InlineData("![](pictures/lad.png)", 1, "no words that say what it shows", "readers who cannot see it")]
    [InlineData("# A ![A](pictures/lad.png)", 5, "A picture cannot stand here.", "paragraph of its own")]
    [InlineData("[![A](pictures/lad.png)](#lid)", 2, "A picture cannot stand here.", "paragraph of its own")]
    public void A_picture_that_cannot_be_had_is_said(string text, int column, string message, string advice)
    {
        var picture = Make(SKEncodedImageFormat.Png, 10, 10);
        _folder.Write("pictures/lad.png", picture);
        var outside = _folder.Write("../outside.png", picture);
        File.CreateSymbolicLink(Path.Combine(_folder.Path, "link.png"), outside);
        File.CreateSymbolicLink(Path.Combine(_folder.Path, "circle.png"), Path.Combine(_folder.Path, "circle.png"));
        Directory.CreateSymbolicLink(Path.Combine(_folder.Path, "linked"), Path.GetDirectoryName(outside)!);
        var problems = Read("\n" + text, _folder.Path).Problems;
        var problem = problems.All.First(p => !p.Message.StartsWith("The link has no words", StringComparison.Ordinal));
        Found.Is(problem, Structures.Reading.Severity.Error, Reading.FileName, 11, column, message, advice);
    }

    [Fact]
    public void A_link_that_stays_inside_is_followed()
    {
        var inside = _folder.Write("pictures/lid.png", Make(SKEncodedImageFormat.Png, 10, 10));
        File.CreateSymbolicLink(Path.Combine(_folder.Path, "link.png"), inside);
        Assert.Empty(Read("![A](link.png)", _folder.Path).Problems.All);
    }

    public static TheoryData<string, byte[], string> Others => new()
    {
        { "text", Encoding.UTF8.GetBytes("hello"), "is not a picture" },
        { "nothing", [], "is not a picture" },
        { "GIF", Encoding.ASCII.GetBytes("GIF89a......"), "is a GIF picture" },
        { "WebP", Make(SKEncodedImageFormat.Webp, 4, 4), "is a WebP picture" },
        { "SVG", Encoding.UTF8.GetBytes("<?xml version=\"1.0\"?><svg/>"), "is an SVG drawing" },
        { "PDF", Encoding.ASCII.GetBytes("%PDF-1.7"), "is a PDF file" },
        { "a PNG cut short", Make(SKEncodedImageFormat.Png, 40, 40)[..^12], "breaks off or is damaged" },
        { "a PNG with a wrong byte", Damaged(), "breaks off or is damaged" },
        { "a JPEG cut short", Make(SKEncodedImageFormat.Jpeg, 40, 40)[..^2], "breaks off or is damaged" },
        { "the start of a JPEG", [0xFF, 0xD8, 0xFF, 0xE0, 0x00], "breaks off or is damaged" },
        { "a JPEG in printer's colours", Jpeg(0xC0, 8, 4), "printer’s colours" },
        { "a lossless JPEG", Jpeg(0xC3, 8, 3), "rare kind" },
        { "a JPEG of twelve bits", Jpeg(0xC1, 12, 3), "more than 8 bits" },
        { "a PNG without pixels", Png(0, 4), "has no pixels" },
        { "a PNG too large", Png(20_000, 4), "20000 × 4 pixels" },
    };

    [Theory]
    [MemberData(nameof(Others))]
    public void What_is_no_picture_that_can_be_printed_is_said(string what, byte[] bytes, string problem)
    {
        Assert.Null(Picture.Read(bytes, out var found));
        Assert.True(found.Contains(problem, StringComparison.Ordinal), $"{what}: {found}");
    }

    private static byte[] Damaged()
    {
        var bytes = Make(SKEncodedImageFormat.Png, 40, 40);
        bytes[^20] ^= 1;
        return bytes;
    }

    // A frame header (ITU-T T.81, B.2.2) between the marks of start and end.
    private static byte[] Jpeg(byte marker, byte precision, byte components) =>
        [0xFF, 0xD8, 0xFF, marker, 0, (byte)(8 + (3 * components)), precision, 0, 4, 0, 4, components, .. new byte[3 * components], 0xFF, 0xD9];

    private static byte[] Png(int width, int height)
    {
        using var bytes = new MemoryStream();
        bytes.Write([0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A]);
        var header = new byte[13];
        BinaryPrimitives.WriteInt32BigEndian(header, width);
        BinaryPrimitives.WriteInt32BigEndian(header.AsSpan(4), height);
        header[8] = 8;
        Chunk("IHDR", header);
        using var packed = new MemoryStream();
        using (var zlib = new ZLibStream(packed, CompressionLevel.Fastest, leaveOpen: true))
            zlib.Write(new byte[16]);
        Chunk("IDAT", packed.ToArray());
        Chunk("IEND", []);
        return bytes.ToArray();

        void Chunk(string type, byte[] data)
        {
            var number = new byte[4];
            BinaryPrimitives.WriteInt32BigEndian(number, data.Length);
            bytes.Write(number);
            byte[] typeAndData = [.. Encoding.ASCII.GetBytes(type), .. data];
            bytes.Write(typeAndData);
            var crc = uint.MaxValue;
            foreach (var b in typeAndData)
            {
                crc ^= b;
                for (var k = 0; k < 8; k++)
                    crc = (crc & 1) != 0 ? 0xEDB88320 ^ (crc >> 1) : crc >> 1;
            }

            BinaryPrimitives.WriteUInt32BigEndian(number, ~crc);
            bytes.Write(number);
        }
    }
}
