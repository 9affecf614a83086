using Pattern.Press.Booklets.Figures.Solid;
using Pattern.Press.Nets;
using Pattern.Press.Nets.Folding;

namespace Pattern.Press.Booklets.Tests.Figures.Solid;

public sealed class MotionArrowTests
{
    private static readonly Kit Kit = Samples.Box(62, 58, 82, 12, 22);
    private static readonly Vector3d Viewer = new Axonometry(32, 34).Viewer;

    [Fact]
    public void The_arrow_of_a_wall_runs_on_the_circle_that_its_edge_goes_on()
    {
        var piece = Kit.Parts[0].Piece;
        var arrows = MotionArrow.Folding(piece, part => FinishedThing.Standing(piece, part), 0.6, 0.9, Viewer);
        Assert.Equal(2, arrows.Count);
        foreach (var arrow in arrows)
        {
            // A tenth beyond the upper edge of a wall 82 mm high, turned from 54° to 81° about a side of the floor.
            const double reach = 82 * 1.1;
            Assert.Equal(reach * Math.Sin(54 * Math.PI / 180), arrow.Path[0].Z, 6);
            Assert.Equal(reach * Math.Sin(81 * Math.PI / 180), arrow.Path[^1].Z, 6);
            Assert.Equal(reach * 27 * Math.PI / 180, arrow.Length, 0.1);
        }
    }

    [Fact]
    public void Panels_that_go_all_the_way_over_are_followed_on_the_far_side_where_their_inside_is_seen()
    {
        var lid = Kit.Parts[1].Piece;
        var arrows = MotionArrow.Folding(lid, part => FinishedThing.Standing(lid, part), 0.5, 0.75, Viewer);
        Assert.NotEmpty(arrows);
        Assert.All(arrows, arrow => Assert.True(Viewer.Dot(arrow.Path[0] with { Z = 0 }) < 0, $"{arrow.Path[0]}"));
    }

    [Theory]
    [InlineData("cylinder-band")]
    [InlineData("cone-wrap")]
    [InlineData("cone")]
    public void The_arrows_of_what_is_rolled_follow_its_ends(string id)
    {
        var piece = CatalogueKits.Of(id).Kit.Pieces.First().Piece;
        var arrows = MotionArrow.Folding(piece, part => FinishedThing.Standing(piece, part), 0.6, 0.9, Viewer);
        Assert.NotEmpty(arrows);
        foreach (var arrow in arrows)
        {
            // Each begins and ends in the free edge of a strip as it is rolled then.
            foreach (var (place, part) in new[] { (arrow.Path[0], 0.6), (arrow.Path[^1], 0.9) })
            {
                var corners = FinishedThing.Standing(piece, part).Panels.SelectMany(panel => panel.Corners).ToList();
                Assert.InRange(corners.Min(corner => corner.DistanceTo(place)), 0, (piece.Sheet.Height.Millimetres / 2) + 1);
            }

            Assert.True(arrow.Length > 10);
        }
    }

    [Theory]
    [InlineData("gable-top-box", "box", 0.3)]
    [InlineData("lantern", "shade", 0.3)]
    [InlineData("lantern", "shade", 0.65)]
    [InlineData("tuck-end-box", "box", 0.65)]
    [InlineData("regular-solid", "solid", 0.65)]
    public void No_two_arrows_tell_of_one_motion(string id, string name, double folded)
    {
        var piece = CatalogueKits.Of(id).Kit.Parts.Single(part => part.Piece.Id == name).Piece;
        var arrows = MotionArrow.Folding(piece, part => FinishedThing.Standing(piece, part), folded, folded + 0.3, Viewer);
        Assert.NotEmpty(arrows);

        // As they are seen: two that lead the same way from nearly the same place would be read as one.
        foreach (var (one, other) in arrows.Zip(arrows.Skip(1)))
        {
            var (a, b) = (one.Path[^1] - one.Path[0], other.Path[^1] - other.Path[0]);
            Assert.False(a.Unit.Dot(b.Unit) > 0.9 && one.Path[0].DistanceTo(other.Path[0]) < 0.5 * one.Length, $"{one.Path[0]} and {other.Path[0]}");
        }
    }

