using System.Globalization;
using Pattern.Press.Booklets.Phrases;
using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Plans.Measuring;
using Pattern.Press.Structures.Fitting;
using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Booklets.Composing.Parts;

/// <summary>Where each piece is scored and how large its panels come out, in both columns.</summary>
internal static class ScoreTable
{
    /// <summary>Makes the table.</summary>
    public static TableBlock Make(BookletContext context, ValueText values)
    {
        var phrases = context.Phrases;
        var rows = new List<TableRow>();
        var pieces = MeasurementTable.Make(context.Metric.Kit, context.Imperial.Kit).Where(row => row.Part.Kind == PartKind.Piece).GroupBy(row => row.Part);
        foreach (var piece in pieces)
        {
            rows.Add(Words.Group(piece.Key.Piece.Name, columns: 3));
            rows.AddRange(Lines(phrases, piece).Select(line => new TableRow(
            [
                Words.Head(line.What),
                new TableCell(values.One(line.Metric, context.Metric.Kit.Ruler)),
                new TableCell(values.One(line.Imperial, context.Imperial.Kit.Ruler)),
            ])));
        }

        return new TableBlock(
            [ColumnAlignment.Left, ColumnAlignment.Right, ColumnAlignment.Right],
            [new TableRow([Words.Head(phrases["measurements.what"]), Columns.Head(context, UnitSystem.Metric), Columns.Head(context, UnitSystem.Imperial)])],
            rows);
    }

    // Scores first; then panels, those that come out alike in both columns on one line.
    private static IEnumerable<(string What, Value Metric, Value Imperial)> Lines(PhraseBook phrases, IEnumerable<MeasurementRow> rows)
    {
        foreach (var row in rows.Where(row => row.Kind is MeasurementKind.ScoresFromLeft or MeasurementKind.ScoresFromTop))
        {
            var what = phrases[row.Kind == MeasurementKind.ScoresFromLeft ? "measurements.piece.scores_across" : "measurements.piece.scores_down"];
            yield return (what, new LengthListValue(row.Metric), new LengthListValue(row.Imperial));
        }

        foreach (var alike in rows.Where(row => row.Kind == MeasurementKind.PanelSize).GroupBy(row => (Size(row.Metric), Size(row.Imperial))))
        {
            var names = alike.Select(row => row.Count == 1
                ? row.PanelKind!
                : phrases.Format("measurements.piece.panels", ("panel", row.PanelKind!), ("count", row.Count.ToString(CultureInfo.InvariantCulture))));
            var what = phrases.Join([.. names]);
            yield return (char.ToUpperInvariant(what[0]) + what[1..], new SizeValue(alike.Key.Item1), new SizeValue(alike.Key.Item2));
        }
    }

    private static Size Size(IReadOnlyList<Length> lengths) => new(lengths[0], lengths[1]);
}
