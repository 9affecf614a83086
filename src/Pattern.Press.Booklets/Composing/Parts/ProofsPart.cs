using Pattern.Press.Measure;
using Pattern.Press.Structures.Fitting;
using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Booklets.Composing.Parts;

/// <summary>What was proven before the booklet was made, each with the number found, in both columns.</summary>
internal static class ProofsPart
{
    /// <summary>Composes the part.</summary>
    public static FlowPart Compose(BookletContext context, ValueText values)
    {
        var phrases = context.Phrases;
        var there = context.Secondary.Checks.ToDictionary(check => check.Name, StringComparer.Ordinal);
        var checks = context.Primary.Checks
            .Where(check => there.ContainsKey(check.Name))
            .Select(here => new TableRow(
            [
                Words.Head(here.Name),
                Both(values, here.Found, there[here.Name].Found),
                Least(context, values, here.Least, there[here.Name].Least),
            ]));
        var proofs = new ProofTexts(context).All()
            .Select(proof => new TableRow([Words.Head(proof.What), Both(proof.Found), Limit(proof.Limit)]));
        return new FlowPart(
            [
                Words.Heading(1, phrases["proofs.title"], "proofs"),
                Words.Phrase(phrases, "proofs.lead"),
                new TableBlock(
                    [ColumnAlignment.Left, ColumnAlignment.Right, ColumnAlignment.Right],
                    [new TableRow([Words.Head(phrases["proofs.what"]), Words.Head(phrases["proofs.found"]), Words.Head(phrases["proofs.limit"])])],
                    [.. checks.Concat(proofs)]),
            ],
            FlowsOn: true)
        { Title = phrases["proofs.title"] };

        TableCell Limit((string Here, string There) limit) =>
            limit.Here.Length == 0 ? Words.Cell("") : limit.Here == limit.There ? Words.Cell(limit.Here) : Both(limit);
    }

    private static TableCell Least(BookletContext context, ValueText values, Length here, Length there) =>
        here == Length.Zero && there == Length.Zero ? Words.Cell(context.Phrases["measurements.none"]) : Both(values, here, there);

    private static TableCell Both(ValueText values, Length here, Length there) =>
        new(values.Both(new LengthValue(here), new LengthValue(there)));

    private static TableCell Both((string Here, string There) text) =>
        new(text.There.Length > 0 ? [new MeasureInline(text.Here), new TextInline(" "), new MeasureInline($"({text.There})")] : [new MeasureInline(text.Here)]);
}
