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
}
