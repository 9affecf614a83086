using CsCheck;
using Pattern.Press.Nets.Building;

namespace Pattern.Press.Nets.Tests.Geometry;

public sealed class InsetTests
{
    [Fact]
    public void A_triangle_loses_twice_the_border_over_the_tangent_of_half_each_angle()
    {
        // Each corner moves along the line that halves its angle, so a side loses border ÷ tan(angle ÷ 2) at both its ends
        // (plane trigonometry).
        var triangle = Outline.Through(new(30, 0), new(60, 50), new(0, 50));
        var inside = Inset.Of(triangle, 4)!;
        var bottom = inside.Edges.MaxBy(edge => edge.Middle.Y);
        Assert.Equal(60 - (2 * 4 / Math.Tan(Math.Atan2(50, 30) / 2)), bottom.Chord, 9);
        Assert.Equal(46, bottom.Middle.Y, 9);
        Assert.Equal(3, inside.Edges.Count);
    }

    [Theory]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(12)]
    public void A_regular_polygon_stays_one_and_is_nothing_beyond_its_inner_circle(int sides)
    {
        // Its inner circle's radius is side ÷ (2 tan(180° ÷ sides)).
        var radius = 30 / (2 * Math.Tan(Math.PI / sides));
        var inside = Inset.Of(Polygons.Regular(sides, 30), radius / 3)!;
        Assert.All(inside.Edges, edge => Assert.Equal(20, edge.Chord, 9));
        Assert.Null(Inset.Of(Polygons.Regular(sides, 30), radius + 0.001));
    }

    [Fact]
    public void A_side_that_the_others_close_over_falls_away()
    {
        // A point cut off 2 mm wide is gone once the border is wider than it.
        var cut = Outline.Through(new(29, 0), new(31, 0), new(60, 50), new(0, 50));
        Assert.Equal(4, Inset.Of(cut, 0.5)!.Edges.Count);
        Assert.Equal(3, Inset.Of(cut, 4)!.Edges.Count);
    }

    [Fact]
    public void Arcs_keep_their_centres()
    {
        // A quarter of a ring between radii 20 and 50; rounded corners of 6 mm become 3 mm, and those of 2 mm square.
        var ring = new Outline([new(new(0, -50), new(50, 0), Math.Tan(Math.PI / 8)), new(new(50, 0), new(20, 0)), new(new(20, 0), new(0, -20), -Math.Tan(Math.PI / 8)), new(new(0, -20), new(0, -50))]);
        var inside = Inset.Of(ring, 3)!;
        Assert.Equal([23, 47], inside.Edges.Where(edge => edge.IsArc).Select(edge => Math.Round(edge.Radius, 9)).Order());
        Assert.All(inside.Edges.Where(edge => edge.IsArc), edge => Assert.Equal(0, edge.Centre.DistanceTo(default), 9));
        Assert.Equal([3, 3, 3, 3], Inset.Of(Rounded(6), 3)!.Edges.Where(edge => edge.IsArc).Select(edge => Math.Round(edge.Radius, 9)));
        Assert.DoesNotContain(Inset.Of(Rounded(2), 3)!.Edges, edge => edge.IsArc);
    }

    [Fact]
    public void Every_place_on_it_is_as_far_from_a_convex_outline_as_the_border_is_wide() =>
        Gen.Select(Gen.Double[0, 2 * Math.PI].Array[3, 9], Gen.Double[1, 30]).Sample((angles, border) =>
        {
            // Corners on a circle of 50 mm; those nearer to each other than 0.1 rad are one.
            var around = angles.Order().Aggregate(new List<double>(), (kept, next) => kept.Count == 0 || next - kept[^1] > 0.1 ? [.. kept, next] : kept);
            if (around.Count < 3 || around[0] + (2 * Math.PI) - around[^1] < 0.1)
                return;
            var outline = Outline.Through([.. around.Select(angle => new Point(50 * Math.Cos(angle), 50 * Math.Sin(angle)))]);
            var inside = Inset.Of(outline, border);

            // From outside: a place is left if some point of a fine grid is that far from every side.
            var grid = from x in Enumerable.Range(-50, 101) from y in Enumerable.Range(-50, 101) let p = new Point(x, y) where outline.Contains(p) select (p, Far: outline.DistanceTo(p));
            if (inside is null)
            {
                Assert.All(grid, point => Assert.True(point.Far < border + 1e-6));
                return;
            }

            Assert.All(inside.Edges, edge => Assert.Equal(border, outline.DistanceTo(edge.Middle), 6));
            Assert.All(grid.Where(point => Math.Abs(point.Far - border) > 1e-6), point => Assert.Equal(point.Far > border, inside.Contains(point.p)));
        }, iter: 60);

    [Fact]
    public void Shapes_are_told_from_their_mirror_images()
    {
        var one = Outline.Through(new(0, 0), new(40, 0), new(30, 20), new(0, 20));
        var turned = Motion.Turn(77, new(5, 9)).Apply(one);
        Assert.True(Inset.IsSameShape(one, turned));
        Assert.False(Inset.IsSameShape(one, one.MirroredAt(3)));
        Assert.True(Inset.IsSameShape(Polygons.Regular(5, 20), Polygons.Regular(5, 20).MirroredAt(3)));
        Assert.False(Inset.IsSameShape(Outline.Rectangle(0, 0, 30, 20), Outline.Rectangle(0, 0, 25, 25)));
    }

    private static Outline Rounded(double radius)
    {
        var (w, h, quarter) = (60.0, 40.0, Math.Tan(Math.PI / 8));
        return new Outline(
        [
            new(new(radius, 0), new(w - radius, 0)), new(new(w - radius, 0), new(w, radius), quarter),
            new(new(w, radius), new(w, h - radius)), new(new(w, h - radius), new(w - radius, h), quarter),
            new(new(w - radius, h), new(radius, h)), new(new(radius, h), new(0, h - radius), quarter),
            new(new(0, h - radius), new(0, radius)), new(new(0, radius), new(radius, 0), quarter),
        ]);
    }
}
