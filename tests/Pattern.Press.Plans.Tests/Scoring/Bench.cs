using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Nets.Building;
using Pattern.Press.Plans.Scoring;
using Size = Pattern.Press.Measure.Size;

namespace Pattern.Press.Plans.Tests.Scoring;

/// <summary>
/// A maker who has a sheet and a schedule and nothing else: scores what the schedule says, cuts away what it says, and
/// keeps the scores that are then left in the card.
/// </summary>
internal static class Bench
{
    private const double Near = 1e-4;

    /// <summary>The scores left, as maximal lines from their upper or left end.</summary>
    public static List<(Point From, Point To)> FoldsLeft(ScoreSchedule schedule) =>
        Maximal(Scored(schedule).SelectMany(score => Left(score, schedule)));

    /// <summary>Lines joined wherever they run on into each other or lie on each other.</summary>
    public static List<(Point From, Point To)> Maximal(IEnumerable<(Point From, Point To)> lines)
    {
        var list = lines.Select(Ordered).ToList();
        for (var i = 0; i < list.Count; i++)
        {
            for (var j = 0; j < list.Count; j++)
            {
                if (i == j || !Collinear(list[i], list[j]) || !Touch(list[i], list[j]))
                    continue;
                var ends = new[] { list[i].From, list[i].To, list[j].From, list[j].To }.OrderBy(p => Math.Round(p.X, 3)).ThenBy(p => Math.Round(p.Y, 3)).ToList();
                list[i] = (ends[0], ends[3]);
                list.RemoveAt(j);
                (i, j) = (0, -1);
            }
        }

        return [.. list.OrderBy(l => Math.Round(l.From.X, 3)).ThenBy(l => Math.Round(l.From.Y, 3)).ThenBy(l => Math.Round(l.To.X, 3)).ThenBy(l => Math.Round(l.To.Y, 3))];
    }

    /// <summary>Every score the schedule asks for, in the order it asks.</summary>
    public static IEnumerable<(Point From, Point To)> Scored(ScoreSchedule schedule)
    {
        var (width, height) = (schedule.Sheet.Width, schedule.Sheet.Height);
        foreach (var turn in schedule.Turns)
        {
            // With the top at the fence a place is (mark, away from it). For the right side the sheet is turned a quarter
            // anticlockwise: marks count down the drawing, and away from the fence is towards its left.
            Point At(Length mark, Length away) =>
                turn.Side == FenceSide.Top ? new Point(mark, away) : new Point(width - away, mark);
            var depth = turn.Side == FenceSide.Top ? height : width;
            foreach (var mark in turn.Full)
                yield return (At(mark, Length.Zero), At(mark, depth));
            foreach (var score in turn.Partial)
            {
                foreach (var mark in score.Marks)
                {
                    if (score.Reach is PartialReach.FromFence or PartialReach.FromBothEdges)
                        yield return (At(mark, Length.Zero), At(mark, score.To));
                    if (score.Reach is PartialReach.FromFarEdge or PartialReach.FromBothEdges)
                        yield return (At(mark, depth), At(mark, depth - score.To));
                    if (score.Reach is PartialReach.Between)
                        yield return (At(mark, score.From), At(mark, score.To));
                }
            }
        }

        foreach (var slanted in schedule.Slanted)
            yield return (Lettered(slanted.From), Lettered(slanted.To));

        Point Lettered(string letter)
        {
            var point = Assert.Single(schedule.Points, p => p.Letter == letter);
            return new Point(point.FromLeft, point.FromTop);
        }
    }

