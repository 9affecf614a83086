using Pattern.Press.Booklets.Figures.Solid;
using Pattern.Press.Nets;
using Pattern.Press.Nets.Folding;
using Pattern.Press.Typesetting.Pages;

namespace Pattern.Press.Booklets.Tests.Figures.Solid;

public sealed class FinishedDrawingTests
{
    private static readonly Kit Kit = Samples.Box(62, 58, 82, 12, 22);

    [Fact]
    public void The_closed_box_measures_as_its_lid_across_and_as_its_walls_up()
    {
        var facts = new FinishedDrawing(Kit, HiddenSurfaceTests.Tin).Facts;

        // The sample's lid is 4 mm longer and wider than the floor.
        Assert.Equal((66, 62), (Math.Round(facts.Width, 6), Math.Round(facts.Depth, 6)));
        Assert.Equal(82, facts.Height, 0.11);
        Assert.Equal(["base", "platform", "lid"], facts.Pieces);
        Assert.InRange(facts.WallAngle, 20, 60);
    }

    [Fact]
    public void A_card_lies_before_its_envelope_on_the_same_table_closed_and_open()
    {
        var (kit, item) = CatalogueKits.Of("card-and-envelope");
        var thing = new FinishedThing(kit, item);
        foreach (var parts in new[] { thing.Closed, thing.Open(1) })
        {
            var (card, envelope) = (parts.Single(part => part.Part.Part == "card"), parts.Single(part => part.Part.Part == "envelope"));
            Assert.True(card.Corners.Max(corner => corner.Y) < envelope.Corners.Min(corner => corner.Y));
            Assert.Equal(envelope.Bottom, card.Bottom, 3 * FinishedThing.Hair);
        }
    }

    [Theory]
    [InlineData(FinishedShow.Closed, 160, 90)]
    [InlineData(FinishedShow.Open, 70, 200)]
    [InlineData(FinishedShow.Both, 158, 120)]
    [InlineData(FinishedShow.Both, 60, 40)]
    public void It_fits_the_room_there_is_and_fills_it_one_way(FinishedShow show, double width, double height)
    {
        var drawn = new FinishedDrawing(Kit, HiddenSurfaceTests.Tin, show, new SizeLabels("66 mm", "62 mm", "82 mm")).Draw(width, height, Samples.Styles);
        Assert.InRange(drawn.Width, 0, width + 1e-6);
        Assert.InRange(drawn.Height, 0, height + 1e-6);
        Assert.True(drawn.Width > width - 1 || drawn.Height > height - 1, $"{drawn.Width} × {drawn.Height}");
        foreach (var point in Paths(drawn.Items).SelectMany(path => path.Path.Points))
        {
            Assert.InRange(point.X, -1e-6, drawn.Width + 1e-6);
            Assert.InRange(point.Y, -1e-6, drawn.Height + 1e-6);
        }
    }

    [Fact]
    public void Lines_keep_their_weight_whatever_the_scale()
    {
        var drawing = new FinishedDrawing(Kit, HiddenSurfaceTests.Tin);
        Assert.Equal(Weights(drawing.Draw(150, 150, Samples.Styles).Items), Weights(drawing.Draw(60, 60, Samples.Styles).Items));
        Assert.Contains(Samples.Styles.Lines.CutWidth * 0.85, Weights(drawing.Draw(60, 60, Samples.Styles).Items));

        static double[] Weights(IEnumerable<PageItem> items) =>
            [.. Paths(items).Where(path => path.Fill is null).Select(path => path.Stroke!.Width).Distinct().Order()];
    }

    [Fact]
    public void It_is_drawn_the_same_every_time()
    {
        var first = Paths(new FinishedDrawing(Kit, HiddenSurfaceTests.Tin).Draw(150, 150, Samples.Styles).Items).SelectMany(path => path.Path.Points);
        var second = Paths(new FinishedDrawing(Kit, HiddenSurfaceTests.Tin).Draw(150, 150, Samples.Styles).Items).SelectMany(path => path.Path.Points);
        Assert.Equal(first, second);
    }

    [Fact]
    public void Closed_only_the_outside_is_seen_and_open_the_inside_and_the_item_too()
    {
        var thing = new FinishedThing(Kit, HiddenSurfaceTests.Tin);
        var (closed, open) = (new Scene(), new Scene());
        thing.AddClosed(closed, default);
        thing.AddOpen(open, default, 0.35);
        Assert.Equal([Surface.CardAway, Surface.Mat], Seen(closed, new Axonometry(32, 30)).Order());
        Assert.Equal([Surface.CardFacing, Surface.CardAway, Surface.Item, Surface.Mat], Seen(open, new Axonometry(30, 37)).Order());

        static IEnumerable<Surface> Seen(Scene scene, Axonometry view)
        {
            var buffer = new DepthBuffer(scene.Faces, view, 150);
            var seen = new HashSet<Surface>();
            for (var i = 1; i < 149; i++)
            {
                for (var j = 1; j < 149; j++)
                {
                    if (buffer.Shown[i, j] is { } surface && buffer.IsEven(i, j))
                        seen.Add(surface);
                }
            }

            return seen;
        }
    }

