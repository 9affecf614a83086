using Pattern.Press.Nets;
using Pattern.Press.Nets.Building;
using Pattern.Press.Nets.Folding;
using Pattern.Press.Nets.Folding.Proofs;
using Pattern.Press.Structures.Fitting;

namespace Pattern.Press.Structures.Tests.Proofs;

/// <summary>Structures whose panels form loops, on their way to the finished shape and opened again.</summary>
public sealed class OpeningTests
{
    private const int Positions = 30;

    public static TheoryData<string> Looped => [.. RandomFits.Catalogue.Select(structure => structure.Id).Where(id => Fits(id).Any())];

    [Theory]
    [MemberData(nameof(Looped))]
    public void Every_loop_is_closed_on_the_way_to_the_finished_shape_and_on_the_way_back_open(string id)
    {
        foreach (var (piece, opens) in Fits(id))
        {
            var limit = PieceProofs.WidestGap * Math.Max(piece.Sheet.Width.Millimetres, piece.Sheet.Height.Millimetres);
            for (var i = 0; i <= Positions; i++)
            {
                var part = (double)i / Positions;
                Assert.InRange(Folder.InOrder(piece, part, opens).WidestGap, 0, limit);
                Assert.InRange(Folder.Pose(piece, part).WidestGap, 0, limit);
                Assert.InRange(Folder.Opened(piece, opens, part).WidestGap, 0, limit);
            }
        }
    }

    [Fact]
    public void A_gable_roof_opens_evenly_and_nothing_passes_through_anything()
    {
        foreach (var (piece, opens) in Fits("gable-top-box"))
        {
            var before = Folder.Opened(piece, opens, 0);
            for (var i = 1; i <= 60; i++)
            {
                var pose = Folder.Opened(piece, opens, i / 60.0);
                var roof = pose.Piece.Folds.First(fold => pose.Piece.Panel(fold.Child).Kind == "roof");
                Assert.Equal(roof.Angle * i / 60.0, pose.Angles[roof], 9);
                Assert.DoesNotContain(Crossings.Of(pose.Panels), crossing => crossing.Depth > 1e-3);

                // Smoothly: nothing jumps. No corner goes farther than its distance from the walls in a quarter turn.
                var step = piece.Sheet.Height.Millimetres * Math.PI / 2 / 60 * 3;
                foreach (var (was, now) in before.Panels.Zip(pose.Panels))
                    Assert.All(was.Corners.Zip(now.Corners), pair => Assert.InRange(pair.First.DistanceTo(pair.Second), 0, step));
                before = pose;
            }
        }
    }

    [Fact]
    public void With_its_roof_open_the_walls_of_a_gable_box_stand_and_gables_and_gussets_follow_alike()
    {
        var (piece, opens) = Fits("gable-top-box").First();
        var pose = Folder.Opened(piece, opens, 0.4);
        foreach (var fold in piece.Folds.Where(fold => piece.Panel(fold.Child).Kind is "side" or "back" or "floor"))
            Assert.Equal(90, pose.Angles[fold], 9);
        foreach (var kind in new[] { "gable", "roof" })
            Assert.Single(piece.Folds.Where(fold => piece.Panel(fold.Child).Kind == kind && piece.Panel(fold.Parent).Kind is "front" or "back" or "side" && piece.Panel(fold.Child).Kind == kind).Select(fold => Math.Round(pose.Angles[fold], 6)).Distinct());

        // The free gusset keeps to the roof's edge as the glued ones do.
        var free = pose.Panels.Single(panel => panel.Panel.Kind == "free gusset");
        var mitres = piece.Folds.Where(fold => fold.Direction == FoldDirection.Mountain && new[] { piece.Panel(fold.Child).Kind, piece.Panel(fold.Parent).Kind } is var kinds && kinds.Contains("gable")).ToList();
        Assert.Equal(4, mitres.Count);
        Assert.Single(mitres.Select(fold => Math.Round(pose.Angles[fold], 6)).Distinct());
        Assert.NotNull(free);
    }

