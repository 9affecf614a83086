using Pattern.Press.Measure;
using Pattern.Press.Nets.Building;
using Pattern.Press.Nets.Folding;
using Pattern.Press.Nets.Folding.Proofs;
using static Pattern.Press.Nets.Tests.Sheets;

namespace Pattern.Press.Nets.Tests.Folding;

/// <summary>Every proof of a kit, by arithmetic that a maker can follow, and with a fault that it has to find.</summary>
public sealed class KitProofTests
{
    private const double Card = 0.3;
    private const double Paper = 0.1;

    [Fact]
    public void A_sound_box_with_lid_and_platform_passes_every_proof()
    {
        var proofs = Prove(Box(), new ItemBody(true, 50, 50, 50), 1);
        Assert.All(proofs, proof => Assert.True(proof.Holds, $"{proof}"));
        FoldingProofKind[] wanted =
        [
            FoldingProofKind.ClosesFinished, FoldingProofKind.ClosesOnTheWay, FoldingProofKind.NothingPassesFinished, FoldingProofKind.NothingPassesOnTheWay,
            FoldingProofKind.SeamsLieFlat, FoldingProofKind.SeamsLieInside, FoldingProofKind.GlueHasRoom, FoldingProofKind.Clearance, FoldingProofKind.NotTooLoose,
            FoldingProofKind.RoomBesideGussets, FoldingProofKind.GoesTogether, FoldingProofKind.NothingPassesAssembled,
            FoldingProofKind.RoomAroundItem, FoldingProofKind.RoomAboveItem, FoldingProofKind.ItemPassesOpening,
        ];
        Assert.Empty(wanted.Except(proofs.Select(proof => proof.Kind)));
    }

    [Theory]
    [InlineData(3.0, 1.2, true)]
    [InlineData(2.3, 0.5, true)]
    [InlineData(2.2, 0.4, false)]
    [InlineData(1.5, -0.3, false)]
    public void A_lid_has_the_room_that_is_left_by_six_layers_of_card(double larger, double room, bool holds)
    {
        // On both sides: half the card of the box and of the lid, a corner tab, and the inner wall.
        var proof = Find(Prove(Box(lid: larger)), FoldingProofKind.Clearance, "lid");
        Assert.Equal(room, proof.Found, 6);
        Assert.Equal(holds, proof.Holds);
        Assert.Equal(holds ? 0 : 0.5 - room, proof.Lacks, 6);
        Assert.Equal(("lid", "base"), (proof.Piece, proof.Other));
    }

    [Fact]
    public void Mats_on_the_outside_of_the_box_take_room_from_the_lid()
    {
        var plain = Box();
        Part Mat(SheetSide side) => new(Mats.Rectangle("mat", "Mat", new Size(Mm(50), Mm(50))), PartKind.Mat, "paper", 4, "walls", Goes: "base", On: ["long wall", "short wall"], Side: side);
        var inside = plain with { Parts = [.. plain.Parts, Mat(SheetSide.Facing)] };
        var outside = plain with { Parts = [.. plain.Parts, Mat(SheetSide.Away)] };
        Assert.Equal(1.2, Find(Prove(inside), FoldingProofKind.Clearance, "lid").Found, 6);
        Assert.Equal(1.2 - (2 * Paper), Find(Prove(outside), FoldingProofKind.Clearance, "lid").Found, 6);
    }

    [Fact]
    public void Thick_card_wants_as_much_room_as_it_is_thick()
    {
        Assert.Equal(0.5, KitProofs.Clearance(0.3));
        Assert.Equal(0.8, KitProofs.Clearance(0.8));
    }

    [Fact]
    public void A_loose_lid_is_a_warning_and_nothing_worse()
    {
        // Room for more than four times what it needs, and more than twice the ease.
        var proof = Find(Prove(Box(lid: 4.5), new ItemBody(true, 40, 40, 50), 1), FoldingProofKind.NotTooLoose, "lid");
        Assert.Equal((2.7, 2.0), (Math.Round(proof.Found, 6), proof.Limit));
        Assert.Equal(Verdict.Doubtful, proof.Verdict);
    }

