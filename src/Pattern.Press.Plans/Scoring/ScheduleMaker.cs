using Pattern.Press.Measure;
using Pattern.Press.Nets;

namespace Pattern.Press.Plans.Scoring;

/// <summary>Makes the schedule of a piece from its folds, cuts and waste.</summary>
internal static class ScheduleMaker
{
    public static ScoreSchedule Make(Piece piece)
    {
        if (UprightPanels.Of(piece) is not { } upright)
            return new PointByPoint(piece).Schedule();
        var turns = new[] { Turn(piece, FenceSide.Top), Turn(piece, FenceSide.Right) }
            .Where(turn => turn.Marks.Count > 0)
            .OrderByDescending(turn => turn.Length)
            .ToList();
        var slanted = SlantedScores.Of(piece);
        return new ScoreSchedule
        {
            Sheet = piece.Sheet,
            Turns = turns,
            Points = slanted.Points,
            Slanted = slanted.Scores,
            CuttingAway = CuttingAwayMaker.Make(piece, upright),
        };
    }

    public static ScoreTurn Turn(Piece piece, FenceSide side)
    {
        var down = side == FenceSide.Top;
        var (length, depth) = down ? (piece.Sheet.Width, piece.Sheet.Height) : (piece.Sheet.Height, piece.Sheet.Width);
        var marks = piece.Folds
            .Where(fold => fold.Bulge == 0)
            .Where(down ? IsDown : IsAcross)
            .Select(fold => Exact(down ? fold.From.X : fold.From.Y))
            .Distinct()
            .Order();
        var full = new List<Length>();
        var partial = new List<(Length Mark, PartialReach Reach, Length From, Length To)>();
        foreach (var mark in marks)
        {
            // Turned anticlockwise, the drawing's right side lies at the fence: what was far from the left is near it.
            var strokes = new ScoreLine(piece, down, mark.Millimetres).Strokes()
                .Select(stroke => (From: Exact(stroke.From), To: Exact(stroke.To)))
                .Select(stroke => down ? stroke : (From: depth - stroke.To, To: depth - stroke.From))
                .Order()
                .ToList();
            if (strokes is [var only] && only.From == Length.Zero && only.To == depth)
            {
                full.Add(mark);
                continue;
            }

            if (strokes.Count > 1 && strokes[0].From == Length.Zero && strokes[^1].To == depth && strokes[0].To == depth - strokes[^1].From)
            {
                partial.Add((mark, PartialReach.FromBothEdges, Length.Zero, strokes[0].To));
                strokes = strokes[1..^1];
            }

            foreach (var (from, to) in strokes)
            {
                partial.Add(
                    from == Length.Zero ? (mark, PartialReach.FromFence, Length.Zero, to)
                    : to == depth ? (mark, PartialReach.FromFarEdge, Length.Zero, depth - from)
                    : (mark, PartialReach.Between, from, to));
            }
        }

        var grouped = partial
            .GroupBy(score => (score.Reach, score.From, score.To))
            .Select(group => new PartialScore([.. group.Select(score => score.Mark)], group.Key.Reach, group.Key.From, group.Key.To))
            .OrderBy(score => score.Marks[0])
            .ThenBy(score => score.From)
            .ThenBy(score => score.Reach)
            .ToList();
        return new ScoreTurn(side, length, depth, full, grouped);
    }

    private static bool IsDown(Fold fold) => Exact(fold.From.X) == Exact(fold.To.X);

    private static bool IsAcross(Fold fold) => Exact(fold.From.Y) == Exact(fold.To.Y);

    private static Length Exact(double millimetres) => Length.FromMillimetres(millimetres);
}
