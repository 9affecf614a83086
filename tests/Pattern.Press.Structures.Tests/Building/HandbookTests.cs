using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Nets.Folding;
using Pattern.Press.Structures.Fitting;
using Pattern.Press.Structures.Reading;
using static Pattern.Press.Structures.Tests.Boxes;

namespace Pattern.Press.Structures.Tests.Building;

/// <summary>Developments that handbooks print, made by structure files.</summary>
public class HandbookTests
{
    // A thickness that leaves the middle of the card where the handbook's surface is.
    private const string NoThickness = "0.000002 mm";

    [Fact]
    public void A_frustum_develops_as_in_the_course_notes()
    {
        // Diameters 5 in and 8 in, 4 in apart: radii 7.12 in and 11.39 in, sector 126.4°. (“The Net of a Frustum”, Geometry 2
        // course pages, ceemrr.com.)
        var values = Fit("cone-wrap", "upper_across: 8 in\nlower_across: 5 in\nheight: 4 in").Values;
        Assert.Equal(7.12, Inches(values["size.inner_radius"]), 0.005);
        Assert.Equal(11.39, Inches(values["size.outer_radius"]), 0.005);
        Assert.Equal(126.4, Number(values["size.angle"]), 0.05);
    }

    [Fact]
    public void A_frustum_has_the_slant_height_and_area_of_the_handbook()
    {
        // End diameters 6 in and 3 in, altitude 3 in: slant height 3.354 in, lateral area 47.4 in². (E. M. Longfield, Sheet
        // Metal Drafting, sample problem on p. 128.)
        var model = Fit("cone-wrap", "upper_across: 6 in\nlower_across: 3 in\nheight: 3 in\noverlap: 1/2 in");
        Assert.Equal(3.354, Inches(model.Values["size.slope"]), 0.0005);
        var piece = model.Kit.Parts.Single().Piece;
        var whole = piece.Panels.Single().Outline.Area - piece.GlueAreas.Single().Outline.Area;
        Assert.Equal(47.4, whole / 645.16, 0.05);
    }

    [Fact]
    public void A_cone_has_the_area_of_the_handbook()
    {
        // Base diameter 5 in, slant height 12 in: lateral area 94.248 in². (Longfield, p. 82.)
        var model = Fit("cone", "across: 5 in\nslope: 12 in\noverlap: 1/2 in");
        var piece = model.Kit.Parts.Single().Piece;
        Assert.Equal(94.248, (piece.Panels.Single().Outline.Area - piece.GlueAreas.Single().Outline.Area) / 645.16, 0.001);

        // Base diameter 4 in, altitude 7 in: slant 7.280 in, sector 98.9° (Longfield, problem 19; the sector by arithmetic).
        var second = Fit("cone", "across: 4 in\nslope: 7.28011 in").Values;
        Assert.Equal(98.9, Number(second["size.angle"]), 0.5);
    }

    [Theory]
    // CRC Standard Mathematical Tables and Formulae, 30th ed., regular polyhedra: dihedral angles.
    [InlineData("tetrahedron", 4, 3, 70.5288)]
    [InlineData("cube", 6, 7, 90)]
    [InlineData("octahedron", 8, 5, 109.4712)]
    [InlineData("dodecahedron", 12, 19, 116.5651)]
    [InlineData("icosahedron", 20, 11, 138.1897)]
    public void The_five_solids_have_their_faces_tabs_and_angles(string solid, int faces, int tabs, double dihedral)
    {
        var piece = Fit("regular-solid", $"solid: {solid}\nedge: 40 mm").Kit.Pieces.Single().Piece;
        Assert.Equal(faces, piece.Panels.Count(panel => panel.Kind == "face"));
        Assert.Equal(tabs, piece.Panels.Count(panel => panel.Role == PanelRole.Tab));
        Assert.All(piece.Folds, fold => Assert.Equal(180 - dihedral, fold.Angle, 0.0001));
    }

