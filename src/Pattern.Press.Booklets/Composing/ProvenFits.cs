using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Nets.Folding.Proofs;
using Pattern.Press.Structures.Fitting;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Booklets.Composing;

/// <summary>Proves both fits before anything is printed. What fails stops the booklet, with what to change and by how much.</summary>
internal static class ProvenFits
{
    // What floating point leaves beside a whole number of steps, in millimetres.
    private const double Hair = 1e-6;

    /// <summary>What is proven of one fit.</summary>
    public static IReadOnlyList<FoldingProof> Of(BookletContext context, Model fit) => ModelProofs.Of(fit, context.Source.Item, context.Source.Stocks.Values);

    /// <summary>Notes what fails or is doubtful as problems; the other column's only when the first has none.</summary>
    public static void Check(BookletContext context, Problems problems)
    {
        var (here, there) = context.Folding;
        var texts = new ProofTexts(context);
        if (!Note(here, there, context.Primary.Kit.Ruler, ""))
            Note(there, [], context.Secondary.Kit.Ruler, $"In the {(context.Source.Primary == UnitSystem.Metric ? "inch" : "metric")} column: ");

        bool Note(IReadOnlyList<FoldingProof> proofs, IReadOnlyList<FoldingProof> others, Ruler ruler, string column)
        {
            var any = false;
            foreach (var proof in proofs.Where(proof => !proof.Holds))
            {
                any = true;
                // Where nothing lies, that it would not lie inside either goes without saying.
                if (proof.Kind == FoldingProofKind.SeamsLieInside && double.IsInfinity(proof.Found))
                    continue;
                var where = proof.Panels.Count > 0 ? $" ({string.Join(", ", proof.Panels)})" : "";
                var found = double.IsInfinity(proof.Found) ? $"nothing lies there{where}"
                    : proof is { Kind: FoldingProofKind.FoldsFlat, Found: >= 360 } ? $"they cannot{where}"
                    : $"{texts.Number(proof, proof.Found, ruler)}{where}, where {texts.Number(proof, proof.Limit, ruler)} is the {(proof.LimitIsLeast ? "least" : "most")}";
                var message = $"{column}{texts.What(proof) ?? proof.Piece}: {found}.";

                // One change is to be enough for both columns.
                var least = others.Where(other => (other.Kind, other.Piece, other.Other, other.Holds) == (proof.Kind, proof.Piece, proof.Other, false) && double.IsFinite(other.Lacks))
                    .Select(other => other.Lacks).Append(proof.Lacks).Max();
                var advice = Advice(proof, least, context, ruler);
                if (proof.Verdict == Verdict.Fails)
                    problems.Error(context.Source.StructurePlace, message, advice);
                else
                    problems.Warning(context.Source.StructurePlace, message, advice);
            }

            return any;
        }
    }

