using Pattern.Press.Nets.Folding;
using Pattern.Press.Nets.Folding.Proofs;

namespace Pattern.Press.Nets.Tests.Folding;

/// <summary>Panels that bend: sleeves, cones and scores along arcs.</summary>
public sealed class BendTests
{
    [Theory]
    [InlineData(12)]
    [InlineData(48)]
    [InlineData(200)]
    public void A_sleeve_closes_and_grows_into_a_cylinder_as_its_strips_get_finer(int strips)
    {
        const double around = 314;
        const double high = 40;
        var pose = Folder.Finished(Sleeve(around, high, strips));
        Assert.Equal(strips, pose.Panels.Count);
        var (first, last) = (pose.Panels[0], pose.Panels[^1]);
        Assert.Equal(0, first.At(new Point(0, 0)).DistanceTo(last.At(new Point(around, 0))), 9);
        Assert.Equal(0, first.At(new Point(0, high)).DistanceTo(last.At(new Point(around, high))), 9);

        // Every strip touches the cylinder inside which it lies; seen along the axis it is a regular polygon, whose radius
        // to the middle of a side is side/(2 tan(π/n)).
        var side = around / strips;
        var middle = pose.Panels.Aggregate(default(Vector3d), (sum, panel) => sum + panel.At(panel.Panel.Outline.Centroid)) * (1.0 / strips);
        foreach (var panel in pose.Panels)
            Assert.Equal(side / (2 * Math.Tan(Math.PI / strips)), panel.At(panel.Panel.Outline.Centroid).DistanceTo(middle), 9);
        Assert.Empty(Crossings.Of(pose.Panels));

        // The cylinder's own volume, U²h/4π, within what a polygon of so many sides lacks of a circle.
        var volume = pose.Panels.Sum(panel => panel.Panel.Outline.Area * Math.Abs(panel.Facing.Dot(panel.At(panel.Panel.Outline.Centroid) - middle)) / 2);
        Assert.InRange(volume / (around * around * high / (4 * Math.PI)), 1 - (7.0 / (strips * strips)), 1);
    }

    [Fact]
    public void Half_rolled_it_is_half_a_turn_round()
    {
        var pose = Folder.Pose(Sleeve(300, 40, 60), 0.5);
        var turned = pose.Panels[0].Facing.Dot(pose.Panels[^1].Facing);

        // 59 of 60 rulings lie between the first and the last strip, each turned by half of 6°.
        Assert.Equal(Math.Cos(59 * 3 * Math.PI / 180), turned, 9);
    }

    // Frustum joining diameters of 5 in and 8 in, 4 in apart: pattern radii 7.12 in and 11.39 in, sector 126.4°. (“The Net of
    // a Frustum”, Geometry 2 course pages, ceemrr.com.)
    [Fact]
    public void A_sector_of_the_published_size_rolls_up_into_the_published_frustum()
    {
        const double inner = 7.12 * 25.4;
        const double outer = 11.39 * 25.4;
        var pose = Folder.Finished(Sector(inner, outer, 126.4, 120));
        var rims = pose.Panels.SelectMany(panel => panel.Panel.Outline.Corners.Select(corner => (Radius: corner.DistanceTo(Apex), At: panel.At(corner)))).ToList();
        var (small, large) = (rims.Where(rim => rim.Radius < inner + 1).Select(rim => rim.At).ToList(), rims.Where(rim => rim.Radius > outer - 1).Select(rim => rim.At).ToList());
        Assert.Equal(5 * 25.4, Widest(small), 0.5);
        Assert.Equal(8 * 25.4, Widest(large), 0.5);
        Assert.Equal(4 * 25.4, Middle(small).DistanceTo(Middle(large)), 0.5);

        // It closes: the two slanted edges come together.
        var (first, last) = (pose.Panels[0], pose.Panels[^1]);
        Assert.Equal(0, first.At(At(outer, 0)).DistanceTo(last.At(At(outer, 126.4))), 0.2);
        Assert.Equal(0, first.At(At(inner, 0)).DistanceTo(last.At(At(inner, 126.4))), 0.2);
    }

