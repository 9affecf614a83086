using Pattern.Press.Measure;
using Pattern.Press.Nets.Folding.Proofs;
using Pattern.Press.Structures.Fitting;

namespace Pattern.Press.Structures.Tests.Proofs;

/// <summary>Round things that lie on their side in a pillow box, whose section is a lens.</summary>
public sealed class LyingItemTests
{
    [Theory]
    [InlineData(30, 80)]
    [InlineData(60, 60)]
    [InlineData(15, 200)]
    [InlineData(18, 75)]
    public void The_room_that_is_proven_is_that_of_the_circle_in_the_lens(int across, int length)
    {
        var (model, item, stocks) = Fit(across, length, "0.3 mm");

        var proof = ModelProofs.Of(model, item, stocks).Single(proof => proof.Kind == FoldingProofKind.RoomAroundItem);

        Assert.True(proof.Holds);
        var ends = (Sized(model, "length") / 2) - Sized(model, "rise") - (length / 2.0) - 0.15;
        var around = FromMiddleToCurve(Sized(model, "width"), Sized(model, "rise")) - (across / 2.0) - 0.15;

        // Fifteen flat strips stand for the curve; the middle one lies lower by a 225th of the rise.
        Assert.InRange(proof.Found, Math.Min(ends, around) - (Sized(model, "rise") / 225) - 0.02, Math.Min(ends, around) + 0.02);
    }

    [Fact]
    public void What_is_thicker_than_the_lens_is_found_to_touch()
    {
        var (model, item, stocks) = Fit(30, 80, "0.3 mm");

        var proofs = ModelProofs.Of(model, item with { Width = Boxes.L("36 mm"), Depth = Boxes.L("36 mm") }, stocks);

        Assert.False(proofs.Single(proof => proof.Kind == FoldingProofKind.RoomAroundItem).Holds);
        Assert.Contains(proofs, proof => proof is { Kind: FoldingProofKind.RoomAboveItem, Verdict: Verdict.Fails });
    }

    [Fact]
    public void What_is_longer_than_the_flaps_leave_is_found_to_touch()
    {
        var (model, item, stocks) = Fit(30, 80, "0.3 mm");

        var proofs = ModelProofs.Of(model, item with { Height = Boxes.L("88 mm") }, stocks);

        Assert.False(proofs.Single(proof => proof.Kind == FoldingProofKind.RoomAroundItem).Holds);
    }

    [Fact]
    public void A_disc_lies_flat()
    {
        var (model, _, _) = Fit(60, 12, "0.3 mm");

        Assert.False(model.Kit.Assembly.Find("item")!.IsTipped);
        Assert.True(Fit(30, 80, "0.3 mm").Model.Kit.Assembly.Find("item")!.IsTipped);
    }

    // The lens by its definition: half a chord's arc from the sheet on either side, the sheet neither stretched nor
    // shrunk. Where the arc has the slope m, a step of one along the sheet goes across by the root of 1 - m².
    private static double FromMiddleToCurve(double width, double rise)
    {
        var radius = ((width * width / 4) + (rise * rise)) / (2 * rise);
        const int Steps = 20000;
        var (across, least) = (0.0, double.PositiveInfinity);
        for (var i = 0; i <= Steps; i++)
        {
            var along = width / 2 * i / Steps;
            var high = Math.Sqrt((radius * radius) - (along * along)) - radius + rise;
            least = Math.Min(least, Math.Sqrt((across * across) + (high * high)));
            var slope = along / Math.Sqrt((radius * radius) - (along * along));
            across += width / 2 / Steps * Math.Sqrt(1 - (slope * slope));
        }

        return least;
    }

    private static (Model Model, Item Item, IReadOnlyList<Stock> Stocks) Fit(int across, int length, string caliper)
    {
        var structure = RandomFits.Catalogue.Single(one => one.Id == "pillow-box");
        var item = new Item("thing", ItemShape.Round, Length.FromMillimetres(across), Length.FromMillimetres(across), Length.FromMillimetres(length));
        var stock = new Stock("card", "card", Boxes.L(caliper), null, new Size(Boxes.L("1000 mm"), Boxes.L("1000 mm")));
        var problems = new Reading.Problems();
        var model = structure.Fit(
            new FitRequest
            {
                Ruler = Ruler.WholeMillimetres,
                Item = item,
                Given = new SortedDictionary<string, GivenValue>(StringComparer.Ordinal),
                Stocks = new Dictionary<string, Stock> { ["card"] = stock },
            },
            problems);
        Assert.False(problems.HasErrors);
        return (model!, item, [stock]);
    }

    private static double Sized(Model model, string name) => ((LengthValue)model.Values[$"size.{name}"]).Length.Millimetres;
}
