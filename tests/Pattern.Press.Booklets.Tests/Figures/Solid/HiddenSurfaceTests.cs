using CsCheck;
using Pattern.Press.Booklets.Figures.Solid;
using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Nets.Folding;
using Pattern.Press.Structures.Fitting;

namespace Pattern.Press.Booklets.Tests.Figures.Solid;

public sealed class HiddenSurfaceTests
{
    internal static readonly Item Tin = new("tin", ItemShape.Round, Length.FromMillimetres(52), Length.FromMillimetres(52), Length.FromMillimetres(60));
    internal static readonly Item Soap = new("soap", ItemShape.Rectangular, Length.FromMillimetres(40), Length.FromMillimetres(30), Length.FromMillimetres(50));

    public static TheoryData<double, double, double, bool> Views => new()
    {
        { 30, 37, 0.35, true },
        { 45, 35.26, 0.35, false },
        { 32, 30, 1, true },
        { 20.7, 19.5, 0.7, true },
        { 75, 60, 0.5, false },
        { -50, 25, 0.1, true },
    };

    [Theory]
    [MemberData(nameof(Views))]
    public void The_painted_box_is_what_a_depth_buffer_shows(double azimuth, double elevation, double opening, bool round)
    {
        var thing = new FinishedThing(Samples.Box(62, 58, 82, 12, 22), round ? Tin : Soap);
        var scene = new Scene();
        thing.AddOpen(scene, default, opening);
        thing.AddClosed(scene, new Vector3d(-90, 80, 0));
        Compare(scene.Faces, new Axonometry(azimuth, elevation), 160);
    }

    public static TheoryData<string> Structures => CatalogueKits.Ids;

    [Theory]
    [MemberData(nameof(Structures))]
    public void Every_structure_is_painted_as_a_depth_buffer_shows_it_closed_open_and_apart(string id)
    {
        var (kit, item) = CatalogueKits.Of(id);
        var thing = new FinishedThing(kit, item);
        foreach (var (azimuth, elevation) in new[] { (24.0, 38.0), (32.0, 30.0), (-61.0, 22.0) })
        {
            var view = new Axonometry(azimuth, elevation);
            foreach (var add in new Action<Scene>[] { scene => thing.AddClosed(scene, default), scene => thing.AddOpen(scene, default, 0.31), scene => thing.AddApart(scene, view.Viewer) })
            {
                var scene = new Scene();
                add(scene);
                Compare(scene.Faces, view, 70);
            }
        }
    }

    [Theory]
    [InlineData("apart")]
    [InlineData("lid")]
    [InlineData("platform")]
    [InlineData(Assembly.Item)]
    public void Parts_on_their_way_are_painted_as_a_depth_buffer_shows_them(string part)
    {
        var thing = new FinishedThing(Samples.Box(62, 58, 82, 12, 22), Tin);
        var (scene, view) = (new Scene(), new Axonometry(32, 30));
        if (part == "apart")
            thing.AddApart(scene, view.Viewer);
        else
            Assert.True(thing.AddInserting(scene, part, 0.31, view.Viewer));
        Compare(scene.Faces, view, 160);
    }

    [Fact]
    public void Panels_that_reach_through_each_other_are_split_so_that_every_part_is_right() =>
        Gen.Select(Gen.Double[-50, 50].Array[9].Array[3, 14], Gen.Double[-180, 180], Gen.Double[5, 85]).Sample((triangles, azimuth, elevation) =>
        {
            // Seen almost from its edge, a surface has no depth that could be compared.
            var view = new Axonometry(azimuth, elevation);
            var faces = triangles.Select((t, i) => Triangle(t, i)).OfType<Face>().Where(face => Math.Abs(face.Normal.Dot(view.Viewer)) > 0.02).ToArray();
            if (faces.Length > 1)
                Compare(faces, view, 60);
        }, iter: 60);

