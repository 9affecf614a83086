using CsCheck;
using Pattern.Press.Nets.Folding;
using Pattern.Press.Nets.Folding.Proofs;
using static Pattern.Press.Nets.Tests.Sheets;

namespace Pattern.Press.Nets.Tests.Folding;

public sealed class GussetFoldingTests
{
    private static readonly Piece Box = GussetBox(Mm(66), Mm(61), Mm(70), Mm(14)).Build();

    private static IEnumerable<Fold> Mitres(Piece box) => box.Folds.Where(fold => fold.Direction == FoldDirection.Mountain);

    [Fact]
    public void The_given_angles_of_the_finished_box_close_every_corner()
    {
        var pose = Folder.Finished(Box);
        Assert.Equal(4, pose.Gaps.Count);
        Assert.All(pose.Gaps, gap => Assert.True(gap.Width < 1e-12 * 201, $"{gap}"));
        Assert.All(Mitres(Box), fold => Assert.Equal(180, pose.Angles[fold], 6));
    }

    [Fact]
    public void The_box_opens_and_shuts_in_60_positions_with_every_corner_closed()
    {
        var before = Folder.Pose(Box, 0.0);
        for (var i = 1; i <= 60; i++)
        {
            var pose = Folder.Pose(Box, i / 60.0);
            Assert.True(pose.WidestGap < 1e-9 * 201, $"{i}: {pose.WidestGap}");

            // Smoothly: no panel jumps. The outermost corners travel a good 110 mm between flat and shut.
            foreach (var (was, now) in before.Panels.Zip(pose.Panels))
                Assert.All(was.Corners.Zip(now.Corners), pair => Assert.InRange(pair.First.DistanceTo(pair.Second), 0, 6));
            before = pose;
        }
    }

    [Fact]
    public void The_walls_rise_together_and_the_gussets_go_in_on_both_sides_alike()
    {
        for (var i = 1; i <= 30; i++)
        {
            var pose = Folder.Pose(Box, i / 30.0);
            foreach (var fold in Box.Folds.Where(fold => fold.Parent == "floor"))
                Assert.Equal(90 * i / 30.0, pose.Angles[fold], 9);
            var gussets = Box.Folds.Where(fold => fold.Angle == 135).ToArray();
            Assert.Equal(8, gussets.Length);
            Assert.All(gussets, fold => Assert.Equal(pose.Angles[gussets[0]], pose.Angles[fold], 6));
            Assert.All(Mitres(Box), fold => Assert.InRange(pose.Angles[fold], 1e-3, 180 + 1e-6));
        }
    }

    [Fact]
    public void The_mitre_rises_as_spherical_trigonometry_says()
    {
        // By symmetry the mitre stays in the upright plane through the corner of the floor, and keeps its 45° to the edges
        // of both walls. With the walls at α it stands at γ, where cos γ cos α + √2 sin γ sin α = 1; the larger root folds in.
        foreach (var opening in new[] { 0.001, 0.02, 0.1, 0.25, 0.5, 0.75, 0.9, 0.99, 1 })
        {
            var pose = Folder.Pose(Box, opening);
            var alpha = opening * Math.PI / 2;
            var gamma = Math.Atan2(Math.Sqrt(2) * Math.Sin(alpha), Math.Cos(alpha))
                + Math.Acos(1 / Math.Sqrt(1 + (Math.Sin(alpha) * Math.Sin(alpha))));
            foreach (var fold in Mitres(Box))
            {
                var gusset = pose.Panel(fold.Child);
                var (a, b) = (gusset.At(fold.From), gusset.At(fold.To));
                Assert.Equal(14 * Math.Sqrt(2) * Math.Sin(gamma), Math.Abs(a.Z - b.Z), 6);
            }
        }
    }

    [Fact]
    public void Whatever_the_sizes_every_position_closes_and_nothing_passes_through_anything() =>
        Gen.Select(Gen.Int[30, 300], Gen.Int[30, 300], Gen.Int[10, 300], Gen.Double[0.1, 0.95], Gen.Double[0, 1]).Sample((a, b, c, d, opening) =>
        {
            var gusset = Math.Max(1, (int)(Math.Min(c, Math.Min(a, b) * 0.65) * d));
            var box = GussetBox(Mm(a), Mm(b), Mm(c + 1), Mm(gusset)).Build();
            var size = Math.Max(box.Sheet.Width.Millimetres, box.Sheet.Height.Millimetres);
            var pose = Folder.Pose(box, opening);
            Assert.True(pose.WidestGap < 1e-9 * size, $"{pose.WidestGap / size}");
            Assert.Empty(Crossings.Of(pose.Panels));
        }, iter: 60);

    [Fact]
    public void Four_folds_around_a_point_turn_as_flat_foldable_ones_do()
    {
        // A point with sectors of 60, 60, 120, 120 degrees. Opposite folds turn alike, and the tangents of half the angles
        // of neighbouring folds keep one ratio: (1 − tan(a/2)tan(b/2))/(1 + tan(a/2)tan(b/2)) or its like (D. A. Huffman,
        // “Curvature and creases”, 1976; from memory). Here only the constancy of that ratio is used.
        var piece = FourFolds();
        Assert.True(FlatFolding.Holds(Assert.Single(InteriorPoint.Of(piece))));
        double? ratio = null;
        for (var i = 1; i < 20; i++)
        {
            var pose = Folder.Pose(piece, i / 20.0);
            Assert.True(pose.WidestGap < 1e-9 * 200, $"{pose.WidestGap}");
            var angles = piece.Folds.Select(fold => Math.Abs(pose.Angles[fold])).ToArray();
            Assert.Equal(angles[0], angles[2], 5);
            Assert.Equal(angles[1], angles[3], 5);
            var now = Math.Tan(angles[0] * Math.PI / 360) / Math.Tan(angles[1] * Math.PI / 360);
            Assert.Equal(ratio ??= now, now, 5);
        }

        Assert.NotEqual(1, ratio!.Value, 0.1);
    }

    private static Piece FourFolds()
    {
        // Folds at headings 0, 60, 120 and 240 degrees: sectors 60, 60, 120, 120.
        Point At(double degrees) => new(100 + (50 * Math.Cos(degrees * Math.PI / 180)), 100 + (50 * Math.Sin(degrees * Math.PI / 180)));
        var middle = new Point(100, 100);
        var (a, b, c, d) = (At(0), At(60), At(120), At(240));
        Panel Sector(string name, Point from, Point to) => new(name, "sector", PanelRole.Panel, Outline.Through(middle, from, to));
        return Solids.ByHand(
            "four folds", "ab",
            [Sector("ab", a, b), Sector("bc", b, c), Sector("cd", c, d), Sector("da", d, a)],
            [
                new("ab", "da", middle, a, FoldDirection.Valley, 180),
                new("ab", "bc", middle, b, FoldDirection.Mountain, 180),
                new("bc", "cd", middle, c, FoldDirection.Valley, 180),
                new("cd", "da", middle, d, FoldDirection.Valley, 180),
            ]);
    }
}
