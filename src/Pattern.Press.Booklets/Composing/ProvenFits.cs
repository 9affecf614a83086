using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Nets.Folding.Proofs;
using Pattern.Press.Structures.Fitting;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Booklets.Composing;

/// <summary>Proves both fits before anything is printed. What fails stops the booklet, with what to change and by how much.</summary>
internal static class ProvenFits
{
    /// <summary>What is proven of one fit.</summary>
    public static IReadOnlyList<FoldingProof> Of(BookletContext context, Model fit) => ModelProofs.Of(fit, context.Source.Item, context.Source.Stocks.Values);

    /// <summary>Notes what fails or is doubtful as problems; the other column's only when the first has none.</summary>
    public static void Check(BookletContext context, Problems problems)
    {
        var (here, there) = context.Folding;
        var texts = new ProofTexts(context);
        if (!Note(here, context.Primary.Kit.Ruler, ""))
            Note(there, context.Secondary.Kit.Ruler, $"In the {(context.Source.Primary == UnitSystem.Metric ? "inch" : "metric")} column: ");

        bool Note(IReadOnlyList<FoldingProof> proofs, Ruler ruler, string column)
        {
            var any = false;
            foreach (var proof in proofs.Where(proof => !proof.Holds))
            {
                any = true;
                var where = proof.Panels.Count > 0 ? $" ({string.Join(", ", proof.Panels)})" : "";
                var found = double.IsInfinity(proof.Found)
                    ? $"nothing lies there{where}"
                    : $"{texts.Number(proof, proof.Found, ruler)}{where}, where {texts.Number(proof, proof.Limit, ruler)} is the {(proof.LimitIsLeast ? "least" : "most")}";
                var message = $"{column}{texts.What(proof) ?? proof.Piece}: {found}.";
                if (proof.Verdict == Verdict.Fails)
                    problems.Error(context.Source.StructurePlace, message, Advice(proof, context, texts, ruler));
                else
                    problems.Warning(context.Source.StructurePlace, message, Advice(proof, context, texts, ruler));
            }

            return any;
        }
    }

    private static string Advice(FoldingProof proof, BookletContext context, ProofTexts texts, Ruler ruler)
    {
        var lacks = double.IsInfinity(proof.Lacks) ? "" : texts.Number(proof, proof.Lacks, ruler);
        var twice = double.IsInfinity(proof.Lacks) ? "" : texts.Number(proof, 2 * proof.Lacks, ruler);
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
            FoldingProofKind.ItemPassesOpening when Closing(proof, context) is { } panel =>
                $"If the {panel} is folded open to put it in, say so in the structure’s file: assembly: {{{proof.Piece}: {{opens: [{panel}]}}, item: {{goes: inside {proof.Piece}}}}}.",
            FoldingProofKind.ItemPassesOpening => $"Make the opening {twice} wider, {leaveOut}",
            FoldingProofKind.RoomAroundPutIn => $"Make the {piece} {twice} longer and wider inside, or the {other} as much smaller, {leaveOut}",
            FoldingProofKind.PutInPassesOpening => $"Say in the structure’s file which flap is open when the {other} goes in: assembly: {{{proof.Piece}: {{opens: [top flap]}}}}; or make the opening {twice} wider.",
            FoldingProofKind.GlueHasRoom => $"Make it {lacks} wider, or use glue that holds on a narrow tab.",
            FoldingProofKind.SeamsLieFlat when double.IsInfinity(proof.Found) => $"In the structure’s file, fold the {piece} so that its glue comes to lie on something, or take the glue away.",
            FoldingProofKind.SeamsLieFlat => $"In the structure’s file, bring the two {lacks} nearer to each other.",
            FoldingProofKind.SeamsLieInside => $"Make the tab {lacks} narrower or shorter, {leaveOut}",
            FoldingProofKind.EdgesMeet or FoldingProofKind.ClosesAllRound => $"Edges that meet have to be equally long; they miss each other by {lacks} too much.",
            FoldingProofKind.FoldsFlat => "Around a point, every other angle between folds has to add up to 180°, and two more folds have to go one way than the other.",
            FoldingProofKind.GoesTogether or FoldingProofKind.NothingPassesAssembled => $"Make one of them {lacks} smaller there, {leaveOut}",
            FoldingProofKind.NothingPassesFinished or FoldingProofKind.NothingPassesOnTheWay when proof.Panels is [var one, var two] =>
                $"Make the {one} or the {two} {lacks} shorter or narrower where they meet, with a wider taper if it is a tab, {leaveOut}",
            FoldingProofKind.ClosesFinished or FoldingProofKind.ClosesOnTheWay when proof.Panels is [var one, var two] =>
                $"Panels around a point must meet again: bring the {one} and the {two} {lacks} nearer at their fold, by edges that are equally long on both or by the angles of the folds around it.",
            _ => "Leave sizes out, so that they follow from the item, or change one at a time until it folds.",
        };

        string Name(string? id) => (context.Primary.Kit.Parts.FirstOrDefault(part => part.Piece.Id == id)?.Piece.Name ?? id ?? "").ToLowerInvariant();
    }

    // The panel in an item's way, where the piece is not said to open at all.
    private static string? Closing(FoldingProof proof, BookletContext context) =>
        context.Primary.Kit.Assembly.Find(proof.Piece) is { OpensWholly: false, Opens.Count: 0 }
            ? context.Primary.Kit.Pieces.FirstOrDefault(part => part.Piece.Id == proof.Piece)?.Piece.Panels.FirstOrDefault(panel => proof.Panels.Contains(panel.Name))?.Kind
            : null;
}