    [Fact]
    public void Splitting_loses_no_area()
    {
        var scene = new Scene();
        new FinishedThing(Samples.Box(62, 58, 82, 12, 22), Tin).AddOpen(scene, default, 0.35);
        var view = new Axonometry(30, 37);
        var painted = PaintOrder.Of(scene.Faces, view).GroupBy(face => face.Owner).ToDictionary(group => group.Key, group => group.Sum(Area));
        var whole = scene.Faces.Where(face => face.Back is not null || face.Normal.Dot(view.Viewer) > 1e-6).GroupBy(face => face.Owner);
        foreach (var group in whole)
            Assert.Equal(group.Sum(Area), painted[group.Key], 2);
    }

    [Fact]
    public void A_panel_with_a_notch_is_painted_without_its_notch()
    {
        Point[] corners = [new(0, 0), new(40, 0), new(40, 30), new(25, 30), new(25, 10), new(15, 10), new(15, 30), new(0, 30)];
        var outline = Outline.Through(corners);
        var panel = new Panel("notched", "notched", PanelRole.Panel, outline);
        var piece = new Piece
        {
            Id = "notched",
            Name = "Notched",
            Sheet = new Measure.Size(Length.FromMillimetres(40), Length.FromMillimetres(30)),
            Root = "notched",
            Panels = [panel],
            Folds = [],
            Waste = [],
            GlueAreas = [],
            Cuts = [],
            Outline = outline,
        };
        var scene = new Scene();
        scene.Add(Folder.Finished(piece));
        Assert.Equal((40 * 30) - (10 * 20), scene.Faces.Sum(Area), 9);
        Assert.All(scene.Faces, face => Assert.Equal(3, face.Corners.Count));

        // Only the outline is drawn, none of the lines between its parts.
        Assert.Equal(8, scene.Lines.Count);
        Assert.Equal(outline.Perimeter, scene.Lines.Sum(line => line.From.DistanceTo(line.To)), 9);
    }

    [Theory]
    [MemberData(nameof(Views))]
    public void A_line_is_drawn_where_nothing_lies_before_it_and_nowhere_else(double azimuth, double elevation, double opening, bool round)
    {
        var scene = new Scene();
        new FinishedThing(Samples.Box(62, 58, 82, 12, 22), round ? Tin : Soap).AddOpen(scene, default, opening);
        var view = new Axonometry(azimuth, elevation);
        var visibility = new LineVisibility(scene.Faces, view);

        // Relief cuts half a millimetre long lie within the slack of their neighbours.
        foreach (var line in scene.Lines.Where(line => line.Kind is LineKind.Cut or LineKind.Fold && line.From.DistanceTo(line.To) > 2))
        {
            var drawn = visibility.Of([line]);
            var (from, to) = (view.See(line.From), view.See(line.To));
            for (var i = 1; i < 40; i++)
            {
                var at = line.From.Towards(line.To, i / 40.0);
                var seen = view.See(at);
                var isDrawn = drawn.Any(part => Between(part, seen));

                // Looking from the point towards the viewer: how far through the nearest surface before it, if any. Rays
                // that pass close to a border of a surface may go either way.
                var hits = scene.Faces.Where(face => face.Back is not null || face.Normal.Dot(view.Viewer) > 1e-6).Select(face => Hit(face, line, at, view.Viewer)).ToArray();
                if (hits.Any(hit => hit.IsClose))
                    continue;
                Assert.True(isDrawn != hits.Any(hit => hit.IsBefore), $"{line} at {i}: drawn {isDrawn}");
            }
        }

        static bool Between(SeenLine part, Seen at)
        {
            var (dx, dy) = (part.To.X - part.From.X, part.To.Y - part.From.Y);
            var along = (((at.X - part.From.X) * dx) + ((at.Y - part.From.Y) * dy)) / ((dx * dx) + (dy * dy));
            return along is > 0 and < 1;
        }
    }