    // Right cone, base diameter 5 in, slant height 12 in: lateral area 94.248 in². E. M. Longfield, Sheet Metal Drafting, p. 82.
    [Fact]
    public void A_sector_with_its_point_rolls_up_into_the_handbooks_cone()
    {
        const double slant = 12 * 25.4;
        var degrees = 360 * 2.5 / 12;
        var piece = Sector(0, slant, degrees, 90);
        var pose = Folder.Finished(piece);
        Assert.Equal(90, pose.Panels.Count);
        Assert.Equal(94.248, Outline.Through([.. piece.Panels[0].Outline.Flattened(1e-4)]).Area / (25.4 * 25.4), 2);
        Assert.Equal(94.248, SolidMeasure.Surface(pose.Panels) / (25.4 * 25.4), 1);
        var rim = pose.Panels.SelectMany(panel => panel.Panel.Outline.Corners.Where(corner => corner.DistanceTo(Apex) > 1).Select(panel.At)).ToList();
        Assert.Equal(5 * 25.4, Widest(rim), 0.2);

        // The height of the cone, √(12² − 2.5²).
        Assert.Equal(Math.Sqrt(144 - 6.25) * 25.4, Middle(rim).DistanceTo(pose.Panels[0].At(Apex)), 0.2);
    }

    [Fact]
    public void Along_an_arc_two_panels_fold_that_bend_by_what_each_other_leaves_them()
    {
        // Two panels that meet along an arc, both bent along upright rulings by the same turns: a crease along an arc stays in
        // a plane, and the panels are mirror images in it, so every loop around the crease closes exactly.
        var piece = Creased(16, 60, out var turn);
        var pose = Folder.Finished(piece);
        Assert.Equal(15, pose.Gaps.Count);
        Assert.True(pose.WidestGap < 1e-9 * 200, $"{pose.WidestGap}");
        Assert.True(turn > 1);

        // The crease is no longer straight seen from above: both panels are bowed.
        var bowed = pose.Panels.Where(panel => panel.Panel.Kind == "body").ToList();
        Assert.True(Math.Abs(bowed[0].Facing.Dot(bowed[^1].Facing)) < 0.99);

        // And it opens and shuts with its loops closed.
        for (var i = 1; i < 12; i++)
            Assert.True(Folder.Pose(piece, i / 12.0).WidestGap < 1e-9 * 200, $"{i}: {Folder.Pose(piece, i / 12.0).WidestGap}");
    }

    private static readonly Point Apex = new(500, 500);

    private static Point At(double radius, double degrees)
    {
        var (sine, cosine) = Math.SinCos(degrees * Math.PI / 180);
        return Apex + new Point(radius * cosine, radius * sine);
    }

    private static Piece Sleeve(double around, double high, int strips)
    {
        var bend = new Bend([.. Enumerable.Range(1, strips - 1).Select(i => new Ruling(new(around * i / strips, 0), new(around * i / strips, high), 360.0 / strips))]);
        return Solids.ByHand("sleeve", "sleeve", [new Panel("sleeve", "sleeve", PanelRole.Panel, Outline.Rectangle(0, 0, around, high)) { Bend = bend }], []);
    }

