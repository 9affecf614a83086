using CsCheck;

namespace Pattern.Press.Nets.Tests.Geometry;

public sealed class OverlapTests
{
    [Fact]
    public void Rectangles_overlap_by_the_rectangle_they_share() =>
        Gen.Select(Gen.Int[-10, 10].Array[4], Gen.Int[1, 15].Array[4]).Sample((at, size) =>
        {
            int[] n = [at[0], at[0] + size[0], at[1], at[1] + size[1], at[2], at[2] + size[2], at[3], at[3] + size[3]];
            var (a, b) = (Outline.Rectangle(n[0], n[2], n[1], n[3]), Outline.Rectangle(n[4], n[6], n[5], n[7]));
            var shared = Math.Max(0, Math.Min(n[1], n[5]) - Math.Max(n[0], n[4])) * Math.Max(0, Math.Min(n[3], n[7]) - Math.Max(n[2], n[6]));
            Assert.Equal(shared, Overlap.Area(a, b), 1e-9);
        }, iter: 300);

    [Fact]
    public void A_hollow_shape_shares_only_what_is_inside_it()
    {
        // An L and a square in its hollow, then one that reaches into its foot.
        var corner = Outline.Through(new(0, 0), new(10, 0), new(10, 20), new(30, 20), new(30, 30), new(0, 30));
        Assert.Equal(0, Overlap.Area(corner, Outline.Rectangle(10, 0, 30, 20)), 1e-9);
        Assert.Equal(40, Overlap.Area(corner, Outline.Rectangle(12, 5, 20, 25)), 1e-9);
        Assert.Equal(corner.Area, Overlap.Area(corner, corner), 1e-9);
        Assert.Equal(corner.Area, Overlap.Area(Outline.Rectangle(-5, -5, 50, 50), corner), 1e-9);
    }

    [Fact]
    public void Two_discs_half_over_each_other_share_a_lens()
    {
        // Radius 10, centres 10 apart: 2r² arccos(1/2) − (d/2)√(4r² − d²), CRC tables (from memory).
        static Outline Disc(double x) => new([new(new(x - 10, 0), new(x + 10, 0), 1), new(new(x + 10, 0), new(x - 10, 0), 1)]);
        Assert.Equal((200 * Math.PI / 3) - (5 * Math.Sqrt(300)), Overlap.Area(Disc(0), Disc(10)), 0.5);
    }

    [Fact]
    public void Shared_edges_are_the_stretches_that_both_have()
    {
        var shared = SharedEdges.Between(Outline.Rectangle(0, 0, 20, 10), Outline.Rectangle(5, 10, 30, 20));
        Assert.Equal([new Edge(new(20, 10), new(5, 10))], shared);
        Assert.Empty(SharedEdges.Between(Outline.Rectangle(0, 0, 20, 10), Outline.Rectangle(20, 10, 30, 20)));
        Assert.Empty(SharedEdges.Between(Outline.Rectangle(0, 0, 20, 10), Outline.Rectangle(5, 10.001, 30, 20)));

        // Two shapes on the same side of a line lie over each other, not edge to edge.
        Assert.Empty(SharedEdges.Between(Outline.Rectangle(0, 0, 20, 10), Outline.Rectangle(5, 0, 15, 10)));
    }
}
