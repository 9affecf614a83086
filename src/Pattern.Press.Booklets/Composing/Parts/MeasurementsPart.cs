using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Plans.Scoring;
using Pattern.Press.Structures.Fitting;
using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Booklets.Composing.Parts;

/// <summary>Every size in both columns.</summary>
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
            Words.Subheading(2, phrases["measurements.cuts.title"], "what-to-cut"),
            Words.Phrase(phrases, "measurements.cuts.lead"),
            CutTable.Make(context, values, kits: 1),
        };
        if (context.Metric.Kit.Parts.Any(part => part.Hand != Hand.Either))
            blocks.Add(new CalloutBlock(CalloutKind.Tip, phrases["measurements.hands.title"], [Words.Phrase(phrases, "measurements.hands.text")]) { KeepsWithPrevious = true });

        // What is rolled has nothing to score, and its size is said above; pieces that are all taken point by point have no
        // marks, so that what is left is how large their panels are.
        var folded = context.Metric.Kit.Pieces.Where(part => part.Piece.Folds.Count > 0).ToList();
        if (folded.Count > 0)
        {
            var scored = folded.Exists(part => !ScoreSchedule.For(part.Piece).IsByPoints);
            blocks.Add(Words.Subheading(2, phrases[scored ? "measurements.scores.title" : "measurements.panels.title"], "what-to-score"));
            blocks.Add(Words.Phrase(phrases, scored ? "measurements.scores.lead" : "measurements.panels.lead"));
            blocks.Add(ScoreTable.Make(context, values));
        }

        return new FlowPart(blocks) { Title = phrases["measurements.title"] };
    }
}