    // A ring sector, clockwise on the page; a whole sector when its inner radius is 0. Between neighbouring rulings a cone
    // turns by what its developed sector lacks of the full circle, seen square to the ruling.
    private static Piece Sector(double inner, double outer, double degrees, int strips)
    {
        var bulge = Math.Tan(degrees * Math.PI / 180 / 4);
        var outline = inner > 0
            ? new Outline([new(At(inner, 0), At(outer, 0)), new(At(outer, 0), At(outer, degrees), bulge), new(At(outer, degrees), At(inner, degrees)), new(At(inner, degrees), At(inner, 0), -bulge)])
            : new Outline([new(Apex, At(outer, 0)), new(At(outer, 0), At(outer, degrees), bulge), new(At(outer, degrees), Apex)]);

        // A pyramid of so many sides: base angle 2π/n between neighbouring faces seen from above, apex angle β of each face.
        // Its dihedral angle follows from sin(half dihedral) = cos(π/n)/cos(β/2) (spherical trigonometry).
        var (beta, share) = (degrees / strips * Math.PI / 180, Math.PI / strips);
        var turn = 180 - (2 * Math.Asin(Math.Cos(share) / Math.Cos(beta / 2)) * 180 / Math.PI);
        var bend = new Bend([.. Enumerable.Range(1, strips - 1).Select(i =>
            new Ruling(inner > 0 ? At(inner, degrees * i / strips) : Apex, At(outer, degrees * i / strips), turn))]);
        return Solids.ByHand("sector", "sector", [new Panel("sector", "sector", PanelRole.Panel, outline) { Bend = bend }], []);
    }

    // A body above a crescent that hangs on an arc; both bend along upright lines. The turns are those of a smooth bow: what
    // the crease's direction changes on the sheet, tan of half of it times the sine of half the fold, is what the ruling turns.
    private static Piece Creased(int strips, double fold, out double turn)
    {
        const double width = 120;
        const double rise = 14;
        var radius = ((width * width / 4) + (rise * rise)) / (2 * rise);
        var half = Math.Asin(width / 2 / radius);
        Point On(int i)
        {
            var angle = -half + (2 * half * i / strips);
            return new Point(100 + (width / 2) + (radius * Math.Sin(angle)), 200 + (radius * (1 - Math.Cos(angle))) - rise);
        }

        var crease = new Edge(On(0), On(strips), -Math.Tan(half / 2));
        crease = crease.DistanceTo(On(strips / 2)) < 1e-6 ? crease : crease with { Bulge = -crease.Bulge };
        var (left, right) = (crease.From, crease.To);
        var body = new Outline([new(new(left.X, 100), new(right.X, 100)), new(new(right.X, 100), right), crease.Reversed, new(left, new(left.X, 100))]);
        var flap = new Outline([crease, new(right, new(right.X, 230)), new(new(right.X, 230), new(left.X, 230)), new(new(left.X, 230), left)]);

        // Given at the middle, solved elsewhere: the angle of the crease is the same all along by symmetry of a circle only
        // nearly, so the rulings are a first guess.
        turn = 2 * Math.Atan(Math.Tan(half / strips) * Math.Tan(fold * Math.PI / 360)) * 180 / Math.PI;
        var turns = turn;
        Bend Rulings(Func<int, (Point From, Point To)> line, int sign) =>
            new([.. Enumerable.Range(1, strips - 1).Select(i => new Ruling(line(i).From, line(i).To, sign * turns))]);
        return Solids.ByHand(
            "creased", "body",
            [
                new Panel("body", "body", PanelRole.Panel, body) { Bend = Rulings(i => (new(On(i).X, 100), On(i)), 1) },
                new Panel("flap", "flap", PanelRole.Panel, flap) { Bend = Rulings(i => (On(i), new(On(i).X, 230)), -1) },
            ],
            [new Fold("body", "flap", crease.From, crease.To, FoldDirection.Valley, fold) { Bulge = crease.Bulge }]);
    }

    private static double Widest(List<Vector3d> points) => points.Max(a => points.Max(b => a.DistanceTo(b)));

    private static Vector3d Middle(List<Vector3d> points) => new(
        (points.Min(p => p.X) + points.Max(p => p.X)) / 2, (points.Min(p => p.Y) + points.Max(p => p.Y)) / 2, (points.Min(p => p.Z) + points.Max(p => p.Z)) / 2);
}
