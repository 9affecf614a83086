using System.Globalization;
using Pattern.Press.Measure;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Booklets.Content;

/// <summary>Reads what is bought: extras, the adhesive, packs and prices, the spare allowance.</summary>
internal static class PurchaseReader
{
    /// <summary>The keys of the adhesive.</summary>
    public static readonly IReadOnlyList<string> AdhesiveKeys = ["name", "roll", "price"];

    /// <summary>The keys of an extra that is more than a few words.</summary>
    public static readonly IReadOnlyList<string> ExtraKeys = ["name", "number", "pack", "price"];

    private const int MostInAPack = 10_000;
    private const decimal HighestPrice = 100_000;
    private static readonly Length ShortestRoll = Length.FromMillimetres(100);
    private static readonly Length LongestRoll = Length.FromMillimetres(1_000_000);

    /// <summary>Reads the extras: each a few words, or a name with a number, a pack and a price.</summary>
    public static IReadOnlyList<ExtraSource> Extras(YamlItem written, Problems problems)
    {
        var extras = new List<ExtraSource>();
        foreach (var item in written.AsList())
        {
            if (!item.IsMap)
            {
                if (item.AsWords(problems) is { } words)
                    extras.Add(new ExtraSource(words));
                continue;
            }

            if (Extra(item, problems) is { } extra)
                extras.Add(extra);
        }

        return extras;
    }

    /// <summary>Reads the adhesive.</summary>
    public static AdhesiveSource? Adhesive(YamlItem written, Problems problems)
    {
        if (!written.IsMap)
            return written.AsWords(problems) is { } words ? new AdhesiveSource(words) : null;
        var map = written.AsMap()!;
        var name = map.Need("name", "Say what it is, such as “name: double-sided tape, 6 mm wide”.")?.AsWords(problems);
        var (rollKey, priceKey) = (map.Find("roll"), map.Find("price"));
        map.RefuseTheRest();
        var roll = rollKey?.AsLengthBetween("A roll", ShortestRoll, LongestRoll, problems);
        var price = priceKey is null ? null : Price(priceKey);
        if (priceKey is not null && rollKey is null)
            problems.Error(priceKey.Place, "There is a price but not what one gets for it.", "Say how much is on a roll, such as “roll: 10 m”.");
        return name is null ? null : new AdhesiveSource(name, roll is { } length ? new Pack(length.Nanometres / 1_000_000m, price) : null);
    }

    /// <summary>Reads how many sheets or pieces are in a pack, and its price.</summary>
    public static Pack? Pack(YamlItem? pack, YamlItem? price, string things, Problems problems)
    {
        var cost = price is null ? null : Price(price);
        if (pack is null)
        {
            if (price is not null)
                problems.Error(price.Place, "There is a price but not what one gets for it.", $"Say how many {things} are in a pack, such as “pack: 10”; “pack: 1” when they are sold one by one.");
            return null;
        }

        return pack.AsWhole(1, MostInAPack) is { } holds ? new Pack(holds, cost) : null;
    }

    /// <summary>Reads a spare allowance, such as <c>10%</c>.</summary>
    public static decimal Spare(YamlItem written)
    {
        var text = written.Scalar?.Trim() ?? "";
        if (text.EndsWith('%') && int.TryParse(text.AsSpan(0, text.Length - 1).TrimEnd(), NumberStyles.None, CultureInfo.InvariantCulture, out var percent) && percent <= 100)
            return percent / 100m;
        written.Refuse($"“{written.Scalar}” does not say how much is bought to spare.", "Write a percentage from 0% to 100%, such as “spare: 10%”.");
        return 0;
    }

    /// <summary>Reads when a class begins, such as <c>19:00</c>.</summary>
    public static TimeOnly? Starts(YamlItem written)
    {
        if (TimeOnly.TryParseExact(written.Scalar?.Trim(), ["H:mm", "H.mm"], CultureInfo.InvariantCulture, DateTimeStyles.None, out var time))
            return time;
        written.Refuse($"“{written.Scalar}” is not a time of day.", "Write hours and minutes, such as “starts: 19:00”.");
        return null;
    }

    private static ExtraSource? Extra(YamlItem written, Problems problems)
    {
        // Words with a colon in them look like a pair; they are sooner words that lack their quotation marks.
        if (written.AsMap()!.Entries.All(entry => !ExtraKeys.Contains(entry.Key, StringComparer.Ordinal)))
        {
            written.AsWords(problems);
            return null;
        }

        var keys = written.AsMap()!;
        var name = keys.Need("name", "Say what it is, such as “name: a metre of ribbon”.")?.AsWords(problems);
        var number = keys.Find("number")?.AsNumber(0.01m, 1000);
        var pack = Pack(keys.Find("pack"), keys.Find("price"), "of them", problems);
        keys.RefuseTheRest();
        return name is null ? null : new ExtraSource(name, number ?? 1, pack);
    }

    private static decimal? Price(YamlItem written) => written.AsNumber(0, HighestPrice);
}
