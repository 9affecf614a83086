using Pattern.Press.Measure;
using Pattern.Press.Structures.Fitting;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Structures.Files;

/// <summary>Reads the item that a structure is shown with in the printed catalogue, written as in a booklet.</summary>
internal static class ExampleReader
{
    /// <summary>Reads the item; null after noting problems.</summary>
    public static Item? Read(YamlItem written, IReadOnlyList<ItemShape> takes, Problems problems)
    {
        if (written.AsMap() is not { } map)
            return null;
        var name = map.Need("name", "Say what it is in a few words: name: bar of soap.")?.AsText();
        var (round, height) = (map.Find("round"), map.Need("height", "Say how tall it stands: height: 25 mm."));
        var width = round ?? map.Need("width", "Write round: 58 mm, or width: 80 mm and depth: 50 mm.");
        var depth = round ?? map.Need("depth", "A rectangular item has two sides: depth: 50 mm.");
        map.RefuseTheRest();
        var shape = round is null ? ItemShape.Rectangular : ItemShape.Round;
        if (takes.Count > 0 && !takes.Contains(shape))
            problems.Error(map.Place, $"The example is {(round is null ? "rectangular" : "round")}, which this structure does not take.", "Choose another item, or add its shape to “takes”.");
        var (wide, deep, tall) = (Side(width, problems), round is null ? Side(depth, problems) : null, Side(height, problems));
        return name is not null && wide is { } w && tall is { } h && (round is null ? deep : wide) is { } d
            ? new Item(name, shape, w, d, h)
            : null;
    }

    private static Length? Side(YamlItem? item, Problems problems)
    {
        if (item?.AsLength() is not { } length)
            return null;
        if (LengthRange.Fault(length, LengthRange.Least) is not { } fault)
            return length;
        problems.Error(item.Place, $"The item cannot be {item.Scalar} long.", fault);
        return null;
    }
}