    [Fact]
    public void A_round_item_has_the_room_to_the_nearer_walls_when_the_gussets_lie_flat_against_the_others()
    {
        // The floor is 66 × 61. Gussets of 14 mm reach 14 into the corner: half the diagonal of the floor less that and half
        // a card. Flat against the walls they take two cards there.
        var proof = Find(Prove(Box(platform: false), new ItemBody(true, 58, 58, 50), 1), FoldingProofKind.RoomAroundItem);
        Assert.Equal(30.5 - 29 - 0.15, proof.Found, 6);
        Assert.True(proof.Holds);
        Assert.Equal("base", proof.Piece);
    }

    [Fact]
    public void An_item_of_the_floors_shape_needs_the_gussets_flat_and_loses_their_layers()
    {
        // Across the gussets two more cards on each side, along them only half the card of the wall.
        var proof = Find(Prove(Box(platform: false), new ItemBody(false, 62, 59, 50), 1), FoldingProofKind.RoomAroundItem);
        Assert.Equal(Math.Min(30.5 - 29.5 - 0.15, 33 - 31 - 0.15 - (2 * Card)), proof.Found, 6);
        Assert.False(proof.Holds);
        Assert.Equal(1 - proof.Found, proof.Lacks, 9);
    }

    [Theory]
    [InlineData(false, 22, 0, 2, true)]
    [InlineData(false, 21, 0, 1, true)]
    [InlineData(false, 20.6, 0, 0.6, false)]
    [InlineData(false, 15, 15, -5, false)]
    [InlineData(false, 23, 24, 5, true)]
    [InlineData(true, 15, 15, 1.2132, true)]
    [InlineData(true, 14, 14, -0.201, false)]
    public void Several_items_have_their_ease_between_them(bool isRound, double right, double back, double room, bool holds)
    {
        var kit = Box();
        var parts = kit.Assembly.Parts.Select(part => part.Part == Assembly.Item
            ? part with { Places = [new PlaceShift(-right / 2, -back / 2, 0), new PlaceShift(right / 2, back / 2, 0)] }
            : part);
        var proof = Find(Prove(kit with { Assembly = new Assembly([.. parts], kit.Assembly.Seams) }, new ItemBody(isRound, 20, 20, 20), 1), FoldingProofKind.RoomBetweenItems);
        Assert.Equal(room, proof.Found, 0.0001);
        Assert.Equal(holds, proof.Holds);
        Assert.Equal(holds ? 0 : 1 - room, proof.Lacks, 0.0001);
    }

    [Fact]
    public void The_room_above_an_item_ends_at_the_lids_own_card()
    {
        // Walls 70 high from the middle of the floor's card, on top of them the lid; the item stands on the platform, whose
        // lips and top add half a card below and one in all between: 12 + 0.3 above the floor's surface.
        var kit = Box();
        var proof = Find(Prove(kit, new ItemBody(true, 40, 40, 50), 1), FoldingProofKind.RoomAboveItem);
        Assert.Equal(70 - 0.15 - (12 + Card) - 50, proof.Found, 6);
        var tall = Find(Prove(kit, new ItemBody(true, 40, 40, 60), 1), FoldingProofKind.RoomAboveItem);
        Assert.False(tall.Holds);
        Assert.Contains("top", tall.Panels);
    }

    [Fact]
    public void An_item_wider_than_the_opening_does_not_go_in()
    {
        // Walls that lean inwards: wide enough at the floor, too narrow at the top.
        var kit = Box(platform: false);
        var leaning = Leaning(100);
        var narrow = kit with { Parts = [new Part(leaning, PartKind.Piece, "card", 1)], Assembly = Assembly.OfFirst([new Part(leaning, PartKind.Piece, "card", 1)]) };
        var proofs = Prove(narrow, new ItemBody(false, 50, 50, 10), 0);
        Assert.True(Find(proofs, FoldingProofKind.RoomAroundItem).Holds);
        var opening = Find(proofs, FoldingProofKind.ItemPassesOpening);

        // 40 mm up, walls at 100° have come in by 40 sin 10° on each side.
        Assert.Equal(30 - (40 * Math.Sin(10 * Math.PI / 180)) - 25 - 0.15, opening.Found, 6);
        Assert.False(opening.Holds);
    }