    [Fact]
    public void The_lifted_lid_is_clear_of_the_item()
    {
        var thing = new FinishedThing(Kit, HiddenSurfaceTests.Tin);
        var scene = new Scene();
        thing.AddOpen(scene, default, 0.35);
        var item = scene.Faces.Where(face => face.Front == Surface.Item).SelectMany(face => face.Corners).Max(corner => corner.Z);

        // The tin stands on a platform 12 mm high.
        Assert.Equal(72, item, 0.5);
        var lid = thing.Open(0.35).Single(part => part.Part.Part == "lid");
        Assert.True(lid.Bottom > item + 40);
    }

    [Fact]
    public void Three_sides_of_the_closed_box_differ_in_lightness_also_in_grey()
    {
        // The six largest painted areas of a closed box without mats hold its top and two sides of box and lid.
        var kit = Kit with { Parts = [.. Kit.Parts.Where(part => part.Kind == PartKind.Piece)] };
        var items = new FinishedDrawing(kit, null, FinishedShow.Closed).Draw(120, 120, Samples.Styles).Items;
        var greys = Paths(items).Where(path => path.Fill is not null).Skip(1)
            .GroupBy(path => path.Fill!.Value.Grey.Red).OrderByDescending(group => group.Sum(Area)).Take(4).Select(group => (int)group.Key).ToArray();

        // The shadow is one of the four.
        var card = greys.Where(grey => grey < 230).Order().ToArray();
        Assert.Equal(3, card.Length);
        Assert.True(card[1] - card[0] > 8 && card[2] - card[1] > 8, string.Join(' ', card));
    }

    [Fact]
    public void The_lines_stand_out_from_every_tint_they_lie_on()
    {
        // At least 3:1 for lines that carry meaning, WCAG 2.2.
        var items = new FinishedDrawing(Kit, HiddenSurfaceTests.Tin).Draw(150, 150, Samples.Styles).Items;
        var tints = Paths(items).Where(path => path.Fill is not null).Select(path => path.Fill!.Value).Distinct().ToArray();
        var inks = Paths(items).Where(path => path.Fill is null).Select(path => path.Stroke!.Colour).Distinct();
        Assert.All(inks, ink => Assert.All(tints.Where(tint => tint.Luminance > 0.35), tint => Assert.InRange(ink.ContrastWith(tint), 3, 21)));
    }

    [Fact]
    public void The_sizes_are_written_on_the_closed_box()
    {
        var drawn = new FinishedDrawing(Kit, null, FinishedShow.Closed, new SizeLabels("66 mm", "62 mm", "82 mm")).Draw(90, 90, Samples.Styles);
        var words = drawn.Items.OfType<TextItem>().Select(text => text.Run.Text).ToArray();
        Assert.Equal(["66 mm", "62 mm", "82 mm"], words);
        Assert.All(drawn.Items.OfType<TextItem>(), text => Assert.InRange(text.X + text.Run.Width, 0, drawn.Width + 1e-6));
    }

    [Fact]
    public void A_kit_without_lid_platform_or_item_is_drawn_too()
    {
        var kit = Kit with { Parts = [Kit.Parts[0]] };
        var drawing = new FinishedDrawing(kit, null);
        Assert.Equal(["base"], drawing.Facts.Pieces);
        Assert.NotEmpty(drawing.Draw(100, 100, Samples.Styles).Items);
    }

    [Theory]
    [InlineData(0, false)]
    [InlineData(0.6, false)]
    [InlineData(1, true)]
    public void Each_piece_is_drawn_folded_as_far_as_asked(double opening, bool upsideDown)
    {
        foreach (var part in Kit.Parts.Where(part => part.Kind == PartKind.Piece))
        {
            var drawing = new FoldedDrawing(part.Piece, opening, upsideDown, Booklets.Figures.MatPlacing.On(part.Piece, Kit.Parts));
            var drawn = drawing.Draw(80, 60, Samples.Styles);
            Assert.InRange(drawn.Width, 1, 80 + 1e-6);
            Assert.InRange(drawn.Height, 1, 60 + 1e-6);
            if (opening == 0)
                Assert.Equal(part.Piece.Outline.Bounds.Width, drawing.Facts.Width, 6);
        }
    }