    [Fact]
    public void Nothing_moves_once_it_is_folded()
    {
        var piece = Kit.Parts[0].Piece;
        Assert.Empty(MotionArrow.Folding(piece, _ => FinishedThing.Standing(piece, 1), 0.9, 1, Viewer));
    }

    [Theory]
    [InlineData("platform")]
    [InlineData("lid")]
    [InlineData(Assembly.Item)]
    public void A_part_on_its_way_goes_straight_down_and_ends_above_its_place(string part)
    {
        var scene = new Scene { Ground = 0 };
        Assert.True(new FinishedThing(Kit, HiddenSurfaceTests.Tin).AddInserting(scene, part, 0.31, Viewer));
        var path = Assert.Single(scene.Arrows).Path;
        Assert.Equal(path[0] with { Z = 0 }, path[^1] with { Z = 0 });
        Assert.True(path[^1].Z < path[0].Z - 5);
        Assert.True(path[^1].Z > 0);
    }

    [Theory]
    [InlineData("tuck-end-box")]
    [InlineData("gable-top-box")]
    [InlineData("polygon-box")]
    [InlineData("divided-tray")]
    public void The_arrow_of_what_goes_into_something_deep_ends_in_its_mouth(string id)
    {
        var (kit, item) = CatalogueKits.Of(id);
        var thing = new FinishedThing(kit, item);
        var scene = new Scene { Ground = 0 };
        Assert.True(thing.AddInserting(scene, Assembly.Item, 0.5, Viewer));
        var path = Assert.Single(scene.Arrows).Path;

        // Nothing of what it goes into is between the viewer and any place on it, its very tip apart.
        var host = thing.Open(0.5).First(part => part.Pose is not null);
        for (var i = 0; i < 20; i++)
        {
            var place = path[0] + ((path[^1] - path[0]) * (i / 20.0));
            Assert.DoesNotContain(host.Pose!.Panels.Where(panel => panel.Panel.Kind is "front" or "side" or "wall" or "side wall" or "front wall"), panel => Crosses(panel, place, place + (Viewer * 1000)));
        }

        Assert.True(path[0].DistanceTo(path[^1]) > 5);
    }

    [Fact]
    public void What_stands_by_itself_goes_nowhere() =>
        Assert.False(new FinishedThing(Kit, HiddenSurfaceTests.Tin).AddInserting(new Scene(), "base", 0.31, Viewer));

    [Fact]
    public void Taken_apart_every_part_has_its_arrow_and_stands_clear_of_the_others()
    {
        var thing = new FinishedThing(Kit, HiddenSurfaceTests.Tin);
        var scene = new Scene { Ground = 0 };
        thing.AddApart(scene, Viewer);
        Assert.Equal(3, scene.Arrows.Count);
        var apart = thing.Apart().OrderBy(part => part.Bottom).ToList();
        Assert.Equal(["base", "platform", Assembly.Item, "lid"], apart.Select(part => part.Part.Part));
        foreach (var (below, above) in apart.Zip(apart.Skip(1)))
            Assert.True(above.Bottom > below.Top + 5);
    }

    public static TheoryData<string> Structures => CatalogueKits.Ids;

