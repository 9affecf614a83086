using System.Text;
using Pattern.Press.Structures.Reading;
using static Pattern.Press.Structures.Tests.Boxes;

namespace Pattern.Press.Structures.Tests.Fitting;

/// <summary>A length below nothing is found when a file is read, at the corners of what may be set.</summary>
public class CornerTests
{
    private const string Strip = """
        title: Strip
        suits: A test.
        takes: [rectangular]
        stocks:
          card: Any card.
        parameters:
          length:
            means: How long it is.
            kind: length
            default: item.width + 2 mm
            least: 20 mm
            most: 300 mm
          wall:
            means: How high its ends are.
            kind: length
            default: 15 mm
            least: 5 mm
            most: 60 mm
          ends:
            means: Whether it has ends.
            kind: yes/no
            default: yes
        values:
          end: if(ends, wall, 0 mm)
        pieces:
          strip:
            name: Strip
            stock: card
            build: scored sheet
            across: [end, length - wall, end]
            down: [40 mm]
            map:
              - "e F e"
            cells:
              F: {panel: floor}
              e: {panel: end, fold: valley 90}
        """;

    public static TheoryData<string> Ids => [.. Catalogue.Open(Folder, new Problems()).Ids];

    [Theory]
    [MemberData(nameof(Ids))]
    public void No_structure_of_the_catalogue_gives_a_length_below_nothing_for_what_may_be_set(string id)
    {
        var problems = new Problems();
        Catalogue.Open(Folder, problems).Find(id, default, problems)!.Try(problems);
        Assert.Equal("", Words(problems));
    }

    [Fact]
    public void The_formula_is_named_with_its_place_and_the_corner_and_what_to_do()
    {
        Assert.Equal(
            "strip.yaml:30:19: error: “length - wall” comes out at -40 mm, less than nothing, where “length” is 20 mm (its least) and “wall” is 60 mm (its most), for an item of 80 × 55 × 25 mm. Keep them from that with “least” or “most”, or write max(0 mm, …).",
            Read(Strip));
    }

    [Theory]
    [InlineData("    most: 60 mm", "    most: length - 5 mm")]
    [InlineData("    least: 20 mm", "    least: 60 mm")]
    [InlineData("length - wall, end]", "\"max(0 mm, length - wall)\", end]")]
    public void Limits_or_another_formula_put_it_right(string wrong, string right) =>
        Assert.Equal("", Read(Strip.Replace(wrong, right, StringComparison.Ordinal)));

    [Fact]
    public void What_a_check_refuses_anyway_is_allowed_to_nobody()
    {
        Assert.Equal("", Read(Strip + """

            checks:
              The ends leave a floor:
                found: length - wall
                least: 1 mm
            """));
    }

    [Fact]
    public void One_parameter_alone_and_none_at_all_are_corners_too()
    {
        Assert.Contains("where “length” is 20 mm (its least), for", Read(Strip.Replace("length - wall, end]", "length - 25 mm, end]", StringComparison.Ordinal)), StringComparison.Ordinal);
        Assert.Contains("-17 mm, less than nothing, with nothing set, for", Read(Strip.Replace("length - wall, end]", "65 mm - length, end]", StringComparison.Ordinal)), StringComparison.Ordinal);
        Assert.Contains("where “ends” is no, for", Read(Strip.Replace("length - wall, end]", "\"length - if(ends, 0 mm, 100 mm)\", end]", StringComparison.Ordinal)), StringComparison.Ordinal);
    }

    [Fact]
    public void A_mat_that_is_only_there_now_and_then_is_looked_at_then()
    {
        const string Mat = """

            mats:
              mat:
                name: Mat
                stock: card
                when: ends
                width: length - 100 mm
                height: 10 mm
                for: the floor
                goes: strip
            """;
        Assert.Contains("“length - 100 mm” comes out at -18 mm, less than nothing, with nothing set", Read(Strip.Replace("length - wall, end]", "length, end]", StringComparison.Ordinal) + Mat), StringComparison.Ordinal);
        Assert.Equal("", Read(Strip.Replace("length - wall, end]", "length, end]", StringComparison.Ordinal) + Mat.Replace("when: ends", "when: not ends and ends", StringComparison.Ordinal)));
    }

    [Fact]
    public void Inches_are_tried_as_well()
    {
        var text = Strip.Replace("length - wall, end]", "\"if(ruler.metric, length, length - 4 in)\", end]", StringComparison.Ordinal);
        Assert.Contains("comes out at -3/4 in, less than nothing, with nothing set", Read(text), StringComparison.Ordinal);
    }

    [Fact]
    public void As_many_parameters_as_a_file_may_have_are_tried_within_bounds()
    {
        var text = new StringBuilder(Strip[..Strip.IndexOf("  wall:", StringComparison.Ordinal)]);
        for (var i = 0; i < 198; i++)
            text.Append(System.Globalization.CultureInfo.InvariantCulture, $"  extra_{i}:\n    means: More.\n    kind: length\n    default: 10 mm\n    least: 5 mm\n    most: 60 mm\n");
        text.Append(Strip[Strip.IndexOf("  wall:", StringComparison.Ordinal)..].Replace("  ends:\n    means: Whether it has ends.\n    kind: yes/no\n    default: yes\n", "", StringComparison.Ordinal).Replace("if(ends, wall, 0 mm)", "wall", StringComparison.Ordinal));

        // All at their least and all at their most come before the pairs, of which there are tens of thousands.
        Assert.Equal("", Read(text.ToString().Replace("length - wall, end]", "length, end]", StringComparison.Ordinal)));
        Assert.Contains("comes out at -30 mm, less than nothing, where “extra_197” is 60 mm (its most), for an item", Read(text.ToString().Replace("length - wall, end]", "30 mm - extra_197, end]", StringComparison.Ordinal)), StringComparison.Ordinal);
    }

    private static string Read(string text)
    {
        var problems = new Problems();
        var structure = Catalogue.ReadText(text, "strip", "strip.yaml", problems);
        Assert.Equal(structure is null, problems.HasErrors);
        return Words(problems);
    }
}
