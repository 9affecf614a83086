using Pattern.Press.Structures.Reading;
using static Pattern.Press.Structures.Tests.Boxes;

namespace Pattern.Press.Structures.Tests.Files;

/// <summary>
/// Mistakes in each way of building a piece, all found when the file is read: line and column of the mistake, and what would
/// be right. Lines count from the first of the file.
/// </summary>
public class BuilderErrorTests
{
    private const string Head = """
        title: A test
        suits: A test.
        takes: [rectangular]
        stocks: {card: Any card.}
        parameters:
          length: {means: Length., kind: length, default: 60 mm, least: 20 mm, most: 200 mm}
        pieces:
          one:
            name: One
            stock: card

        """;

    private const string Sheet = Head + """
            build: scored sheet
            across: [20 mm, length, 20 mm]
            down: [20 mm, length, 20 mm]
            map:
              - "t w t"
              - "w F w"
              - "t w t"
            cells:
              F: {panel: floor}
              w: {panel: wall, fold: valley 90}
              t: {tab: glued inside, fold: valley 90, hangs: beside, taper: 10, glue: away}
        """;

    private const string Tree = Head + """
            build: panel tree
            panels:
              floor: {panel: floor, shape: rectangle, width: length, height: 40 mm}
              wall: {panel: wall, shape: trapezium, bottom: length, top: 30 mm, height: 25 mm, on: floor, edge: [top, bottom], fold: valley 90}
              tab: {tab: glued inside, shape: strip, depth: 8 mm, taper: 15, on: wall, edge: right, fold: valley 90, glue: away}
        """;

    private const string Round = Head + """
            build: panel tree
            panels:
              wrap: {panel: wrap, shape: sector, inner: 40 mm, outer: 40 mm + length, angle: 120, bends: 360, glue: facing, glue_strip: 10 mm}
        """;

    private const string Curved = Head + """
            build: panel tree
            panels:
              front: {panel: front, shape: corners, corners: [[0 mm, 0 mm, 5 mm], [60 mm, 0 mm], [60 mm, 40 mm], [0 mm, 40 mm]]}
              flap: {panel: flap, shape: corners, corners: [[0 mm, 0 mm], [60 mm, 0 mm], [60 mm, 20 mm, -5 mm], [0 mm, 20 mm]], on: front, edge: 1, by: 3, fold: valley 170}
        """;

    private const string Solid = Head + """
            build: regular solid
            solid: "\"cube\""
            edge: length
            tab: 6 mm
            taper: 40
        """;

    private const string Pillow = Head + """
            build: pillow
            width: length
            length: 100 mm
            rise: length * 0.15
            tab: 10 mm
        """;

    [Theory]
    [InlineData(Sheet)]
    [InlineData(Tree)]
    [InlineData(Round)]
    [InlineData(Curved)]
    [InlineData(Solid)]
    [InlineData(Pillow)]
    public void The_files_that_the_others_spoil_are_sound(string text) => Assert.Equal("", Read(text));

    [Theory]
    [InlineData("\"t w t\"\n      - \"w F w\"", "\"t . t\"\n      - \"w F w\"", "15:10: error: “One” cannot be made so. The glue tab “t” in row 1, band 1 across, is cut off from the rest: ")]
    [InlineData("\"w F w\"", "\"w F ww\"", "16:9: error: This row of the map has 4 letters, but “across” has 3 bands.")]
    [InlineData("\"w F w\"", "\"w F x\"", "16:14: error: “x” is not among the cells.")]
    [InlineData("[20 mm, length, 20 mm]\n    map", "[20 mm, lenght, 20 mm]\n    map", "13:19: error: “lenght” is not a name of this structure. Did you mean “length”?")]
    [InlineData("[20 mm, length, 20 mm]\n    map", "[20 mm, length, 30 mm - length]\n    map", "13:27: error: “30 mm - length” comes out at -30 mm, less than nothing, with nothing set")]
    [InlineData("taper: 10,", "tapper: 10,", "21:62: error: “tapper” is not known here. Did you mean “taper”?")]
    [InlineData("taper: 10,", "taper: 10 mm,", "21:69: error: “10 mm” gives a length, but a number is needed here.")]
    [InlineData("taper: 10,", "relief: 40 mm,", "15:10: error: “One” cannot be made so. The glue tab “t” in row 1, band 1 across, would be trimmed away")]
    [InlineData("hangs: beside", "hangs: besides", "21:54: error: hangs: “besides” is not one of the choices here. Did you mean “beside”?")]
    [InlineData("{tab: glued inside,", "{tap: glued inside,", "21:11: error: “tap” is not known here. Did you mean “tab”?")]
    public void A_scored_sheet(string right, string wrong, string expected) => Told(Sheet, right, wrong, expected);