    [Fact]
    public void The_flaps_of_a_pillow_are_in_or_follow_the_faces_wholly_out()
    {
        var (piece, opens) = Fits("pillow-box").First();
        var open = Folder.Opened(piece, opens, 0.5);
        foreach (var fold in open.Piece.Folds.Where(fold => open.Piece.Panel(fold.Child).Kind == "end flap" && open.Piece.Panel(fold.Parent).Kind is "front" or "back"))
            Assert.Equal(0, open.Angles[fold], 6);
        Assert.DoesNotContain(Crossings.Of(open.Panels), crossing => crossing.Depth > 0.3);

        // A flap is the bowed face going on: each of its strips lies in the plane of the strip that it hangs on.
        foreach (var flap in open.Panels.Where(panel => panel.Panel.Kind == "end flap"))
            Assert.Contains(open.Panels, face => face.Panel.Kind is "front" or "back" && face.Facing.DistanceTo(flap.Facing) < 1e-6);
    }

    [Fact]
    public void A_pillow_that_is_filled_through_one_end_has_the_other_shut_already()
    {
        var fit = Enumerable.Range(1, 20).Select(seed => RandomFits.Make(RandomFits.Catalogue.Single(one => one.Id == "pillow-box"), seed)).First(fit => fit is not null)!;
        var thing = new AssembledThing(fit.Model.Kit, ModelProofs.Body(fit.Item), part => 0.3);
        var item = thing.Closed.Single(part => part.Item is not null);
        Assert.Equal(Leaving.Back, item.Part.Leaves);

        var pose = thing.Open(0.5, wholly: true).Single(part => part.Part.Part == item.Part.To).Pose!;
        var shut = thing.Closed.Single(part => part.Part.Part == item.Part.To).Pose!;

        Assert.InRange(pose.WidestGap, 0, PieceProofs.WidestGap * pose.Piece.Sheet.Width.Millimetres);
        var curved = pose.Piece.Folds.Where(fold => pose.Piece.Panel(fold.Child).Kind == "end flap" && pose.Piece.Panel(fold.Parent).Kind is "front" or "back").ToList();
        var ends = curved.ToLookup(fold => pose.Panel(fold.Child).Corners.Average(corner => corner.Y) > item.Foot.Y);
        Assert.Equal(ends[true].Count(), ends[false].Count());
        Assert.All(ends[true], fold => Assert.Equal(0, pose.Angles[fold], 6));
        Assert.All(ends[false], fold => Assert.Equal(shut.Angles[fold], pose.Angles[fold], 6));
        Assert.All(ends[false], fold => Assert.True(pose.Angles[fold] > 1));
    }

    [Fact]
    public void A_solid_is_drawn_open_as_far_as_what_goes_in_and_the_thickness_of_its_card_need_and_no_farther()
    {
        var structure = RandomFits.Catalogue.Single(one => one.Id == "regular-solid");
        var tried = 0;
        for (var seed = 1; seed <= 40; seed++)
        {
            if (RandomFits.Make(structure, seed) is not { } fit)
                continue;
            tried++;
            var card = fit.Stocks["card"].Caliper.Millimetres;
            var thing = new AssembledThing(fit.Model.Kit, ModelProofs.Body(fit.Item), part => card);
            var item = thing.Closed.Single(part => part.Item is not null);
            var closed = thing.Closed.Single(part => part.Part.Part == item.Part.To);
            Assert.Equal(Leaving.Up, item.Part.Leaves);
            var open = thing.Open(0.5, wholly: true).Single(part => part.Part.Part == item.Part.To).Pose!;

            // Pulled straight up, it keeps half a card and more from the middle of every panel.
            Assert.True(Room(open, item) >= (card / 2) - 1e-3, fit.ToString());

            // A fortieth of the way nearer to closed it does not.
            var step = Enumerable.Range(1, 39).First(i => thing.Folded(closed, 1 - (i / 40.0)).Panels.Zip(open.Panels).All(pair => pair.First.Facing.DistanceTo(pair.Second.Facing) < 1e-9));
            Assert.True(Room(thing.Folded(closed, 1 - ((step - 1) / 40.0)), item) < card, fit.ToString());
        }

        Assert.InRange(tried, 20, 40);
    }