    [Theory]
    [MemberData(nameof(Structures))]
    public void Taken_apart_what_the_item_goes_into_is_open_and_nothing_is_in_its_way(string id)
    {
        var (kit, item) = CatalogueKits.Of(id);
        var thing = new FinishedThing(kit, item);
        var apart = thing.Apart();
        foreach (var inside in apart.Where(part => part.Item is not null && part.Part.Goes == GoesWhere.Inside))
        {
            var host = apart.First(part => part.Part.Part == inside.Part.To);
            var place = thing.Closed.First(part => part.Part == inside.Part && part.Copy == inside.Copy);
            foreach (var fold in host.Pose!.Piece.Folds.Where(fold => host.Part.Opens.Contains(host.Pose.Panel(fold.Child).Panel.Kind) && host.Pose.Panel(fold.Parent).Panel.Kind != host.Pose.Panel(fold.Child).Panel.Kind && fold.Angle > 150))
                Assert.True(host.Pose.Angles[fold] < 90, $"{fold.Child} is folded by {host.Pose.Angles[fold]:0}°");

            // From the middle of the item and from near its edges, straight to its place.
            foreach (var (x, y, z) in new (double, double, double)[] { (0, 0, 0.5), (0.3, 0, 0.5), (-0.3, 0, 0.5), (0, 0.3, 0.5), (0, -0.3, 0.5), (0, 0, 0.95), (0, 0, 0.05) })
            {
                // A card is drawn thinner than it is.
                var from = inside.Foot + new Vector3d(x * inside.Item!.Width, y * inside.Item.Depth, z * (inside.Item.Height > 1 ? inside.Item.Height : FinishedThing.Hair));
                var to = from + (place.Foot - inside.Foot);
                Assert.DoesNotContain(host.Pose.Panels, panel => Crosses(panel, from, to));
            }
        }
    }

    [Fact]
    public void A_card_goes_pressed_flat_and_straight_into_the_mouth_of_its_envelope()
    {
        var (kit, item) = CatalogueKits.Of("card-and-envelope");
        var thing = new FinishedThing(kit, item);
        var apart = thing.Apart();
        var (card, envelope) = (apart.Single(part => part.Part.Part == "card"), apart.Single(part => part.Part.Part == "envelope"));
        var mouth = envelope.Pose!.Piece.Folds.Single(fold => fold.Child == envelope.Pose.Panels.Single(panel => panel.Panel.Kind == "top flap").Panel.Name);
        var (left, right) = (envelope.Pose.Panel(mouth.Parent).At(mouth.From), envelope.Pose.Panel(mouth.Parent).At(mouth.To));
        Assert.True(envelope.Pose.Angles[mouth] < 30);
        Assert.True(card.Top - card.Bottom < 1);

        // Behind the mouth and clear of its flap, between its two ends.
        Assert.True(card.Corners.Min(corner => corner.Y) > envelope.Corners.Max(corner => corner.Y));
        Assert.InRange(card.Corners.Min(corner => corner.X), Math.Min(left.X, right.X), Math.Max(left.X, right.X));
        Assert.InRange(card.Corners.Max(corner => corner.X), Math.Min(left.X, right.X), Math.Max(left.X, right.X));
        foreach (var add in new Action<Scene>[] { scene => thing.AddApart(scene, Viewer), scene => Assert.True(thing.AddInserting(scene, "card", 0.31, Viewer)) })
        {
            var scene = new Scene();
            add(scene);
            var path = Assert.Single(scene.Arrows).Path;
            Assert.True(path[^1].Y < path[0].Y - 5);
            Assert.Equal((path[0].X, path[0].Z), (path[^1].X, path[^1].Z));
        }
    }

    [Fact]
    public void Turned_over_is_half_a_turn_about_the_line_from_left_to_right()
    {
        Vector3d[] corners = [new(-30, -20, 0), new(30, 20, 10)];
        var path = MotionArrow.TurningOver(corners).Path;
        Assert.All(path, place => Assert.Equal(path[0].X, place.X, 9));
        Assert.Equal(-path[0].Y, path[^1].Y, 9);
        Assert.Equal(12, path[0].DistanceTo(path[path.Count / 2]) / Math.Sqrt(2), 9);
        Assert.True(path[path.Count / 2].Z < path[0].Z == path[1].Z < path[0].Z);
    }

    private static bool Crosses(PosedPanel panel, Vector3d from, Vector3d to)
    {
        var (a, b) = (panel.Facing.Dot(from - panel.Corners[0]), panel.Facing.Dot(to - panel.Corners[0]));
        if (a * b >= 0)
            return false;
        var at = panel.Motion.Inverse.Apply(from + ((to - from) * (a / (a - b))));
        return panel.Panel.Outline.Contains(new Point(at.X, -at.Y)) && !panel.Panel.Holes.Any(hole => hole.Contains(new Point(at.X, -at.Y)));
    }
}
