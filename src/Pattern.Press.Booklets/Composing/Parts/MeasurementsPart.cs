using Pattern.Press.Measure;
using Pattern.Press.Plans.Measuring;
using Pattern.Press.Structures.Fitting;
using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Booklets.Composing.Parts;

/// <summary>Every size in both columns, the item that they follow from, and what was checked.</summary>
internal static class MeasurementsPart
{
    /// <summary>Composes the part.</summary>
    public static FlowPart Compose(BookletContext context, ValueText values)
    {
        var phrases = context.Phrases;
        var (metric, imperial) = (context.Metric.Kit.Ruler, context.Imperial.Kit.Ruler);
        var blocks = new List<Block>
        {
            Words.Heading(1, phrases["measurements.title"], "measurements"),
            Words.Phrase(phrases, "measurements.lead", ParagraphKind.Lead),
            Words.Phrase(
                phrases,
                "measurements.columns",
                ParagraphKind.Body,
                ("metric", Words.Plain(phrases["system.metric_word"])),
                ("metric_step", values.One(new LengthValue(metric.Step), metric)),
                ("imperial", Words.Plain(phrases["system.imperial_word"])),
                ("imperial_step", values.One(new LengthValue(imperial.Step), imperial))),
            Words.Phrase(phrases, "measurements.drawn", ParagraphKind.Body, ("system", Words.Plain(phrases[context.Source.Primary == UnitSystem.Metric ? "system.metric_word" : "system.imperial_word"]))),
            Table(context, values),
        };
        blocks.AddRange(ChecksPart.Compose(context, values));
        return new FlowPart(blocks) { Title = phrases["measurements.title"] };
    }

    private static TableBlock Table(BookletContext context, ValueText values)
    {
        var phrases = context.Phrases;
        var rows = new List<TableRow>();
        foreach (var group in MeasurementTable.Make(context.Metric.Kit, context.Imperial.Kit).GroupBy(row => row.Part))
        {
            // A mat has one size and one row; a piece has a row of its own for its name.
            var several = group.Count() > 1;
            if (several)
                rows.Add(new TableRow([Words.Head(group.Key.Piece.Name, columns: 3)], StartsGroup: true));
            rows.AddRange(group.Select(row => new TableRow(
                [
                    Words.Head(several ? What(context, row) : Mat(context, row)),
                    new TableCell(values.One(Value(row, row.Metric), context.Metric.Kit.Ruler)),
                    new TableCell(values.One(Value(row, row.Imperial), context.Imperial.Kit.Ruler)),
                ],
                StartsGroup: !several && rows.Count > 0 && ReferenceEquals(row.Part, FirstMat(context)))));
        }

        return new TableBlock(
            [ColumnAlignment.Left, ColumnAlignment.Right, ColumnAlignment.Right],
            [new TableRow([Words.Head(phrases["measurements.what"]), Column(context, UnitSystem.Metric), Column(context, UnitSystem.Imperial)])],
            rows);
    }

    private static Nets.Part? FirstMat(BookletContext context) =>
        context.Metric.Kit.Parts.FirstOrDefault(part => part.Kind == Nets.PartKind.Mat);

    private static TableCell Column(BookletContext context, UnitSystem system)
    {
        var phrases = context.Phrases;
        var name = phrases[system == UnitSystem.Metric ? "system.metric" : "system.imperial"];
        return Words.Head(system == context.Source.Primary ? phrases.Format("measurements.primary", ("system", name)) : name);
    }

    private static string What(BookletContext context, MeasurementRow row)
    {
        var phrases = context.Phrases;
        return row.Kind switch
        {
            MeasurementKind.SheetSize => phrases["measurements.piece.sheet"],
            MeasurementKind.ScoresFromLeft => phrases["measurements.piece.scores_across"],
            MeasurementKind.ScoresFromTop => phrases["measurements.piece.scores_down"],
            MeasurementKind.PanelSize when row.Count > 1 => phrases.Format("measurements.piece.panels", ("panel", Capital(row.PanelKind!)), ("count", Count(row.Count))),
            MeasurementKind.PanelSize => Capital(row.PanelKind!),
            _ => Mat(context, row),
        };
    }

    private static string Mat(BookletContext context, MeasurementRow row) =>
        context.Phrases.Plural("measurements.mat", row.Count, ("mat", row.Part.Piece.Name));

    private static Value Value(MeasurementRow row, IReadOnlyList<Length> lengths) => row.Kind switch
    {
        MeasurementKind.ScoresFromLeft or MeasurementKind.ScoresFromTop => new LengthListValue(lengths),
        _ => new SizeValue(new Size(lengths[0], lengths[1])),
    };

    private static string Count(int count) => count.ToString(System.Globalization.CultureInfo.InvariantCulture);

    private static string Capital(string text) => text.Length > 0 ? char.ToUpperInvariant(text[0]) + text[1..] : text;
}