    [Theory]
    // CRC tables, as above: volumes for an edge of 1.
    [InlineData("tetrahedron", 0.117851)]
    [InlineData("cube", 1)]
    [InlineData("octahedron", 0.471405)]
    [InlineData("dodecahedron", 7.663119)]
    [InlineData("icosahedron", 2.181695)]
    public void The_five_solids_enclose_their_volumes(string solid, double volume)
    {
        var piece = Fit("regular-solid", $"solid: {solid}\nedge: 40 mm").Kit.Pieces.Single().Piece;
        var pose = Pattern.Press.Nets.Folding.Folder.Finished(piece);
        var faces = pose.Panels.Where(panel => panel.Panel.Role == PanelRole.Panel).ToList();
        var centre = faces.SelectMany(face => face.Corners).Aggregate((sum, corner) => sum + corner) * (1.0 / faces.Sum(face => face.Corners.Count));

        // Pyramids from the middle to every face; the inside of each looks at the middle.
        var found = faces.Sum(face => face.Panel.Outline.Area * face.Facing.Dot(centre - face.Corners[0]) / 3);
        Assert.Equal(volume, found / (40 * 40 * 40), 0.00001);
    }

    [Fact]
    public void A_flared_tray_holds_what_the_formula_for_a_frustum_of_a_pyramid_says()
    {
        // h/3 (A₁ + A₂ + √(A₁A₂)) for similar ends. (CRC tables.) A square tray, 60 mm below and 100 mm above, 48 mm high: the slope of its walls is 52 mm.
        var piece = Fit("flared-tray", "floor_length: 60 mm\nfloor_width: 60 mm\nheight: 48 mm\nflare: 20 mm\nmats: no").Kit.Pieces.Single().Piece;
        var pose = Pattern.Press.Nets.Folding.Folder.Finished(piece);
        var top = pose.Panels.SelectMany(panel => panel.Corners).Max(corner => corner.Z);
        Assert.Equal(48, top, 1e-6);
        var walls = pose.Panels.Where(panel => panel.Panel.Role == PanelRole.Panel).ToList();

        // Pyramids from a point in the plane of the open top, which adds nothing itself.
        Vector3d above = new(walls[0].Corners[0].X, walls[0].Corners[0].Y, top);
        var found = walls.Sum(wall => wall.Panel.Outline.Area * wall.Facing.Dot(above - wall.Corners[0]) / 3);
        Assert.Equal(48.0 / 3 * (3600 + 10000 + 6000), found, 0.01);
    }

    private static Model Fit(string id, string sizes)
    {
        var problems = new Problems();
        var structure = Catalogue.ReadFile(Path.Combine(Boxes.Folder, id + ".yaml"), problems)!;
        var given = new SortedDictionary<string, GivenValue>(StringComparer.Ordinal);
        foreach (var (name, place, value) in YamlSource.Read(sizes, "booklet.md", problems)!.Entries)
            given[name] = structure.ReadGiven(name, place, value, problems)!;
        var ruler = new Ruler(UnitSystem.Imperial, Length.Inch / 64);
        var model = structure.Fit(
            new FitRequest
            {
                Ruler = sizes.Contains(" mm", StringComparison.Ordinal) ? Ruler.WholeMillimetres : ruler,
                Given = given,
                Stocks = structure.Stocks.ToDictionary(
                    use => use.Id,
                    use => new Stock(use.Id, use.Id, L(NoThickness), null, new Size(Length.FromMillimetres(1000), Length.FromMillimetres(1000))),
                    StringComparer.Ordinal),
            },
            problems);
        Assert.Equal("", Words(problems));
        return model!;
    }

    private static double Inches(Pattern.Press.Structures.Fitting.Value value) => ((LengthValue)value).Length.Millimetres / 25.4;

    private static double Number(Pattern.Press.Structures.Fitting.Value value) => (double)((NumberValue)value).Number;
}
