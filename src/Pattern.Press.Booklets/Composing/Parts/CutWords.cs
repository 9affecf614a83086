using Pattern.Press.Booklets.Phrases;
using Pattern.Press.Measure;
using Pattern.Press.Nets.Building;
using Pattern.Press.Plans.Scoring;
using Pattern.Press.Structures.Fitting;
using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Booklets.Composing.Parts;

/// <summary>What is cut beside rectangles, in words: ends, notches, holes, slits, and paths from point to point.</summary>
/// <param name="phrases">The words.</param>
/// <param name="values">Sets measurements.</param>
/// <param name="ruler">The ruler of the piece.</param>
internal sealed class CutWords(PhraseBook phrases, ValueText values, Ruler ruler)
{
    /// <summary>Sentences in one column and, if they are said in both, the same in the other.</summary>
    public IEnumerable<IReadOnlyList<Inline>> Of(CuttingAway here, CuttingAway? there) =>
    [
        .. here.Ends.Select((end, i) => End(end, there?.Ends[i])),
        .. here.Notches.Select((notch, i) => Notch(notch, there?.Notches[i])),
        .. here.Holes.Select((hole, i) => Hole(hole, there?.Holes[i])),
        .. here.Slits.Select((slit, i) => Slit(slit, there?.Slits[i])),
        .. here.Paths.Select(Path),
    ];

    private IReadOnlyList<Inline> End(NarrowedEnd end, NarrowedEnd? there)
    {
        var level = end.End is SheetEdge.Top or SheetEdge.Bottom;
        var round = end.Radius > Length.Zero;
        var radius = Both(end.Radius, there?.Radius);
        (string, IReadOnlyList<Inline>)[] gaps =
        [
            ("panel", Words.Plain(end.Kind)),
            ("left", Across(end.Box, there?.Box)),
            ("top", Down(end.Box, there?.Box)),
            ("end", Words.Plain(phrases[EndName(end.End)])),
            ("radius", radius),
            ("reach", Both([end.From, end.To], there is null ? null : [there.From, there.To])),
            ("edge", Words.Plain(phrases[level ? "scoring.edges.left" : "scoring.edges.top"])),
        ];
        if (!end.IsTapered)
            return Again(phrases.Inlines("scoring.end.round", Only(gaps, "panel", "left", "top", "end", "radius")), end.Again);
        var taper = phrases.Inlines("scoring.end.taper", Only(gaps, "panel", "left", "top", "end", "reach", "edge"));
        return Again(round ? [.. taper, new TextInline(" "), .. phrases.Inlines("scoring.end.round_too", ("radius", radius))] : taper, end.Again);
    }

    private IReadOnlyList<Inline> Notch(EdgeNotch notch, EdgeNotch? there)
    {
        var level = notch.Edge is SheetEdge.Top or SheetEdge.Bottom;
        var edge = notch.Edge switch
        {
            SheetEdge.Top => "scoring.edges.top",
            SheetEdge.Right => "scoring.edges.right",
            SheetEdge.Bottom => "scoring.edges.bottom",
            _ => "scoring.edges.left",
        };
        var from = Words.Plain(phrases[level ? "scoring.edges.left" : "scoring.edges.top"]);
        if (notch.At is { } at)
        {
            return Again(
                phrases.Inlines(
                    "scoring.notch_inside",
                    ("end", Words.Plain(phrases[EndName(notch.Edge)])),
                    ("panel", Words.Plain(notch.Kind)),
                    ("at", Both(at, there?.At)),
                    ("beside", Words.Plain(phrases[level ? "scoring.edges.top" : "scoring.edges.left"])),
                    ("span", Both([notch.From, notch.To], there is null ? null : [there.From, there.To])),
                    ("from", from),
                    ("deep", Both(notch.Depth, there?.Depth))),
                notch.Again);
        }

        return Again(
            phrases.Inlines(
                "scoring.notch",
                ("edge", Words.Plain(phrases[edge])),
                ("span", Both([notch.From, notch.To], there is null ? null : [there.From, there.To])),
                ("from", from),
                ("deep", Both(notch.Depth, there?.Depth))),
            notch.Again);
    }

