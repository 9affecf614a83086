using System.Runtime.CompilerServices;
using Pattern.Press.Measure;
using Pattern.Press.Nets;

namespace Pattern.Press.Plans.Scoring;

/// <summary>The scores of a piece that run neither down nor across, from point to point, with the points' letters.</summary>
/// <param name="Points">The points, in the order of their letters.</param>
/// <param name="Scores">The scores, clockwise from the sheet's top left corner.</param>
public sealed record SlantedScores(IReadOnlyList<ScorePoint> Points, IReadOnlyList<SlantedScore> Scores)
{
    private const double Near = 1e-5;

    // A figure is drawn several times until it suits its page.
    private static readonly ConditionalWeakTable<Piece, SlantedScores> Known = [];

    /// <summary>
    /// The slanted scores of a piece. Words and figures take their letters from here, so that they name the same points
    /// alike: the first score runs from A to B, the next from C to D, and ends that coincide share a letter.
    /// </summary>
    public static SlantedScores Of(Piece piece)
    {
        ArgumentNullException.ThrowIfNull(piece);
        return Known.GetValue(piece, Make);
    }

    /// <summary>Whether a fold runs straight, but neither across nor down.</summary>
    public static bool IsSlanted(Fold fold)
    {
        ArgumentNullException.ThrowIfNull(fold);
        return fold.Bulge == 0
            && Length.FromMillimetres(fold.From.X) != Length.FromMillimetres(fold.To.X)
            && Length.FromMillimetres(fold.From.Y) != Length.FromMillimetres(fold.To.Y);
    }

    private static SlantedScores Make(Piece piece)
    {
        var middle = new Point(piece.Sheet.Width.Millimetres / 2, piece.Sheet.Height.Millimetres / 2);
        var points = new List<ScorePoint>();
        var scores = Joined(piece.Folds.Where(IsSlanted))
            .Select(line => line.From.DistanceTo(middle) <= line.To.DistanceTo(middle) + Near ? line : line.Reversed)
            .OrderBy(line => Turn(line.To, middle))
            .ThenBy(line => Math.Round(line.From.DistanceTo(middle), 6))
            .Select(line => new SlantedScore(Letter(line.From), Letter(line.To), Through: null))
            .ToList();
        return new SlantedScores(points, scores);

        string Letter(Point at)
        {
            var (left, top) = (Length.FromMillimetres(at.X), Length.FromMillimetres(at.Y));
            if (points.Find(point => point.FromLeft == left && point.FromTop == top) is { } known)
                return known.Letter;
            points.Add(new ScorePoint(Letters.Of(points.Count), left, top));
            return points[^1].Letter;
        }
    }

    // Clockwise from the left side, so that the top left corner comes first.
    private static double Turn(Point p, Point middle)
    {
        var angle = Math.Round(Math.Atan2(p.Y - middle.Y, p.X - middle.X), 6);
        return angle < -Math.PI + Near || angle >= Math.PI - Near ? -Math.PI : angle;
    }

    // Two folds that run on into each other are one stroke of the scoring tool.
    internal static List<Edge> Joined(IEnumerable<Fold> folds)
    {
        var lines = folds.Select(fold => new Edge(fold.From, fold.To)).ToList();
        for (var i = 0; i < lines.Count; i++)
        {
            for (var j = i + 1; j < lines.Count; j++)
            {
                if (RunOn(lines[i], lines[j]) is not { } joined)
                    continue;
                lines[i] = joined;
                lines.RemoveAt(j);
                j = i;
            }
        }

        return lines;
    }

    private static Edge? RunOn(Edge a, Edge b)
    {
        foreach (var first in new[] { a, a.Reversed })
        {
            foreach (var second in new[] { b, b.Reversed })
            {
                if (first.To.DistanceTo(second.From) < Near
                    && Math.Abs(first.From.DistanceTo(second.To) - first.Chord - second.Chord) < 1e-9
                    && new Edge(first.From, second.To).DistanceTo(first.To) < Near)
                {
                    return new Edge(first.From, second.To);
                }
            }
        }

        return null;
    }
}
