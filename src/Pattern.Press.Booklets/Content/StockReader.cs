using Pattern.Press.Measure;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Booklets.Content;

/// <summary>Reads a stock: its name, its weight or its caliper, and the size of its sheets.</summary>
internal static class StockReader
{
    /// <summary>The keys of a stock.</summary>
    public static readonly IReadOnlyList<string> Keys = ["name", "weight", "caliper", "sheet", "trim", "one_way", "grain", "pack", "price"];

    // From tissue to the thickest greyboard.
    private static readonly Length ThinnestSheet = Length.FromMillimetres(0.01m);
    private static readonly Length ThickestSheet = Length.FromMillimetres(5);
    private static readonly Length WidestTrim = Length.FromMillimetres(50);
    private const double LightestSheet = 10;
    private const double HeaviestSheet = 4000;

    /// <summary>Reads a stock; null when something about it is wrong, which is then noted.</summary>
    public static Stock? Read(string use, YamlItem written, Problems problems)
    {
        if (written.AsMap() is not { } map)
            return null;
        var name = map.Need("name", "Say what to ask for in a shop, such as “name: Smooth card, sage green”.")?.AsWords(problems);
        var weight = map.Find("weight");
        var caliper = map.Find("caliper");
        var sheet = map.Need("sheet", "Say which size it is bought in, such as “sheet: A4” or “sheet: 12 x 12 in”.");
        var oneWay = map.Find("one_way");
        var trim = map.Find("trim")?.AsLengthBetween("A trim", Length.Zero, WidestTrim, problems);
        var grain = map.Find("grain")?.AsChoice(["across", "down"]);
        var pack = PurchaseReader.Pack(map.Find("pack"), map.Find("price"), "sheets", problems);
        map.RefuseTheRest();
        if (weight is null && caliper is null)
            problems.Error(map.Place, "How heavy or how thick the stock is is missing.", "Write what the packet says, such as “weight: 270 g/m2” or “weight: 80 lb cover”, or measure it: “caliper: 0.36 mm”.");

        var (grammage, basis) = weight is null ? (null, null) : Weight(weight);
        var thickness = caliper is null
            ? grammage is { } g ? Stock.EstimateCaliper(g) : null
            : Caliper(caliper, problems);
        var size = sheet is null ? null : Sheet(sheet);
        var turns = oneWay?.AsYesNo();
        if (name is null || thickness is not { } thick || size is not { } sides || (weight is not null && grammage is null) || (oneWay is not null && turns is null))
            return null;
        if (trim is { } border && border * 2 >= sides.Shorter)
        {
            problems.Error(map.Place, $"Nothing is left of a sheet of {sheet!.Scalar} when {LengthFormat.Format(border, Ruler.WholeMillimetres)} is trimmed off all round.", "A few millimetres make its edges true.");
            return null;
        }

        return new Stock(use, name, thick, grammage, sides, CaliperIsEstimate: caliper is null, OneWay: turns ?? false)
        {
            Trim = trim ?? Length.Zero,
            Grain = grain switch { "across" => Grain.Across, "down" => Grain.Down, _ => null },
            BasisWeight = basis,
            Pack = pack,
        };
    }

    private static (Grammage? Grammage, BasisWeight? Basis) Weight(YamlItem written)
    {
        if (written.AsText() is not { } text)
            return (null, null);
        if (!Grammage.TryParse(text, out var grammage, out var basis, out var problem))
        {
            written.Refuse(problem);
            return (null, null);
        }

        if (grammage.GramsPerSquareMetre is >= LightestSheet and <= HeaviestSheet)
            return (grammage, basis);
        written.Refuse($"“{text}” is no weight of paper or card.", "Copy it from the packet: paper has about 80 g/m2, card 160 to 400 g/m2.");
        return (null, null);
    }

    private static Length? Caliper(YamlItem written, Problems problems)
    {
        if (written.AsLength() is not { } length)
            return null;
        if (length >= ThinnestSheet && length <= ThickestSheet)
            return length;
        problems.Error(written.Place, $"A caliper of {written.Scalar} is no thickness of paper or card.", "Card is about 0.3 mm thick; leave the line out to have it worked out from the weight.");
        return null;
    }

    private static Size? Sheet(YamlItem written)
    {
        if (written.AsText() is not { } text)
            return null;
        if (SheetSize.TryParse(text, out var size, out var problem))
            return size;
        written.Refuse(problem);
        return null;
    }
}