    [Theory]
    [MemberData(nameof(CatalogueKits.Ids), MemberType = typeof(CatalogueKits))]
    public void A_folded_piece_stands_as_it_stands_in_the_finished_thing(string structure)
    {
        var (kit, item) = CatalogueKits.Of(structure);
        var thing = new FinishedThing(kit, item);
        foreach (var part in kit.Pieces.Where(part => FoldedDrawing.StandsUp(kit.Assembly.Find(part.Piece.Id))))
        {
            var facts = new FoldedDrawing(part.Piece, part: kit.Assembly.Find(part.Piece.Id)).Facts;
            var stands = thing.Closed.First(one => one.Part.Part == part.Piece.Id);
            Assert.Equal(stands.Top - stands.Bottom, facts.Height, 6);
        }

        // On its floor, its handle on top, not on the front that lies on the table while it is folded.
        if (structure == "gable-top-box")
            Assert.InRange(new FoldedDrawing(kit.Pieces.First().Piece, part: kit.Assembly.Find("box")).Facts.Height, thing.Outside.Height - 1e-6, thing.Outside.Height + 1e-6);
    }

    [Theory]
    [MemberData(nameof(CatalogueKits.Ids), MemberType = typeof(CatalogueKits))]
    public void Nothing_hangs_below_the_ground_when_it_is_opened(string structure)
    {
        var (kit, item) = CatalogueKits.Of(structure);
        var scene = new Scene();
        new FinishedThing(kit, item).AddOpen(scene, default, 0.5);
        Assert.InRange(scene.Faces.SelectMany(face => face.Corners).Min(corner => corner.Z), -1.5, 1.5);
    }

    [Fact]
    public void A_card_lies_between_the_flaps_of_its_envelope_and_comes_out_at_the_top()
    {
        var (kit, item) = CatalogueKits.Of("envelope");
        var (closed, open) = (new Scene(), new Scene());
        var thing = new FinishedThing(kit, item);
        thing.AddClosed(closed, default);
        thing.AddOpen(open, default, 0.5);
        Assert.DoesNotContain(closed.Faces, face => face.Front == Surface.Item);
        var card = open.Faces.Where(face => face.Front == Surface.Item).SelectMany(face => face.Corners).ToList();
        var paper = closed.Faces.SelectMany(face => face.Corners).ToList();
        Assert.InRange(card.Max(corner => corner.Z), paper.Min(corner => corner.Z), paper.Max(corner => corner.Z) + FinishedThing.Hair);
        Assert.True(card.Max(corner => corner.Y) > paper.Max(corner => corner.Y) + 5);
    }

    [Theory]
    [MemberData(nameof(CatalogueKits.Ids), MemberType = typeof(CatalogueKits))]
    public void Mats_lie_over_the_tabs_that_are_glued_below_them(string structure)
    {
        var (kit, _) = CatalogueKits.Of(structure);
        foreach (var part in kit.Pieces)
        {
            var scene = new Scene();
            scene.Add(FinishedThing.Standing(part.Piece, 1), Booklets.Figures.MatPlacing.On(part.Piece, kit.Parts));
            foreach (var mat in scene.Faces.Where(face => face.Front == Surface.Mat))
            {
                // Nothing that lies along the mat, level with it or less than a card's thickness before it, covers its middle.
                var middle = mat.Corners.Aggregate((a, b) => a + b) * (1.0 / mat.Corners.Count);
                Assert.DoesNotContain(scene.Faces, face => face.Front != Surface.Mat && Math.Abs(face.Normal.Dot(mat.Normal)) > 0.999
                    && mat.Normal.Dot(face.Corners[0] - middle) is > -0.02 and < 0.5 && Touches(face, mat));
            }
        }
    }

    // Whether the middle of one flat face lies within another, seen square to it.
    private static bool Touches(Face face, Face on)
    {
        var middle = face.Corners.Aggregate((a, b) => a + b) * (1.0 / face.Corners.Count);
        for (var i = 0; i < on.Corners.Count; i++)
        {
            var (a, b) = (on.Corners[i], on.Corners[(i + 1) % on.Corners.Count]);
            if ((b - a).Cross(middle - a).Dot(on.Normal) < 0)
                return false;
        }

        return true;
    }

    private static double Area(PathItem path)
    {
        var points = path.Path.Points;
        var sum = 0.0;
        for (var i = 0; i < points.Count; i++)
        {
            var (a, b) = (points[i], points[(i + 1) % points.Count]);
            sum += (a.X * b.Y) - (b.X * a.Y);
        }

        return Math.Abs(sum) / 2;
    }

    private static IEnumerable<PathItem> Paths(IEnumerable<PageItem> items)
    {
        foreach (var item in items)
        {
            if (item is PathItem path)
                yield return path;
        }
    }
}
