using Pattern.Press.Measure;
using Pattern.Press.Structures.Fitting;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Booklets.Content;

/// <summary>Reads what goes inside: a name, a diameter or two sides, and a height.</summary>
internal static class ItemReader
{
    /// <summary>The keys of an item.</summary>
    public static readonly IReadOnlyList<string> Keys = ["name", "round", "width", "depth", "height"];

    /// <summary>Reads an item; null when something about it is wrong, which is then noted.</summary>
    public static Item? Read(YamlItem written, Problems problems)
    {
        if (written.AsMap() is not { } map)
            return null;
        var name = map.Need("name", "Say what it is in a few words, such as “name: a round tin of loose tea”.")?.AsWords(problems);
        var (round, width, depth) = (map.Find("round"), map.Find("width"), map.Find("depth"));
        var height = map.Need("height", "Say how tall it stands, such as “height: 40 mm”.");
        map.RefuseTheRest();

        var tall = Side("A height", height);
        if (round is not null)
        {
            if ((width ?? depth) is { } side)
                problems.Error(side.Place, "A round item has a diameter and no sides.", "Leave out “width” and “depth”, or leave out “round”.");
            var across = Side("A diameter", round);
            return name is not null && across is { } d && tall is { } h && width is null && depth is null
                ? new Item(name, ItemShape.Round, d, d, h)
                : null;
        }

        if (width is null && depth is null)
        {
            problems.Error(map.Place, "How large the item is seen from above is missing.", "Write “round: 58 mm”, or “width: 80 mm” and “depth: 50 mm”.");
        }
        else if (width is null || depth is null)
        {
            var missing = width is null ? "width" : "depth";
            problems.Error(map.Place, $"“{missing}” is missing.", $"A rectangular item has two sides; write the other one, such as “{missing}: 50 mm”.");
        }

        var wide = Side("A width", width);
        var deep = Side("A depth", depth);
        return name is not null && wide is { } w && deep is { } dd && tall is { } hh
            ? new Item(name, ItemShape.Rectangular, w, dd, hh)
            : null;

        Length? Side(string what, YamlItem? item) => item?.AsLengthBetween(what, YamlWords.Shortest, YamlWords.Longest, problems);
    }
}