    [Theory]
    [InlineData(7, Verdict.Holds)]
    [InlineData(5, Verdict.Doubtful)]
    [InlineData(2, Verdict.Fails)]
    public void Glue_wants_tabs_six_millimetres_wide(int depth, Verdict verdict)
    {
        var lid = DoubleLid(Mm(69), Mm(64), Mm(depth), 5, Mm(0.5m)).Build();
        var proof = Find(Prove(One(lid)), FoldingProofKind.GlueHasRoom);
        Assert.Equal(depth, proof.Found, 9);
        Assert.Equal(verdict, proof.Verdict);
    }

    [Fact]
    public void A_tab_that_stands_off_what_it_is_glued_to_is_found()
    {
        var lid = DoubleLid(Mm(69), Mm(64), Mm(22), 10, Mm(0.5m)).Build();
        var bad = lid with { Folds = [.. lid.Folds.Select(fold => fold.Child.StartsWith("glue tab", StringComparison.Ordinal) || fold.Child.Contains("glue tab", StringComparison.Ordinal) ? fold with { Angle = 88 } : fold)] };
        Assert.True(Find(Prove(One(lid)), FoldingProofKind.SeamsLieFlat).Holds);
        var proof = Find(Prove(One(bad)), FoldingProofKind.SeamsLieFlat);

        // Two degrees off over its 22 mm.
        Assert.Equal(22 * Math.Sin(2 * Math.PI / 180), proof.Found, 6);
        Assert.False(proof.Holds);
    }

    [Fact]
    public void Glue_that_nothing_lies_against_is_found()
    {
        var platform = Platform(Mm(64), Mm(59), Mm(12), Mm(12)).Build();
        var proof = Find(Prove(One(platform)), FoldingProofKind.SeamsLieFlat);
        Assert.True(double.IsPositiveInfinity(proof.Found));
        Assert.Equal(Verdict.Fails, proof.Verdict);
    }

    [Fact]
    public void A_tab_longer_than_what_it_is_glued_to_reaches_beyond_it()
    {
        // A flap folded over onto a panel 10 mm deep, itself 12 deep.
        ScoredSheet Hem(int deep) => new()
        {
            Id = "hem",
            Name = "Hem",
            Across = [Mm(40)],
            Down = [Mm(deep), Mm(10)],
            Map = ["h", "F"],
            Cells = new Dictionary<char, Cell> { ['F'] = Floor, ['h'] = new() { Kind = "hem", Role = PanelRole.Tab, Fold = Valley(180), Glue = SheetSide.Facing } },
            Root = 'F',
        };
        Assert.Equal(0, Find(Prove(One(Hem(8).Build())), FoldingProofKind.SeamsLieInside).Found, 9);
        var proof = Find(Prove(One(Hem(12).Build())), FoldingProofKind.SeamsLieInside);
        Assert.Equal(2, proof.Found, 6);
        Assert.False(proof.Holds);
    }

    [Fact]
    public void A_platform_held_off_the_floor_is_not_glued_to_it()
    {
        Assert.Equal(0, Find(Prove(Box()), FoldingProofKind.SeamsLieFlat, "platform").Found, 6);
        var kit = Box();
        var high = kit with
        {
            Assembly = kit.Assembly with { Parts = [.. kit.Assembly.Parts.Select(part => part.Part == "platform" ? part with { Places = [new PlaceShift(0, 0, 1)] } : part)] },
        };
        var proof = Find(Prove(high), FoldingProofKind.SeamsLieFlat, "platform");
        Assert.Equal(1, proof.Found, 6);
        Assert.False(proof.Holds);
    }

    [Fact]
    public void A_platform_has_its_slack_less_the_cards_and_loses_two_gussets_beside_it()
    {
        // 2 mm smaller than the floor: half a card of the wall and half its own on each side; gussets take two cards more.
        var proofs = Prove(Box());
        Assert.Equal(2 - (2 * Card), Find(proofs, FoldingProofKind.Clearance, "platform").Found, 6);
        Assert.Equal(0, Find(proofs, FoldingProofKind.Clearance, "platform").Limit);
        Assert.Equal(2 - (2 * Card) - (4 * Card), Find(proofs, FoldingProofKind.RoomBesideGussets, "platform").Found, 6);
    }

