using Pattern.Press.Measure;
using Pattern.Press.Nets.Checks;
using static Pattern.Press.Nets.Tests.Sheets;
using Size = Pattern.Press.Measure.Size;

namespace Pattern.Press.Nets.Tests.Checks;

public sealed class PieceChecksTests
{
    private static readonly Piece Sound = DoubleLid(Mm(60), Mm(40), Mm(20), 10, Mm(1)).Build();

    [Fact]
    public void A_sound_piece_has_no_problems() => Assert.Empty(PieceChecks.Problems(Sound));

    [Fact]
    public void Two_panels_of_one_name_are_found() =>
        Found(Sound with { Panels = [.. Sound.Panels, Sound.Panels[0]] }, "2 panels are called “upper inner wall”");

    [Fact]
    public void A_panel_without_a_name_is_found() =>
        Found(Changed("top", panel => panel with { Name = "" }), "A panel has no name.", "The root is called “top”, but no panel is.", "A fold names “top”");

    [Fact]
    public void Adhesive_on_a_panel_that_is_not_there_is_found() =>
        Found(Sound with { GlueAreas = [Sound.GlueAreas[0] with { Panel = "nowhere" }] }, "Adhesive goes on “nowhere”");

    [Fact]
    public void Panels_that_overlap_are_found_even_when_the_area_is_right()
    {
        // The tab moved towards the wall by 1 mm: its area stays, a gap opens on one side, an overlap on the other.
        var moved = Changed("upper left glue tab", panel => panel with { Outline = Motion.By(new(1, 0)).Apply(panel.Outline) });
        Found(moved, "“upper left glue tab” and “upper wall” overlap.");
    }

    [Fact]
    public void Equal_panels_on_top_of_each_other_are_found()
    {
        var copy = Sound.Panel("top") with { Name = "copy" };
        Found(Sound with { Panels = [.. Sound.Panels, copy] }, "“top” and “copy” overlap.", "No fold joins “copy” to the rest.", "Panels and waste cover");
    }

    [Fact]
    public void A_panel_that_crosses_another_like_a_cross_is_found()
    {
        // No corner of either lies inside the other.
        var bar = Sound.Panel("top") with { Name = "bar", Outline = Outline.Rectangle(30, 50, 110, 60) };
        Found(Sound with { Panels = [.. Sound.Panels, bar] }, "“top” and “bar” overlap.");
    }

    [Fact]
    public void Missing_waste_is_found() =>
        Found(Sound with { Waste = [.. Sound.Waste.Skip(1)] }, "Panels and waste cover");

    [Fact]
    public void A_gap_of_a_millionth_of_the_sheet_is_found()
    {
        // The sheet is 140 × 120 mm; 0.02 mm² is a little over a millionth of it.
        var wider = Sound.Sheet with { Width = Sound.Sheet.Width + Length.FromNanometres(200) };
        Found(Sound with { Sheet = wider with { Height = wider.Height + Length.FromNanometres(200) } }, "Panels and waste cover");
    }

    [Fact]
    public void A_panel_over_the_edge_of_the_sheet_is_found() =>
        Found(Sound with { Sheet = new Size(Sound.Sheet.Width, Sound.Sheet.Height - Mm(1)) }, "reaches over the edge of the sheet.");

    [Fact]
    public void An_outline_that_crosses_itself_is_found() =>
        Found(Sound with { Outline = Outline.Through(new(0, 0), new(10, 10), new(10, 0), new(0, 10)) }, "The outline crosses or touches itself.");

    [Fact]
    public void An_outline_that_touches_itself_is_found() =>
        Found(
            Sound with { Outline = Outline.Through(new(0, 0), new(20, 0), new(20, 20), new(10, 0), new(0, 20)) },
            "The outline crosses or touches itself.");

    [Fact]
    public void An_outline_that_doubles_back_is_found() =>
        Found(
            Sound with { Outline = Outline.Through(new(0, 0), new(20, 0), new(10, 0), new(10, 10)) },
            "The outline crosses or touches itself.");

    [Fact]
    public void An_outline_the_wrong_way_round_is_found() =>
        Found(Sound with { Outline = Sound.Outline.Reversed }, "The outline does not run clockwise.");

    [Fact]
    public void An_outline_that_does_not_close_is_found() =>
        Found(Sound with { Outline = new Outline([.. Sound.Outline.Edges.Skip(1)]) }, "The outline does not close.");

    [Fact]
    public void An_outline_without_an_inside_is_found() =>
        Found(Sound with { Outline = Outline.Through(new(0, 0), new(10, 0)) }, "The outline has too few sides.");

    [Fact]
    public void A_corner_that_is_nowhere_is_found() =>
        Found(Sound with { Outline = Outline.Through(new(0, 0), new(double.NaN, 0), new(10, 10)) }, "The outline has a corner that is nowhere.");

    [Fact]
    public void A_side_without_length_is_found() =>
        Found(Sound with { Outline = Outline.Through(new(0, 0), new(10, 0), new(10, 0), new(10, 10)) }, "The outline has a side without length.");

    [Fact]
    public void A_fold_that_is_only_part_of_the_edge_is_found()
    {
        var fold = Sound.Folds[0];
        Found(WithFold(0, fold with { To = fold.From.MidwayTo(fold.To) }), "is not the whole of an edge that they share.");
    }

    [Fact]
    public void A_fold_between_panels_that_do_not_touch_is_found() =>
        Found(WithFold(0, Sound.Folds[0] with { Child = "lower inner wall" }), "The fold between “top” and “lower inner wall” is not the whole");

    [Fact]
    public void A_fold_that_does_not_turn_is_found() =>
        Found(WithFold(0, Sound.Folds[0] with { Angle = 0 }), "turns by 0°");

    [Fact]
    public void A_panel_that_no_fold_joins_is_found() =>
        Found(
            Sound with { Folds = [.. Sound.Folds.Where(fold => fold.Child != "upper wall")] },
            "No fold joins “upper wall” to the rest.", "No fold joins “upper inner wall” to the rest.", "No fold joins “upper left glue tab” to the rest.");

    [Fact]
    public void Folds_join_panels_in_whatever_order_they_are_listed() =>
        Assert.Empty(PieceChecks.Problems(Sound with { Folds = [.. Sound.Folds.Reverse()] }));

    [Fact]
    public void Adhesive_beyond_its_panel_is_found()
    {
        var glue = Sound.GlueAreas[0];
        Found(Sound with { GlueAreas = [glue with { Outline = Motion.By(new(0, 0.1)).Apply(glue.Outline) }] }, "reaches beyond that panel.");
    }

    [Fact]
    public void Adhesive_on_part_of_its_panel_is_fine()
    {
        var bounds = Sound.Panel("top").Outline.Bounds;
        var area = Outline.Rectangle(bounds.Left + 1, bounds.Top, bounds.Right - 1, bounds.Bottom - 5);
        Assert.Empty(PieceChecks.Problems(Sound with { GlueAreas = [new("top", area, SheetSide.Facing)] }));
    }

    private static Piece Changed(string name, Func<Panel, Panel> change) =>
        Sound with { Panels = [.. Sound.Panels.Select(panel => panel.Name == name ? change(panel) : panel)] };

    private static Piece WithFold(int index, Fold fold) =>
        Sound with { Folds = [.. Sound.Folds.Select((old, i) => i == index ? fold : old)] };

    private static void Found(Piece piece, params string[] problems)
    {
        var found = PieceChecks.Problems(piece);
        foreach (var problem in problems)
            Assert.Contains(found, given => given.Contains(problem, StringComparison.Ordinal));
    }
}
