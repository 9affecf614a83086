using System.Globalization;

namespace Pattern.Press.Plans.Scoring;

/// <summary>Whether two schedules ask for the same actions in the same order, whatever their measurements.</summary>
public static class ScheduleShape
{
    /// <summary>Whether one set of words can give the measurements of both.</summary>
    public static bool IsAlike(ScoreSchedule one, ScoreSchedule other)
    {
        ArgumentNullException.ThrowIfNull(one);
        ArgumentNullException.ThrowIfNull(other);
        return Of(one) == Of(other);
    }

    private static string Of(ScoreSchedule schedule)
    {
        var cutting = schedule.CuttingAway;
        return string.Join(' ',
        [
            .. schedule.Turns.Select(turn => $"{turn.Side} {turn.Full.Count} {string.Join(',', turn.Partial.Select(score => $"{score.Reach}{score.Marks.Count}"))}"),
            .. schedule.Slanted.Select(score => $"{score.From}{score.Through}{score.To}"),
            .. Levels(schedule.IsByPoints ? [] : schedule.Points.Select(point => point.FromTop)),
            .. cutting.Rectangles.Select(r => $"{r.Corner}{r.Left == Measure.Length.Zero}{r.Top == Measure.Length.Zero}{r.Right == schedule.Sheet.Width}{r.Bottom == schedule.Sheet.Height}"),
            .. Levels(cutting.Rectangles.Select(r => r.Size)),
            .. Levels(cutting.Rectangles.Select(r => (r.Top, r.Bottom))),
            .. Levels(cutting.Rectangles.Select(r => (r.Left, r.Right))),
            .. Mirrors(schedule),
            .. cutting.Ends.Select(end => $"{end.Kind}{end.End}{end.IsTapered}{end.Radius > Measure.Length.Zero}{end.Again}"),
            .. cutting.Notches.Select(notch => $"{notch.Kind}{notch.Edge}{notch.At is null}{notch.Again}"),
            .. cutting.Holes.Select(hole => $"{hole.Kind}{hole.Again}"),
            .. cutting.Slits.Select(slit => $"{string.Join('/', slit.Kinds)}{slit.Box.Left == slit.Box.Right}{slit.Again}"),
            .. cutting.Paths.Select(path => $"{path.Kind}{path.From}{string.Join(',', path.Steps.Select(step => step.Through + step.To))}"),
        ]);
    }

    // Which rectangles are mirror images of which.
    private static IEnumerable<string> Mirrors(ScoreSchedule schedule)
    {
        var all = schedule.CuttingAway.Rectangles;
        foreach (var r in all)
        {
            yield return string.Join(
                '.',
                Enumerable.Range(0, all.Count).Where(i => (all[i].Top, all[i].Bottom) == (schedule.Sheet.Height - r.Bottom, schedule.Sheet.Height - r.Top)
                    || (all[i].Left, all[i].Right) == (schedule.Sheet.Width - r.Right, schedule.Sheet.Width - r.Left)));
        }
    }

    // Which of the values are equal, without the values.
    private static IEnumerable<string> Levels<T>(IEnumerable<T> values)
    {
        var seen = new List<T>();
        foreach (var value in values)
        {
            if (!seen.Contains(value))
                seen.Add(value);
            yield return seen.IndexOf(value).ToString(CultureInfo.InvariantCulture);
        }
    }
}