    [Theory]
    [InlineData("on: wall, edge: right", "on: wal, edge: right", "“wal” is not among the panels above. Did you mean “wall”?")]
    [InlineData("on: wall, edge: right", "on: wall, edge: rigth", "“rigth” is not a side of “wall”. Did you mean “right”?")]
    [InlineData("on: wall, edge: right", "on: wall, edge: 2", "“2” is not a side of “wall”. Known here: top, right, bottom, left,")]
    [InlineData("edge: [top, bottom]", "edge: [top, botom]", "“botom” is not a side of “floor”. Did you mean “bottom”?")]
    [InlineData("on: wall, edge: right, ", "", "What “tab” hangs from is missing")]
    [InlineData("edge: right, ", "", "“edge” is missing. Say on which side it hangs")]
    [InlineData("bottom: length, top", "bottom: 50 mm, top", "14:7: error: “One” cannot be made so. A fold needs two equal sides, but side 3 of “wall 1” and side 1 of “floor” are 50 mm and 60 mm long.")]
    [InlineData("shape: trapezium", "shape: trapezum", "“trapezum” is not one of the choices here. Did you mean “trapezium”?")]
    [InlineData("top: 30 mm, ", "", "“top” is missing. Write a formula that gives a length.")]
    [InlineData("depth: 8 mm", "dept: 8 mm", "15:46: error: “dept” is not known here. Did you mean “depth”?")]
    [InlineData("depth: 8 mm", "depth: 8 mm - length", "“8 mm - length” comes out at -52 mm, less than nothing, with nothing set")]
    [InlineData("fold: valley 90, glue", "fold: vale 90, glue", "“vale 90” is not a fold.")]
    [InlineData("wall: {panel: wall,", "wall: {panel: wall, times: 2,", "A run of panels needs both how many there are and where the next one hangs.")]
    public void A_panel_tree(string right, string wrong, string expected) => Told(Tree, right, wrong, expected);

    [Theory]
    [InlineData("angle: 120, ", "", "“angle” is missing. Write a formula that gives a number.")]
    [InlineData("angle: 120", "angle: 120 mm", "“120 mm” gives a length, but a number is needed here.")]
    [InlineData("inner: 40 mm", "inner: 40 mm - length", "“40 mm - length” comes out at -20 mm, less than nothing, with nothing set")]
    [InlineData("inner: 40 mm", "iner: 40 mm", "13:42: error: “iner” is not known here. Did you mean “inner”?")]
    [InlineData("glue_strip", "glue_stripe", "“glue_stripe” is not known here. Did you mean “glue_strip”?")]
    public void Something_round(string right, string wrong, string expected) => Told(Round, right, wrong, expected);

    [Theory]
    [InlineData("edge: 1, by: 3", "edge: 5, by: 3", "“5” is not a side of “front”. Its sides are numbered from 1 to 4, clockwise. Also known here: all, first, last, all but first, all but last.")]
    [InlineData("edge: 1, by: 3", "edge: 1, by: bottom", "“bottom” is not a side of “flap”. Its sides are numbered from 1 to 4, clockwise.")]
    [InlineData("20 mm, -5 mm]", "20 mm, -4 mm]", "14:7: error: “One” cannot be made so. A fold needs two sides that follow the same line, but of side 3 of “flap” and side 1 of “front” one curves otherwise.")]
    [InlineData("[60 mm, 20 mm, -5 mm]", "[60 mm]", "A corner has two lengths, to the right and down, and a third where an arc starts.")]
    public void Something_with_arcs(string right, string wrong, string expected) => Told(Curved, right, wrong, expected);

