using Pattern.Press.Measure;
using Pattern.Press.Structures.Fitting;
using Pattern.Press.Structures.Reading;
using static Pattern.Press.Structures.Tests.Boxes;

namespace Pattern.Press.Structures.Tests.Fitting;

public class ImpossibleNetTests
{
    private const string Outright = "floor_length: 60 mm\nfloor_width: 50 mm\nwall_height: 40 mm\n";

    [Theory]
    [InlineData("gusset: 90 mm", "4:9: error: “gusset” is 90 mm, but can be at most 25 mm here. A gusset folds in between two walls, so it has to be narrower than they are high, and two have to lie side by side along the shorter wall.")]
    [InlineData("lid_depth: 41 mm", "4:12: error: “lid_depth” is 41 mm, but can be at most 40 mm here. A lid deeper than the walls are high would stand on the table and leave the box loose inside.")]
    [InlineData("mat_border: 6 mm", "4:13: error: “mat_border” is 6 mm, but can be at most 5 mm here. A wider border would leave nothing of the mats on the narrowest panels.")]
    [InlineData("platform: yes\nplatform_height: 45 mm", "5:18: error: “platform_height” is 45 mm, but can be at most 35 mm here. A platform has to stay below the top of the walls.")]
    [InlineData("platform: yes\nplatform_lip: 25 mm", "5:15: error: “platform_lip” is 25 mm, but can be at most 18 mm here. The lips fold in from all four sides and must not meet.")]
    [InlineData("platform: yes\nplatform_slack: 15 mm", "5:17: error: “platform_slack” is 15 mm, but can be at most 10 mm here.")]
    [InlineData("lid_clearance: 25 mm", "4:16: error: “lid_clearance” is 25 mm, but can be at most 20 mm here.")]
    [InlineData("gusset: 2 mm", "4:9: error: “gusset” is 2 mm, but must be at least 4 mm here. A gusset folds in between two walls, so it has to be narrower than they are high, and two have to lie side by side along the shorter wall.")]
    public void Sizes_that_make_no_net_are_refused_at_their_place_with_the_limit(string sizes, string expected)
    {
        Assert.Equal("booklet.md:" + expected, Boxes.Problems(Ruler.WholeMillimetres, null, Outright + sizes));
    }