    [Theory]
    [MemberData(nameof(Structures))]
    public void A_line_across_a_surface_belongs_to_it(string id)
    {
        var (kit, item) = CatalogueKits.Of(id);
        var thing = new FinishedThing(kit, item);
        foreach (var view in new[] { new Axonometry(24, 38), new Axonometry(32, 30), new Axonometry(-61, 22) })
        {
            foreach (var add in new Action<Scene>[] { scene => thing.AddClosed(scene, default), scene => thing.AddOpen(scene, default, 0.31) })
            {
                var scene = new Scene();
                add(scene);
                var stray = Strays(scene, view).ToList();
                Assert.True(stray.Count == 0, $"{stray.Count}: {stray.FirstOrDefault()}");
            }
        }
    }

    // Stretches of drawn edges and folds that have one and the same surface on both sides, of which they are no part: an edge
    // of something behind that shines through.
    private static IEnumerable<SpaceLine> Strays(Scene scene, Axonometry view)
    {
        var visibility = new LineVisibility(scene.Faces, view);
        var faces = scene.Faces.Where(face => face.Back is not null || face.Normal.Dot(view.Viewer) > 1e-6).ToList();
        foreach (var line in scene.Lines.Where(line => line.Inwards is not null && line.From.DistanceTo(line.To) > 1))
        {
            var (from, to) = (view.See(line.From), view.See(line.To));
            var (dx, dy) = (to.X - from.X, to.Y - from.Y);
            var length = Math.Sqrt((dx * dx) + (dy * dy));
            if (length < 1)
                continue;
            var aside = ((view.Right * -dy) - (view.Up * dx)) * (0.4 / length);
            var own = faces.Where(face => line.Inwards!.Any(inwards => Math.Abs(face.Normal.Dot(inwards)) < 1e-6)
                && Math.Abs(face.Normal.Dot(line.From - face.Corners[0])) < 1e-6 && Math.Abs(face.Normal.Dot(line.To - face.Corners[0])) < 1e-6).Select(face => face.Owner).ToHashSet();
            foreach (var part in visibility.Of([line]))
            {
                var middle = (Along(part.From) + Along(part.To)) / 2;
                var at = line.From.Towards(line.To, middle) + (view.Viewer * 1000);
                var (one, other) = (Nearest(at + aside), Nearest(at - aside));
                if (one is not null && one == other && !own.Contains(one.Value))
                    yield return line;
            }

            double Along(Seen seen) => (((seen.X - from.X) * dx) + ((seen.Y - from.Y) * dy)) / (length * length);
        }

        int? Nearest(Vector3d from)
        {
            var (owner, near) = ((int?)null, double.PositiveInfinity);
            foreach (var face in faces)
            {
                var distance = face.Normal.Dot(from - face.Corners[0]) / face.Normal.Dot(view.Viewer);
                var at = from - (view.Viewer * distance);
                if (distance < near && Enumerable.Range(0, face.Corners.Count).All(i => face.Normal.Cross(face.Corners[(i + 1) % face.Corners.Count] - face.Corners[i]).Dot(at - face.Corners[i]) >= 0))
                    (owner, near) = (face.Owner, distance);
            }

            return owner;
        }
    }

