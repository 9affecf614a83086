using System.Globalization;
using Pattern.Press.Measure;
using Pattern.Press.Structures.Fitting;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Structures.Tests.Files;

/// <summary>
/// A file can do nothing but describe, whatever is written in it: what nests, repeats or refers to itself without end is
/// told as a mistake, with no more work than the size of the text.
/// </summary>
public class BoundedReadingTests
{
    private const string Bands = "across: [length]";

    // What is well in itself; each case spoils one line of it.
    private const string Sound = """
        title: Strip
        suits: Nothing.
        takes: [rectangular]
        example: {name: thing, width: 40 mm, depth: 40 mm, height: 40 mm}
        stocks: {card: Card.}
        parameters:
          length: {means: Its length., kind: length, default: item.width, least: 10 mm, most: 200 mm}
        pieces:
          strip:
            name: Strip
            stock: card
            build: scored sheet
            across: [length]
            down: [length]
            map: ["F"]
            cells:
              F: {panel: floor}
        """;

    public static TheoryData<string, string, string> Cases => new()
    {
        { "title: Strip", "title: " + new string('[', 5000) + new string(']', 5000), "nests too deep" },
        { "title: Strip", "title: Strip\nsuch: " + string.Concat(Enumerable.Repeat("- ", 3000)) + "a", "nests too deep" },
        { "default: item.width", "default: " + new string('(', 20_000) + "item.width" + new string(')', 20_000), "at most 30 deep" },
        { "default: item.width", "default: item.width * 99999999999999999999 * 99999999999999999999", "far too large" },
        { "default: item.width", "default: " + string.Join(" + ", Enumerable.Repeat("item.width", 10_000)), "at most 300 parts" },
        { Bands, "across: [{times: 100000, bands: [length]}]", "at most 200 bands" },
        { Bands, "across: &a [*a, length]", "A formula is needed here" },
        { Bands, "across: [&a {times: 2, bands: [*a, *a]}]", "A formula is needed here" },
        { Bands, "across: [&a {times: 200, bands: [length]}, &b {times: 200, bands: [*a, *a]}, {times: 200, bands: [*b, *b]}]", "A formula is needed here" },
        { "takes: [rectangular]", "takes: &q [*q]", "takes no item at all" },
        { "title: Strip", "a: &a [x,x,x,x,x,x,x,x]\nb: &b [*a,*a,*a,*a,*a,*a,*a,*a]\nc: &c [*b,*b,*b,*b,*b,*b,*b,*b]\nd: &d [*c,*c,*c,*c,*c,*c,*c,*c]\ne: [*d,*d,*d,*d,*d,*d,*d,*d]\ntitle: Strip", "“e” is not known here" },
    };

    [Theory]
    [MemberData(nameof(Cases))]
    public void What_has_no_end_is_told_and_not_followed(string line, string instead, string message)
    {
        var problems = new Problems();

        Assert.Null(Catalogue.ReadText(Sound.Replace(line, instead, StringComparison.Ordinal), "strip", "strip.yaml", problems) is { } read ? Tried(read, problems) : null);

        Assert.Contains(problems.All, problem => problem.Message.Contains(message, StringComparison.Ordinal) || problem.Advice.Contains(message, StringComparison.Ordinal));
        Assert.True(problems.All.Count < 200, problems.All.Count.ToString(CultureInfo.InvariantCulture));
    }

    [Fact]
    public void The_file_that_they_spoil_is_sound()
    {
        var problems = new Problems();
        Assert.NotNull(Catalogue.ReadText(Sound, "strip", "strip.yaml", problems));
        Assert.False(problems.HasErrors);
    }

    // Some of it only shows when sizes are worked out.
    private static object? Tried(Structure structure, Problems problems) =>
        structure.Fit(
            new FitRequest
            {
                Ruler = Ruler.WholeMillimetres,
                Item = Boxes.Rectangular("40 mm", "40 mm", "40 mm"),
                Given = new Dictionary<string, GivenValue>(),
                Stocks = Boxes.StocksOf("0.3 mm", "0.1 mm"),
            },
            problems);
}
