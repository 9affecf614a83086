using Pattern.Press.Structures.Reading;
using static Pattern.Press.Structures.Tests.Boxes;

namespace Pattern.Press.Structures.Tests.Files;

public class ReadingErrorTests
{
    // A small tray: line numbers in the tests below count from its first line.
    private const string Tray = """
        title: Open tray
        suits: Anything flat.
        takes: [round, rectangular]
        stocks:
          card: Any card.
        parameters:
          length:
            means: How long it is inside.
            kind: length
            default: item.width + 2 mm
            round: up
            least: 10 mm
          wall:
            means: How high the wall is.
            kind: length
            default: 15 mm
            most: length
        values:
          inside: length - card.caliper
        pieces:
          tray:
            name: Tray
            stock: card
            build: scored sheet
            across: [wall, length, wall]
            down: [wall, length, wall]
            map:
              - ". w ."
              - "w F w"
              - ". w ."
            cells:
              F: {panel: floor}
              w: {panel: wall, fold: valley 90}
        mats:
          floor_mat:
            name: Floor mat
            stock: card
            width: length
            height: length
            for: the floor
            goes: tray
            on: floor
        checks:
          It holds something:
            found: inside
            least: 1 mm
            advice: Make length at least {{up(1 mm + card.caliper)}}.
        """;

    [Fact]
    public void The_tray_itself_is_sound()
    {
        Assert.Equal("", Errors(Tray));
    }

