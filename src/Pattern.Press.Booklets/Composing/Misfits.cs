using Pattern.Press.Booklets.Content;
using Pattern.Press.Structures.Reading;
using Pattern.Press.Typesetting.Layout;

namespace Pattern.Press.Booklets.Composing;

/// <summary>Says what could not be laid out, each at the line on which a maker can mend it.</summary>
internal static class Misfits
{
    /// <summary>Notes what does not fit, and of the same words in several places only where there is least room for them.</summary>
    public static void Report(IEnumerable<LayoutProblem> misfits, BookletSource source, Problems problems)
    {
        // What a link leads to may be in a step that could not be read.
        var all = misfits.Where(misfit => misfit.MissingPlace.Length == 0 || source.UnreadSteps.Count == 0).ToList();
        if (all.Count == 0)
            return;
        var written = Whereabouts.In(source);
        foreach (var same in all.Select(misfit => (Place: PlaceOf(misfit, source, written), Misfit: misfit)).GroupBy(one => (one.Place, Words: one.Misfit.Words.Trim('.', ',', ';', ':'), IsAboutRoom: one.Misfit.Room > 0)))
        {
            if (same.Key.IsAboutRoom)
                problems.Error(same.Key.Place, same.MinBy(one => one.Misfit.Room).Misfit.Message);
            else
                problems.AddRange(same.Select(one => new Problem(Severity.Error, one.Place.File, one.Place.Line, 0, one.Misfit.Message)));
        }
    }

    // A block of Markdown knows its line. What the program set knows a file at most, and words of its own only the structure.
    private static Place PlaceOf(LayoutProblem misfit, BookletSource source, Whereabouts written)
    {
        if (misfit.Source is { Line: > 1 } known)
            return new Place(known.File, known.Line);
        return (misfit.Source is { } file ? written.Find(misfit.Words, file.File) : null)
            ?? written.Find(misfit.Words)
            ?? (misfit.Source is { } whole ? new Place(whole.File, whole.Line) : source.StructurePlace);
    }
}
