using Pattern.Press.Booklets.Phrases;
using Pattern.Press.Measure;
using Pattern.Press.Plans.Scoring;
using Pattern.Press.Structures.Fitting;
using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Booklets.Composing.Parts;

/// <summary>The rectangles that are cut away, in words: as cuts into the sides of the sheet where they touch them.</summary>
/// <param name="phrases">The words.</param>
/// <param name="values">Sets measurements.</param>
/// <param name="ruler">The ruler of the piece.</param>
/// <param name="sheet">The sheet of the piece.</param>
internal sealed class RectangleWords(PhraseBook phrases, ValueText values, Ruler ruler, Size sheet)
{
    private enum Reach
    {
        Side,
        End,
        Neither,
    }

    /// <summary>Sentences for rectangles in one column and, if they are said in both, the same in the other.</summary>
    public IEnumerable<IReadOnlyList<Inline>> Of(IEnumerable<(WasteRectangle Here, WasteRectangle? There)> rectangles)
    {
        var left = rectangles.ToList();
        while (left.Count > 0)
        {
            var (here, there) = left[0];
            var reach = here.Left == Length.Zero != (here.Right == sheet.Width) ? Reach.Side
                : here.Top == Length.Zero || here.Bottom == sheet.Height ? Reach.End
                : Reach.Neither;
            var group = left.Where(other => Belongs(here, other.Here, reach)).ToList();
            if (!IsComplete(group))
            {
                // Only what is cut at the same place along an edge is left to be said together.
                group = [.. group.Where(other => reach switch
                {
                    Reach.Side => other.Here.Top == here.Top,
                    Reach.End => other.Here.Left == here.Left,
                    _ => other.Here == here,
                })];
            }

            left.RemoveAll(group.Contains);
            yield return Said((here, there), group, reach);
        }
    }

    // What is cut as deep from the same or the opposite edge, at the same place along it or at its mirror image.
    private bool Belongs(WasteRectangle one, WasteRectangle other, Reach reach)
    {
        var (w, h) = (sheet.Width, sheet.Height);
        bool Across(WasteRectangle r) => (r.Left, r.Right) == (one.Left, one.Right) || (r.Left, r.Right) == (w - one.Right, w - one.Left);
        bool Down(WasteRectangle r) => (r.Top, r.Bottom) == (one.Top, one.Bottom) || (r.Top, r.Bottom) == (h - one.Bottom, h - one.Top);
        return Across(other) && Down(other);
    }

    // Two places along two edges make four, two along one edge two.
    private static bool IsComplete(List<(WasteRectangle Here, WasteRectangle? There)> group)
    {
        var (columns, rows) = (group.Select(r => r.Here.Left).Distinct().Count(), group.Select(r => r.Here.Top).Distinct().Count());
        return group.Count == columns * rows;
    }

    private IReadOnlyList<Inline> Said((WasteRectangle Here, WasteRectangle? There) first, List<(WasteRectangle Here, WasteRectangle? There)> group, Reach reach)
    {
        IReadOnlyList<Inline> Down()
        {
            var second = group.Find(other => other.Here.Top != first.Here.Top);
            IReadOnlyList<Inline> Span((WasteRectangle Here, WasteRectangle? There) r) => Both([r.Here.Top, r.Here.Bottom], r.There is { } there ? [there.Top, there.Bottom] : null);
            return second.Here is null ? Span(first) : phrases.Inlines("scoring.cut.spans", ("first", Span(first)), ("second", Span(second)));
        }

        IReadOnlyList<Inline> Across()
        {
            var second = group.Find(other => other.Here.Left != first.Here.Left);
            IReadOnlyList<Inline> Span((WasteRectangle Here, WasteRectangle? There) r) => Both([r.Here.Left, r.Here.Right], r.There is { } there ? [there.Left, there.Right] : null);
            return second.Here is null ? Span(first) : phrases.Inlines("scoring.cut.spans", ("first", Span(first)), ("second", Span(second)));
        }

        if (reach == Reach.Neither)
            return phrases.Inlines("scoring.cut.rectangle", ("left", Across()), ("top", Down()));
        var side = reach == Reach.Side;
        var (near, far) = side
            ? (group.Exists(r => r.Here.Left == Length.Zero), group.Exists(r => r.Here.Right == sheet.Width))
            : (group.Exists(r => r.Here.Top == Length.Zero), group.Exists(r => r.Here.Bottom == sheet.Height));
        var edges = (side, near, far) switch
        {
            (true, true, true) => "scoring.edges.sides",
            (true, true, _) => "scoring.edges.left",
            (true, _, _) => "scoring.edges.right",
            (_, true, true) => "scoring.edges.ends",
            (_, true, _) => "scoring.edges.top",
            _ => "scoring.edges.bottom",
        };
        return phrases.Inlines(
            side ? "scoring.cut.side" : "scoring.cut.end",
            ("span", side ? Down() : Across()),
            ("deep", side ? Both(first.Here.Size.Width, first.There?.Size.Width) : Both(first.Here.Size.Height, first.There?.Size.Height)),
            ("edges", Words.Plain(phrases[edges])));
    }

    private IReadOnlyList<Inline> Both(Length here, Length? there) =>
        values.Both(new LengthValue(here), there is { } length ? new LengthValue(length) : null, ruler);

    private IReadOnlyList<Inline> Both(IReadOnlyList<Length> here, IReadOnlyList<Length>? there) =>
        values.Both(new LengthListValue(here), there is null ? null : new LengthListValue(there), ruler);
}
