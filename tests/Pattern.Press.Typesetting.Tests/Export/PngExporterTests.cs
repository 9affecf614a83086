using Pattern.Press.Typesetting.Export.Png;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Structure;
using SkiaSharp;

namespace Pattern.Press.Typesetting.Tests.Export;

public class PngExporterTests
{
    private const int Width = 1000;

    [Fact]
    public void Text_stands_within_half_a_pixel_of_where_Poppler_draws_it()
    {
        var root = new StructureElement(Role.Document);
        var texts = Enumerable.Range(0, 40)
            .Select(i => Sample.Text(15 + (1.37 * i), 14 + (6.87 * i), "nonmuxunum", 9 + (i % 5)))
            .ToList();
        var document = Sample.OnePage(root, new TaggedItem(root.Add(Role.P), texts));
        using var poppler = Tools.PdfToPicture(Pdf.Write(document), 1, Width);
        using var own = SKBitmap.Decode(PngExporter.Render(document.Pages[0], Width));
        Assert.Equal((poppler.Width, poppler.Height), (own.Width, own.Height));
        var scale = Width / document.Pages[0].Width;
        foreach (var text in texts)
        {
            var area = new SKRectI((int)((text.X - 1) * scale), (int)((text.Y - 4) * scale), (int)((text.X + text.Run.Width + 1) * scale), (int)((text.Y + 1.5) * scale));
            var (a, b) = (Centre(poppler, area), Centre(own, area));
            Assert.InRange(b.X - a.X, -0.5, 0.5);
            Assert.InRange(b.Y - a.Y, -0.5, 0.5);
        }
    }

    /// <summary>
    /// The mean difference of two ways to draw: edges are smoothed differently, but nothing is missing, moved or of another
    /// colour. A page without its text or lines differs by several times as much.
    /// </summary>
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Pages_look_as_Poppler_draws_them(int page)
    {
        var document = Sample.Document();
        using var poppler = Tools.PdfToPicture(Pdf.Write(document), page, Width);
        using var own = SKBitmap.Decode(PngExporter.Render(document.Pages[page - 1], Width));
        Assert.Equal((poppler.Width, poppler.Height), (own.Width, own.Height));
        var (difference, large, count) = (0.0, 0, poppler.Width * poppler.Height);
        foreach (var (a, b) in poppler.Pixels.Zip(own.Pixels))
        {
            var delta = Math.Max(Math.Abs(a.Red - b.Red), Math.Max(Math.Abs(a.Green - b.Green), Math.Abs(a.Blue - b.Blue)));
            difference += delta;
            large += delta > 160 ? 1 : 0;
        }

        Assert.InRange(difference / count, 0, 0.8);
        Assert.InRange(large, 0, 600);
    }

    [Fact]
    public void The_height_follows_from_the_width_and_the_ground_is_white()
    {
        var page = new Page { Width = 297, Height = 210, Items = [new PathItem(PathBuilder.Rectangle(0, 0, 148.5, 105), new Colour(200, 30, 40), null)] };
        using var picture = SKBitmap.Decode(PngExporter.Render(page, 594));
        Assert.Equal((594, 420), (picture.Width, picture.Height));
        Assert.Equal(new SKColor(200, 30, 40), picture.GetPixel(296, 209));
        Assert.Equal(SKColors.White, picture.GetPixel(297, 209));
        Assert.Equal(SKColors.White, picture.GetPixel(296, 210));
    }

    private static (double X, double Y) Centre(SKBitmap picture, SKRectI area)
    {
        var (ink, x, y) = (0.0, 0.0, 0.0);
        for (var j = area.Top; j < area.Bottom; j++)
        {
            for (var i = area.Left; i < area.Right; i++)
            {
                var dark = 255.0 - picture.GetPixel(i, j).Green;
                ink += dark;
                x += dark * i;
                y += dark * j;
            }
        }

        Assert.True(ink > 0);
        return (x / ink, y / ink);
    }
}
