using CsCheck;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Structure;
using UglyToad.PdfPig.Core;

namespace Pattern.Press.Typesetting.Tests.Export;

public class PdfGeometryTests
{
    private const double PointsPerMillimetre = 72 / 25.4;
    private const double Tolerance = 0.01;

    [Fact]
    public void Pages_have_the_size_of_their_paper()
    {
        using var file = Pdf.Read(Sample.Document());
        foreach (var (number, width, height) in new[] { (1, 210.0, 297.0), (2, 210.0, 297.0), (3, 297.0, 210.0) })
        {
            var box = file.GetPage(number).MediaBox.Bounds;
            Assert.Equal((0, 0), (box.Left, box.Bottom));
            Assert.Equal(width, box.Width / PointsPerMillimetre, 0.0001);
            Assert.Equal(height, box.Height / PointsPerMillimetre, 0.0001);
        }
    }

    [Fact]
    public void Lines_are_read_back_where_they_were_drawn() =>
        Gen.Select(Gen.Double[0, 800], Gen.Double[0, 800]).Array[2, 12].Sample(
            corners =>
            {
                var builder = new PathBuilder().MoveTo(corners[0].Item1, corners[0].Item2);
                foreach (var (x, y) in corners[1..])
                    builder.LineTo(x, y);
                var points = ReadPoints(new PathItem(builder.Build(), null, new Stroke(Colour.Black, 0.3)), 800, 800);
                Assert.Equal(corners.Length, points.Count);
                foreach (var ((x, y), point) in corners.Zip(points))
                {
                    Assert.Equal(x, point.X, Tolerance);
                    Assert.Equal(y, point.Y, Tolerance);
                }
            },
            iter: 20);

    [Fact]
    public void Lines_in_turned_groups_are_read_back_where_they_belong() =>
        Gen.Select(Gen.Double[-180, 180], Gen.Double[0.2, 3], Gen.Double[0, 800], Gen.Double[0, 800]).Sample(
            (degrees, scale, x, y) =>
            {
                var inner = Transform.Scale(scale).Then(Transform.Turn(degrees));
                var outer = Transform.Move(x, y);
                var line = new PathItem(PathBuilder.Line(-150, 20, 300, -80), null, new Stroke(Colour.Black, 0.3));
                var points = ReadPoints(new GroupItem(outer, null, [new GroupItem(inner, null, [line])]), 800, 800);
                foreach (var (expected, point) in line.Path.Points.Zip(points))
                {
                    var place = inner.Then(outer).Apply(expected);
                    Assert.Equal(place.X, point.X, Tolerance);
                    Assert.Equal(place.Y, point.Y, Tolerance);
                }
            },
            iter: 20);

    [Fact]
    public void Strokes_keep_their_width_dashes_and_colours()
    {
        var root = new StructureElement(Role.Document);
        using var file = Pdf.Read(Sample.OnePage(
            root,
            new PathItem(PathBuilder.Line(10, 10, 100, 10), null, new Stroke(new Colour(0x20, 0x60, 0xA0), 0.25, [3, 0.75])),
            new PathItem(PathBuilder.Circle(50, 50, 10), new Colour(255, 0, 51), new Stroke(Colour.Black, 0.5, [], LineCap.Round)),
            new PathItem(PathBuilder.Rectangle(10, 10, 5, 5), Colour.White, null)));
        var paths = file.GetPage(1).Paths;
        Assert.Equal(3, paths.Count);
        Assert.Equal(0.25 * PointsPerMillimetre, paths[0].LineWidth, 1e-4);
        Assert.Equal([3 * PointsPerMillimetre, 0.75 * PointsPerMillimetre], paths[0].LineDashPattern!.Value.Array, (a, b) => Math.Abs(a - b) < 1e-4);
        Assert.True(paths[0].IsStroked && !paths[0].IsFilled);
        var (r, g, b) = paths[0].StrokeColor!.ToRGBValues();
        Assert.Equal((0x20, 0x60, 0xA0), (Math.Round(r * 255), Math.Round(g * 255), Math.Round(b * 255)));
        Assert.True(paths[1].IsStroked && paths[1].IsFilled);
        Assert.Equal(FillingRule.EvenOdd, paths[1].FillingRule);
        (r, g, b) = paths[1].FillColor!.ToRGBValues();
        Assert.Equal((255, 0, 51), (Math.Round(r * 255), Math.Round(g * 255), Math.Round(b * 255)));
        Assert.Empty(paths[1].LineDashPattern!.Value.Array);
        Assert.True(paths[2].IsFilled && !paths[2].IsStroked);
    }

    [Fact]
    public void Pictures_stand_in_their_rectangles_and_are_stored_once()
    {
        var root = new StructureElement(Role.Document);
        var copy = Sample.Cutout with { };
        byte[] Write(params PageItem[] items) => Pdf.Write(Sample.OnePage(root, items));
        var once = Write(new ImageItem(Sample.Cutout, 20, 30, 60, 40));
        var thrice = Write(new ImageItem(Sample.Cutout, 20, 30, 60, 40), new ImageItem(Sample.Cutout, 20, 90, 30, 20), new ImageItem(copy, 20, 120, 30, 20));
        Assert.InRange(thrice.Length - once.Length, 0, 300);
        using var file = UglyToad.PdfPig.PdfDocument.Open(thrice);
        var images = file.GetPage(1).GetImages().ToList();
        Assert.Equal(3, images.Count);
        var box = images[0].BoundingBox;
        Assert.Equal(20, box.Left / PointsPerMillimetre, Tolerance);
        Assert.Equal(297 - 70, box.Bottom / PointsPerMillimetre, Tolerance);
        Assert.Equal(60, box.Width / PointsPerMillimetre, Tolerance);
        Assert.Equal(40, box.Height / PointsPerMillimetre, Tolerance);
        Assert.Equal(96, images[0].WidthInSamples);
    }

    [Fact]
    public void A_photograph_is_passed_on_as_it_is()
    {
        var root = new StructureElement(Role.Document);
        var file = Pdf.Write(Sample.OnePage(root, new ImageItem(Sample.Photograph, 20, 30, 60, 40)));
        Assert.True(file.AsSpan().IndexOf(Sample.Photograph.Bytes.Span) > 0);
    }

    private static List<PagePoint> ReadPoints(PageItem item, double width, double height)
    {
        var document = Sample.OnePage(new StructureElement(Role.Document)) with
        {
            Pages = [new Page { Width = width, Height = height, Items = [item] }],
        };
        using var file = Pdf.Read(document);
        return [.. Assert.Single(file.GetPage(1).Paths).SelectMany(path => path.Commands).Select(command => command switch
        {
            PdfSubpath.Move move => move.Location,
            PdfSubpath.Line line => line.To,
            _ => throw new InvalidOperationException("Only lines were drawn."),
        }).Select(point => new PagePoint(point.X / PointsPerMillimetre, height - (point.Y / PointsPerMillimetre)))];
    }
}
