using Pattern.Press.Nets.Building;
using Pattern.Press.Nets.Folding;
using Pattern.Press.Nets.Folding.Proofs;
using static Pattern.Press.Nets.Tests.Sheets;

namespace Pattern.Press.Nets.Tests.Folding;

public sealed class PieceProofTests
{
    private static readonly Piece Box = GussetBox(Mm(66), Mm(61), Mm(70), Mm(14)).Build();

    [Fact]
    public void A_sound_box_is_proven_flat_to_finished()
    {
        foreach (var caliper in new[] { 0, 0.3, 0.5 })
        {
            var proofs = PieceProofs.Of(Box, caliper);
            Assert.Equal(4, proofs.Count);
            Assert.DoesNotContain(proofs, proof => proof.IsWarning);
            Assert.All(proofs, proof => Assert.True(proof.Holds, $"{proof}"));
        }
    }

    [Fact]
    public void The_lid_and_the_platform_are_proven_too()
    {
        Assert.All(PieceProofs.Of(DoubleLid(Mm(80), Mm(60), Mm(22), 10, Mm(0.5m)).Build()), proof => Assert.True(proof.Holds, $"{proof}"));
        Assert.All(PieceProofs.Of(Platform(Mm(64), Mm(59), Mm(12), Mm(12)).Build()), proof => Assert.True(proof.Holds, $"{proof}"));
    }

    [Fact]
    public void Inner_walls_as_deep_as_the_lid_touch_its_top_and_deeper_ones_pass_through_it()
    {
        var lid = DoubleLid(Mm(80), Mm(60), Mm(22), 10, Mm(1.5m));
        Assert.All(PieceProofs.Of(lid.Build(), 0.3), proof => Assert.True(proof.Holds, $"{proof}"));

        var deep = lid with { Across = [Mm(25), Mm(22), Mm(80), Mm(22), Mm(25)] };
        var proof = PieceProofs.Of(deep.Build(), 0.3).Single(proof => proof.Kind == FoldingProofKind.NothingPassesFinished);
        Assert.False(proof.Holds);
        Assert.Contains("top", proof.Panels);
    }

    [Fact]
    public void Inner_walls_without_relief_pass_through_each_other_in_thick_card()
    {
        var proof = PieceProofs.Of(DoubleLid(Mm(80), Mm(60), Mm(22), 10, Mm(0)).Build(), 0.3)[1];
        Assert.Equal(FoldingProofKind.NothingPassesFinished, proof.Kind);
        Assert.False(proof.Holds);
        Assert.All(proof.Panels, panel => Assert.Contains("inner wall", panel));
    }

    [Fact]
    public void What_is_in_the_way_of_every_fold_stops_the_booklet_on_the_way_too()
    {
        // The wall across is higher than the roof: it goes through it however they are folded.
        var hut = Hut(roof: 45, far: 80);
        var proof = PieceProofs.Of(hut, 0.3).Single(proof => proof.Kind == FoldingProofKind.NothingPassesOnTheWay);
        Assert.Equal(Verdict.Fails, proof.Verdict);
        Assert.Equal(["far wall", "roof"], proof.Panels.Order());

        // Low enough, or with a roof that ends before it, it is folded without touching anything.
        foreach (var sound in new[] { Hut(roof: 30, far: 20), Hut(roof: 15, far: 40) })
            Assert.All(PieceProofs.Of(sound, 0.3), good => Assert.True(good.Holds, $"{good}"));

        static Piece Hut(int roof, int far) => new ScoredSheet
        {
            Id = "hut",
            Name = "Hut",
            Across = [Mm(roof), Mm(30), Mm(25), Mm(far)],
            Down = [Mm(20)],
            Map = ["rwFf"],
            Cells = new Dictionary<char, Cell>
            {
                ['F'] = Floor,
                ['w'] = Wall(),
                ['r'] = new() { Kind = "roof", Fold = Valley(90) },
                ['f'] = Wall("far wall"),
            },
            Root = 'F',
        }.Build();
    }

    [Fact]
    public void Where_the_usual_order_is_blocked_another_one_is_found()
    {
        // Inner walls deeper than half the width meet when both swing over between standing walls; folded over while all lies
        // flat they do not.
        var narrow = DoubleLid(Mm(80), Mm(30), Mm(40), 10, Mm(0.5m)).Build();
        var usual = Enumerable.Range(1, 47).SelectMany(i => Crossings.Of(Folder.InOrder(narrow, i / 48.0).Panels));
        Assert.Contains(usual, crossing => crossing.Depth > 5);
        Assert.All(PieceProofs.Of(narrow, 0.3), proof => Assert.True(proof.Holds, $"{proof}"));
    }

