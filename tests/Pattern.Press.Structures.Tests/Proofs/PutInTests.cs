using Pattern.Press.Measure;
using Pattern.Press.Nets.Folding.Proofs;
using Pattern.Press.Structures.Fitting;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Structures.Tests.Proofs;

/// <summary>A card that is put into its envelope at last: it goes in and has room there, as thick as it is then.</summary>
public sealed class PutInTests
{
    private static readonly string Text = File.ReadAllText(Path.Combine(Boxes.Folder, "card-and-envelope.yaml"));

    // Card of 0.3 mm, mats of 0.2 mm and paper of 0.1 mm; a photograph of 130 × 90 × 1 mm.
    private static readonly IReadOnlyDictionary<string, Stock> Stocks = new[] { ("card", 0.3m), ("mats", 0.2m), ("paper", 0.1m) }
        .ToDictionary(stock => stock.Item1, stock => new Stock(stock.Item1, stock.Item1, Length.FromMillimetres(stock.Item2), null, new Measure.Size(Length.FromMillimetres(700), Length.FromMillimetres(700))), StringComparer.Ordinal);

    [Fact]
    public void A_card_as_thick_as_its_layers_has_room_on_each_side_of_its_envelope()
    {
        // By hand: the card is 90 + 2 × 8 = 106 mm by 130 + 2 × 8 = 146 mm. Two layers of card, two mats and the photograph are
        // 0.6 + 0.4 + 1 = 2 mm. The envelope is 146 + 6 + 2 + 0.1, rounded up to 155 mm, and 106 + 6 + 2.1, rounded up to 115 mm.
        // A pocket is lost across by what it takes round the thickness: (115 - 106 - 2 - 0.1) / 2 = 3.45 mm are left each side,
        // across its width as well.
        var proofs = Proofs(Text);
        Assert.Equal(3.45, Proof(proofs, FoldingProofKind.RoomAroundPutIn).Found, 6);
        Assert.Equal(3.45, Proof(proofs, FoldingProofKind.PutInPassesOpening).Found, 6);
        Assert.Equal(8, proofs.Single(proof => proof is { Kind: FoldingProofKind.RoomAroundItem, Piece: "card" }).Found, 6);
        Assert.All(proofs, proof => Assert.NotEqual(Verdict.Fails, proof.Verdict));
    }

    [Fact]
    public void An_envelope_that_is_too_small_or_stays_closed_is_refused()
    {
        var small = Proofs(Text.Replace("envelope_height: up(min(card_width, card_height) + play", "envelope_height: up(min(card_width, card_height)", StringComparison.Ordinal).Replace("least: 2 mm\n", "least: 0 mm\n", StringComparison.Ordinal));
        Assert.Equal(Verdict.Fails, Proof(small, FoldingProofKind.RoomAroundPutIn).Verdict);

        // With the flap closed its fold lies across the only way in.
        var closed = Text.Replace("envelope: {opens: [top flap]}", "envelope: {}", StringComparison.Ordinal);
        Assert.NotEqual(Text, closed);
        Assert.Equal(Verdict.Fails, Proof(Proofs(closed), FoldingProofKind.PutInPassesOpening).Verdict);
    }

    [Fact]
    public void Only_what_stands_beside_something_is_put_in_at_last()
    {
        var problems = new Problems();
        Catalogue.ReadText(Text.Replace("goes: beside envelope", "goes: on envelope", StringComparison.Ordinal), "test", "test.yaml", problems);
        Assert.Contains("Only a piece that goes beside another one is put inside that in the end.", Boxes.Words(problems), StringComparison.Ordinal);
    }

    private static FoldingProof Proof(IReadOnlyList<FoldingProof> proofs, FoldingProofKind kind) =>
        proofs.Single(proof => proof.Kind == kind && proof is { Piece: "envelope", Other: "card" });

    private static IReadOnlyList<FoldingProof> Proofs(string text)
    {
        var problems = new Problems();
        var structure = Catalogue.ReadText(text, "test", "test.yaml", problems)!;
        var photograph = Boxes.Rectangular("130 mm", "90 mm", "1 mm");
        var model = structure.Fit(
            new FitRequest { Ruler = Ruler.WholeMillimetres, Item = photograph, Given = new Dictionary<string, GivenValue>(), Stocks = Stocks }, problems);
        Assert.Equal("", Boxes.Words(problems));
        return ModelProofs.Of(model!, photograph, Stocks.Values);
    }
}
