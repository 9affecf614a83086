using Pattern.Press.Nets.Folding;
using Pattern.Press.Nets.Folding.Proofs;

namespace Pattern.Press.Nets.Tests.Folding;

public sealed class RegularSolidTests
{
    // Dihedral angles and volumes: CRC Standard Mathematical Tables and Formulae, 30th ed., regular polyhedra.
    public static TheoryData<string, double, double> Published => new()
    {
        { "tetrahedron", Math.Acos(1 / 3.0), Math.Sqrt(2) / 12 },
        { "cube", Math.PI / 2, 1 },
        { "octahedron", Math.Acos(-1 / 3.0), Math.Sqrt(2) / 3 },
        { "dodecahedron", Math.Acos(-Math.Sqrt(5) / 5), (15 + (7 * Math.Sqrt(5))) / 4 },
        { "icosahedron", Math.Acos(-Math.Sqrt(5) / 3), 5 * (3 + Math.Sqrt(5)) / 12 },
    };

    [Theory]
    [MemberData(nameof(Published))]
    public void Folded_to_the_published_angle_a_net_closes_and_holds_the_published_volume(string solid, double dihedral, double volume)
    {
        const double edge = 37;
        var degrees = dihedral * 180 / Math.PI;
        var net = Solids.Net(solid, edge, degrees);
        var pose = Folder.Finished(net);

        var mates = MatingEdges.Of(pose, 1e-9);
        Assert.Equal(MatingEdges.CountFree(net), mates.Count * 2);
        Assert.All(mates, mate => Assert.Equal(degrees, mate.Dihedral, 7));
        Assert.All(net.Folds, fold => Assert.Equal(degrees, SolidMeasure.Dihedral(pose, fold), 9));
        Assert.Equal(volume, SolidMeasure.Volume(pose.Panels) / Math.Pow(edge, 3), 9);
        Assert.Equal(net.Panels.Sum(panel => panel.Outline.Area), SolidMeasure.Surface(pose.Panels), 6);
        Assert.Empty(Crossings.Of(pose.Panels));
    }

    [Theory]
    [InlineData("tetrahedron", 70.5288)]
    [InlineData("octahedron", 109.4712)]
    [InlineData("dodecahedron", 116.5651)]
    [InlineData("icosahedron", 138.1897)]
    public void Folded_to_an_angle_a_degree_off_the_edges_do_not_meet(string solid, double degrees)
    {
        var net = Solids.Net(solid, 37, degrees + 1);
        Assert.NotEqual(MatingEdges.CountFree(net), MatingEdges.Of(Folder.Finished(net), 0.1).Count * 2);
    }

    [Fact]
    public void Folded_too_far_the_faces_of_a_solid_pass_through_each_other()
    {
        var net = Solids.Net("cube", 40, 90);
        var pose = Folder.Pose(net, _ => 100);
        Assert.NotEmpty(Crossings.Of(pose.Panels));
    }
}
