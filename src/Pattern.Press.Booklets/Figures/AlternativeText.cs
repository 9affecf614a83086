using Pattern.Press.Booklets.Content;
using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Plans.Scoring;

namespace Pattern.Press.Booklets.Figures;

/// <summary>Says in words what a drawing shows, worked out from the piece.</summary>
public static class AlternativeText
{
    /// <summary>What a flat drawing shows.</summary>
    public static string Of(FlatDrawing drawing)
    {
        ArgumentNullException.ThrowIfNull(drawing);
        var (piece, words) = (drawing.Piece, drawing.Words);
        var sentences = new List<string>
        {
            words.Say("alternative." + Key(drawing.Show), ("piece", piece.Name), ("sheet", SheetSize(drawing))),
        };
        switch (drawing.Show)
        {
            case FigureShow.Flat:
                sentences.Add(words.Say("alternative.panels", ("panels", Panels(piece, words))));
                sentences.Add(Folds(piece, words));
                if (piece.GlueAreas.Count > 0)
                    sentences.Add(words.Count("alternative.glue_areas", piece.GlueAreas.Count));
                break;
            case FigureShow.Scores:
                Distances(across: true);
                Distances(across: false);
                break;
            case FigureShow.Diagonals:
                sentences.AddRange(Diagonals.Of(piece).Select(line => words.Say("alternative.diagonal", ("from", line.FromLetter), ("to", line.ToLetter))));
                sentences.AddRange(Points(drawing));
                break;
            case FigureShow.Waste:
                sentences.Add(words.Count("alternative.waste_areas", piece.Waste.Count));
                sentences.AddRange(CutAway(drawing));
                Distances(across: true);
                Distances(across: false);
                break;
            case FigureShow.Folds:
                sentences.Add(Folds(piece, words));
                break;
            case FigureShow.Glue when piece.GlueAreas.Count > 0:
                sentences.Add(words.Count("alternative.glue_areas", piece.GlueAreas.Count));
                sentences.Add(words.Say("alternative.panels", ("panels", List(words, Kinds(piece.GlueAreas.Select(area => piece.Panel(area.Panel).Kind), words)))));
                break;
            case FigureShow.Mats:
                sentences.Add(Mats(MatPlacing.On(piece, drawing.Parts).Where(mat => mat.Side == SheetSide.Facing), words, drawing.Ruler, drawing.OtherParts, drawing.OtherRuler));
                break;
            default:
                break;
        }

        return string.Join(' ', sentences.Where(sentence => sentence.Length > 0));

        void Distances(bool across)
        {
            // The last place is the side of the sheet itself.
            var stations = drawing.Stations(across).SkipLast(1).Select(station => station.InOneLine).ToArray();
            if (stations.Length > 0)
                sentences.Add(words.Say(across ? "alternative.from_left" : "alternative.from_top", ("marks", List(words, stations))));
        }
    }

    /// <summary>Several things in one phrase: <c>a, b and c</c>.</summary>
    internal static string List(IFigureWords words, IEnumerable<string> items)
    {
        var all = items.ToArray();
        return all.Length switch
        {
            0 => "",
            1 => all[0],
            2 => words.Say("list.two", ("first", all[0]), ("last", all[1])),
            _ => words.Say("list.many", ("first", string.Join(words.Say("list.comma"), all[..^1])), ("last", all[^1])),
        };
    }

    /// <summary>Which mats there are, how many of each and how large.</summary>
    /// <param name="mats">The mats.</param>
    /// <param name="words">The words.</param>
    /// <param name="ruler">The ruler they are fitted on.</param>
    /// <param name="others">The parts fitted on the other ruler.</param>
    /// <param name="otherRuler">That ruler; null for none.</param>
    internal static string Mats(IEnumerable<PlacedMat> mats, IFigureWords words, Ruler ruler, IReadOnlyList<Part> others, Ruler? otherRuler)
    {
        // Some names have commas of their own.
        var said = mats.GroupBy(mat => mat.Part.Piece.Id, StringComparer.Ordinal).Select(alike =>
        {
            var piece = alike.First().Part.Piece;
            var there = otherRuler is null ? null : others.FirstOrDefault(part => part.Piece.Id == piece.Id)?.Piece;
            return words.Say("alternative.mat", ("mat", Times(words, alike.Count(), piece.Name)), ("size", Both(words, piece.Sheet, ruler, there?.Sheet, otherRuler)));
        });
        return words.Say("alternative.mat_list", ("mats", string.Join(words.Say("list.semicolon") + " ", said)));
    }