    [Theory]
    [InlineData("cube", "cub", "12:13: error: “cub” is not a regular solid. Did you mean “cube”?")]
    [InlineData("tab: 6 mm", "tab: 40 mm", "8:3: error: “One” cannot be made so. A tab is so deep or leans so much that nothing is left of its far side.")]
    [InlineData("edge: length", "edg: length", "13:5: error: “edg” is not known here. Did you mean “edge”?")]
    [InlineData("tab: 6 mm", "tab: 30 mm - length", "“30 mm - length” comes out at -30 mm")]
    public void A_regular_solid(string right, string wrong, string expected) => Told(Solid, right, wrong, expected);

    [Theory]
    [InlineData("rise: length * 0.15", "rise: length * 0.4", "8:3: error: “One” cannot be made so. The arcs of a pillow box reach in")]
    [InlineData("rise: length * 0.15", "rise: 0.15", "14:11: error: “0.15” gives a number, but a length is needed here.")]
    [InlineData("rise: length * 0.15", "ryse: length * 0.15", "14:5: error: “ryse” is not known here. Did you mean “rise”?")]
    [InlineData("tab: 10 mm", "tab: 45 mm", "8:3: error: “One” cannot be made so. The glue tab has to be wider than nothing and narrower than half the box.")]
    public void A_pillow(string right, string wrong, string expected) => Told(Pillow, right, wrong, expected);

    [Theory]
    [InlineData("least: 20 mm", "least: 220 mm", "6:65: error: “length” must be at least 220 mm, but can be at most 200 mm. Exchange the two, or change one of them.")]
    [InlineData("default: 60 mm", "default: 6 mm", "6:51: error: “length” is 6 mm when nobody sets it, but must be at least 20 mm. Change the default, or least.")]
    [InlineData("default: 60 mm", "default: 600 mm", "6:51: error: “length” is 600 mm when nobody sets it, but can be at most 200 mm. Change the default, or most.")]
    [InlineData("default: 60 mm", "default: length + 1 mm", "“length” goes round in a circle: length needs length.")]
    public void A_parameter_out_of_range(string right, string wrong, string expected) => Told(Sheet, right, wrong, expected);

    [Theory]
    [InlineData("example: {name: bar, width: 80 mm, depth: 50 mm}", "5:10: error: “height” is missing.")]
    [InlineData("example: {name: bar, round: 80 mm, height: 50 mm}", "5:10: error: The example is round, which this structure does not take.")]
    [InlineData("example: {name: bar, width: 80 mm, dept: 50 mm, height: 50 mm}", "5:36: error: “dept” is not known here. Did you mean “depth”?")]
    [InlineData("example: {name: bar, width: 8 m, depth: 50 mm, height: 50 mm}", "5:29: error: The item cannot be 8 m long.")]
    public void An_example(string example, string expected) => Told(Sheet, "parameters:", example + "\nparameters:", expected);

    [Fact]
    public void An_example_that_does_not_fit_is_told_at_its_place()
    {
        var text = Sheet.Replace("default: 60 mm", "default: item.width + 4 mm", StringComparison.Ordinal);
        Told(text, "parameters:", "example: {name: plank, width: 400 mm, depth: 50 mm, height: 50 mm}\nparameters:", "5:10: error: “length” comes out at 404 mm, but can be at most 200 mm here.");
    }

    private static void Told(string sound, string right, string wrong, string expected)
    {
        Assert.Contains(right, sound, StringComparison.Ordinal);
        Assert.Contains(expected, Read(sound.Replace(right, wrong, StringComparison.Ordinal)), StringComparison.Ordinal);
    }

    private static string Read(string text)
    {
        var problems = new Problems();
        var structure = Catalogue.ReadText(text, "one", "one.yaml", problems);
        Assert.Equal(structure is null, problems.HasErrors);
        Assert.All(problems.All, problem => Assert.True(problem.Line > 0 && problem.Column > 0, problem.ToString()));
        return Words(problems);
    }
}
