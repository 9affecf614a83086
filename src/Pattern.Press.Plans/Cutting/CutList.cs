using Pattern.Press.Measure;
using Pattern.Press.Nets;

namespace Pattern.Press.Plans.Cutting;

/// <summary>Every rectangle to cut for so many kits.</summary>
/// <param name="Kits">How many kits.</param>
/// <param name="Groups">One per stock, in the order in which stocks first occur.</param>
public sealed record CutList(int Kits, IReadOnlyList<CutGroup> Groups)
{
    /// <summary>The list for a number of kits.</summary>
    /// <param name="kit">The parts.</param>
    /// <param name="kits">How many; 1 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">There are no kits to cut for.</exception>
    public static CutList Make(Kit kit, int kits)
    {
        ArgumentNullException.ThrowIfNull(kit);
        ArgumentOutOfRangeException.ThrowIfLessThan(kits, 1);
        return new CutList(
            kits,
            [.. kit.Parts
                .GroupBy(part => part.Stock, StringComparer.Ordinal)
                .Select(group => new CutGroup(group.Key, [.. group.Select(part => Item(part, group, kits) with { Letter = Letters.Of(Index(kit, part)) })]))]);
    }

    private static int Index(Kit kit, Part part) => kit.Parts.TakeWhile(other => other != part).Count();

    private static CutItem Item(Part part, IEnumerable<Part> ofStock, int kits)
    {
        var other = part.Hand == Hand.Either
            ? null
            : ofStock.FirstOrDefault(p => p.Hand != Hand.Either && p.Hand != part.Hand && p.Piece.Sheet == part.Piece.Sheet && p.For == part.For && p.Goes == part.Goes);
        return new CutItem(part, part.Piece.Sheet, checked(part.Quantity * kits), other);
    }
}

/// <summary>What is cut from one stock.</summary>
/// <param name="Stock">The stock, by its id.</param>
/// <param name="Items">Its rectangles, in making order.</param>
public sealed record CutGroup(string Stock, IReadOnlyList<CutItem> Items);

/// <summary>A rectangle to cut.</summary>
/// <param name="Part">What it becomes; says what it is for and of which hand.</param>
/// <param name="Size">Its size: across and down as drawn, the print or grain running down.</param>
/// <param name="Quantity">How many in all.</param>
/// <param name="FaceToFaceWith">
/// The other hand of a mirrored pair: two sheets laid face to face and cut as one give one of each. Null when there is none.
/// </param>
public sealed record CutItem(Part Part, Size Size, int Quantity, Part? FaceToFaceWith)
{
    /// <summary>Its letter on sheet plans, the same for one kit and for many.</summary>
    public string Letter { get; init; } = "";
}
