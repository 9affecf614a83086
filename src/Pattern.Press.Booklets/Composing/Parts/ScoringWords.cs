using Pattern.Press.Booklets.Phrases;
using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Plans.Scoring;
using Pattern.Press.Structures.Fitting;
using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Booklets.Composing.Parts;

/// <summary>A score schedule in words, one action at a time.</summary>
/// <param name="phrases">The words.</param>
/// <param name="values">Sets measurements.</param>
/// <param name="ruler">The ruler of the piece that the schedule is of.</param>
internal sealed class ScoringWords(PhraseBook phrases, ValueText values, Ruler ruler)
{
    /// <summary>What is done with a sheet, in order: scores of each turn, slanted scores, then cutting away.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="other">The same piece in the other column; its schedule has to be alike. Null says one column only.</param>
    public IReadOnlyList<IReadOnlyList<Inline>> Of(Piece piece, Piece? other)
    {
        var here = ScoreSchedule.For(piece);
        var there = other is null ? null : ScoreSchedule.For(other);
        return
        [
            .. here.Turns.SelectMany((turn, i) => Turn(turn, there?.Turns[i], isFirst: i == 0)),
            .. here.IsByPoints ? [] : Points(here, there),
            .. Slanted(here),
            .. Rectangles(here, there),
            .. new CutWords(phrases, values, ruler).Of(here.CuttingAway, there?.CuttingAway),
        ];
    }

    private IEnumerable<IReadOnlyList<Inline>> Turn(ScoreTurn here, ScoreTurn? there, bool isFirst)
    {
        var side = Both(here.Length, there?.Length);
        var lay = (here.Side, isFirst) switch
        {
            (FenceSide.Top, true) => phrases.Inlines("scoring.lay.top", ("side", side)),
            (FenceSide.Top, false) => phrases.Inlines("scoring.turn.top", ("side", side)),
            (_, true) => phrases.Inlines("scoring.lay.right", ("side", side)),
            _ => phrases.Inlines("scoring.turn.right", ("side", side)),
        };
        if (here.Full.Count > 0)
            lay = [.. lay, new TextInline(" "), .. phrases.Inlines("scoring.full", ("marks", Both(here.Full, there?.Full)))];
        yield return lay;
        for (var i = 0; i < here.Partial.Count; i++)
        {
            var (score, other) = (here.Partial[i], there?.Partial[i]);
            var marks = Both(score.Marks, other?.Marks);
            var to = Both(score.To, other?.To);
            yield return score.Reach switch
            {
                PartialReach.FromFence => phrases.Inlines("scoring.partial.fence", ("marks", marks), ("to", to)),
                PartialReach.FromFarEdge => phrases.Inlines("scoring.partial.far", ("marks", marks), ("to", to)),
                PartialReach.FromBothEdges => phrases.Inlines("scoring.partial.both", ("marks", marks), ("to", to)),
                _ => phrases.Inlines("scoring.partial.between", ("marks", marks), ("from", Both(score.From, other?.From)), ("to", to)),
            };
        }
    }

    // One action for each level of points: they are found on a line across the sheet.
    private IEnumerable<IReadOnlyList<Inline>> Points(ScoreSchedule here, ScoreSchedule? there)
    {
        var indexed = here.Points.Select((point, i) => (Point: point, Index: i));
        foreach (var level in indexed.GroupBy(point => point.Point.FromTop).OrderBy(level => level.Key))
        {
            var points = level.OrderBy(point => point.Point.FromLeft).ToList();
            var at = Both([.. points.Select(p => p.Point.FromLeft)], there is null ? null : [.. points.Select(p => there.Points[p.Index].FromLeft)]);
            var top = Both(level.Key, there?.Points[points[0].Index].FromTop);
            yield return phrases.Inlines(
                "scoring.points",
                ("letters", Words.Plain(phrases.Join([.. points.Select(p => p.Point.Letter)]))),
                ("top", top),
                ("left", at));
        }
    }

    private IEnumerable<IReadOnlyList<Inline>> Slanted(ScoreSchedule here)
    {
        var straight = here.Slanted.Where(score => score.Through is null).Select(score => phrases.Format("scoring.join", ("from", score.From), ("to", score.To))).ToArray();
        if (straight.Length > 0)
            yield return phrases.Inlines("scoring.slanted", ("joins", Words.Plain(phrases.Join(straight))));
        var curved = here.Slanted.Where(score => score.Through is not null).Select(score => phrases.Format("scoring.join_curve", ("from", score.From), ("through", score.Through!), ("to", score.To))).ToArray();
        if (curved.Length > 0)
            yield return phrases.Inlines("scoring.curves", ("joins", Words.Plain(phrases.Join(curved))));
    }

    private IEnumerable<IReadOnlyList<Inline>> Rectangles(ScoreSchedule here, ScoreSchedule? there)
    {
        var all = here.CuttingAway.Rectangles.Select((rectangle, i) => (Here: rectangle, There: there?.CuttingAway.Rectangles[i])).ToList();
        var corners = all.Where(r => r.Here.Corner is not null).ToList();
        var rest = all;
        if (corners.Count == 4 && corners.TrueForAll(r => r.Here.Size == corners[0].Here.Size))
        {
            yield return phrases.Inlines(
                "scoring.cut.corners",
                ("wide", Both(corners[0].Here.Size.Width, corners[0].There?.Size.Width)),
                ("high", Both(corners[0].Here.Size.Height, corners[0].There?.Size.Height)));
            rest = [.. all.Where(r => r.Here.Corner is null)];
        }

        foreach (var said in new RectangleWords(phrases, values, ruler, here.Sheet).Of(rest))
            yield return said;
    }

    private IReadOnlyList<Inline> Both(Length here, Length? there) =>
        values.Both(new LengthValue(here), there is { } length ? new LengthValue(length) : null, ruler);

    private IReadOnlyList<Inline> Both(IReadOnlyList<Length> here, IReadOnlyList<Length>? there) =>
        values.Both(new LengthListValue(here), there is null ? null : new LengthListValue(there), ruler);
}
