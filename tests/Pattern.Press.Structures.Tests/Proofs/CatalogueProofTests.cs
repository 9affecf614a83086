using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Nets.Folding.Proofs;
using Pattern.Press.Structures.Fitting;

namespace Pattern.Press.Structures.Tests.Proofs;

/// <summary>What has to hold of every structure of the catalogue on whole millimetres, whatever it is fitted to.</summary>
public sealed class MetricCatalogueProofTests() : CatalogueProofTests(Ruler.WholeMillimetres);

/// <summary>What has to hold of every structure of the catalogue on sixteenths of an inch, whatever it is fitted to.</summary>
public sealed class InchCatalogueProofTests() : CatalogueProofTests(Ruler.SixteenthInches);

/// <summary>
/// What has to hold of every structure of the catalogue, whatever it is fitted to. A new file is found by itself. Each ruler has
/// a class of its own, so that both are tested at the same time.
/// </summary>
public abstract class CatalogueProofTests(Ruler ruler)
{
    // So many fits of each structure are proven on each ruler.
    private const int Wanted = 100;

    // What chance chooses does not always go together.
    private const int Tries = 6 * Wanted;

    public static TheoryData<string> Ids => [.. RandomFits.Catalogue.Select(structure => structure.Id)];

    [Theory]
    [MemberData(nameof(Ids))]
    public void Whatever_can_be_fitted_can_be_folded_and_put_together(string id)
    {
        var structure = RandomFits.Catalogue.Single(one => one.Id == id);
        var faults = new List<string>();
        var proven = 0;
        for (var seed = 1; seed <= Tries && proven < Wanted; seed++)
        {
            if (RandomFits.Make(structure, seed, ruler) is not { } fit)
                continue;
            proven++;
            var proofs = ModelProofs.Of(fit.Model, fit.Item, fit.Stocks.Values);

            // What the item goes into holds it with its ease, a folded card as well as a box.
            if (!proofs.Any(proof => proof is { Kind: FoldingProofKind.RoomAroundItem, Limit: > 0 }))
                faults.Add($"{fit}\n    nothing is known of the room around the item");
            foreach (var proof in proofs.Where(proof => proof.Verdict == Verdict.Fails))
                faults.Add($"{fit}\n    {proof.Kind} {proof.Piece} {proof.Other}: {proof.Found:0.####} against {proof.Limit:0.####} ({string.Join(", ", proof.Panels)})");
        }

        Assert.True(proven == Wanted, $"Only {proven} of {Tries} tries could be fitted to the {ruler.System} ruler.");
        Assert.True(faults.Count == 0, $"{faults.Count} faults in {proven} fits:\n{string.Join("\n", faults.Take(12))}");
    }
}