    [Fact]
    public void Every_piece_is_followed_on_its_way()
    {
        foreach (var piece in new[] { Box, DoubleLid(Mm(80), Mm(60), Mm(22), 10, Mm(0.5m)).Build(), Platform(Mm(64), Mm(59), Mm(12), Mm(12)).Build() })
            Assert.Contains(PieceProofs.Of(piece), proof => proof.Kind == FoldingProofKind.NothingPassesOnTheWay && !proof.IsWarning);
    }

    [Fact]
    public void Two_panels_that_stand_crosswise_on_one_level_pass_through_each_other_although_no_corner_goes_through()
    {
        // Both stand upright, equally high, and cross in the middle: where their planes meet only edges touch edges.
        Panel Square(string name) => new(name, "square", PanelRole.Panel, Outline.Through(new(-10, -10), new(10, -10), new(10, 10), new(-10, 10)));
        var upright = RigidMotion.Turn(default, Vector3d.UnitX, 90);
        var across = RigidMotion.Turn(default, Vector3d.UnitZ, 30).After(upright);
        // Each reaches out 10 mm · sin 30° on either side of the other.
        Assert.Equal(5, Crossings.Depth(new(Square("a"), upright), new(Square("b"), across)), 9);
        Assert.Equal(0, Crossings.Depth(new(Square("a"), upright), new(Square("b"), RigidMotion.By(new(0, 0, 20)).After(across))));
    }

    [Fact]
    public void A_corner_that_does_not_close_is_named_with_its_gap()
    {
        var bad = Box with { Folds = [.. Box.Folds.Select(fold => fold.Angle == 135 ? fold with { Angle = 130 } : fold)] };

        // Both halves of each gusset are then 5° short of the middle, on a radius of 14 mm: 2 · 14 · sin 5°.
        var proof = PieceProofs.Of(bad)[0];
        Assert.False(proof.Holds);
        Assert.Equal(2 * 14 * Math.Sin(5 * Math.PI / 180), proof.Found, 9);
        Assert.All(proof.Panels, panel => Assert.Contains("gusset", panel));
    }

    [Fact]
    public void Gussets_that_meet_in_the_middle_of_the_box_pass_through_each_other()
    {
        var wide = GussetBox(Mm(66), Mm(61), Mm(70), Mm(50)).Build();
        Assert.NotEmpty(Crossings.Of(Folder.Finished(wide).Panels));
    }

    [Fact]
    public void The_inside_of_the_folded_box_is_its_floor_and_its_wall_height()
    {
        Assert.Equal(new InsideRoom(66, 61, 70), Rounded(InsideRoom.Of(Folder.Finished(Box))!));

        // Half way up the walls lean outwards: the floor is the narrowest place.
        var half = InsideRoom.Of(Folder.Pose(Box, 0.5))!;
        Assert.Equal(new InsideRoom(66, 61, Math.Round(70 * Math.Sin(Math.PI / 4), 6)), Rounded(half));
        Assert.Null(InsideRoom.Of(Folder.Pose(Box, 0.0)));
    }

    [Fact]
    public void A_round_tin_has_room_to_the_walls_and_to_the_gussets()
    {
        var pose = Folder.Finished(Box);
        Assert.Equal(61 / 2.0 - 28, InsideRoom.RoomAround(pose, ItemSection.Round(56), 64), 6);

        // Wide gussets come nearer than the walls: half the floor's diagonal, less the gusset, which points at 45°.
        var wide = Folder.Finished(GussetBox(Mm(60), Mm(60), Mm(70), Mm(16)).Build());
        Assert.Equal((30 * Math.Sqrt(2)) - 16 - 25, InsideRoom.RoomAround(wide, ItemSection.Round(50), 64), 6);
    }

    [Fact]
    public void A_square_item_meets_the_gussets_before_the_walls()
    {
        var pose = Folder.Finished(GussetBox(Mm(60), Mm(60), Mm(70), Mm(16)).Build());
        var reach = 16 / Math.Sqrt(2);
        Assert.Equal(30 - reach - 10, InsideRoom.RoomAround(pose, ItemSection.Rectangle(20, 20), 64) / Math.Sqrt(2), 6);
        Assert.True(InsideRoom.RoomAround(pose, ItemSection.Rectangle(50, 50), 64) < 0);
        var proofs = PieceProofs.Of(GussetBox(Mm(60), Mm(60), Mm(70), Mm(16)).Build(), ItemSection.Rectangle(50, 50), 72, 1);
        Assert.Equal([FoldingProofKind.ItemIsNotTooTall, FoldingProofKind.ItemGoesIn], proofs.Select(proof => proof.Kind));
        Assert.All(proofs, proof => Assert.False(proof.Holds));
        Assert.Equal(-2, proofs[0].Found, 9);
    }

    private static InsideRoom Rounded(InsideRoom room) =>
        new(Math.Round(room.Width, 6), Math.Round(room.Depth, 6), Math.Round(room.Height, 6));
}
