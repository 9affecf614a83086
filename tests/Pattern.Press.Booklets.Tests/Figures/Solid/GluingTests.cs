using Pattern.Press.Booklets.Figures.Solid;
using Pattern.Press.Nets;
using Pattern.Press.Nets.Folding;
using Pattern.Press.Nets.Folding.Proofs;
using Pattern.Press.Typesetting.Pages;

namespace Pattern.Press.Booklets.Tests.Figures.Solid;

public sealed class GluingTests
{
    private static readonly Vector3d Viewer = new Axonometry(32, 34).Viewer;

    public static TheoryData<string, string> Glued
    {
        get
        {
            var all = new TheoryData<string, string>();
            foreach (var (structure, kit) in Kits())
            {
                foreach (var part in kit.Pieces.Where(part => SeamClosing.Of(part.Piece, kit.Assembly.Seams, []) is not null))
                    all.Add(structure, part.Piece.Id);
            }

            return all;
        }
    }

    [Fact]
    public void Most_structures_have_seams_that_close_by_themselves() =>
        Assert.InRange(Glued.Select(row => row.Data.Item1).Distinct().Count(), 14, 30);

    [Theory]
    [MemberData(nameof(Glued))]
    public void The_arrow_of_a_seam_is_the_way_of_its_glue_and_ends_on_its_target(string structure, string piece)
    {
        var (closing, arrows) = Of(structure, piece);
        Assert.NotEmpty(arrows);
        foreach (var arrow in arrows)
        {
            // The arrow of some seam, point by point where the pose has the middle of its glue at that moment.
            var seam = closing.Seams.Single(seam => Place(seam, closing.Apart).DistanceTo(arrow.Path[0]) < 1e-9);
            for (var i = 0; i < arrow.Path.Count; i++)
                Assert.Equal(0, arrow.Path[i].DistanceTo(Place(seam, closing.Apart + ((closing.Met - closing.Apart) * i / (arrow.Path.Count - 1)))), 9);

            // At its end the glue touches: the middle lies in the plane of the target and on it.
            var met = closing.At(closing.Met);
            var target = met.Panel(seam.Target!.Panel.Name);
            var lands = target.Motion.Inverse.Apply(arrow.Path[^1]);
            Assert.Equal(0, lands.Z, 0.02);
            Assert.True(target.Panel.Outline.Contains(new Point(lands.X, -lands.Y)), $"{seam.Panel.Panel.Name} ends beside {target.Panel.Name}");

            // And it came from away from there.
            Assert.True(SeamClosing.Gap(seam, closing.At(closing.Apart)) > 1);
        }

        Vector3d Place(FoundSeam seam, double at) => closing.At(at).Panel(seam.Panel.Panel.Name).At(SeamClosing.Middle(seam));
    }

    [Theory]
    [MemberData(nameof(Glued))]
    public void While_the_glue_comes_what_it_goes_on_stands_still(string structure, string piece)
    {
        var (closing, _) = Of(structure, piece);
        foreach (var seam in closing.Seams.Where(seam => !closing.Seams.Any(other => Hangs(seam.Target!.Panel.Name, other.Panel.Panel.Name, other.Target!.Panel.Name, closing))))
        {
            var (before, after) = (closing.At(closing.Apart).Panel(seam.Target!.Panel.Name), closing.At(closing.Met).Panel(seam.Target.Panel.Name));
            Assert.All(before.Corners.Zip(after.Corners), pair => Assert.Equal(0, pair.First.DistanceTo(pair.Second), 9));
        }
    }

    [Theory]
    [MemberData(nameof(Glued))]
    public void Glue_is_seen_or_drawn_through_the_card_and_then_said(string structure, string piece)
    {
        var kit = Kits().Single(one => one.Id == structure).Kit;
        var drawing = GluingDrawing.Of(kit, kit.Pieces.Single(part => part.Piece.Id == piece).Piece, [])!;
        var glue = drawing.Draw(76, 60, Samples.Styles).Items.OfType<PathItem>().Where(path => path.Fill is null && path.Stroke!.Colour == Samples.Styles.Lines.Glue).ToList();
        Assert.Equal(drawing.HidesGlue, glue.Exists(path => path.Stroke!.Dash.Count > 0));
        Assert.True(glue.Where(path => path.Stroke!.Dash.Count == 0).Sum(path => Ink(path.Path)) > 10, "Hardly any glue is seen.");
    }

    [Fact]
    public void One_looks_a_little_earlier_or_from_elsewhere_where_the_glue_would_be_hidden()
    {
        // The tab of a gable-top box looks down when it is about to land, and its own wall hides it from all sides.
        var kit = Kits().Single(one => one.Id == "gable-top-box").Kit;
        var box = kit.Pieces.Single(part => part.Piece.Id == "box").Piece;
        var (closing, drawing) = (SeamClosing.Of(box, kit.Assembly.Seams, [], kit.Assembly.Find("box")!.Opens)!, GluingDrawing.Of(kit, box, [])!);
        Assert.Equal(0, Share(closing.Apart, new Axonometry(32, 34)));
        Assert.InRange(drawing.Moment, closing.Widest, closing.Apart - 0.01);
        Assert.InRange(Share(drawing.Moment, drawing.View), 0.25, 1);

        double Share(double moment, Axonometry view)
        {
            var pose = closing.At(moment);
            return GlueInSight.Share(pose, [.. pose.Piece.GlueAreas.Where(area => closing.Seams.Any(seam => seam.Panel.Panel.Name == area.Panel))], view);
        }
    }