    [Fact]
    public void A_lid_put_on_beside_its_box_passes_through_it()
    {
        var kit = Box();
        var beside = kit with
        {
            Assembly = kit.Assembly with { Parts = [.. kit.Assembly.Parts.Select(part => part.Part == "lid" ? part with { Places = [new PlaceShift(20, 0, 0)] } : part)] },
        };
        Assert.True(Find(Prove(kit), FoldingProofKind.NothingPassesAssembled).Holds);
        var proof = Find(Prove(beside), FoldingProofKind.NothingPassesAssembled);
        Assert.False(proof.Holds);
        Assert.Equal(("lid", "base"), (proof.Piece, proof.Other));
        Assert.False(Find(Prove(beside), FoldingProofKind.GoesTogether, "lid").Holds);
    }

    [Fact]
    public void A_solid_that_claims_to_close_does_and_a_tray_does_not()
    {
        // A cube of 40 mm: CRC Standard Mathematical Tables and Formulae, 30th ed., a³.
        var cube = Solids.Net("cube", 40, 90);
        var kit = One(cube);
        kit = kit with { Assembly = new Assembly([new AssembledPart(cube.Id) { ClaimsClosed = true }], []) };
        Assert.True(Find(Prove(kit), FoldingProofKind.ClosesAllRound).Holds);
        Assert.Equal(64000, Find(Prove(kit), FoldingProofKind.Encloses).Found, 3);

        var tray = Leaning(90);
        var open = One(tray) with { Assembly = new Assembly([new AssembledPart(tray.Id) { ClaimsClosed = true }], []) };
        var proof = Find(Prove(open), FoldingProofKind.ClosesAllRound);
        Assert.Equal(Verdict.Fails, proof.Verdict);

        // Half way along the top of a wall the nearest other wall is 30 mm away; near its ends 15.
        Assert.Equal(30, proof.Found, 6);
    }

    [Fact]
    public void What_claims_to_fold_flat_has_to_meet_both_theorems()
    {
        Kit Claiming(Piece piece) => One(piece) with { Assembly = new Assembly([new AssembledPart(piece.Id) { ClaimsFlatFoldable = true }], []) };
        var gusseted = GussetBox(Mm(66), Mm(61), Mm(70), Mm(14)).Build();

        // Five folds meet at each corner of the floor, an odd number: it stands, and never lies flat.
        Assert.False(Find(Prove(Claiming(gusseted)), FoldingProofKind.FoldsFlat).Holds);
        Assert.True(Find(Prove(Claiming(Cross(45, 1))), FoldingProofKind.FoldsFlat).Holds);

        // Kawasaki: 45 − 90 + … no longer adds up when a diagonal leaves its place by 5 degrees; twice that is found.
        Assert.Equal(10, Find(Prove(Claiming(Cross(50, 1))), FoldingProofKind.FoldsFlat).Found, 6);

        // Maekawa: all valleys cannot lie flat.
        Assert.False(Find(Prove(Claiming(Cross(45, 0))), FoldingProofKind.FoldsFlat).Holds);
    }

    [Fact]
    public void Edges_that_are_said_to_meet_are_measured()
    {
        Kit Saying(Piece piece) => One(piece) with { Assembly = Assembly.OfFirst(One(piece).Parts) with { Seams = [new Seam(piece.Id, "north", piece.Id, "east", null, SeamHold.Meet)] } };
        var proof = Find(Prove(Saying(Tray(90))), FoldingProofKind.EdgesMeet);
        Assert.Equal(0, proof.Found, 9);

        // Leaning out by ten degrees the upper ends part: each has moved 40 sin 10° its own way.
        proof = Find(Prove(Saying(Tray(80))), FoldingProofKind.EdgesMeet);
        Assert.Equal(40 * Math.Sin(10 * Math.PI / 180) * Math.Sqrt(2), proof.Found, 6);
        Assert.False(proof.Holds);
    }

