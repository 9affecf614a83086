using CsCheck;
using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Plans.Scoring;
using static Pattern.Press.Nets.Tests.Sheets;
using Size = Pattern.Press.Measure.Size;

namespace Pattern.Press.Plans.Tests.Scoring;

public class ScoreScheduleTests
{
    [Fact]
    public void The_known_base_is_scored_at_3_and_a_half_and_5_and_a_half_along_its_long_side_and_3_and_a_half_and_5_along_its_short()
    {
        // Common practice, no source.
        var schedule = ScoreSchedule.For(Boxes.Base);
        Assert.Equal(2, schedule.Turns.Count);
        Assert.Equal((FenceSide.Top, In("9"), In("8 1/2"), true), (schedule.Turns[0].Side, schedule.Turns[0].Length, schedule.Turns[0].Depth, schedule.Turns[0].IsLonger));
        Assert.Equal([In("3 1/2"), In("5 1/2")], schedule.Turns[0].Full);
        Assert.Empty(schedule.Turns[0].Partial);
        Assert.Equal((FenceSide.Right, In("8 1/2"), false), (schedule.Turns[1].Side, schedule.Turns[1].Length, schedule.Turns[1].IsLonger));
        Assert.Equal([In("3 1/2"), In("5")], schedule.Turns[1].Full);
        Assert.Equal(
            ["A 3 1/2 3 1/2", "B 3 3", "C 5 1/2 3 1/2", "D 6 3", "E 5 1/2 5", "F 6 5 1/2", "G 3 1/2 5", "H 3 5 1/2"],
            schedule.Points.Select(p => $"{p.Letter} {LengthFormat.MixedInches(p.FromLeft)} {LengthFormat.MixedInches(p.FromTop)}"));
        Assert.Equal([new("A", "B"), new("C", "D"), new("E", "F"), new SlantedScore("G", "H")], schedule.Slanted);
    }

    [Fact]
    public void Its_corner_waste_is_marked_at_3_and_6_along_the_long_side_and_3_and_5_and_a_half_along_the_short_stopping_3_in()
    {
        // Common practice, no source.
        var cutting = ScoreSchedule.For(Boxes.Base).CuttingAway;
        var corners = Assert.IsType<CornerMarks>(cutting.FourCorners);
        Assert.Equal([In("3"), In("6")], corners.Across);
        Assert.Equal([In("3"), In("5 1/2")], corners.Down);
        Assert.Equal((In("3"), In("3")), (corners.InFromTopAndBottom, corners.InFromLeftAndRight));
        Assert.Equal([SheetCorner.TopLeft, SheetCorner.TopRight, SheetCorner.BottomLeft, SheetCorner.BottomRight], cutting.Rectangles.Select(r => r.Corner));
        Assert.All(cutting.Rectangles, r => Assert.Equal(new Size(In("3"), In("3")), r.Size));
        Assert.Empty(cutting.Ends);
        Assert.Empty(cutting.Slits);
    }

    [Fact]
    public void The_known_double_lid_is_scored_at_three_quarters_and_1_and_a_half_from_all_four_sides()
    {
        // Common practice, no source. The marks from the far sides count on from the near ones: 5 1/8 − 1 1/2 = 3 5/8.
        var schedule = ScoreSchedule.For(Boxes.Lid);
        Assert.Equal([In("3/4"), In("1 1/2"), In("3 5/8"), In("4 3/8")], schedule.Turns[0].Full);
        Assert.Equal([In("3/4"), In("1 1/2"), In("3 1/8"), In("3 7/8")], schedule.Turns[1].Full);
        Assert.All(schedule.Turns, turn => Assert.Empty(turn.Partial));
    }

    [Fact]
    public void A_score_that_may_not_run_on_stops_where_the_fold_does_and_both_ends_are_said_together()
    {
        // A tray whose side walls hang between two long ones, each arm cut free of the middle: folds at 20 and 80 along the
        // top reach from either edge in to 30 only, for between them lies a panel that is not folded.
        var piece = Boxes.Tray(Mm(60), Mm(50), Mm(20), Mm(30)).Build();
        var schedule = ScoreSchedule.For(piece);
        var partial = Assert.Single(schedule.Turns.Single(turn => turn.Side == FenceSide.Top).Partial);
        Assert.Equal([Mm(20), Mm(80)], partial.Marks);
        Assert.Equal((PartialReach.FromBothEdges, Mm(30)), (partial.Reach, partial.To));

        // The walls' own folds run on over the slits beside the tabs.
        Assert.Equal([Mm(30), Mm(80)], schedule.Turns.Single(turn => turn.Side == FenceSide.Right).Full);
        Assert.Equal(Mirrored.AllQuarters, Assert.Single(schedule.CuttingAway.Slits).Again);
        var slits = Bench.Made(schedule.CuttingAway, schedule.Sheet).ToList();
        Assert.Equal(4, slits.Count);
        Assert.All(slits, slit => Assert.Equal(20, slit.Chord, 9));
        Assert.Equal(Maximal(piece), Bench.FoldsLeft(schedule), Near);
    }

