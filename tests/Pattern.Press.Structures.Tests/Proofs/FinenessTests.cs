using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Nets.Building;
using Pattern.Press.Nets.Folding;
using Pattern.Press.Nets.Folding.Proofs;

namespace Pattern.Press.Structures.Tests.Proofs;

/// <summary>What bends is folded as finely as it is asked for, and comes nearer to the smooth surface with the square of it.</summary>
public sealed class FinenessTests
{
    // A hair line of a drawing, in millimetres: the thinnest of ISO 128-20, from memory.
    private const double HairLine = 0.13;

    // What is printed on across a page of A4, in millimetres.
    private const double Measure = 170;

    public static TheoryData<string> Bent => [.. RandomFits.Catalogue.Select(structure => structure.Id).Where(id => Pieces(id).Any())];

    [Fact]
    public void A_pillow_closes_and_holds_what_the_smooth_one_does_the_nearer_the_finer_it_is()
    {
        const double wide = 120, high = 160, rise = 15;
        var piece = Pillow.Build("pillow", "Pillow", Millimetres(wide), Millimetres(high), Millimetres(rise), Millimetres(12));
        var (volumes, depths) = (new List<double>(), new List<double>());
        foreach (var times in new[] { 1, 3 })
        {
            var finer = piece.Finer(times);
            var pose = Folder.Finished(finer);
            Assert.Equal(19 * times, pose.Panels.Count(panel => panel.Panel.Kind == Pillow.Front));
            Assert.InRange(pose.WidestGap, 0, PieceProofs.WidestGap * piece.Sheet.Width.Millimetres);

            // One of the two flaps at each end closes it; the other lies on it.
            List<PosedPanel> solid = [.. pose.Panels.Where(panel => panel.Panel.Kind is Pillow.Front or Pillow.Back || panel.Panel.Name.Contains("left", StringComparison.Ordinal))];
            volumes.Add(Math.Abs(SolidMeasure.Volume(solid)));
            var faces = solid.Where(panel => panel.Panel.Kind == Pillow.Front).SelectMany(panel => panel.Corners).ToList();
            var rim = solid.Where(panel => panel.Panel.Kind == Pillow.Back).SelectMany(panel => panel.Corners).ToList();
            depths.Add(faces.Max(corner => rim.Max(other => Math.Abs((corner - other).Dot(pose.Panels.First(panel => panel.Panel.Name == Pillow.Front).Facing)))));
            Assert.Equal(piece.Cuts, finer.Cuts);
        }

        // Of the smooth one: a strip of the front at the depth d reaches from d to d short of the end, and the strip's own
        // slope m takes √(1 − m²) of its width. Simpson's rule in 2000 steps.
        var radius = ((wide * wide / 4) + (rise * rise)) / (2 * rise);
        var smooth = 0.0;
        for (var i = 0; i <= 2000; i++)
        {
            var off = (i / 2000.0 * wide) - (wide / 2);
            var depth = Math.Sqrt((radius * radius) - (off * off)) - radius + rise;
            var slope = off / (depth + radius - rise);
            smooth += (i is 0 or 2000 ? 1 : i % 2 == 1 ? 4 : 2) * 2 * depth * (high - (2 * depth)) * Math.Sqrt(1 - (slope * slope)) * wide / 6000;
        }

        Assert.InRange((volumes[0] - smooth) / smooth, -0.02, 0.02);
        Assert.InRange((volumes[0] - smooth) / (volumes[1] - smooth), 7, 11);
        Assert.InRange((2 * rise - depths[0]) / (2 * rise - depths[1]), 7, 11);
    }

    [Theory]
    [MemberData(nameof(Bent))]
    public void Everything_of_the_catalogue_that_bends_does_so_as_finely_as_asked(string id)
    {
        foreach (var piece in Pieces(id))
        {
            // Twice as fine, the depth is off by a quarter, so that the steps between three of them are as 4 to 1.
            var depths = new[] { 1, 2, 4 }.Select(times => Depth(Folder.Finished(piece.Finer(times)))).ToList();
            var (first, second) = (Math.Abs(depths[0] - depths[1]), Math.Abs(depths[1] - depths[2]));
            Assert.InRange(first, 1e-6, 0.02 * depths[0]);
            Assert.InRange(first / second, 3, 5.5);
            Assert.True(StripPiece.Of(piece.Finer(4)).Piece.Panels.Count > 3 * StripPiece.Of(piece).Piece.Panels.Count);
        }
    }

    [Theory]
    [MemberData(nameof(Bent))]
    public void As_finely_as_drawings_ask_for_it_strips_stand_off_the_smooth_surface_by_less_than_a_hair_line(string id)
    {
        foreach (var pose in Pieces(id).Select(Folder.Finished))
        {
            // No drawing is wider than the page's measure.
            var corners = pose.Panels.SelectMany(panel => panel.Corners).ToList();
            var scale = Math.Min(1, Measure / corners.Max(corner => corners.Max(corner.DistanceTo)));
            foreach (var ruling in pose.Strips.Rulings)
            {
                var width = pose.Piece.Panel(ruling.Child).Outline.Area / ruling.From.DistanceTo(ruling.To);
                Assert.InRange(scale * width / 2 * Math.Tan(ruling.Angle * Math.PI / 720), 0, HairLine);
            }
        }
    }

    private static Length Millimetres(double length) => Length.FromMillimetres(length);

    // How far the farthest corner is from the plane of the strip that stays still.
    private static double Depth(Pose pose)
    {
        var still = pose.Panels.First(panel => panel.Panel.Name == pose.Piece.Root);
        return pose.Panels.Where(panel => panel.Panel.Role == PanelRole.Panel).SelectMany(panel => panel.Corners).Max(corner => Math.Abs((corner - still.Corners[0]).Dot(still.Facing)));
    }

    private static IEnumerable<Piece> Pieces(string id) =>
        Enumerable.Range(1, 5).Select(seed => RandomFits.Make(RandomFits.Catalogue.Single(structure => structure.Id == id), seed)).FirstOrDefault(fit => fit is not null) is { } found
            ? found.Model.Kit.Pieces.Select(part => part.Piece).Where(piece => piece.Panels.Any(panel => panel.Bend is not null))
            : [];
}
