using Pattern.Press.Booklets.Figures.Solid;
using Pattern.Press.Nets;
using Pattern.Press.Nets.Folding;

namespace Pattern.Press.Booklets.Tests.Figures.Solid;

/// <summary>What is cut out of a panel is open in drawings in space too: one looks through a hand hole.</summary>
public sealed class HoleTests
{
    private static Piece Piece => CatalogueKits.Of("gable-top-box").Kit.Pieces.First().Piece;

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    public void Faces_cover_a_panel_but_not_its_holes(double opening)
    {
        var scene = new Scene();
        scene.Add(Folder.InOrder(Piece, opening));

        var handles = Piece.Panels.Where(panel => panel.Holes.Count > 0).ToList();
        Assert.Equal(2, handles.Count);
        Assert.All(handles, panel => Assert.True(panel.Area < panel.Outline.Area - 100));

        // Arcs are followed within 0.02 mm, which costs a little of the area.
        Assert.Equal(Piece.Panels.Sum(panel => panel.Area), scene.Faces.Sum(Area), 0.001 * Piece.Panels.Sum(panel => panel.Area));
    }

    [Fact]
    public void The_edge_of_a_hole_is_drawn_as_a_cut()
    {
        var scene = new Scene();
        scene.Add(Folder.InOrder(Piece, 0));
        var hole = Piece.Panels.First(panel => panel.Holes.Count > 0).Holes[0];
        var around = scene.Lines.Where(line => line.Kind == LineKind.Cut && Inside(hole, line.From) && Inside(hole, line.To)).Sum(line => line.From.DistanceTo(line.To));
        Assert.Equal(hole.Edges.Sum(edge => edge.Length), around, 0.2);
    }

    private static bool Inside(Outline hole, Vector3d at)
    {
        var box = hole.Bounds;
        var onSheet = Vector3d.OnSheet(new Point(box.Left, box.Top));
        var far = Vector3d.OnSheet(new Point(box.Right, box.Bottom));
        return at.X > Math.Min(onSheet.X, far.X) - 0.01 && at.X < Math.Max(onSheet.X, far.X) + 0.01 && at.Y > Math.Min(onSheet.Y, far.Y) - 0.01 && at.Y < Math.Max(onSheet.Y, far.Y) + 0.01;
    }

    private static double Area(Face face)
    {
        var sum = default(Vector3d);
        for (var i = 2; i < face.Corners.Count; i++)
            sum += (face.Corners[i - 1] - face.Corners[0]).Cross(face.Corners[i] - face.Corners[0]);
        return sum.Dot(face.Normal) / 2;
    }
}
