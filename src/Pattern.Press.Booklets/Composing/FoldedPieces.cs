using System.Globalization;
using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Nets.Folding.Proofs;
using Pattern.Press.Structures.Fitting;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Booklets.Composing;

/// <summary>Folds every piece of both fits before anything is printed. A piece that does not fold stops the booklet.</summary>
internal static class FoldedPieces
{
    /// <summary>Folds the pieces and notes those that do not fold as problems.</summary>
    public static IReadOnlyList<FoldingProof> Prove(BookletContext context, Problems problems)
    {
        var proofs = Of(context, context.Primary);
        foreach (var failed in proofs.Concat(Of(context, context.Secondary)).Where(proof => !proof.Holds))
        {
            var panels = string.Join(" and ", failed.Panels);
            problems.Error(
                context.Source.StructurePlace,
                $"“{failed.Piece}” does not fold: {Sentence(failed.Kind, panels)} ({Number(failed.Found)} where {Number(failed.Limit)} is the most).",
                "Leave sizes out, so that they follow from the item, or change one at a time until it folds.");
        }

        return proofs;
    }

    /// <summary>A line for each piece, for the command line.</summary>
    public static IEnumerable<string> Lines(IReadOnlyList<FoldingProof> proofs) => proofs.GroupBy(proof => proof.Piece).Select(piece =>
        piece.All(proof => proof.Holds)
            ? $"holds: The {piece.Key} folds: its panels meet, and none passes through another."
            : $"FAILS: The {piece.Key} does not fold.");

    private static List<FoldingProof> Of(BookletContext context, Model model) =>
        [.. model.Kit.Parts.Where(part => part.Kind == PartKind.Piece).SelectMany(part => PieceProofs.Of(part.Piece, Caliper(context, part)))];

    private static double Caliper(BookletContext context, Part part) =>
        context.Source.Stocks.TryGetValue(part.Stock, out var stock) ? stock.Caliper.Millimetres : 0;

    /// <summary>What went wrong with two panels, in words.</summary>
    public static string Sentence(FoldingProofKind kind, string panels) => kind switch
    {
        FoldingProofKind.ClosesFinished or FoldingProofKind.ClosesOnTheWay => $"{panels} do not meet",
        _ => $"{panels} pass through each other",
    };

    // Gaps are far below anything that can be measured; they are said all the same.
    private static string Number(double millimetres) => millimetres is 0 or >= 0.001
        ? LengthFormat.Format(Length.FromMillimetres(Math.Round(millimetres, 3)), Ruler.WholeMillimetres)
        : millimetres.ToString("0.0e0", CultureInfo.InvariantCulture) + " mm";
}