    private static Kit Box(double lid = 3, bool platform = true)
    {
        Part[] parts =
        [
            new(GussetBox(Mm(66), Mm(61), Mm(70), Mm(14)).Build(), PartKind.Piece, "card", 1),
            new(DoubleLid(Mm(66 + (decimal)lid), Mm(61 + (decimal)lid), Mm(22), 10, Mm(0.7m)).Build(), PartKind.Piece, "card", 1),
            .. platform ? new[] { new Part(RealPlatform(), PartKind.Piece, "card", 1) } : [],
        ];
        return new Kit(Ruler.WholeMillimetres, parts)
        {
            Assembly = new Assembly(
                [
                    new AssembledPart("base") { OpensWholly = true },
                    .. platform ? new[] { new AssembledPart("platform") { Goes = GoesWhere.Inside, To = "base", Stands = Stance.UpsideDown } } : [],
                    new AssembledPart(Assembly.Item) { Goes = GoesWhere.Inside, To = "base" },
                    new AssembledPart("lid") { Goes = GoesWhere.Over, To = "base", Stands = Stance.UpsideDown },
                ],
                platform ? [new Seam("platform", "lip", "base", "floor", SheetSide.Facing, SeamHold.Glue)] : []),
        };
    }

    // Lips with slanted ends, so that they do not run into each other.
    private static Piece RealPlatform()
    {
        var sheet = Platform(Mm(64), Mm(59), Mm(12), Mm(8));
        var cells = sheet.Cells.ToDictionary(cell => cell.Key, cell => cell.Key == 'l' ? cell.Value with { Taper = 50 } : cell.Value);
        return (sheet with { Cells = cells }).Build();
    }

    private static Piece Leaning(double angle) => Tray(angle, Mm(60), Mm(60));

    private static Piece Tray(double angle) => Tray(angle, Mm(60), Mm(60));

    private static Piece Tray(double angle, Length length, Length width) => new ScoredSheet
    {
        Id = "tray",
        Name = "Tray",
        Across = [Mm(40), length, Mm(40)],
        Down = [Mm(40), width, Mm(40)],
        Map = [".n.", "wFe", ".s."],
        Cells = new Dictionary<char, Cell>
        {
            ['F'] = Floor,
            ['n'] = new() { Kind = "north", Fold = Valley(angle) },
            ['s'] = new() { Kind = "south", Fold = Valley(angle) },
            ['w'] = new() { Kind = "west", Fold = Valley(angle) },
            ['e'] = new() { Kind = "east", Fold = Valley(angle) },
        },
        Root = 'F',
    }.Build();

    // Four sectors around a point: right, down, left, and one ray upwards and to the right at an angle from the right.
    private static Piece Cross(double angle, int mountains)
    {
        Point On(double degrees) => new(100 + (50 * Math.Cos(degrees * Math.PI / 180)), 100 + (50 * Math.Sin(degrees * Math.PI / 180)));
        var middle = new Point(100, 100);
        double[] rays = [0, 90, 225, 360 - angle];
        string[] names = ["a", "b", "c", "d"];
        var panels = names.Select((name, i) => new Panel(name, "sector", PanelRole.Panel, Outline.Through(middle, On(rays[i]), On(rays[(i + 1) % 4])))).ToList();
        var folds = rays.Select((ray, i) => new Fold(names[(i + 3) % 4], names[i], middle, On(ray), i < mountains ? FoldDirection.Mountain : FoldDirection.Valley, 180)).ToList();
        return Solids.ByHand("cross", "a", panels, folds);
    }

    private static Kit One(Piece piece) => new(Ruler.WholeMillimetres, [new Part(piece, PartKind.Piece, "card", 1)]);

    private static IReadOnlyList<FoldingProof> Prove(Kit kit, ItemBody? item = null, double ease = 1) =>
        KitProofs.Of(new KitToProve(kit, item, ease, part => part.Stock == "paper" ? Paper : Card));

    private static FoldingProof Find(IReadOnlyList<FoldingProof> proofs, FoldingProofKind kind, string? piece = null) =>
        proofs.Single(proof => proof.Kind == kind && (piece is null || proof.Piece == piece));
}
