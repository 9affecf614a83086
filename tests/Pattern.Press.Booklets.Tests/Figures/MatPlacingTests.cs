using Pattern.Press.Booklets.Composing;
using Pattern.Press.Booklets.Content;
using Pattern.Press.Booklets.Figures;
using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Structures;
using Pattern.Press.Structures.Fitting;
using Pattern.Press.Structures.Reading;
using static Pattern.Press.Booklets.Tests.Figures.Samples;

namespace Pattern.Press.Booklets.Tests.Figures;

public class MatPlacingTests
{
    // The explosion box around a tin of tea, in both fits.
    private static readonly Lazy<IReadOnlyList<Kit>> TeaTinBox = new(() => Kits("tea-tin-box"));

    private static IReadOnlyList<Kit> Kits(string booklet)
    {
        var problems = new Problems();
        var context = Preparation.Prepare(
            Path.Combine(Repository.Root, "content", booklet), new BuildOptions(), Resources.OfProgram, problems);
        Assert.False(problems.HasErrors, string.Join("\n", problems.All));
        return [context!.Primary.Kit, context.Secondary.Kit];
    }

    [Fact]
    public void Walls_in_a_row_that_hang_on_one_another_all_have_their_mats_upright()
    {
        // The front lies still; side, back and side hang on it in a row, by their upright edges; the roofs by level ones.
        foreach (var kit in Kits("gingerbread-carrier"))
        {
            var placed = Placed(kit);
            Assert.Equal(["back", "front", "roof", "roof", "side", "side"], placed.Select(one => one.Mat.Panel.Kind).Order(StringComparer.Ordinal));
            Assert.All(placed, one => Assert.Equal(
                one.Mat.Part.Piece.Sheet.Width.Millimetres,
                one.Mat.Corners.Max(p => p.X) - one.Mat.Corners.Min(p => p.X),
                6));
        }
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    public void Every_mat_of_a_kit_has_a_place_of_its_own_on_a_panel_it_names(int fit)
    {
        var kit = TeaTinBox.Value[fit];
        var placed = Placed(kit);
        foreach (var mat in kit.Parts.Where(part => part.Kind == PartKind.Mat))
        {
            var mine = placed.Where(one => one.Mat.Part == mat).ToList();
            Assert.Equal(mat.Quantity, mine.Count);
            Assert.All(mine, one => Assert.Contains(one.Mat.Panel.Kind, mat.On!));
            Assert.All(mine, one => Assert.Equal(mat.Goes, one.Piece.Id));
        }

        // 4 walls and 8 gussets of the base; the top and 4 walls each of the lid and of the platform.
        Assert.Equal(22, placed.Count);
        Assert.Equal(22, placed.Select(one => (one.Piece.Id, one.Mat.Panel.Name)).Distinct().Count());
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    public void A_mat_stands_upright_on_its_wall_and_is_nowhere_off_its_panel(int fit)
    {
        foreach (var (piece, mat) in Placed(TeaTinBox.Value[fit]))
        {
            var (width, height) = (mat.Corners.Max(p => p.X) - mat.Corners.Min(p => p.X), mat.Corners.Max(p => p.Y) - mat.Corners.Min(p => p.Y));
            var sheet = mat.Part.Piece.Sheet;

            // The side walls are drawn lying on their sides; a strip lies along its gusset.
            var bounds = mat.Panel.Outline.Bounds;
            var lying = mat.Panel.Kind == "gusset" ? bounds.Height > bounds.Width : mat.Panel.Kind == "side wall";
            Assert.Equal(sheet.Width.Millimetres, lying ? height : width, 6);
            Assert.Equal(sheet.Height.Millimetres, lying ? width : height, 6);
            var panel = mat.Panel.Outline.Corners.ToList();
            Assert.All(mat.Corners, corner =>
            {
                Assert.InRange(corner.X, panel.Min(p => p.X) - 1e-6, panel.Max(p => p.X) + 1e-6);
                Assert.InRange(corner.Y, panel.Min(p => p.Y) - 1e-6, panel.Max(p => p.Y) + 1e-6);
            });

            // The whole area of the mat lies on the panel: no corner beyond any edge of it. Panels are convex.
            var middle = mat.Panel.Outline.Centroid;
            foreach (var edge in mat.Panel.Outline.Edges)
            {
                var inwards = Math.Sign((edge.To - edge.From).Cross(middle - edge.From));
                Assert.All(mat.Corners, corner => Assert.True(inwards * (edge.To - edge.From).Cross(corner - edge.From) > -1e-3, $"{mat.Part.Piece.Name} on {mat.Panel.Name} of {piece.Name}"));
            }
        }
    }

    public static TheoryData<string> Structures => [.. Catalogue.Open(Resources.OfProgram.StructuresFolder, new Problems()).Ids];

    [Theory]
    [MemberData(nameof(Structures))]
    public void Of_every_structure_each_mat_lies_on_a_face_of_its_own_and_leaves_some_of_it_all_round(string id)
    {
        var structure = Catalogue.Open(Resources.OfProgram.StructuresFolder, new Problems()).Find(id, new Place("test"), new Problems())!;

        // All offer mats; most as a yes or no, of which some make none unless they are asked for.
        var mats = Assert.Single(structure.Parameters, parameter => parameter.Name == "mats");
        var given = mats.Kind == ParameterKind.YesNo ? new Dictionary<string, GivenValue> { ["mats"] = new(new FlagValue(true), new Place("test")) } : [];
        foreach (var ruler in new[] { Ruler.WholeMillimetres, Ruler.SixteenthInches })
        {
            // Not every usual item goes into every structure.
            var model = structure.Examples.Select(Fit).OfType<Model>().First();
            Model? Fit(Item item) => structure.Fit(
                new FitRequest
                {
                    Ruler = ruler,
                    Item = item,
                    Given = given,
                    Stocks = structure.Stocks.ToDictionary(use => use.Id, use => new Stock(use.Id, use.Id, Mm(0.25), null, new Measure.Size(Mm(1000), Mm(1000)), true), StringComparer.Ordinal),
                },
                new Problems());
            var placed = Placed(model.Kit);
            var all = model.Kit.Parts.Where(part => part.Kind == PartKind.Mat).ToList();
            Assert.NotEmpty(all);
            Assert.All(all, mat => Assert.Equal(mat.Quantity, placed.Count(one => one.Mat.Part == mat)));

            // A strip for a gusset runs up to its diagonal; all others keep clear of every edge.
            Assert.All(placed.Where(one => one.Mat.Part.Hand == Hand.Either), one => Assert.All(one.Mat.Corners, corner => Assert.True(
                one.Mat.Panel.Outline.Contains(corner) && one.Mat.Panel.Outline.DistanceTo(corner) > 0.4, $"{one.Mat.Part.Piece.Name} on the {one.Mat.Panel.Name}")));
        }
    }

    [Fact]
    public void Two_mats_of_one_size_go_where_each_says()
    {
        // A square box: its four walls are alike, so that only the words tell which mat goes where.
        var box = GussetBox(Mm(60), Mm(60), Mm(60), Mm(12));
        Part[] parts =
        [
            new(Mat("side", "Side mat", Mm(54), Mm(54)), PartKind.Mat, "paper", 2, null, Hand.Either, "base", ["short wall"]),
            new(Mat("long", "Long mat", Mm(54), Mm(54)), PartKind.Mat, "paper", 2, null, Hand.Either, "base", ["long wall"]),
            new(Mat("outer", "Outer mat", Mm(54), Mm(54)), PartKind.Mat, "paper", 2, null, Hand.Either, "base", ["long wall"], SheetSide.Away),
        ];
        var placed = MatPlacing.On(box, parts);
        Assert.Equal(
            ["side short wall", "side short wall", "long long wall", "long long wall", "outer long wall", "outer long wall"],
            placed.Select(mat => $"{mat.Part.Piece.Id} {mat.Panel.Kind}"));
        Assert.Equal([SheetSide.Away, SheetSide.Away], placed.Skip(4).Select(mat => mat.Side));
    }

    [Fact]
    public void Mats_of_the_lid_and_the_platform_are_outside_and_those_of_the_base_inside()
    {
        foreach (var (piece, mat) in Placed(TeaTinBox.Value[0]))
            Assert.Equal(piece.Id == "base" ? SheetSide.Facing : SheetSide.Away, mat.Side);
    }

    private static List<(Piece Piece, PlacedMat Mat)> Placed(Kit kit) =>
    [
        .. from part in kit.Parts
           where part.Kind == PartKind.Piece
           from mat in MatPlacing.On(part.Piece, kit.Parts)
           select (part.Piece, mat),
    ];
}
