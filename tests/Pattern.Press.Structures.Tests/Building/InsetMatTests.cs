using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Nets.Checks;
using Pattern.Press.Structures.Fitting;
using Pattern.Press.Structures.Reading;
using static Pattern.Press.Structures.Tests.Boxes;
using Size = Pattern.Press.Measure.Size;

namespace Pattern.Press.Structures.Tests.Building;

/// <summary>Mats in the shape of their faces, as a structure's file asks for them.</summary>
public class InsetMatTests
{
    // A floor with two wings that lean the same way on the sheet, so that each is the other's mirror image.
    private const string Wings = """
        title: A test
        suits: A test.
        takes: [rectangular]
        stocks: {card: Any card., mats: Any paper.}
        parameters:
          border: {means: Border., kind: length, default: 3 mm, least: 0 mm, most: 30 mm}
        pieces:
          one:
            name: One
            stock: card
            build: panel tree
            panels:
              floor: {panel: floor, shape: rectangle, width: 60 mm, height: 40 mm}
              right: {panel: wing, shape: corners, corners: [[0 mm, 0 mm], [30 mm, 0 mm], [60 mm, 35 mm], [0 mm, 35 mm]], on: floor, edge: top, by: 3, fold: valley 90}
              left: {panel: wing, shape: corners, corners: [[30 mm, 0 mm], [60 mm, 0 mm], [60 mm, 35 mm], [0 mm, 35 mm]], on: floor, edge: bottom, by: 3, fold: valley 90}
              lid: {panel: lid, shape: trapezium, bottom: 40 mm, top: 20 mm, height: 30 mm, on: floor, edge: right, fold: valley 90, hole: {width: 12 mm, height: 4 mm}}
        mats:
          left_mat:
            name: Wing mat
            stock: mats
            shape: inset
            border: border
            hand: left
            for: the wings
            goes: one
            on: wing
            side: outside
        """;

    [Fact]
    public void Faces_that_mirror_each_other_have_mats_of_both_hands()
    {
        var both = Wings + "\n" + Wings[Wings.IndexOf("  left_mat:", StringComparison.Ordinal)..].Replace("left", "right", StringComparison.Ordinal);
        var (left, right) = (Mat(both, "left_mat"), Mat(both, "right_mat"));
        Assert.Equal((Hand.Left, 1, Hand.Right, 1), (left.Hand, left.Quantity, right.Hand, right.Quantity));
        Assert.True(Inset.IsSameShape(left.Piece.Outline, right.Piece.Outline.MirroredAt(0)));
        Assert.False(Inset.IsSameShape(left.Piece.Outline, right.Piece.Outline));
        Assert.Empty(PieceChecks.Problems(left.Piece));
    }

    [Theory]
    [InlineData("    hand: left\n", "", "come in pairs that mirror each other. Write hand: left, and a second mat with hand: right.")]
    [InlineData("on: wing", "on: floor", "are all alike, so it has no hand. Take “hand” out.")]
    [InlineData("on: wing", "on: [floor, wing]", "are not all alike: the floor and the wing need mats of their own.", "the wing and the floor")]
    [InlineData("on: wing", "on: lid", "“Wing mat” cannot be made: the lid has a hole, which a mat in its shape would cover.")]
    [InlineData("default: 3 mm", "default: 18 mm", "The border leaves nothing of a mat for the wing. Make it narrower.")]
    [InlineData("    on: wing\n", "", "“on” is missing. Name the panels whose shape it has: on: wall.")]
    [InlineData("shape: inset", "shape: inst", "“inst” is not one of the choices here. Did you mean “inset”?")]
    [InlineData("    border: border\n", "", "“border” is missing. Write a formula that gives a length.")]
    [InlineData("    border: border\n", "    border: border\n    quantity: 2\n", "As many mats with shape: inset are made as there are panels for them. Take “quantity” out.")]
    [InlineData("    border: border\n", "    border: border - 4 mm\n", "“border - 4 mm” comes out at")]
    public void What_cannot_be_made_is_told(string right, string wrong, string expected, string? or = null)
    {
        Assert.Contains(right, Wings, StringComparison.Ordinal);
        var problems = new Problems();
        var structure = Catalogue.ReadText(Wings.Replace(right, wrong, StringComparison.Ordinal), "test", "test.yaml", problems);
        if (structure is not null)
            Fit(structure, Ruler.WholeMillimetres, problems);
        var said = Words(problems);
        Assert.True(said.Contains(expected, StringComparison.Ordinal) || (or is not null && said.Contains(or, StringComparison.Ordinal)), said);
    }