    // The rectangles by their sizes, and what is cut aslant or round beside them.
    private static IEnumerable<string> CutAway(FlatDrawing drawing)
    {
        var (words, here) = (drawing.Words, ScoreSchedule.For(drawing.Piece));
        var there = drawing.Other is { } other && ScoreSchedule.For(other) is var schedule && ScheduleShape.IsAlike(here, schedule) ? schedule : null;
        var rectangles = here.CuttingAway.Rectangles
            .Select((rectangle, i) => (Here: rectangle.Size, There: there?.CuttingAway.Rectangles[i].Size))
            .GroupBy(sizes => sizes)
            .Select(alike => words.Say("alternative.waste_rectangle", ("count", alike.Count().ToString(System.Globalization.CultureInfo.InvariantCulture)), ("size", Both(words, alike.Key.Here, drawing.Ruler, alike.Key.There, drawing.OtherRuler))))
            .ToList();
        if (rectangles.Count > 0)
            yield return words.Say("alternative.waste_rectangles", ("rectangles", string.Join(words.Say("list.semicolon") + " ", rectangles)));
        var ends = here.CuttingAway.Ends.Select(end => end.Kind).Distinct(StringComparer.Ordinal).ToList();
        if (ends.Count > 0)
            yield return words.Say("alternative.waste_ends", ("panels", List(words, ends)));
    }

    private static string Both(IFigureWords words, Size here, Ruler ruler, Size? there, Ruler? otherRuler)
    {
        var text = words.Number(LengthFormat.Format(here, ruler));
        return there is { } size && otherRuler is not null ? $"{text} / {words.Number(LengthFormat.Format(size, otherRuler))}" : text;
    }

    private static string Key(FigureShow show) => show.ToString().ToLowerInvariant();

    // Where each end of a diagonal lies, in both columns where both letter it alike.
    private static IEnumerable<string> Points(FlatDrawing drawing)
    {
        var words = drawing.Words;
        var schedule = ScoreSchedule.For(drawing.Piece);
        var used = schedule.Slanted.SelectMany(score => new[] { score.From, score.To }).ToHashSet(StringComparer.Ordinal);
        var other = drawing.Other is { } piece ? ScoreSchedule.For(piece).Points : null;
        if (other is not null && !other.Select(point => point.Letter).SequenceEqual(schedule.Points.Select(point => point.Letter), StringComparer.Ordinal))
            other = null;
        for (var i = 0; i < schedule.Points.Count; i++)
        {
            var point = schedule.Points[i];
            if (used.Contains(point.Letter))
                yield return words.Say("alternative.point", ("letter", point.Letter), ("left", Both(point.FromLeft, other?[i].FromLeft)), ("top", Both(point.FromTop, other?[i].FromTop)));
        }

        string Both(Length here, Length? there)
        {
            var text = Said(here, drawing.Ruler);
            return there is { } length && drawing.OtherRuler is { } ruler ? $"{text} / {Said(length, ruler)}" : text;
        }

        string Said(Length length, Ruler ruler) => words.Number(LengthFormat.Format(length, ruler));
    }

    private static string SheetSize(FlatDrawing drawing) =>
        Both(drawing.Words, drawing.Piece.Sheet, drawing.Ruler, drawing.Other?.Sheet, drawing.OtherRuler);

    private static string Folds(Piece piece, IFigureWords words)
    {
        var valley = piece.Folds.Count(fold => fold.Direction == FoldDirection.Valley);
        var mountain = piece.Folds.Count - valley;
        return words.Say("alternative.fold_list", ("folds", List(words, Parts())));

        IEnumerable<string> Parts()
        {
            if (valley > 0)
                yield return words.Count("alternative.valley", valley);
            if (mountain > 0)
                yield return words.Count("alternative.mountain", mountain);
            if (valley + mountain == 0)
                yield return words.Say("alternative.no_folds");
        }
    }

    private static string Panels(Piece piece, IFigureWords words) => List(words, Kinds(piece.Panels.Select(panel => panel.Kind), words));

    private static IEnumerable<string> Kinds(IEnumerable<string> kinds, IFigureWords words) =>
        kinds.GroupBy(kind => kind, StringComparer.Ordinal).Select(group => Times(words, group.Count(), group.Key));

    private static string Times(IFigureWords words, int count, string what) => count == 1
        ? what
        : words.Say("alternative.times", ("count", count.ToString(System.Globalization.CultureInfo.InvariantCulture)), ("what", what));
}
