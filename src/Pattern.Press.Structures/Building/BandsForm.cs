using System.Globalization;
using Pattern.Press.Measure;
using Pattern.Press.Structures.Files;
using Pattern.Press.Structures.Formulas;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Structures.Building;

/// <summary>
/// The bands of a sheet across or down: widths, and groups of them that are repeated, such as
/// <c>{times: cells - 1, bands: [slot, cell]}</c>. On the map a group is drawn once.
/// </summary>
internal sealed class BandsForm(IReadOnlyList<BandGroup> groups)
{
    private const int MostWritten = 60;
    private const int MostBands = 200;

    /// <summary>How many are written, a group's once.</summary>
    public int Count { get; } = groups.Sum(group => group.Widths.Count);

    /// <summary>The formulas of the widths.</summary>
    public IEnumerable<Formula> Formulas => groups.SelectMany(group => group.Widths);

    /// <summary>Reads them; null after noting problems.</summary>
    public static BandsForm? Read(YamlMap piece, string key, FileReading reading)
    {
        var item = piece.Need(key, $"List the widths of the bands: {key}: [wall_height, floor_length, wall_height].");
        if (item is null)
            return null;
        var groups = new List<BandGroup>();
        var sound = true;
        foreach (var one in item.AsList())
        {
            var group = one.IsMap && one.AsMap() is { } map
                ? Group(map, reading)
                : reading.Formula(one, Kind.Length) is { } width ? new BandGroup(null, [width]) : null;
            if (group is null)
                sound = false;
            else
                groups.Add(group);
        }

        if (!sound)
            return null;
        var bands = new BandsForm(groups);
        if (bands.Count <= MostWritten)
            return bands;
        reading.Problems.Error(item.Place, $"A sheet has at most {MostWritten} bands.");
        return null;
    }

    private static BandGroup? Group(YamlMap map, FileReading reading)
    {
        var times = map.Need("times", "Say how often the bands are repeated: times: cells - 1.") is { } count ? reading.Formula(count, Kind.Number) : null;
        var widths = map.Need("bands", "List the bands that are repeated: bands: [slot, cell].") is { } list ? reading.FormulaList(list, Kind.Length) : null;
        map.RefuseTheRest();
        return times is null || widths is null ? null : new BandGroup(times, widths);
    }

    /// <summary>
    /// The widths of one fit, each with the number of the band as written. A band without width is left out with its cells:
    /// that is how a part of a piece becomes optional. Adds the reasons when they cannot be.
    /// </summary>
    public IReadOnlyList<(int Index, Length Width)> At(string way, Evaluation values, List<string> reasons)
    {
        var bands = new List<(int, Length)>();
        var first = 0;
        foreach (var group in groups)
        {
            var times = group.Times?.Evaluate(values).Amount ?? 1;
            if (!decimal.IsInteger(times) || times < 0 || times * group.Widths.Count > MostBands)
            {
                reasons.Add(string.Create(CultureInfo.InvariantCulture, $"The bands {way} are to be repeated {times:0.###} times (“{group.Times!.Text}”), but that is a whole number, and a sheet has at most {MostBands} bands."));
                return bands;
            }

            Length[] widths = [.. group.Widths.Select(width => width.Evaluate(values).Length)];
            for (var i = 0; i < widths.Length; i++)
            {
                if (widths[i].IsNegative)
                    reasons.Add($"The band “{group.Widths[i].Text}” {way} comes out at {LengthFormat.Format(widths[i], values.Ruler)}, less than nothing.");
            }

            for (var round = 0; round < times; round++)
                bands.AddRange(widths.Select((width, i) => (first + i, width)).Where(band => band.width > Length.Zero));
            first += widths.Length;
        }

        return bands;
    }
}

/// <summary>Bands that are repeated together; a single one stands for itself.</summary>
internal sealed record BandGroup(Formula? Times, IReadOnlyList<Formula> Widths);