    [Fact]
    public void Scores_in_the_middle_run_from_one_distance_to_another_counted_from_the_side_at_the_fence()
    {
        // A window shutter: a panel folds inside a frame that stays flat, so its score touches no edge.
        var frame = Outline.Through(new(0, 0), new(100, 0), new(100, 80), new(0, 80), new(0, 50), new(30, 50), new(60, 50), new(60, 20), new(30, 20), new(30, 50), new(0, 50));
        var shutter = Outline.Rectangle(30, 20, 60, 50);
        var piece = Grids.Piece([100], [80], "#") with
        {
            Panels = [new("frame", "frame", PanelRole.Panel, frame), new("shutter", "shutter", PanelRole.Panel, shutter)],
            Folds = [new("frame", "shutter", new(30, 20), new(60, 20), FoldDirection.Valley, 90)],
            Cuts = [.. Outline.Rectangle(0, 0, 100, 80).Edges, .. shutter.Edges.Skip(1)],
        };
        var turn = Assert.Single(ScoreSchedule.For(piece).Turns);
        Assert.Equal(FenceSide.Right, turn.Side);
        var score = Assert.Single(turn.Partial);
        Assert.Equal([Mm(20)], score.Marks);

        // From the right, 60 and 30 of 100 are 40 and 70.
        Assert.Equal((PartialReach.Between, Mm(40), Mm(70)), (score.Reach, score.From, score.To));
    }

    [Fact]
    public void A_maker_with_the_sheet_and_the_schedule_alone_ends_with_exactly_the_folds_of_the_piece() =>
        Boxes.Any.Sample(piece => Assert.Equal(Maximal(piece), Bench.FoldsLeft(ScoreSchedule.For(piece)), Near), iter: 60);

    [Fact]
    public void What_is_cut_away_is_all_the_waste_and_nothing_else() =>
        Boxes.Any.Sample(piece =>
        {
            var schedule = ScoreSchedule.For(piece);
            var parts = Bench.Away(schedule);
            Assert.Equal(piece.Waste.Sum(waste => waste.Outline.Area), parts.Sum(part => part.Area), 0.001);
            foreach (var part in parts)
            {
                var centre = part.Centroid;
                Assert.Contains(piece.Waste, waste => waste.Outline.Contains(centre));
                Assert.DoesNotContain(parts, other => other != part && other.Contains(centre));
                Assert.All(part.Corners, corner => Assert.Contains(piece.Waste, waste => waste.Outline.Contains(corner) || waste.Outline.DistanceTo(corner) < 1e-4));
            }

            // Cuts run round the piece once; what more there is of them are slits.
            Assert.Equal(piece.Cuts.Sum(cut => cut.Length) - piece.Outline.Perimeter, Bench.Made(schedule.CuttingAway, schedule.Sheet).Sum(slit => slit.Chord), 4);
            Assert.All(schedule.CuttingAway.Slits, slit => Assert.Equal(2, slit.Kinds.Count));
        }, iter: 60);

    [Fact]
    public void Marks_rise_and_there_are_at_most_two_turns_the_longer_side_first() =>
        Boxes.Any.Sample(piece =>
        {
            var schedule = ScoreSchedule.For(piece);
            Assert.InRange(schedule.Turns.Count, 1, 2);
            Assert.True(schedule.Turns[0].Length >= schedule.Turns[^1].Length);
            foreach (var turn in schedule.Turns)
            {
                Assert.Equal(turn.Full.Order(), turn.Full);
                Assert.Equal(turn.Partial.OrderBy(score => score.Marks[0]).Select(score => score.Marks[0]), turn.Partial.Select(score => score.Marks[0]));
                Assert.All(turn.Partial, score => Assert.Equal(score.Marks.Order(), score.Marks));
            }
        }, iter: 60);

    private static List<(Point From, Point To)> Maximal(Piece piece) =>
        Bench.Maximal(piece.Folds.Select(fold => (fold.From, fold.To)));

    private static bool Near((Point From, Point To) a, (Point From, Point To) b) =>
        a.From.DistanceTo(b.From) < 1e-4 && a.To.DistanceTo(b.To) < 1e-4;
}