    private IReadOnlyList<Inline> Hole(RoundHole hole, RoundHole? there) =>
        Again(phrases.Inlines("scoring.hole", ("panel", Words.Plain(hole.Kind)), ("left", Across(hole.Box, there?.Box)), ("top", Down(hole.Box, there?.Box))), hole.Again);

    private IReadOnlyList<Inline> Slit(Slit slit, Slit? there)
    {
        var upright = slit.Box.Left == slit.Box.Right;
        return Again(
            phrases.Inlines(
                upright ? "scoring.slit.upright" : "scoring.slit.level",
                ("panels", Words.Plain(phrases.Join([.. slit.Kinds]))),
                ("at", upright ? Both(slit.Box.Left, there?.Box.Left) : Both(slit.Box.Top, there?.Box.Top)),
                ("span", upright ? Down(slit.Box, there?.Box) : Across(slit.Box, there?.Box))),
            slit.Again);
    }

    private IReadOnlyList<Inline> Path(CutPath path)
    {
        var key = path.Kind switch
        {
            CutPathKind.Outline => "scoring.by_points.outline",
            CutPathKind.Hole => "scoring.by_points.hole",
            _ => "scoring.by_points.slit",
        };
        // Of straight cuts in succession, the first says “to”, and after a curve that it is straight again.
        var steps = path.Steps.Select((step, i) => (step.Through, step.To == path.From) switch
        {
            (null, false) when i == 0 => phrases.Format("scoring.by_points.first", ("to", step.To)),
            (null, false) when path.Steps[i - 1].Through is not null => phrases.Format("scoring.by_points.straight", ("to", step.To)),
            (null, false) => step.To,
            (null, _) => phrases.Format("scoring.by_points.back", ("to", step.To)),
            (var through, false) => phrases.Format("scoring.by_points.curve", ("through", through), ("to", step.To)),
            (var through, _) => phrases.Format("scoring.by_points.curve_back", ("through", through), ("to", step.To)),
        });
        return phrases.Inlines(key, ("from", Words.Plain(path.From)), ("steps", Words.Plain(phrases.Join([.. steps]))));
    }

    private IReadOnlyList<Inline> Again(IReadOnlyList<Inline> said, Mirrored again)
    {
        var key = again switch
        {
            Mirrored.LeftToRight => "scoring.mirrored.left_to_right",
            Mirrored.TopToBottom => "scoring.mirrored.top_to_bottom",
            Mirrored.AllQuarters => "scoring.mirrored.all_quarters",
            _ => null,
        };
        return key is null ? said : [.. said, new TextInline(" "), .. phrases.Inlines(key)];
    }

    private static string EndName(SheetEdge end) => end switch
    {
        SheetEdge.Top => "scoring.end.top",
        SheetEdge.Right => "scoring.end.right",
        SheetEdge.Bottom => "scoring.end.bottom",
        _ => "scoring.end.left",
    };

    private static (string, IReadOnlyList<Inline>)[] Only((string Name, IReadOnlyList<Inline>)[] gaps, params string[] names) =>
        [.. gaps.Where(gap => names.Contains(gap.Name, StringComparer.Ordinal))];

    private IReadOnlyList<Inline> Across(SheetBox here, SheetBox? there) => Both([here.Left, here.Right], there is { } box ? [box.Left, box.Right] : null);

    private IReadOnlyList<Inline> Down(SheetBox here, SheetBox? there) => Both([here.Top, here.Bottom], there is { } box ? [box.Top, box.Bottom] : null);

    private IReadOnlyList<Inline> Both(Length here, Length? there) =>
        values.Both(new LengthValue(here), there is { } length ? new LengthValue(length) : null, ruler);

    private IReadOnlyList<Inline> Both(IReadOnlyList<Length> here, IReadOnlyList<Length>? there) =>
        values.Both(new LengthListValue(here), there is null ? null : new LengthListValue(there), ruler);
}