    /// <summary>Everything that is cut off, as outlines that do not overlap.</summary>
    public static List<Outline> Away(ScoreSchedule schedule)
    {
        var cutting = schedule.CuttingAway;
        var away = cutting.Rectangles.Select(r => Outline.Rectangle(r.Left.Millimetres, r.Top.Millimetres, r.Right.Millimetres, r.Bottom.Millimetres)).ToList();
        foreach (var end in cutting.Ends)
        {
            // A wedge at each side of a tapered end that has any width.
            var (l, t, r, b) = (end.Box.Left.Millimetres, end.Box.Top.Millimetres, end.Box.Right.Millimetres, end.Box.Bottom.Millimetres);
            var (from, to) = (end.From.Millimetres, end.To.Millimetres);
            Assert.Equal(Length.Zero, end.Radius);
            Point[][] wedges = end.End switch
            {
                SheetEdge.Top => [[new(l, t), new(from, t), new(l, b)], [new(to, t), new(r, t), new(r, b)]],
                SheetEdge.Bottom => [[new(l, t), new(from, b), new(l, b)], [new(r, t), new(r, b), new(to, b)]],
                SheetEdge.Left => [[new(l, t), new(r, t), new(l, from)], [new(l, to), new(r, b), new(l, b)]],
                _ => [[new(l, t), new(r, t), new(r, from)], [new(r, to), new(r, b), new(l, b)]],
            };
            foreach (var wedge in wedges.Where(wedge => Math.Abs((wedge[1] - wedge[0]).Cross(wedge[2] - wedge[0])) > Near))
                away.AddRange(Images(end.Again, schedule.Sheet).Select(image => Clockwise(Outline.Through([.. wedge.Select(image)]))));
        }

        return away;
    }

    /// <summary>Every slit, also those that are said once for several places.</summary>
    public static IEnumerable<Edge> Made(CuttingAway cutting, Size sheet) => cutting.Slits.SelectMany(slit => Images(slit.Again, sheet)
        .Select(image => new Edge(image(new(slit.Box.Left, slit.Box.Top)), image(new(slit.Box.Right, slit.Box.Bottom)))));

    private static Outline Clockwise(Outline outline) => outline.IsClockwise ? outline : outline.Reversed;

    private static IEnumerable<Func<Point, Point>> Images(Mirrored again, Size sheet)
    {
        var (w, h) = (sheet.Width.Millimetres, sheet.Height.Millimetres);
        yield return point => point;
        if (again is Mirrored.LeftToRight or Mirrored.AllQuarters)
            yield return point => new Point(w - point.X, point.Y);
        if (again is Mirrored.TopToBottom or Mirrored.AllQuarters)
            yield return point => new Point(point.X, h - point.Y);
        if (again is Mirrored.AllQuarters)
            yield return point => new Point(w - point.X, h - point.Y);
    }

    private static IEnumerable<(Point From, Point To)> Left((Point From, Point To) score, ScoreSchedule schedule)
    {
        var cutting = schedule.CuttingAway;
        var waste = Away(schedule);
        var slits = Made(cutting, schedule.Sheet).ToList();
        var line = new Edge(score.From, score.To);
        var along = (line.To - line.From) * (1 / line.Chord);
        var stops = new List<double> { 0, line.Chord };
        foreach (var edge in waste.SelectMany(outline => outline.Edges).Concat(slits))
        {
            stops.Add(along.Dot(edge.From - line.From));
            stops.Add(along.Dot(edge.To - line.From));
            var (a, b) = (along.Cross(edge.From - line.From), along.Cross(edge.To - line.From));
            if ((a > Near && b < -Near) || (a < -Near && b > Near))
                stops.Add(along.Dot(edge.From + ((edge.To - edge.From) * (a / (a - b))) - line.From));
        }

        var sorted = stops.Where(stop => stop >= 0 && stop <= line.Chord).Order().ToList();
        for (var i = 0; i + 1 < sorted.Count; i++)
        {
            if (sorted[i + 1] - sorted[i] < Near)
                continue;
            var middle = line.From + (along * ((sorted[i] + sorted[i + 1]) / 2));
            if (waste.Any(outline => outline.Contains(middle) || outline.DistanceTo(middle) < Near) || slits.Any(slit => slit.DistanceTo(middle) < Near))
                continue;
            yield return (line.From + (along * sorted[i]), line.From + (along * sorted[i + 1]));
        }
    }

    private static (Point From, Point To) Ordered((Point From, Point To) line) =>
        (line.From.X, line.From.Y).CompareTo((line.To.X, line.To.Y)) <= 0 ? line : (line.To, line.From);

    private static bool Collinear((Point From, Point To) a, (Point From, Point To) b)
    {
        var along = (a.To - a.From) * (1 / a.From.DistanceTo(a.To));
        return Math.Abs(along.Cross(b.From - a.From)) < Near && Math.Abs(along.Cross(b.To - a.From)) < Near;
    }

    private static bool Touch((Point From, Point To) a, (Point From, Point To) b) =>
        new Edge(a.From, a.To).DistanceTo(b.From) < Near || new Edge(a.From, a.To).DistanceTo(b.To) < Near || new Edge(b.From, b.To).DistanceTo(a.From) < Near;
}
