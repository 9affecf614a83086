using System.Diagnostics;
using Pattern.Press.Typesetting.Export.Pdf;
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
        using var poppler = Poppler(document);
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

    private static SKBitmap Poppler(PressDocument document)
    {
        var folder = Directory.CreateTempSubdirectory("press-png");
        try
        {
            var pdf = Path.Combine(folder.FullName, "page.pdf");
            using (var file = File.Create(pdf))
                PdfExporter.Write(document, file);
            var start = new ProcessStartInfo("pdftoppm", ["-png", "-singlefile", "-scale-to-x", "1000", "-scale-to-y", "-1", pdf, Path.Combine(folder.FullName, "page")]);
            try
            {
                using var process = Process.Start(start)!;
                process.WaitForExit();
            }
            catch (System.ComponentModel.Win32Exception)
            {
                Assert.Skip("Poppler's pdftoppm is not installed.");
            }

            return SKBitmap.Decode(Path.Combine(folder.FullName, "page.png"));
        }
        finally
        {
            folder.Delete(true);
        }
    }
}
