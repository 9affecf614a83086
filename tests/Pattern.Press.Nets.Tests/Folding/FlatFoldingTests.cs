using Pattern.Press.Nets.Folding;
using static Pattern.Press.Nets.Tests.Sheets;

namespace Pattern.Press.Nets.Tests.Folding;

public sealed class FlatFoldingTests
{
    // T. Hull, "On the mathematics of flat origamis", Congressus Numerantium 100, 1994.
    private static readonly double[] Hull = [90, 45, 22.5, 22.5, 45, 90, 22.5, 22.5];

    [Fact]
    public void The_published_point_of_eight_folds_satisfies_Kawasaki() => Assert.Equal(0, FlatFolding.KawasakiSum(Hull));

    [Fact]
    public void The_same_angles_in_another_order_do_not() =>
        Assert.NotEqual(0, FlatFolding.KawasakiSum([90, 45, 22.5, 22.5, 90, 45, 22.5, 22.5]));

    [Fact]
    public void A_flat_folded_point_has_two_more_folds_one_way_than_the_other()
    {
        Assert.Equal(-2, FlatFolding.MaekawaDifference(
            [FoldDirection.Valley, FoldDirection.Valley, FoldDirection.Valley, FoldDirection.Mountain]));
        Assert.Equal(2, FlatFolding.MaekawaDifference(
            [FoldDirection.Mountain, FoldDirection.Mountain, FoldDirection.Valley, FoldDirection.Mountain]));
    }

    [Fact]
    public void The_corners_of_a_gusset_box_are_found_and_do_not_fold_flat()
    {
        var box = GussetBox(Mm(66), Mm(61), Mm(70), Mm(14)).Build();
        var points = InteriorPoint.Of(box);
        Assert.Equal(4, points.Count);
        Assert.All(points, point => Assert.Equal(5, point.Folds.Count));
        Assert.All(points, point => Assert.Equal([45, 45, 90, 90, 90], point.Angles.Select(angle => Math.Round(angle, 9)).Order()));
        Assert.All(points, point => Assert.False(FlatFolding.Holds(point)));
    }

    [Fact]
    public void A_lid_whose_corners_are_cut_has_no_point_inside() =>
        Assert.Empty(InteriorPoint.Of(DoubleLid(Mm(80), Mm(60), Mm(22), 10, Mm(0.5m)).Build()));
}