    // The least distance, seen from above, of any place on the panels above an item's foot from the item; below 0 over it.
    private static double Room(Pose pose, PosedPart item)
    {
        const int Places = 16;
        var least = double.MaxValue;
        foreach (var corners in pose.Panels.Select(panel => panel.Corners))
        {
            for (var i = 1; i + 1 < corners.Count; i++)
            {
                for (var a = 0; a <= Places; a++)
                {
                    for (var b = 0; a + b <= Places; b++)
                    {
                        var place = ((corners[0] * (Places - a - b)) + (corners[i] * a) + (corners[i + 1] * b)) * (1.0 / Places) - item.Foot;
                        if (place.Z < 0)
                            continue;
                        var (x, y) = (Math.Abs(place.X) - (item.Item!.Width / 2), Math.Abs(place.Y) - (item.Item.Depth / 2));
                        least = Math.Min(least, item.Item.IsRound
                            ? double.Hypot(place.X, place.Y) - (item.Item.Width / 2)
                            : x > 0 && y > 0 ? double.Hypot(x, y) : Math.Max(x, y));
                    }
                }
            }
        }

        return least;
    }

    [Fact]
    public void A_pillow_that_is_squeezed_stays_a_tube_and_its_flaps_spring_in_in_any_order()
    {
        foreach (var (piece, _) in Fits("pillow-box"))
        {
            var strips = StripPiece.Of(piece);
            var flaps = PushedFlaps.Of(piece, strips);
            var limit = PieceProofs.WidestGap * Math.Max(piece.Sheet.Width.Millimetres, piece.Sheet.Height.Millimetres);
            var tab = piece.Folds.Single(fold => fold.Child == Pillow.Tab);
            var front = piece.Panel(Pillow.Front).Outline.Bounds;
            var bowing = flaps.Bowing(12).ToList();
            Assert.Equal(12, bowing.Count);
            var thick = -1.0;
            foreach (var pose in bowing)
            {
                // The far side of the back lies along the free side of the front from end to end, so the glued seam holds.
                var (carrier, free) = (Along(pose, Pillow.Back, tab.From), Along(pose, Pillow.Front, tab.From with { X = front.Left }));
                Assert.InRange(carrier.At(tab.From).DistanceTo(free.At(tab.From with { X = front.Left })), 0, limit);
                Assert.InRange(carrier.At(tab.To).DistanceTo(free.At(tab.To with { X = front.Left })), 0, limit);
                Assert.InRange(pose.WidestGap, 0, limit);

                // It gets thicker all the time, from nothing.
                var corners = pose.Panels.Where(panel => panel.Panel.Kind is Pillow.Front or Pillow.Back).SelectMany(panel => panel.Corners).ToList();
                var now = corners.Max(corner => corner.Z) - corners.Min(corner => corner.Z);
                Assert.True(now > thick);
                thick = now;
            }

            // Each of four flaps in or out, but for all in, which is the finished shape: 2⁴ - 1 states.
            var states = flaps.SomeIn().ToList();
            Assert.Equal(15, states.Count);
            var folds = strips.Piece.Folds.Where(fold => strips.Closing.Contains(fold)).ToList();
            var patterns = states.Select(pose => string.Concat(folds.GroupBy(fold => piece.Panels.Single(panel => panel.Kind == Pillow.Flap && strips.StripsOf(panel.Name).Any(strip => strip.Name == fold.Child)).Name).Select(flap =>
            {
                // Each flap is in or out as a whole.
                Assert.Single(flap.Select(fold => pose.Angles[fold] > 30).Distinct());
                return pose.Angles[flap.First()] > 30 ? 'i' : 'o';
            }))).ToList();
            Assert.Equal(15, patterns.Distinct().Count());
            foreach (var pose in states)
            {
                Assert.InRange(pose.WidestGap, 0, limit);
                Assert.DoesNotContain(Crossings.Of(pose.Panels), crossing => crossing.Depth > 0.3);
            }
        }

        static PosedPanel Along(Pose pose, string face, Point place) =>
            pose.Panels.Where(panel => panel.Panel.Kind == face).MinBy(panel => panel.Panel.Outline.DistanceTo(place))!;
    }

    private static IEnumerable<(Piece Piece, IReadOnlyList<string> Opens)> Fits(string id)
    {
        var structure = RandomFits.Catalogue.Single(one => one.Id == id);
        var found = 0;
        for (var seed = 1; seed <= 20 && found < 2; seed++)
        {
            if (RandomFits.Make(structure, seed) is not { } fit)
                continue;
            found++;
            foreach (var part in fit.Model.Kit.Pieces.Where(part => Folder.Finished(part.Piece).Gaps.Count > 0))
                yield return (part.Piece, fit.Model.Kit.Assembly.Find(part.Piece.Id)?.Opens ?? []);
        }
    }
}
