using Pattern.Press.Measure;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Structures.Fitting;

/// <summary>A size or choice that the maker gave, with the place it was written at.</summary>
public sealed record GivenValue(Value Value, Place Place);

/// <summary>What a structure is to be fitted to.</summary>
public sealed record FitRequest
{
    /// <summary>The ruler every measured line has to lie on.</summary>
    public required Ruler Ruler { get; init; }

    /// <summary>What goes inside; null when the sizes are given outright.</summary>
    public Item? Item { get; init; }

    /// <summary>Where the item was written, for problems.</summary>
    public Place ItemPlace { get; init; }

    /// <summary>The parameters that the maker set, by name. The names were checked against the structure's.</summary>
    public required IReadOnlyDictionary<string, GivenValue> Given { get; init; }

    /// <summary>The stocks, by the structure's name for their use (such as <c>card</c>, <c>mats</c>).</summary>
    public required IReadOnlyDictionary<string, Stock> Stocks { get; init; }
}
