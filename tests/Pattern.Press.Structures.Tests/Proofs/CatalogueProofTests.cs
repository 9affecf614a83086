using Pattern.Press.Nets.Folding.Proofs;
using Pattern.Press.Structures.Fitting;

namespace Pattern.Press.Structures.Tests.Proofs;

/// <summary>What has to hold of every structure of the catalogue, whatever it is fitted to. A new file is found by itself.</summary>
public sealed class CatalogueProofTests
{
    private const int Tries = 60;

    public static TheoryData<string> Ids => [.. RandomFits.Catalogue.Select(structure => structure.Id)];

    [Theory]
    [MemberData(nameof(Ids))]
    public void Whatever_can_be_fitted_can_be_folded_and_put_together(string id)
    {
        var structure = RandomFits.Catalogue.Single(one => one.Id == id);
        var faults = new List<string>();
        var fitted = 0;
        for (var seed = 1; seed <= Tries; seed++)
        {
            if (RandomFits.Make(structure, seed) is not { } fit)
                continue;
            fitted++;
            foreach (var proof in ModelProofs.Of(fit.Model, fit.Item, fit.Stocks.Values).Where(proof => proof.Verdict == Verdict.Fails))
                faults.Add($"{fit}\n    {proof.Kind} {proof.Piece} {proof.Other}: {proof.Found:0.####} against {proof.Limit:0.####} ({string.Join(", ", proof.Panels)})");
        }

        Assert.True(fitted >= Tries / 5, $"Only {fitted} of {Tries} tries could be fitted.");
        Assert.True(faults.Count == 0, $"{faults.Count} faults in {fitted} fits:\n{string.Join("\n", faults.Take(12))}");
    }
}
