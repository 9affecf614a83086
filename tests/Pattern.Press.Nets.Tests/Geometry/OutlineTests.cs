using CsCheck;

namespace Pattern.Press.Nets.Tests.Geometry;

public sealed class OutlineTests
{
    private static readonly Outline Rounded = new(
    [
        new(new(10, 0), new(30, 0)), new(new(30, 0), new(40, 10), Math.Tan(Math.PI / 8)), new(new(40, 10), new(40, 20)),
        new(new(40, 20), new(0, 20)), new(new(0, 20), new(0, 10)), new(new(0, 10), new(10, 0), Math.Tan(Math.PI / 8)),
    ]);

    [Fact]
    public void A_rectangle_with_two_rounded_corners_has_the_area_of_arithmetic()
    {
        Assert.Equal(800 - (2 * (100 - (Math.PI * 25))), Rounded.Area, 9);
        Assert.Equal(20 + 10 + 40 + 10 + (Math.PI * 10), Rounded.Perimeter, 9);
        Assert.True(Rounded.IsClockwise);
        Assert.Equal(-Rounded.Area, Rounded.Reversed.Area, 9);
        Assert.False(Rounded.Reversed.IsClockwise);
    }

    [Fact]
    public void A_sector_of_radius_7_and_arc_14_has_area_49()
    {
        // E. M. Longfield, Sheet Metal Drafting, p. 82 (inches there; the figure holds in any unit).
        var angle = 14.0 / 7;
        Point end = new(7 * Math.Cos(angle), 7 * Math.Sin(angle));
        var sector = new Outline([new(new(0, 0), new(7, 0)), new(new(7, 0), end, Math.Tan(angle / 4)), new(end, new(0, 0))]);
        Assert.Equal(49, sector.Area, 9);
        Assert.Equal(14, sector.Edges[1].Length, 9);
        Assert.Equal(7, sector.Edges[1].Radius, 9);
        Assert.True(sector.Edges[1].Centre.DistanceTo(default) < 1e-9);
    }

    [Theory]
    [InlineData(1, 9.9, true)]
    [InlineData(1, 1, false)]
    [InlineData(5, 5, true)]
    [InlineData(2.8, 2.8, false)]
    [InlineData(3.0, 3.0, true)]
    [InlineData(37.5, 2.5, false)]
    [InlineData(36.9, 3.1, true)]
    [InlineData(20, 21, false)]
    [InlineData(-1, 15, false)]
    public void A_point_is_inside_up_to_the_arc_itself(double x, double y, bool inside) =>
        Assert.Equal(inside, Rounded.Contains(new(x, y)));

    [Fact]
    public void A_hollow_arc_takes_its_segment_away()
    {
        var bitten = new Outline([new(new(0, 0), new(20, 0), -1), new(new(20, 0), new(20, 30)), new(new(20, 30), new(0, 30)), new(new(0, 30), new(0, 0))]);
        Assert.Equal(600 - (Math.PI * 50), bitten.Area, 9);
        Assert.False(bitten.Contains(new(10, 9)));
        Assert.True(bitten.Contains(new(10, 11)));
        Assert.Equal(new Bounds(0, 0, 20, 30), bitten.Bounds);
    }

    [Fact]
    public void Bounds_reach_round_the_bulge_of_an_arc()
    {
        var half = new Outline([new(new(0, 0), new(0, 20), 1), new(new(0, 20), new(0, 0))]);
        Assert.Equal((0.0, 0.0, 10.0, 20.0), (half.Bounds.Left, half.Bounds.Top, half.Bounds.Right, half.Bounds.Bottom));
        Assert.Equal(Math.PI * 50, half.Area, 9);
    }

    [Fact]
    public void The_centroid_of_a_triangle_is_a_third_of_the_way_up()
    {
        var centroid = Outline.Through(new(0, 30), new(0, 0), new(30, 30)).Centroid;
        Assert.True(centroid.DistanceTo(new(10, 20)) < 1e-9);
    }

    [Fact]
    public void A_flattened_outline_stays_within_its_tolerance() =>
        Gen.Select(Gen.Double[0.001, 1], Gen.Double[-3, 3]).Where((_, bulge) => Math.Abs(bulge) > 0.01).Sample((tolerance, bulge) =>
        {
            var arc = new Edge(new(3, 4), new(50, -20), bulge);
            Point[] points = [.. arc.Flattened(tolerance), arc.To];
            for (var i = 1; i < points.Length; i++)
            {
                Assert.True(arc.DistanceTo(points[i]) < 1e-9);
                Assert.True(arc.DistanceTo(points[i - 1].MidwayTo(points[i])) <= tolerance * 1.000001);
            }
        }, iter: 200);

    [Fact]
    public void The_two_ways_along_an_arc_pass_the_same_points() =>
        Gen.Select(Gen.Double[-3, 3], Gen.Double[0, 1]).Sample((bulge, part) =>
        {
            var edge = new Edge(new(3, 4), new(50, -20), bulge);
            Assert.True(edge.At(part).DistanceTo(edge.Reversed.At(1 - part)) < 1e-6);
            Assert.Equal(edge.Length, edge.Between(0, part).Length + edge.Between(part, 1).Length, 1e-6);
        }, iter: 200);

    [Fact]
    public void A_move_keeps_areas_and_turns_clockwise_on_the_page()
    {
        var moved = Motion.Turn(90, new(0, 0)).Apply(new Point(10, 0));
        Assert.True(moved.DistanceTo(new(0, 10)) < 1e-12);
        Gen.Select(Gen.Double[-360, 360], Gen.Double[-100, 100], Gen.Double[-100, 100]).Sample((turn, x, y) =>
            Assert.Equal(Rounded.Area, Motion.Turn(turn, new(x, y)).Apply(Rounded).Area, 1e-8), iter: 100);
    }

    [Fact]
    public void A_mirror_image_twice_is_the_outline_itself()
    {
        var twice = Rounded.MirroredAt(17).MirroredAt(17);
        Assert.True(Rounded.MirroredAt(17).IsClockwise);
        Assert.Equal(Rounded.Edges, twice.Edges);
    }
}