    [Theory]
    [InlineData("cylinder-band")]
    [InlineData("cone")]
    [InlineData("cone-wrap")]
    public void The_inner_edge_of_what_is_rolled_is_hidden_by_the_end_that_lies_over_it(string id)
    {
        var (kit, item) = CatalogueKits.Of(id);
        var pose = new FinishedThing(kit, item).Closed.First(part => part.Pose is not null).Pose!;
        var panel = pose.Piece.Panels.First(one => pose.Piece.GlueAreas.Any(glue => glue.Panel == one.Name));
        var last = pose.Panel(pose.Piece.Panels.Last(one => one.Kind == panel.Kind).Name);
        var scene = new Scene();
        scene.Add(pose);

        // Straight at it from outside and a little from either side, below what looks into the ring.
        var outwards = Math.Atan2(-last.Facing.X, last.Facing.Y) * 180 / Math.PI;
        foreach (var aside in new[] { -20, 0, 20 })
        {
            var view = new Axonometry(outwards + 180 + aside, 10);
            view = view.Viewer.Dot(last.Facing) < 0 ? view : new Axonometry(outwards + aside, 10);
            Assert.True(view.Viewer.Dot(last.Facing) < 0);
            var (lines, buffer) = (new LineVisibility(scene.Faces, view), new DepthBuffer(scene.Faces, view, 300));
            var edge = scene.Lines.Where(line => line.Kind == LineKind.Cut && line.From.DistanceTo(line.To) > 5
                && last.Corners.Any(corner => corner.DistanceTo(line.From) < 1e-6) && last.Corners.Any(corner => corner.DistanceTo(line.To) < 1e-6)).ToList();
            var inner = Assert.Single(edge);
            Assert.Empty(lines.Of([inner]));

            // The buffer says the same: along the edge the strip below is nowhere nearest.
            var below = pose.Panels.ToList().FindIndex(panel => panel.Panel.Name == last.Panel.Name);
            for (var i = 2; i <= 18; i++)
            {
                var at = view.See(inner.From.Towards(inner.To, i / 20.0) + ((last.Corners.Aggregate((a, b) => a + b) * (1.0 / last.Corners.Count) - inner.From.Towards(inner.To, 0.5)) * 0.3));
                Assert.NotEqual(below, buffer.OwnerAt(at.X, at.Y));
            }
        }
    }

    [Fact]
    public void A_mat_on_a_panel_that_bends_follows_its_strips_and_keeps_its_size()
    {
        var (kit, _) = CatalogueKits.Of("pillow-box");
        var pillow = kit.Pieces.First().Piece;
        var front = pillow.Panels.Single(panel => panel.Kind == "front");
        var middle = front.Outline.Bounds.Centre;
        var across = 0.35 * front.Outline.Bounds.Width;
        Point[] corners = [middle + new Point(-across, -15), middle + new Point(across, -15), middle + new Point(across, 15), middle + new Point(-across, 15)];
        var mat = new Booklets.Figures.PlacedMat(kit.Parts.First(part => part.Kind == PartKind.Piece) with { Side = SheetSide.Away }, front, corners);
        var scene = new Scene();
        var pose = Folder.Finished(pillow);
        scene.Add(pose, [mat]);
        var faces = scene.Faces.Where(face => face.Front == Surface.Mat).ToList();
        Assert.True(faces.Count > 4);
        Assert.Equal(2 * across * 30, faces.Sum(Area), 6);
        Assert.True(faces.Min(face => face.Normal.Dot(faces[0].Normal)) < 0.99);

        // Its own outline is drawn, none of the rulings that it bends along, and each part lies on the strip below it.
        Assert.Equal(2 * ((2 * across) + 30), scene.Lines.Where(line => line.Kind == LineKind.Mat).Sum(line => line.From.DistanceTo(line.To)), 6);
        Assert.All(faces, face => Assert.Contains(pose.Panels, panel => panel.Panel.Kind == "front" && panel.Facing.Dot(face.Normal) < -1 + 1e-9
            && Math.Abs(panel.Facing.Dot(face.Corners[0] - panel.Corners[0]) + 0.05) < 1e-6));
    }

    [Theory]
    [InlineData("pyramid-box", "tuck tab")]
    [InlineData("tuck-end-box", "dust flap")]
    public void What_is_tucked_in_lies_inside_what_it_is_tucked_behind(string id, string flap)
    {
        var (kit, item) = CatalogueKits.Of(id);
        var panels = new FinishedThing(kit, item).Closed.First(part => part.Pose is not null).Pose!.Panels;
        var flaps = panels.Where(panel => panel.Panel.Kind == flap).ToList();
        Assert.NotEmpty(flaps);
        Assert.All(flaps, panel => Assert.Contains(panels, over => over.Panel.Role == PanelRole.Panel && over.Facing.Dot(panel.Facing) > 0.999 && over.Facing.Dot(panel.Corners[0] - over.Corners[0]) is > 0.04 and < 0.2));
    }