    private static string Advice(FoldingProof proof, double least, BookletContext context, Ruler ruler)
    {
        // Sizes change by whole steps of the ruler, and never by less than it takes.
        var lacks = Change(least, ruler);
        var twice = Change(2 * least, ruler);
        var exactly = double.IsInfinity(least) ? "" : ProofTexts.Proven(Length.FromMillimetres(least), ruler, isLeast: false);
        var (piece, other) = (Name(proof.Piece), Name(proof.Other));
        var leaveOut = context.Source.Sizes.Count > 0
            ? "or leave sizes out, so that they follow from the item and the card."
            : "or let the formula of that size in the structure’s file leave as much more.";
        var covers = context.Primary.Kit.Assembly.Find(proof.Piece) is { Goes: GoesWhere.Over or GoesWhere.Around };
        return proof.Kind switch
        {
            FoldingProofKind.Clearance when covers => $"Make the {piece} {lacks} longer and wider, {leaveOut}",
            FoldingProofKind.Clearance => $"Make the {piece} {lacks} shorter and narrower, or the {other} as much larger, {leaveOut}",
            FoldingProofKind.NotTooLoose => $"It will slide about; the {piece} can be {lacks} shorter and narrower.",
            FoldingProofKind.RoomBesideGussets => $"The walls will give way by that much; make the {piece} {lacks} shorter and narrower if they should not.",
            FoldingProofKind.RoomAroundItem => $"Make the {piece} {twice} longer and wider inside, {leaveOut}",
            FoldingProofKind.RoomBetweenItems => $"Place them {lacks} farther apart (repeat, in the structure’s file), and make the {piece} larger by as much for each after the first.",
            FoldingProofKind.RoomAboveItem => $"Make the {piece} {lacks} higher, {leaveOut}",
            FoldingProofKind.ItemPassesOpening when proof.WouldOpen.Count > 0 =>
                IfOpen("folded open to put it in"),
            FoldingProofKind.ItemPassesOpening => $"Make the opening {twice} wider, {leaveOut}",
            FoldingProofKind.RoomAroundPutIn => $"Make the {piece} {twice} longer and wider inside, or the {other} as much smaller, {leaveOut}",
            FoldingProofKind.PutInPassesOpening when proof.WouldOpen.Count > 0 =>
                IfOpen($"open when the {other} goes in"),
            FoldingProofKind.PutInPassesOpening => $"Make the opening {twice} wider, {leaveOut}",
            FoldingProofKind.GlueHasRoom => $"Make the {(proof.Panels is [var tab, ..] ? tab : "tab")} {lacks} wider, or use glue that holds on a narrow tab.",
            FoldingProofKind.SeamsLieFlat when double.IsInfinity(proof.Found) => $"In the structure’s file, fold the {piece} so that its glue comes to lie on something, or take the glue away.",
            FoldingProofKind.SeamsLieFlat => $"In the structure’s file, bring the two {exactly} nearer to each other.",
            FoldingProofKind.SeamsLieInside => $"Make the tab {lacks} narrower or shorter, {leaveOut}",
            FoldingProofKind.EdgesMeet => $"In the structure’s file, make the two edges equally long, and fold what lies between them so that they come {exactly} nearer to each other.",
            FoldingProofKind.ClosesAllRound => $"In the structure’s file, make edges that meet equally long, and fold the panels between them so that the gap becomes {exactly} narrower; or, if it is meant to stay open, leave out “claims: closed”.",
            FoldingProofKind.FoldsFlat => "Around a point inside the card an even number of folds has to meet, two more of them going one way than the other, and every other angle between them has to add up to 180°; or leave out “claims: flat-foldable”.",
            FoldingProofKind.GoesTogether or FoldingProofKind.NothingPassesAssembled => $"Make one of them {lacks} smaller there, {leaveOut}",
            FoldingProofKind.NothingPassesFinished or FoldingProofKind.NothingPassesOnTheWay when proof.Panels is [var one, var two] =>
                $"Make “{one}” or “{two}” {lacks} shorter or narrower where they meet, with a wider taper if it is a tab, {leaveOut}",
            FoldingProofKind.ClosesFinished or FoldingProofKind.ClosesOnTheWay when proof.Panels is [var one, var two] =>
                $"Panels around a point must meet again: at the fold between “{one}” and “{two}” they have to come {exactly} nearer to each other, by edges that are equally long on both or by the angles of the folds around the point.",
            _ => "Leave sizes out, so that they follow from the item, or change one at a time until it folds.",
        };

        string IfOpen(string how) =>
            $"If the {Listed(proof.WouldOpen)} {(proof.WouldOpen.Count == 1 ? "is" : "are")} {how}, say so in the structure’s file, under “assembly”: {{{proof.Piece}: {{opens: [{string.Join(", ", Opening(proof, context))}]}}}}. If not, make the opening {twice} wider.";

        string Name(string? id) => (context.Primary.Kit.Parts.FirstOrDefault(part => part.Piece.Id == id)?.Piece.Name ?? id ?? "").ToLowerInvariant();
    }

    // What opens already, and what would have to.
    private static IEnumerable<string> Opening(FoldingProof proof, BookletContext context) =>
        [.. context.Primary.Kit.Assembly.Find(proof.Piece)?.Opens ?? [], .. proof.WouldOpen];

    private static string Listed(IReadOnlyList<string> kinds) =>
        kinds.Count == 1 ? kinds[0] : $"{string.Join(", ", kinds.SkipLast(1))} and {kinds[^1]}";

    private static string Change(double millimetres, Ruler ruler) => double.IsInfinity(millimetres)
        ? ""
        : LengthFormat.Format(ruler.Round(Length.FromMillimetres(millimetres - Hair), Rounding.Up), ruler);
}
