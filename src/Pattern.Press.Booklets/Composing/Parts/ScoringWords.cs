using System.Globalization;
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
            .. Points(here, there),
            .. Slanted(here),
            .. Curved(piece),
            .. Rectangles(here, there),
            .. Trims(piece, here.CuttingAway, other, there?.CuttingAway),
            .. Slits(here.CuttingAway, there?.CuttingAway),
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
        if (here.Slanted.Count == 0)
            yield break;
        var joins = here.Slanted.Select(score => phrases.Format("scoring.join", ("from", score.From), ("to", score.To))).ToArray();
        yield return phrases.Inlines("scoring.slanted", ("joins", Words.Plain(phrases.Join(joins))));
    }

    // A curve has no marks on a ruler: it is taken from the template.
    private IEnumerable<IReadOnlyList<Inline>> Curved(Piece piece)
    {
        var count = piece.Folds.Count(fold => fold.Line.IsArc);
        if (count > 0)
            yield return Words.Plain(phrases.Plural("scoring.curved", count));
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

        bool AtSide(WasteRectangle r) => r.Left == Length.Zero || r.Right == here.Sheet.Width;
        bool AtEnd(WasteRectangle r) => r.Top == Length.Zero || r.Bottom == here.Sheet.Height;
        foreach (var group in rest.Where(r => AtSide(r.Here)).GroupBy(r => (r.Here.Top, r.Here.Bottom)))
        {
            foreach (var alike in group.GroupBy(r => r.Here.Size.Width))
            {
                var first = alike.First();
                var edges = alike.Count() > 1 ? phrases["scoring.edges.sides"]
                    : first.Here.Left == Length.Zero ? phrases["scoring.edges.left"]
                    : phrases["scoring.edges.right"];
                yield return phrases.Inlines(
                    "scoring.cut.side",
                    ("span", Both([first.Here.Top, first.Here.Bottom], first.There is { } r ? [r.Top, r.Bottom] : null)),
                    ("deep", Both(first.Here.Size.Width, first.There?.Size.Width)),
                    ("edges", Words.Plain(edges)));
            }
        }

        foreach (var group in rest.Where(r => !AtSide(r.Here) && AtEnd(r.Here)).GroupBy(r => (r.Here.Left, r.Here.Right)))
        {
            foreach (var alike in group.GroupBy(r => r.Here.Size.Height))
            {
                var first = alike.First();
                var edges = alike.Count() > 1 ? phrases["scoring.edges.ends"]
                    : first.Here.Top == Length.Zero ? phrases["scoring.edges.top"]
                    : phrases["scoring.edges.bottom"];
                yield return phrases.Inlines(
                    "scoring.cut.end",
                    ("span", Both([first.Here.Left, first.Here.Right], first.There is { } r ? [r.Left, r.Right] : null)),
                    ("deep", Both(first.Here.Size.Height, first.There?.Size.Height)),
                    ("edges", Words.Plain(edges)));
            }
        }

        foreach (var (r, other) in rest.Where(r => !AtSide(r.Here) && !AtEnd(r.Here)))
        {
            yield return phrases.Inlines(
                "scoring.cut.window",
                ("left", Both([r.Left, r.Right], other is null ? null : [other.Left, other.Right])),
                ("top", Both([r.Top, r.Bottom], other is null ? null : [other.Top, other.Bottom])));
        }
    }

    private IEnumerable<IReadOnlyList<Inline>> Trims(Piece piece, CuttingAway here, Piece? other, CuttingAway? there)
    {
        var all = here.Trims.Select((trim, i) => (Here: Snip.Of(piece, trim, ruler), There: there is null ? null : Snip.Of(other!, there.Trims[i], values.Other(ruler))));
        foreach (var alike in all.Where(trim => IsSimple(trim.Here)).GroupBy(trim => trim))
        {
            var (trim, same) = alike.Key;
            var panels = phrases.Join([.. trim.Kinds]);
            var from = Words.Plain(alike.Count() == 1
                ? panels
                : phrases.Format("scoring.trim.from", ("panel", panels), ("count", alike.Count().ToString(CultureInfo.InvariantCulture))));
            yield return trim.Kind == SnipKind.Corner
                ? phrases.Inlines("scoring.trim.corner", ("from", from), ("short", Both(trim.Short, same?.Short)), ("long", Both(trim.Long, same?.Long)))
                : phrases.Inlines("scoring.trim.strip", ("from", from), ("short", Both(trim.Short, same?.Short)), ("long", Both(trim.Long, same?.Long)));
        }

        // What no two numbers describe is cut by eye, in one go all the way round.
        if (all.Any(trim => !IsSimple(trim.Here)))
            yield return phrases.Inlines("scoring.trim.outline");

        static bool IsSimple(Snip trim) => trim.Kind is SnipKind.Corner or SnipKind.Strip;
    }

    private IEnumerable<IReadOnlyList<Inline>> Slits(CuttingAway here, CuttingAway? there)
    {
        for (var i = 0; i < here.Slits.Count; i++)
        {
            var (slit, other) = (here.Slits[i], there?.Slits[i]);
            Length X(Point point) => Length.FromMillimetres(point.X);
            Length Y(Point point) => Length.FromMillimetres(point.Y);
            yield return phrases.Inlines(
                "scoring.slit",
                ("panels", Words.Plain(phrases.Join([.. slit.Panels]))),
                ("left", Both([X(slit.From), X(slit.To)], other is null ? null : [X(other.From), X(other.To)])),
                ("top", Both([Y(slit.From), Y(slit.To)], other is null ? null : [Y(other.From), Y(other.To)])));
        }
    }

    private IReadOnlyList<Inline> Both(Length here, Length? there) =>
        values.Both(new LengthValue(here), there is { } length ? new LengthValue(length) : null, ruler);

    private IReadOnlyList<Inline> Both(IReadOnlyList<Length> here, IReadOnlyList<Length>? there) =>
        values.Both(new LengthListValue(here), there is null ? null : new LengthListValue(there), ruler);
}
