using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Structures.Fitting;
using static Pattern.Press.Structures.Tests.Boxes;

namespace Pattern.Press.Structures.Tests.Fitting;

// Every figure of this class: common practice, no source. They are the sizes at which makers cut this box in inches.
public class CheckValueTests
{
    private const string Sizes = """
        floor_length: 2 in
        floor_width: 1 1/2 in
        wall_height: 3 1/2 in
        gusset: 1/2 in
        lid_clearance: 1/8 in
        lid_depth: 3/4 in
        lid_walls: double
        platform: yes
        platform_height: 1/2 in
        platform_lip: 1/2 in
        platform_slack: 1/16 in
        mat_border: 1/8 in
        """;

    private static readonly Model Model = Fit(Ruler.SixteenthInches, null, Sizes);

    [Theory]
    [InlineData("base", "9 in", "8 1/2 in")]
    [InlineData("lid", "5 1/8 in", "4 5/8 in")]
    [InlineData("platform", "3 15/16 in", "3 7/16 in")]
    [InlineData("wall_mat_front", "1 3/4 in", "3 1/4 in")]
    [InlineData("wall_mat_side", "1 1/4 in", "3 1/4 in")]
    [InlineData("lid_top_mat", "1 7/8 in", "1 3/8 in")]
    [InlineData("lid_mat_front", "1 7/8 in", "1/2 in")]
    [InlineData("lid_mat_side", "1 3/8 in", "1/2 in")]
    [InlineData("platform_top_mat", "1 3/4 in", "1 1/4 in")]
    [InlineData("platform_mat_front", "1 3/4 in", "1/4 in")]
    [InlineData("platform_mat_side", "1 1/4 in", "1/4 in")]
    [InlineData("gusset_mat_left", "3 1/4 in", "1/4 in")]
    [InlineData("gusset_mat_right", "3 1/4 in", "1/4 in")]
    public void The_sheets_measure_what_makers_cut(string part, string width, string height)
    {
        Assert.Equal(new SizeValue(new Size(L(width), L(height))), Model.Values[part + ".sheet"]);
    }

    [Theory]
    [InlineData("base.scores_across", "3 1/2 in", "5 1/2 in")]
    [InlineData("base.scores_down", "3 1/2 in", "5 in")]
    [InlineData("base.corner_marks_across", "3 in", "6 in")]
    [InlineData("base.corner_marks_down", "3 in", "5 1/2 in")]
    [InlineData("lid.scores_across", "3/4 in", "1 1/2 in", "3 5/8 in", "4 3/8 in")]
    [InlineData("lid.scores_down", "3/4 in", "1 1/2 in", "3 1/8 in", "3 7/8 in")]
    [InlineData("platform.scores_across", "1/2 in", "1 in", "2 15/16 in", "3 7/16 in")]
    [InlineData("platform.scores_down", "1/2 in", "1 in", "2 7/16 in", "2 15/16 in")]
    public void The_scores_lie_where_makers_score(string name, params string[] marks)
    {
        Assert.Equal(marks.Select(L), Assert.IsType<LengthListValue>(Model.Values[name]).Lengths);
    }

    [Fact]
    public void The_corner_waste_of_the_base_is_four_squares_of_three_inches()
    {
        var waste = Model.Kit.Parts.Single(part => part.Piece.Id == "base").Piece.Waste;
        Assert.Equal(4, waste.Count);
        foreach (var square in waste)
        {
            var corners = square.Outline.Corners.ToList();
            Assert.Equal(76.2, corners.Max(c => c.X) - corners.Min(c => c.X), 6);
            Assert.Equal(76.2, corners.Max(c => c.Y) - corners.Min(c => c.Y), 6);
        }
    }

    [Fact]
    public void The_platform_is_four_by_three_and_a_half_inches_before_a_sixteenth_is_taken_off()
    {
        var sheet = Assert.IsType<SizeValue>(Model.Values["platform.sheet"]).Size;
        var slack = L("1/16 in");
        Assert.Equal(new Size(L("4 in"), L("3 1/2 in")), new Size(sheet.Width + slack, sheet.Height + slack));
    }

    [Fact]
    public void There_are_four_gusset_strips_of_each_hand_and_a_mat_for_each_wall()
    {
        var mats = Model.Kit.Parts.Where(part => part.Kind == PartKind.Mat).ToDictionary(part => part.Piece.Id);
        Assert.Equal((4, Hand.Left), (mats["gusset_mat_left"].Quantity, mats["gusset_mat_left"].Hand));
        Assert.Equal((4, Hand.Right), (mats["gusset_mat_right"].Quantity, mats["gusset_mat_right"].Hand));
        Assert.All(["wall_mat_front", "wall_mat_side", "lid_mat_front", "lid_mat_side", "platform_mat_front", "platform_mat_side"], id => Assert.Equal(2, mats[id].Quantity));
    }
}