    [Theory]
    [InlineData("pyramid-box", "sides: 4", 4)]
    [InlineData("pyramid-box", "sides: 3", 3)]
    [InlineData("regular-solid", "solid: tetrahedron", 4)]
    [InlineData("regular-solid", "solid: dodecahedron", 12)]
    [InlineData("regular-solid", "solid: icosahedron", 20)]
    [InlineData("lantern", "sides: 7", 7)]
    [InlineData("pillow-box", "ease: 2 mm", 2)]
    [InlineData("cone-wrap", "overlap: 10 mm", 1)]
    [InlineData("cone", "overlap: 10 mm", 1)]
    [InlineData("cylinder-band", "overlap: 10 mm", 1)]
    [InlineData("envelope", "ease: 2 mm", 1)]
    public void As_many_are_made_as_there_are_faces_and_their_foot_lies_on_the_ruler(string id, string size, int faces)
    {
        var structure = Named(id);
        foreach (var ruler in new[] { Ruler.WholeMillimetres, Ruler.SixteenthInches })
        {
            var problems = new Problems();
            var model = Fit(structure, ruler, problems, "mats: yes", size);
            Assert.Equal("", Words(problems));
            var mat = Assert.Single(model!.Kit.Parts, part => part.Kind == PartKind.Mat);
            Assert.Equal(faces, mat.Quantity);
            Assert.Empty(PieceChecks.Problems(mat.Piece));

            // What bends along an arc has no straight foot; a solid's and a pyramid's faces stand on one.
            if (id is "pyramid-box" or "regular-solid" or "lantern" or "envelope" or "cylinder-band")
            {
                var foot = mat.Piece.Outline.Edges.Where(edge => !edge.IsArc && Math.Abs(edge.To.Y - edge.From.Y) < 1e-4).MaxBy(edge => edge.Middle.Y);
                Assert.True(foot.Chord / ruler.Step.Millimetres % 1 is < 1e-3 or > 0.999, $"{id} {size}: {foot.Chord}");
            }
        }
    }

    private static Part Mat(string text, string id)
    {
        var problems = new Problems();
        var structure = Catalogue.ReadText(text, "test", "test.yaml", problems);
        Assert.Equal("", Words(problems));
        var model = Fit(structure!, Ruler.WholeMillimetres, problems);
        Assert.Equal("", Words(problems));
        return model!.Kit.Parts.Single(part => part.Piece.Id == id);
    }

    private static Structure Named(string id) => Catalogue.Open(Folder, new Problems()).Find(id, new Place("test"), new Problems())!;

    private static Model? Fit(Structure structure, Ruler ruler, Problems problems, params string[] sizes)
    {
        var given = new Dictionary<string, GivenValue>();
        foreach (var (name, place, value) in YamlSource.Read(string.Join("\n", sizes), "test", problems)?.Entries ?? [])
            given[name] = structure.ReadGiven(name, place, value, problems)!;
        return structure.Fit(
            new FitRequest
            {
                Ruler = ruler,
                Item = structure.Examples[0],
                Given = given,
                Stocks = structure.Stocks.ToDictionary(use => use.Id, use => new Stock(use.Id, use.Id, Length.FromMillimetres(0.25m), new Grammage(200), new Size(Length.FromMillimetres(1000), Length.FromMillimetres(1000)), true), StringComparer.Ordinal),
            },
            problems);
    }
}
