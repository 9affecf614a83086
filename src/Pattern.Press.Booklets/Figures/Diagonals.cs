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
        var slanted = SlantedScores.Of(piece);
        return [.. slanted.Scores.Select(score => new LetteredDiagonal(At(score.From), score.From, At(score.To), score.To))];

        Point At(string letter)
        {
            var point = slanted.Points.First(point => point.Letter == letter);
            return new Point(point.FromLeft.Millimetres, point.FromTop.Millimetres);
        }
    }
}
