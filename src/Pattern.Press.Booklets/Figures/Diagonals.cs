using Pattern.Press.Nets;
using Pattern.Press.Plans.Scoring;

namespace Pattern.Press.Booklets.Figures;

/// <summary>A slanted score with the letters of its two ends.</summary>
/// <param name="From">The end nearer to the middle of the sheet.</param>
/// <param name="FromLetter">Its letter.</param>
/// <param name="To">The other end.</param>
/// <param name="ToLetter">Its letter.</param>
public sealed record LetteredDiagonal(Point From, string FromLetter, Point To, string ToLetter);

/// <summary>The slanted scores of a piece as figures draw them, lettered as the score schedule has it.</summary>
public static class Diagonals
{
    /// <summary>Whether a fold runs neither across nor down.</summary>
    public static bool IsDiagonal(Fold fold) => SlantedScores.IsSlanted(fold);

    /// <summary>The slanted scores, clockwise from the top left; ends that coincide share a letter.</summary>
    public static IReadOnlyList<LetteredDiagonal> Of(Piece piece)
    {
        var schedule = ScoreSchedule.For(piece);
        var points = schedule.Points.ToDictionary(point => point.Letter, At, StringComparer.Ordinal);
        return [.. schedule.Slanted.Select(score => new LetteredDiagonal(points[score.From], score.From, points[score.To], score.To))];
    }

    /// <summary>Every lettered point of a piece, and a point that its letter stands away from.</summary>
    public static IReadOnlyList<(string Letter, Point At, Point Beside)> Points(Piece piece)
    {
        var schedule = ScoreSchedule.For(piece);
        var beside = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var score in schedule.Slanted)
        {
            beside.TryAdd(score.From, score.To);
            beside.TryAdd(score.To, score.From);
        }

        var points = schedule.Points.ToDictionary(point => point.Letter, At, StringComparer.Ordinal);
        var middle = new Point(piece.Sheet.Width.Millimetres / 2, piece.Sheet.Height.Millimetres / 2);
        return [.. schedule.Points.Select(point => (point.Letter, At(point), beside.TryGetValue(point.Letter, out var other) ? points[other] : middle))];
    }

    private static Point At(ScorePoint point) => new(point.FromLeft.Millimetres, point.FromTop.Millimetres);
}