    [Fact]
    public void The_limit_is_told_in_inches_on_an_inch_ruler()
    {
        Assert.Contains("“gusset” is 4 in, but can be at most 1 in here.", Boxes.Problems(Ruler.SixteenthInches, null, Outright + "gusset: 4 in"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_value_that_follows_from_a_given_one_is_told_at_the_given_one_and_else_at_the_item()
    {
        const string Advice = "Change what it follows from, such as the item, its ease or the card, or set it yourself under “sizes”.";
        Assert.Equal(
            $"booklet.md:1:7: error: “floor_length” comes out at 423 mm, but can be at most 400 mm here. {Advice}\nbooklet.md:1:7: error: “floor_width” comes out at 423 mm, but can be at most 400 mm here. {Advice}",
            Boxes.Problems(Ruler.WholeMillimetres, Round("380 mm", "72 mm"), "ease: 20 mm"));
        Assert.StartsWith("booklet.md:90: error: “floor_length” comes out at 457 mm", Boxes.Problems(Ruler.WholeMillimetres, Round("450 mm", "72 mm"), "{}"), StringComparison.Ordinal);
    }

    [Fact]
    public void Only_the_value_that_is_wrong_is_told_not_those_that_follow_from_it()
    {
        Assert.Single(Boxes.Problems(Ruler.WholeMillimetres, null, Outright.Replace("40 mm", "5 mm", StringComparison.Ordinal)).Split('\n'));
    }

    [Theory]
    [InlineData("wall_height: 12", "wall_height: “12” has no unit; write 12 mm or 12 in.")]
    [InlineData("wall_height: 0 mm", "“wall_height” cannot be 0 mm. A size cannot be nothing.")]
    [InlineData("wall_height: -5 mm", "“wall_height” cannot be -5 mm. A size cannot be less than nothing.")]
    [InlineData("wall_height: 10 m", "“wall_height” cannot be 10 m. Sizes here go from 1 mm to 1 m (39 3/8 in).")]
    [InlineData("wall_height: 0.000001 mm", "“wall_height” cannot be 0.000001 mm. Sizes here go from 1 mm to 1 m (39 3/8 in).")]
    [InlineData("ease: 0.4 mm", "“ease” cannot be 0.4 mm. Sizes here go from 0.5 mm to 1 m (39 3/8 in).")]
    [InlineData("wall_height: tall", "wall_height: “tall” is not a length; write a number and its unit, such as 58 mm or 2 1/4 in.")]
    [InlineData("wall_height: [1 mm]", "wall_height: a length is needed here, such as 58 mm or 2 1/4 in.")]
    [InlineData("platform: maybe", "platform: “maybe” should be yes or no. Write “platform: yes” or “platform: no”.")]
    [InlineData("lid_walls: doubel", "lid_walls: “doubel” is not one of the choices here. Did you mean “double”?")]
    [InlineData("wall_hight: 80 mm", "“wall_hight” is not something to set about this structure (Explosion box). Did you mean “wall_height”?")]
    public void A_value_that_cannot_be_is_refused_when_it_is_read(string size, string expected)
    {
        var column = expected.Contains("not something to set", StringComparison.Ordinal) ? 1 : size.IndexOf(' ', StringComparison.Ordinal) + 2;
        Assert.Equal($"booklet.md:1:{column}: error: {expected}", Boxes.Problems(Ruler.WholeMillimetres, null, size));
    }

    [Theory]
    [InlineData("0 mm", "72 mm", "The item’s diameter cannot be 0 mm. A size cannot be nothing.")]
    [InlineData("58 mm", "-1 mm", "The item’s height cannot be -1 mm. A size cannot be less than nothing.")]
    [InlineData("10 m", "72 mm", "The item’s diameter cannot be 10000 mm. Sizes here go from 1 mm to 1 m (39 3/8 in).")]
    [InlineData("0.000001 mm", "72 mm", "The item’s diameter cannot be 0 mm. Sizes here go from 1 mm to 1 m (39 3/8 in).")]
    public void An_absurd_item_is_refused(string diameter, string height, string expected)
    {
        Assert.Equal($"booklet.md:90: error: {expected}", Boxes.Problems(Ruler.WholeMillimetres, Round(diameter, height), "{}"));
    }

    [Fact]
    public void Sizes_that_are_missing_are_named_together()
    {
        Assert.Equal(
            "booklet.md:90: error: “floor_width” and “wall_height” have to be set, as there is no item to fit to. Set them, or name the item that goes inside.",
            Boxes.Problems(Ruler.WholeMillimetres, null, "floor_length: 60 mm"));
    }

    [Fact]
    public void A_stock_that_is_missing_is_told_unless_nothing_is_made_from_it()
    {
        var problems = new Problems();
        var request = Request(Ruler.WholeMillimetres, Round("58 mm", "72 mm"), "{}", problems) with { Stocks = new Dictionary<string, Stock> { ["card"] = Stocks["card"] } };
        Assert.Null(Explosion.Fit(request, problems));
        Assert.StartsWith("booklet.md:90: error: The stock “mats” is missing.", Words(problems), StringComparison.Ordinal);

        problems = new Problems();
        request = Request(Ruler.WholeMillimetres, Round("58 mm", "72 mm"), "mats: none", problems) with { Stocks = request.Stocks };
        Assert.NotNull(Explosion.Fit(request, problems));
        Assert.Equal("", Words(problems));
    }

    [Fact]
    public void A_value_that_changes_nothing_is_warned_about()
    {
        Assert.Equal(
            "booklet.md:1:18: warning: “platform_height” changes nothing here: it matters only when “platform” is yes.",
            Boxes.Problems(Ruler.WholeMillimetres, Round("58 mm", "72 mm"), "platform_height: 20 mm"));
    }

    [Fact]
    public void A_size_off_the_ruler_is_brought_to_it_and_that_is_said()
    {
        var model = Fit(Ruler.SixteenthInches, null, Outright + "gusset: 1/2 in");
        Assert.Equal(
            [("floor_length", L("60 mm"), L("2 3/8 in")), ("floor_width", L("50 mm"), L("2 in")), ("wall_height", L("40 mm"), L("1 5/8 in"))],
            model.Rounded.OrderBy(size => size.Name, StringComparer.Ordinal).Select(size => (size.Name, size.Given, size.Used)));
        Assert.Empty(Fit(Ruler.WholeMillimetres, null, Outright).Rounded);
    }
}
