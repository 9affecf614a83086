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
            .. schedule.Slanted.Select(score => $"{score.From}{score.To}"),
            .. Levels(schedule.Points.Select(point => point.FromTop)),
            .. cutting.Rectangles.Select(r => $"{r.Corner}{r.Left == Measure.Length.Zero}{r.Top == Measure.Length.Zero}{r.Right == schedule.Sheet.Width}{r.Bottom == schedule.Sheet.Height}"),
            .. Levels(cutting.Rectangles.Select(r => r.Size)),
            .. Levels(cutting.Rectangles.Select(r => (r.Top, r.Bottom))),
            .. Levels(cutting.Rectangles.Select(r => (r.Left, r.Right))),
            .. cutting.Trims.Select(trim => $"{string.Join('/', trim.Panels)}{trim.IsStrip}{trim.Outline.Edges.Count}"),
            .. cutting.Slits.Select(slit => string.Join('/', slit.Panels)),
        ]);
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
