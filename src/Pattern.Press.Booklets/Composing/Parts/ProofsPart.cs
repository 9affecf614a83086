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
                here.Least > Length.Zero ? What(here.Name, phrases.Format("proofs.least", ("limit", Proven(here.Least, context.Primary)))) : What(here.Name, ""),
                Both((Proven(here.Found, context.Primary), Proven(there[here.Name].Found, context.Secondary))),
            ]));

        // That the lid is not too loose is seen from its room; a warning would say it.
        var proofs = new ProofTexts(context).All().Where(proof => !proof.IsSecondLimit)
            .Select(proof => new TableRow([What(proof.What, proof.Limit.Here), Both(proof.Found)]));
        return new FlowPart(
            [
                // On one page, if a page holds it.
                new KeepTogetherBlock(
                [
                    Words.Heading(1, phrases["proofs.title"], "proofs"),
                    Words.Phrase(phrases, "proofs.lead"),
                    new TableBlock(
                        [ColumnAlignment.Left, ColumnAlignment.Right],
                        [new TableRow([Words.Head(phrases["proofs.what"]), Words.Head(phrases["proofs.found"])])],
                        [.. checks.Concat(proofs)]),
                    .. BendsAcross(context) ? [Words.Phrase(phrases, "proofs.not_followed")] : Array.Empty<Block>(),
                ]),
            ],
            FlowsOn: true)
        { Title = phrases["proofs.title"] };

        string Proven(Length length, Model model) => values.Point(ProofTexts.Proven(length, model.Kit.Ruler, isLeast: true));

        // The limit stands with the words: a column of its own would leave them too little room.
        TableCell What(string what, string limit) => new(limit.Length > 0 ? Words.Plain(phrases.Format("proofs.with_limit", ("what", what), ("limit", limit))) : Words.Plain(what), IsHeader: true);
    }

    // Flaps on folds along arcs go in by bending card across its rulings.
    private static bool BendsAcross(BookletContext context) =>
        context.Primary.Kit.Pieces.Any(part => part.Piece.Folds.Any(fold => Math.Abs(fold.Bulge) > 1e-9));

    private static TableCell Both((string Here, string There) text) =>
        new(text.There.Length > 0 ? [new MeasureInline(text.Here), new TextInline(" "), new MeasureInline($"({text.There})")] : [new MeasureInline(text.Here)]);
}
