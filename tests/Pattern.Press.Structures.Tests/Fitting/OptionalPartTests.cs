using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Structures.Fitting;
using static Pattern.Press.Structures.Tests.Boxes;

namespace Pattern.Press.Structures.Tests.Fitting;

public class OptionalPartTests
{
    [Fact]
    public void Without_a_platform_there_is_neither_platform_nor_its_mats_and_the_floor_has_one()
    {
        var without = Ids(Fit(Ruler.WholeMillimetres, Round("58 mm", "72 mm"), "platform: no"));
        Assert.DoesNotContain(without, id => id.StartsWith("platform", StringComparison.Ordinal));
        Assert.Contains("floor_mat", without);
        var with = Ids(Fit(Ruler.WholeMillimetres, Round("58 mm", "72 mm"), "platform: yes"));
        Assert.Equal(["platform", "platform_top_mat", "platform_mat_front", "platform_mat_side"], with.Where(id => id.StartsWith("platform", StringComparison.Ordinal)));
        Assert.DoesNotContain("floor_mat", with);
    }

    [Fact]
    public void A_single_lid_has_no_return()
    {
        var single = Piece(Fit(Ruler.WholeMillimetres, Round("58 mm", "72 mm"), "lid_walls: single\nlid_depth: 20 mm"), "lid");
        var twofold = Piece(Fit(Ruler.WholeMillimetres, Round("58 mm", "72 mm"), "lid_walls: double\nlid_depth: 20 mm"), "lid");
        Assert.Equal(["back wall", "front wall", "glue tab", "side wall", "top"], Kinds(single));
        Assert.Equal(["back wall", "front wall", "glue tab", "inner wall", "side wall", "top"], Kinds(twofold));
        Assert.Equal(L("40 mm"), twofold.Sheet.Width - single.Sheet.Width);
        Assert.Equal(4, single.GlueAreas.Count);
        Assert.Equal(8, twofold.GlueAreas.Count);
    }

    [Fact]
    public void Without_gussets_the_base_is_a_plain_cross()
    {
        var plain = Fit(Ruler.WholeMillimetres, Round("58 mm", "72 mm"), "gussets: no");
        Assert.Equal(5, Piece(plain, "base").Panels.Count);
        Assert.DoesNotContain(Ids(plain), id => id.StartsWith("gusset", StringComparison.Ordinal));
        var full = Piece(Fit(Ruler.WholeMillimetres, Round("58 mm", "72 mm"), "gussets: yes"), "base");
        Assert.Equal(8, full.Panels.Count(panel => panel.Role == PanelRole.Gusset));
        Assert.Equal(4, full.Folds.Count(fold => fold is { Direction: FoldDirection.Mountain, Angle: 180 }));
        Assert.Equal(8, full.Folds.Count(fold => fold is { Direction: FoldDirection.Valley, Angle: 135 }));
    }

    [Fact]
    public void Mats_are_none_or_inside_or_on_the_outside_of_the_walls_too()
    {
        Assert.Equal(["base", "lid"], Ids(Fit(Ruler.WholeMillimetres, Round("58 mm", "72 mm"), "mats: none")));
        Assert.DoesNotContain(Ids(Fit(Ruler.WholeMillimetres, Round("58 mm", "72 mm"), "mats: inside")), id => id.StartsWith("outer", StringComparison.Ordinal));
        Assert.Equal(2, Ids(Fit(Ruler.WholeMillimetres, Round("58 mm", "72 mm"), "mats: both")).Count(id => id.StartsWith("outer", StringComparison.Ordinal)));
    }

    [Fact]
    public void A_mat_is_on_the_side_that_its_file_says_and_inside_when_it_says_none()
    {
        var model = Fit(Ruler.WholeMillimetres, Round("58 mm", "72 mm"), "platform: yes\nmats: both");
        foreach (var mat in model.Kit.Parts.Where(part => part.Kind == PartKind.Mat))
        {
            var outside = mat.Goes != "base" || mat.Piece.Id.StartsWith("outer", StringComparison.Ordinal);
            Assert.Equal(outside ? SheetSide.Away : SheetSide.Facing, mat.Side);
        }
    }

    [Fact]
    public void Every_mat_lies_within_a_panel_it_is_for()
    {
        var model = Fit(Ruler.SixteenthInches, Rectangular("70 mm", "45 mm", "50 mm"), "platform: yes\nmats: both");
        foreach (var mat in model.Kit.Parts.Where(part => part.Kind == PartKind.Mat))
        {
            var piece = Piece(model, mat.Goes!);
            Assert.NotEmpty(mat.On!);
            foreach (var kind in mat.On!)
            {
                Assert.All(piece.Panels.Where(panel => panel.Kind == kind), panel =>
                {
                    var corners = panel.Outline.Corners.ToList();
                    var (width, height) = (corners.Max(c => c.X) - corners.Min(c => c.X), corners.Max(c => c.Y) - corners.Min(c => c.Y));
                    Assert.True(mat.Piece.Sheet.Longer.Millimetres < Math.Max(width, height), mat.Piece.Id);
                    Assert.True(mat.Piece.Sheet.Shorter.Millimetres < Math.Min(width, height), mat.Piece.Id);
                });
            }
        }
    }

    [Fact]
    public void Small_lids_and_platforms_get_shorter_tabs_that_do_not_meet()
    {
        var model = Fit(Ruler.WholeMillimetres, null, "floor_length: 60 mm\nfloor_width: 25 mm\nwall_height: 90 mm\nlid_depth: 40 mm\nplatform: yes\nplatform_height: 30 mm");
        foreach (var id in new[] { "lid", "platform" })
        {
            var side = Piece(model, id).Panels.First(panel => panel.Kind == "side wall").Outline.Corners.ToList();
            var tab = Piece(model, id).Panels.First(panel => panel.Kind == "glue tab").Outline.Corners.ToList();
            Assert.True(2 * (tab.Max(c => c.X) - tab.Min(c => c.X)) <= side.Max(c => c.Y) - side.Min(c => c.Y));
        }
    }

    private static Piece Piece(Model model, string id) => model.Kit.Parts.Single(part => part.Piece.Id == id).Piece;

    private static List<string> Ids(Model model) => [.. model.Kit.Parts.Select(part => part.Piece.Id)];

    private static IEnumerable<string> Kinds(Piece piece) => piece.Panels.Select(panel => panel.Kind).Distinct().Order(StringComparer.Ordinal);
}
