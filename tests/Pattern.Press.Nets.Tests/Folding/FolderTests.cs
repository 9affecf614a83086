using CsCheck;
using Pattern.Press.Nets.Folding;
using Pattern.Press.Nets.Folding.Proofs;
using static Pattern.Press.Nets.Tests.Sheets;

namespace Pattern.Press.Nets.Tests.Folding;

public sealed class FolderTests
{
    private static readonly Piece Lid = DoubleLid(Mm(80), Mm(60), Mm(22), 10, Mm(0.5m)).Build();

    [Fact]
    public void Flat_every_panel_lies_on_its_place_on_the_sheet()
    {
        var pose = Folder.Pose(Lid, 0.0);
        Assert.All(pose.Panels, panel => Assert.Equal(RigidMotion.None, panel.Motion));
        var corner = Lid.Panels[0].Outline.Edges[0].From;
        Assert.Equal(new Vector3d(corner.X, -corner.Y, 0), pose.Panels[0].Corners[0]);
    }

    [Fact]
    public void A_valley_fold_lifts_its_panel_towards_the_maker_and_a_mountain_fold_lowers_it()
    {
        var pose = Folder.Finished(Lid);
        var wall = pose.Panels.First(panel => panel.Panel.Kind == "wall");
        Assert.Equal(22, wall.Corners.Max(corner => corner.Z), 12);
        Assert.Equal(0, wall.Corners.Min(corner => corner.Z), 12);

        var turned = Lid with { Folds = [.. Lid.Folds.Select(fold => fold with { Direction = FoldDirection.Mountain })] };
        Assert.Equal(-22, Folder.Finished(turned).Panel(wall.Panel.Name).Corners.Min(corner => corner.Z), 12);
    }

    [Fact]
    public void The_walls_of_a_folded_lid_face_each_other_and_their_returns_lie_against_them()
    {
        var pose = Folder.Finished(Lid);
        foreach (var fold in Lid.Folds.Where(fold => fold.Angle == 180))
        {
            var (wall, inner) = (pose.Panel(fold.Parent), pose.Panel(fold.Child));
            Assert.Equal(-1, wall.Facing.Dot(inner.Facing), 12);
            Assert.All(inner.Corners, corner => Assert.Equal(0, wall.Facing.Dot(corner - wall.Corners[0]), 9));
        }

        // The facing side is the inside: it looks at the middle of the lid.
        var middle = pose.Root.At(pose.Root.Panel.Outline.Centroid);
        Assert.All(
            pose.Panels.Where(panel => panel.Panel.Kind == "wall"),
            wall => Assert.True(wall.Facing.Dot(middle - wall.Corners[0]) > 0));
    }

    [Fact]
    public void Every_move_is_rigid_whatever_the_angles() =>
        Gen.Double[-180, 180].Array[Lid.Folds.Count].Sample(angles =>
        {
            var pose = Folder.Pose(Lid, Lid.Folds.Zip(angles).ToDictionary(pair => pair.First, pair => pair.Second));
            foreach (var panel in pose.Panels)
            {
                var (x, y, z) = (panel.Motion.XAxis, panel.Motion.YAxis, panel.Motion.ZAxis);
                Assert.Equal(1, x.Length, 12);
                Assert.Equal(1, y.Length, 12);
                Assert.Equal(0, x.Dot(y), 12);
                Assert.Equal(0, (x.Cross(y) - z).Length, 12);
                var flat = panel.Panel.Outline.Corners.ToArray();
                for (var i = 1; i < flat.Length; i++)
                    Assert.Equal(flat[0].DistanceTo(flat[i]), panel.At(flat[0]).DistanceTo(panel.At(flat[i])), 9);
            }

            foreach (var fold in Lid.Folds)
            {
                // The fold stays common to its panels, and the angle between them is the one asked for.
                var (parent, child) = (pose.Panel(fold.Parent), pose.Panel(fold.Child));
                Assert.Equal(0, parent.At(fold.From).DistanceTo(child.At(fold.From)), 9);
                Assert.Equal(0, parent.At(fold.To).DistanceTo(child.At(fold.To)), 9);
                Assert.Equal(Math.Cos(pose.Angles[fold] * Math.PI / 180), parent.Facing.Dot(child.Facing), 9);
            }
        }, iter: 50);

    [Fact]
    public void A_move_and_its_inverse_undo_each_other() =>
        Gen.Double[-100, 100].Array[9].Where(v => new Vector3d(v[3], v[4], v[5]).Length > 1).Sample(v =>
        {
            var motion = RigidMotion.Turn(new(v[0], v[1], v[2]), new(v[3], v[4], v[5]), v[6] * 3.6).After(RigidMotion.By(new(v[7], v[8], v[0])));
            var point = new Vector3d(v[8], v[7], v[6]);
            Assert.Equal(0, motion.Inverse.Apply(motion.Apply(point)).DistanceTo(point), 9);
            Assert.Equal(0, motion.After(motion.Inverse).Apply(point).DistanceTo(point), 9);
        }, iter: 200);

    [Fact]
    public void Hands_fold_tabs_first_then_walls_and_last_the_inner_walls_two_by_two()
    {
        var wall = Lid.Folds.First(fold => fold.Parent == "top");
        var tab = Lid.Folds.First(fold => Lid.Panel(fold.Child).Role == PanelRole.Tab);
        var inner = Lid.Folds.Where(fold => fold.Angle == 180).ToArray();
        var quarter = Folder.InOrder(Lid, 0.25).Angles;
        Assert.Equal((90.0, 0.0, 0.0), (quarter[tab], quarter[wall], quarter[inner[0]]));
        var half = Folder.InOrder(Lid, 0.5).Angles;
        Assert.Equal((90.0, 90.0, 0.0), (half[tab], half[wall], half[inner[0]]));
        var most = Folder.InOrder(Lid, 0.75).Angles;
        Assert.Equal([0, 0, 180, 180], inner.Select(fold => most[fold]).Order());
        Assert.Equal(Folder.Finished(Lid).Angles.Values, Folder.InOrder(Lid, 1).Angles.Values);
    }

    [Fact]
    public void In_the_order_of_hands_nothing_passes_through_anything()
    {
        var lid = DoubleLid(Mm(80), Mm(60), Mm(22), 10, Mm(1.5m)).Build();
        for (var i = 0; i <= 40; i++)
            Assert.Empty(Crossings.Of(Folder.InOrder(lid, i / 40.0).Panels));
        Assert.NotEmpty(Crossings.Of(Folder.Pose(lid, 0.75).Panels));
    }

    [Fact]
    public void Points_and_moves_say_where_they_are()
    {
        Assert.Equal("(1, -2.5, 0)", new Vector3d(1, -2.5, 0).ToString());
        Assert.Equal("x to (1, 0, 0), y to (0, 1, 0), z to (0, 0, 1), shifted by (1, 2, 3)", RigidMotion.By(new(1, 2, 3)).ToString());
    }

    [Theory]
    [InlineData(-0.01)]
    [InlineData(1.01)]
    [InlineData(double.NaN)]
    public void An_opening_outside_flat_to_finished_is_refused(double opening) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Folder.Pose(Lid, opening));
}