    [Fact]
    public void A_tab_of_a_tray_goes_on_a_quarter_circle_about_the_foot_of_its_wall()
    {
        var (closing, arrows) = Of("open-tray", "tray");
        var floor = closing.At(1).Root.Corners;
        foreach (var arrow in arrows)
        {
            // About the nearer of the two sides of the floor that run across; the tab lies square to it, so x does not change.
            var end = arrow.Path[^1];
            var foot = floor.Select(corner => corner.Y).MinBy(y => Math.Abs(y - end.Y));
            Assert.All(arrow.Path, place => Assert.Equal(end.X, place.X, 9));
            Assert.All(arrow.Path, place => Assert.Equal(Reach(end), Reach(place), 9));

            // The wall is half up before and upright after.
            Assert.InRange(Math.Abs(Turned(end) - Turned(arrow.Path[0])), 40, 46);

            double Turned(Vector3d place) => Math.Atan2(place.Z, place.Y - foot) * 180 / Math.PI;

            double Reach(Vector3d place) => Math.Sqrt((place.Z * place.Z) + ((place.Y - foot) * (place.Y - foot)));
        }
    }

    [Fact]
    public void Glue_that_goes_to_another_piece_is_no_seam_of_its_own()
    {
        var kit = Kits().Single(one => one.Id == "explosion-box").Kit;
        var platform = kit.Pieces.Single(part => part.Piece.Id == "platform").Piece;
        Assert.DoesNotContain("lip", SeamClosing.Of(platform, kit.Assembly.Seams, [])!.Seams.Select(seam => seam.Panel.Panel.Kind));
        Assert.Null(SeamClosing.Of(platform, kit.Assembly.Seams, ["lip"]));
    }

    private static (SeamClosing Closing, IReadOnlyList<MotionArrow> Arrows) Of(string structure, string piece)
    {
        var kit = Kits().Single(one => one.Id == structure).Kit;
        var closing = SeamClosing.Of(kit.Pieces.Single(part => part.Piece.Id == piece).Piece, kit.Assembly.Seams, [])!;
        return (closing, MotionArrow.Gluing(closing, closing.At, Viewer, closing.Apart));
    }

    private static double Ink(VectorPath path)
    {
        var (sum, at) = (0.0, default(PagePoint));
        var points = path.Points;
        for (var i = 0; i < path.Verbs.Count; i++)
        {
            if (path.Verbs[i] == PathVerb.Line)
                sum += Math.Sqrt(((points[i].X - at.X) * (points[i].X - at.X)) + ((points[i].Y - at.Y) * (points[i].Y - at.Y)));
            at = points[i];
        }

        return sum;
    }

    [Theory]
    [MemberData(nameof(Glued))]
    public void No_tab_is_drawn_through_a_face_that_it_does_not_hang_on(string structure, string piece)
    {
        var kit = Kits().Single(one => one.Id == structure).Kit;
        var drawing = GluingDrawing.Of(kit, kit.Pieces.Single(part => part.Piece.Id == piece).Piece, [])!;
        var closing = SeamClosing.Of(drawing.Piece, kit.Assembly.Seams, [], FinishedThing.Opens(kit, drawing.Piece))!;
        var pose = closing.At(drawing.Moment);
        foreach (var tab in pose.Panels.Where(panel => panel.Panel.Role == PanelRole.Tab))
        {
            foreach (var face in pose.Panels.Where(panel => panel != tab && !pose.Piece.Folds.Any(fold => fold.Child == tab.Panel.Name && fold.Parent == panel.Panel.Name)))
            {
                // Seen from the face, the heights of places a millimetre or less apart all round the tab.
                var home = face.Motion.Inverse;
                foreach (var (from, to) in tab.Corners.Zip(tab.Corners.Skip(1)))
                {
                    var steps = 2 * (1 + (int)from.DistanceTo(to));
                    var places = Enumerable.Range(0, steps + 1).Select(i => home.Apply(from + ((to - from) * ((double)i / steps)))).ToList();
                    if (places.Min(place => place.Z) > -1 || places.Max(place => place.Z) < 1)
                        continue;
                    var through = new Point(places.MinBy(place => Math.Abs(place.Z)).X, -places.MinBy(place => Math.Abs(place.Z)).Y);
                    Assert.False(face.Panel.Outline.Contains(through) && face.Panel.Outline.DistanceTo(through) > 1.5, $"{tab.Panel.Name} goes through {face.Panel.Name}");
                }
            }
        }
    }

    // Whether a panel is moved by what brings another one to its target.
    private static bool Hangs(string panel, string glued, string target, SeamClosing closing)
    {
        var piece = closing.At(closing.Met).Piece;
        var way = Above(glued).Except(Above(target)).ToHashSet(StringComparer.Ordinal);
        return Above(panel).Any(way.Contains);

        IEnumerable<string> Above(string name)
        {
            for (var at = name; at != piece.Root;)
            {
                yield return at;
                at = Shortest()[at];
            }
        }

        Dictionary<string, string> Shortest()
        {
            var from = new Dictionary<string, string>(StringComparer.Ordinal) { [piece.Root] = "" };
            var reached = new Queue<string>([piece.Root]);
            while (reached.TryDequeue(out var at))
            {
                foreach (var fold in piece.Folds.Where(fold => fold.Parent == at || fold.Child == at))
                {
                    if (from.TryAdd(fold.Parent == at ? fold.Child : fold.Parent, at))
                        reached.Enqueue(fold.Parent == at ? fold.Child : fold.Parent);
                }
            }

            return from;
        }
    }

    private static IReadOnlyList<(string Id, Kit Kit)> Kits() => CatalogueKits.All;
}