    [Fact]
    public void A_round_body_shows_just_its_two_sides_as_lines()
    {
        var scene = new Scene();
        scene.AddRound(default, 60, 50);
        var view = new Axonometry(30, 40);
        var sides = new LineVisibility(scene.Faces, view).Of(scene.Lines).Where(line => line.Kind == LineKind.Rounded).ToArray();
        Assert.Equal(2, sides.Length);
        Assert.Equal([-30.0, 30.0], sides.Select(side => Math.Round(side.From.X, 1)).Order());
        Assert.All(sides, side => Assert.Equal(LineRank.Outline, side.Rank));
    }

    [Fact]
    public void Of_the_edges_of_a_block_nine_are_seen_six_of_them_its_outline()
    {
        var scene = new Scene();
        scene.AddBlock(default, 40, 30, 20);
        var lines = new LineVisibility(scene.Faces, Axonometry.Isometric).Of(scene.Lines);
        Assert.Equal(9, lines.Count);
        Assert.Equal(6, lines.Count(line => line.Rank == LineRank.Outline));
    }

    private static void Compare(IReadOnlyList<Face> faces, Axonometry view, int across)
    {
        var truth = new DepthBuffer(faces, view, across);
        var painted = new DepthBuffer(PaintOrder.Of(faces, view), view, across, nearest: false);
        var (compared, different) = (0, 0);
        for (var i = 0; i < across; i++)
        {
            for (var j = 0; j < across; j++)
            {
                // On an edge the last digit decides which surface has the place.
                if (!truth.IsEven(i, j) || truth.Owner[i, j] < 0)
                    continue;
                compared++;
                if (Math.Abs(truth.Near(i, j) - painted.Near(i, j)) > 0.2)
                    different++;
            }
        }

        Assert.True(different == 0, $"{different} of {compared} places differ");
    }

    private static Face? Triangle(double[] c, int owner)
    {
        Vector3d[] corners = [new(c[0], c[1], c[2]), new(c[3], c[4], c[5]), new(c[6], c[7], c[8])];
        var normal = (corners[1] - corners[0]).Cross(corners[2] - corners[0]);
        return normal.Length < 1 ? null : new Face(corners, normal.Unit, Surface.CardFacing, Surface.CardAway, owner);
    }

    internal static double Area(Face face)
    {
        var sum = default(Vector3d);
        for (var i = 2; i < face.Corners.Count; i++)
            sum += (face.Corners[i - 1] - face.Corners[0]).Cross(face.Corners[i] - face.Corners[0]);
        return sum.Length / 2;
    }

    private static (bool IsBefore, bool IsClose) Hit(Face face, SpaceLine line, Vector3d from, Vector3d towards)
    {
        var turned = face.Normal.Dot(towards);
        if (Math.Abs(turned) < 1e-6)
            return (false, false);
        var height = face.Normal.Dot(face.Corners[0] - from);
        var distance = height / turned;
        var at = from + (towards * distance);
        var margin = double.PositiveInfinity;
        for (var i = 0; i < face.Corners.Count; i++)
        {
            var (a, b) = (face.Corners[i], face.Corners[(i + 1) % face.Corners.Count]);
            margin = Math.Min(margin, face.Normal.Cross((b - a).Unit).Dot(at - a));
        }

        // A surface within a few hundredths of a millimetre is the line's own; layers lie 0.05 mm apart. One that the line only
        // touches, as the end of a wall touches a floor, hides it from behind.
        var own = Math.Abs(height) < 0.04;
        if (own && line.Inwards is { } inwards && inwards.All(arrow => Math.Sign(turned) * face.Normal.Dot(arrow) < -0.05))
            return (margin > 0, Math.Abs(margin) < 0.5);
        return (!own && distance > 0 && margin > 0, Math.Abs(margin) < 0.5 && distance > -1e-9 && !own);
    }
}
