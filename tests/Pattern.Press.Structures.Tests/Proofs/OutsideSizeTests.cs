using Pattern.Press.Measure;
using Pattern.Press.Structures.Fitting;

namespace Pattern.Press.Structures.Tests.Proofs;

/// <summary>What a structure says about its finished size, against the folded thing with its card and mats.</summary>
public sealed class OutsideSizeTests
{
    private const int Tries = 8;

    public static TheoryData<string> Ids => [.. RandomFits.Catalogue.Select(structure => structure.Id)];

    [Theory]
    [MemberData(nameof(Ids))]
    public void The_finished_size_that_a_structure_names_is_that_of_the_folded_thing(string id)
    {
        var structure = RandomFits.Catalogue.Single(one => one.Id == id);
        foreach (var seed in Enumerable.Range(1, Tries))
        {
            if (RandomFits.Make(structure, seed) is not { } fit)
                continue;
            var (width, depth, height) = ModelProofs.Outside(fit.Model, fit.Item, fit.Stocks.Values);
            Assert.All(new[] { width, depth, height }, size => Assert.InRange(size, 0, 3000));

            // A card lies beside its envelope in the assembly and is sent in it.
            if (id == "card-and-envelope")
                continue;

            // Rounded to a mark, and where layers of card lie in a corner nobody measures closer than they are thick.
            var tolerance = (fit.Model.Kit.Ruler.Step.Millimetres / 2) + fit.Stocks.Values.Max(stock => stock.Caliper).Millimetres;
            foreach (var (name, found) in new[] { ("width", width), ("depth", depth), ("height", height) })
            {
                if (fit.Model.Values.GetValueOrDefault($"size.outside_{name}") is LengthValue { Length: var named })
                    Assert.True(Math.Abs(named.Millimetres - found) <= tolerance, $"{fit}: outside_{name} is {named.Millimetres} mm by its formula and {found:0.###} mm folded.");
            }
        }
    }

    [Theory]
    [InlineData(0.2)]
    [InlineData(0.45)]
    public void The_thickness_of_the_card_is_part_of_it(double caliper)
    {
        // A tray of four walls: half a card on either side, and half of one below.
        var structure = RandomFits.Catalogue.Single(one => one.Id == "open-tray");
        var item = new Item("thing", ItemShape.Rectangular, Boxes.L("60 mm"), Boxes.L("40 mm"), Boxes.L("30 mm"));
        var stocks = structure.Stocks.ToDictionary(
            use => use.Id,
            use => new Stock(use.Id, use.Id, Length.FromMillimetres(use.Id == "card" ? caliper : 0), null, new Size(Boxes.L("1000 mm"), Boxes.L("1000 mm"))),
            StringComparer.Ordinal);
        var model = structure.Fit(
            new FitRequest { Ruler = Ruler.WholeMillimetres, Item = item, Given = new SortedDictionary<string, GivenValue>(StringComparer.Ordinal), Stocks = stocks },
            new Reading.Problems())!;

        var (width, depth, height) = ModelProofs.Outside(model, item, stocks.Values);

        Assert.Equal(Sized(model, "floor_length") + caliper, width, 6);
        Assert.Equal(Sized(model, "floor_width") + caliper, depth, 6);
        Assert.Equal(Sized(model, "wall_height") + (caliper / 2), height, 6);
    }

    private static double Sized(Model model, string name) => ((LengthValue)model.Values[$"size.{name}"]).Length.Millimetres;
}