    [Theory]
    [InlineData("title: Open tray", "titel: Open tray", "1: error: “title” is missing. Say what the structure is called.", "1:1: error: “titel” is not known here. Did you mean “title”?")]
    [InlineData("takes: [round, rectangular]", "takes: [round, square]", "3:16: error: takes: “square” is not one of the choices here. Known here: round, rectangular.")]
    [InlineData("    kind: length\n    default: 15 mm", "    kind: lenght\n    default: 15 mm", "15:11: error: kind: “lenght” is not one of the choices here. Did you mean “length”?")]
    [InlineData("    default: item.width + 2 mm", "    default: item.widht + 2 mm", "10:14: error: “item.widht” is not a name of this structure. Did you mean “item.width”?")]
    [InlineData("    default: item.width + 2 mm", "    default: item.width + 2", "10:27: error: A number cannot be added to a length or taken from it. If it is meant as a length, write its unit: 2 mm or 1/16 in.")]
    [InlineData("    default: 15 mm", "    default: 15", "16:14: error: “15” gives a number, but a length is needed here. Lengths are written with their units: 2 mm or 1/16 in.")]
    [InlineData("    default: 15 mm", "    default: inside / 2\n    colour: red", "17:5: error: “colour” is not known here. Known here: default, kind, least, limits, means, most, round, usual, when.")]
    [InlineData("    default: item.width + 2 mm", "    default: inside + 2 mm", "19:11: error: “length” goes round in a circle: length needs inside needs length. Work one of them out from something else.")]
    [InlineData("  inside: length - card.caliper", "  inside: length - (card.caliper", "19:20: error: This parenthesis is never closed. In a [list], a formula with commas of its own needs quotation marks around it.")]
    [InlineData("  inside: length - card.caliper", "  inside: \"length - crad.caliper\"", "19:21: error: “crad.caliper” is not a name of this structure. Did you mean “card.caliper”?")]
    [InlineData("  inside: length - card.caliper", "  inside: >\n    length -\n    crad.caliper", "20: error: “crad.caliper” is not a name of this structure. Did you mean “card.caliper”?")]
    [InlineData("  inside: length - card.caliper", "  wall: length - card.caliper", "19:3: error: The name “wall” is used twice.", "45:12: error: “inside” is not a name of this structure. Known here: item.given, item.shape, item.width, item.depth, item.height, ruler.step, ruler.metric, card.caliper, length, wall.")]
    [InlineData("  inside: length - card.caliper", "  Inside: length - card.caliper", "19:3: error: “Inside” cannot be a name. Names are small letters, digits and underscores, starting with a letter: wall_height.", "45:12: error: “inside” is not a name of this structure. Known here: item.given, item.shape, item.width, item.depth, item.height, ruler.step, ruler.metric, card.caliper, length, wall.")]
    [InlineData("    stock: card\n    build", "    stock: crad\n    build", "23:12: error: stock: “crad” is not one of the choices here. Did you mean “card”?")]
    [InlineData("    build: scored sheet", "    build: scored shet", "24:12: error: build: “scored shet” is not one of the choices here. Did you mean “scored sheet”?")]
    [InlineData("    across: [wall, length, wall]", "    across: [wall, length]", "28:9: error: This row of the map has 3 letters, but “across” has 2 bands. Each band across needs one letter; a dot is waste.", "29:9: error: This row of the map has 3 letters, but “across” has 2 bands. Each band across needs one letter; a dot is waste.", "30:9: error: This row of the map has 3 letters, but “across” has 2 bands. Each band across needs one letter; a dot is waste.")]
    [InlineData("    down: [wall, length, wall]", "    down: [wall, length, wall, wall]", "28:9: error: The map has 3 rows, but “down” has 4 bands. Each band down needs one row.")]
    [InlineData("    across: [wall, length, wall]", "    across: [wall, max(length, wall), wall]", "25:23: error: This parenthesis is never closed. In a [list], a formula with commas of its own needs quotation marks around it.", "25:36: error: This parenthesis closes nothing.")]
    [InlineData("      - \"w F w\"", "      - \"w F x\"", "29:14: error: “x” is not among the cells. Known here: F, w, and a dot for waste.")]
    [InlineData("      F: {panel: floor}", "      F: {panel: floor}\n      x: {tab: spare, fold: valley 90}", "33:7: error: “x” is not on the map. Put it there, or take it out of the cells.")]
    [InlineData("      w: {panel: wall, fold: valley 90}", "      w: {panel: wall, fold: vally 90}", "33:30: error: “vally 90” is not a fold. Write valley or mountain and the angle it turns through, such as valley 90.")]
    [InlineData("      w: {panel: wall, fold: valley 90}", "      w: {panel: wall, fold: valley 90 mm}", "33:37: error: “90 mm” gives a length, but a number is needed here.")]
    [InlineData("      w: {panel: wall, fold: valley 90}", "      w: {panel: wall}", "33:7: error: “F” and “w” have no fold, but only one panel lies still. Leave out the fold of the one panel that lies on the table while the rest folds.")]
    [InlineData("      w: {panel: wall, fold: valley 90}", "      w: {fold: valley 90}", "33:7: error: This does not say what the cell is. Write one of panel, tab, gusset or diagonal, such as {panel: floor}.")]
    [InlineData("      w: {panel: wall, fold: valley 90}", "      w: {panel: wall, fold: valley 90, glue: inside}", "33:47: error: glue: “inside” is not one of the choices here. Known here: facing, away.")]
    [InlineData("      w: {panel: wall, fold: valley 90}", "      w: {diagonal: joins q, fold: valley 90}", "33:7: error: The diagonal “w” joins “q”, which is no panel, tab or gusset here. Known here: F.")]
    [InlineData("    goes: tray", "    goes: trey", "41:11: error: goes: “trey” is not one of the choices here. Did you mean “tray”?")]
    [InlineData("    on: floor", "    on: flour", "42:9: error: on: “flour” is not one of the choices here. Did you mean “floor”?")]
    [InlineData("    on: floor", "    on: floor\n    side: outsid", "43:11: error: side: “outsid” is not one of the choices here. Did you mean “outside”?")]
    [InlineData("    goes: tray", "    goes: tray\n    shape: mitred strip", "36:5: error: A mitred strip is either a left or a right one. Write hand: left, and a second mat with hand: right.")]
    [InlineData("    least: 1 mm", "    least: no", "46:12: error: “no” gives yes or no, but a length is needed here. Lengths are written with their units: 2 mm or 1/16 in.")]
    [InlineData("{{up(1 mm + card.caliper)}}", "{{up(1 mm + crad.caliper)}}", "47:46: error: “crad.caliper” is not a name of this structure. Did you mean “card.caliper”?")]
    [InlineData("{{up(1 mm + card.caliper)}}", "{{up(1 mm + card.caliper)", "47:13: error: “{{” has no “}}” behind it.")]
    [InlineData("takes: [round, rectangular]", "takes: [round", "3:8: error: The YAML cannot be read from here on: a [list] or a {mapping} may never be closed. Look for a “[” without its “]”, or a “{” without its “}”, and check the indentation.")]
    public void Each_mistake_is_told_with_its_place_and_what_would_be_right(string right, string wrong, params string[] expected)
    {
        Assert.Contains(right, Tray, StringComparison.Ordinal);
        var problems = expected.Select(line => "tray.yaml:" + line);
        Assert.Equal(problems, Errors(Tray.Replace(right, wrong, StringComparison.Ordinal)).Split('\n'));
    }

    [Fact]
    public void A_file_without_pieces_says_so()
    {
        Assert.Contains("“pieces” is missing", Errors("title: A\nsuits: B\ntakes: round\nstocks: {card: C}\n"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_huge_file_is_refused()
    {
        Assert.Contains("longer than 200 thousand characters", Errors(new string('#', 300_000)), StringComparison.Ordinal);
    }

    private static string Errors(string text)
    {
        var problems = new Problems();
        var structure = Catalogue.ReadText(text, "tray", "tray.yaml", problems);
        Assert.Equal(structure is null, problems.HasErrors);
        return Words(problems);
    }
}
