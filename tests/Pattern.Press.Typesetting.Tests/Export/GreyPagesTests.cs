using Pattern.Press.Conformance;
using Pattern.Press.Typesetting.Export.Grey;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Structure;
using SkiaSharp;

namespace Pattern.Press.Typesetting.Tests.Export;

/// <summary>Documents without any colour.</summary>
public class GreyPagesTests
{
    private static readonly Colour Red = new(200, 30, 40);
    private static readonly Colour Blue = new(20, 60, 190);

    [Fact]
    public void Lines_areas_and_text_have_the_grey_of_their_luminance_at_every_depth()
    {
        var path = PathBuilder.Rectangle(10, 10, 30, 20);
        var inner = new GroupItem(Transform.Move(3, 4), path, [new PathItem(path, Red, new Stroke(Blue, 0.4, [2, 1])), Sample.Text(10, 40, "Cut", colour: Red)]);
        var root = new StructureElement(Role.Document);
        var grey = GreyPages.Of(Sample.OnePage(root, new ArtifactItem(ArtifactKind.Layout, [inner])));
        var group = Assert.IsType<GroupItem>(Assert.Single(Assert.IsType<ArtifactItem>(Assert.Single(grey.Pages[0].Items)).Items));
        Assert.Equal(inner.Clip, group.Clip);
        var drawn = Assert.IsType<PathItem>(group.Items[0]);
        Assert.Equal((Red.Grey, Blue.Grey), (drawn.Fill, drawn.Stroke!.Colour));
        Assert.Equal((0.4, 2), (drawn.Stroke!.Width, drawn.Stroke!.Dash.Count));
        Assert.Equal(Red.Grey, Assert.IsType<TextItem>(group.Items[1]).Colour);

        // WCAG 2.2: contrast follows from luminance, so it stays, but for the rounding to a whole number.
        Assert.Equal(Red.ContrastWith(Colour.White), Red.Grey.ContrastWith(Colour.White), 0.06);
    }

    [Fact]
    public void Pictures_have_one_component_keep_their_size_and_stay_what_they_show()
    {
        foreach (var picture in new[] { Sample.Photograph, Sample.Cutout })
        {
            var root = new StructureElement(Role.Document);
            var document = Sample.OnePage(root, new ImageItem(picture, 0, 0, 50, 50), new ImageItem(picture, 60, 0, 50, 50));
            var grey = GreyPages.Of(document);
            var images = grey.Pages[0].Items.Cast<ImageItem>().Select(item => item.Image).ToList();
            Assert.Same(images[0], images[1]);
            Assert.Equal((picture.PixelWidth, picture.PixelHeight), (images[0].PixelWidth, images[0].PixelHeight));
            using var before = SKBitmap.Decode(picture.Bytes.Span);
            using var after = SKBitmap.Decode(images[0].Bytes.Span);
            foreach (var (x, y) in new[] { (2, 2), (picture.PixelWidth / 2, picture.PixelHeight / 2), (picture.PixelWidth - 3, 4) })
            {
                var (old, now) = (before.GetPixel(x, y), after.GetPixel(x, y));
                Assert.Equal(old.Alpha, now.Alpha);
                if (old.Alpha < 255)
                    continue;
                Assert.InRange(now.Red - new Colour(old.Red, old.Green, old.Blue).Grey.Red, -6, 6);
                Assert.Equal((now.Red, now.Red), (now.Green, now.Blue));
            }

            using var read = Pdf.Read(grey);
            Assert.All(read.GetPage(1).GetImages(), image => Assert.Equal(1, image.ColorSpaceDetails!.NumberOfColorComponents));
        }
    }

    [Fact]
    public void A_sample_of_everything_keeps_to_its_standards_in_greys()
    {
        var grey = GreyPages.Of(Sample.Document());
        Assert.Empty(PdfConformance.Check(Pdf.Write(grey)));
        using var read = Pdf.Read(grey);
        foreach (var page in read.GetPages())
            Assert.DoesNotContain(page.Operations, operation => operation.Operator is "rg" or "RG" or "k" or "K" or "sc" or "SC" or "scn" or "SCN");
    }
}
