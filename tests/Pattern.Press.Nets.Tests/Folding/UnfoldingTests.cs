using System.Globalization;
using Pattern.Press.Nets.Folding;

namespace Pattern.Press.Nets.Tests.Folding;

public sealed class UnfoldingTests
{
    // Spanning trees of the faces: 16 for the tetrahedron (Cayley), 384 for the cube and the octahedron (from memory).
    // Distinct nets up to turning and mirroring: tetrahedron 2, cube 11, octahedron 11. Hippenmeyer 1979; Buekenhout and
    // Parker 1998 (from memory).
    [Theory]
    [InlineData("tetrahedron", 16, 2)]
    [InlineData("cube", 384, 11)]
    [InlineData("octahedron", 384, 11)]
    public void A_solid_has_as_many_nets_as_are_known(string solid, int trees, int nets)
    {
        var unfolding = Of(solid);
        var all = unfolding.Trees().ToList();
        Assert.Equal(trees, all.Count);
        Assert.Equal(nets, all.Select(tree => Shape(unfolding.Flat(tree), tree)).Distinct().Count());
        Assert.All(all, tree => Assert.True(Unfolding.IsNet(unfolding.Flat(tree))));
    }

    [Theory]
    [InlineData("dodecahedron")]
    [InlineData("icosahedron")]
    public void Faces_laid_flat_keep_their_size_and_folded_up_again_they_close_the_solid(string solid)
    {
        var unfolding = Of(solid);
        var tree = unfolding.Trees().Skip(1000).First();
        var flat = unfolding.Flat(tree);
        Assert.All(flat, face => Assert.Equal(Outline.Through([.. flat[0]]).Area, Outline.Through([.. face]).Area, 9));
        Assert.True(Unfolding.IsNet(flat));

        // Dihedral angles: CRC Standard Mathematical Tables and Formulae, 30th ed.
        var dihedral = solid == "dodecahedron" ? Math.Acos(-Math.Sqrt(5) / 5) : Math.Acos(-Math.Sqrt(5) / 3);
        var shift = new Point(1000, 1000);
        var panels = flat.Select((face, i) => new Panel($"face {i}", "face", PanelRole.Panel, Outline.Through([.. face.Select(corner => (corner * 40) + shift)]))).ToList();
        var folds = tree.Select(edge => new Fold($"face {edge.First}", $"face {edge.Second}",
            (flat[edge.First][edge.FirstSide] * 40) + shift, (flat[edge.First][(edge.FirstSide + 1) % flat[edge.First].Count] * 40) + shift,
            FoldDirection.Valley, 180 - (dihedral * 180 / Math.PI))).ToList();
        var pose = Folder.Finished(Solids.ByHand(solid, "face 0", panels, folds));
        Assert.Equal(MatingEdges.CountFree(pose.Piece), 2 * MatingEdges.Of(pose, 1e-9).Count);
    }

    [Fact]
    public void Faces_that_would_lie_over_each_other_make_no_net()
    {
        // Five squares around one corner, as no solid has them: the fifth comes to lie on the first.
        Point[] Square(double x, double y) => [new(x, y), new(x + 10, y), new(x + 10, y + 10), new(x, y + 10)];
        Assert.True(Unfolding.IsNet([Square(0, 0), Square(10, 0), Square(10, 10), Square(0, 10)]));
        Assert.False(Unfolding.IsNet([Square(0, 0), Square(10, 0), Square(10, 10), Square(0, 10), Square(0, 0.5)]));
    }

    private static Unfolding Of(string solid)
    {
        var corners = Solids.Corners(solid);
        return new Unfolding([.. Solids.Faces(corners).Select(face => (IReadOnlyList<Vector3d>)[.. face.Select(i => corners[i])])]);
    }

    // The net's shape whatever way it is turned or mirrored: the middles of its faces and of its folds, seen from each side
    // of each face in turn; of all those views the first in order.
    private static string Shape(IReadOnlyList<IReadOnlyList<Point>> flat, IReadOnlyList<SolidEdge> tree)
    {
        Point Middle(IReadOnlyList<Point> face) => face.Aggregate(default(Point), (sum, corner) => sum + corner) * (1.0 / face.Count);
        var places = flat.Select(Middle)
            .Concat(tree.Select(edge => flat[edge.First][edge.FirstSide].MidwayTo(flat[edge.First][(edge.FirstSide + 1) % flat[edge.First].Count])))
            .ToList();
        var views = new List<string>();
        foreach (var face in flat)
        {
            var middle = Middle(face);
            for (var i = 0; i < face.Count; i++)
            {
                var along = face[(i + 1) % face.Count] - face[i];
                along *= 1 / Math.Sqrt(along.Dot(along));
                foreach (var mirror in new[] { 1, -1 })
                {
                    var seen = places.Select(place => place - middle)
                        .Select(place => (X: Round(mirror * along.Dot(place)), Y: Round(along.Cross(place))))
                        .Order().Select(place => string.Create(CultureInfo.InvariantCulture, $"{place.X},{place.Y}"));
                    views.Add(string.Join(' ', seen));
                }
            }
        }

        return views.Order(StringComparer.Ordinal).First();

        static int Round(double value) => (int)Math.Round(value * 1000);
    }
}
