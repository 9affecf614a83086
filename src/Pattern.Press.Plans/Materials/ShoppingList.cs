using Pattern.Press.Measure;

namespace Pattern.Press.Plans.Materials;

/// <summary>What kind of thing is bought.</summary>
public enum PurchaseKind
{
    /// <summary>A stock, counted in sheets.</summary>
    Stock,

    /// <summary>The adhesive, in millimetres of tape.</summary>
    Adhesive,

    /// <summary>Something else, counted in pieces.</summary>
    Extra,
}

/// <summary>Something to buy.</summary>
/// <param name="Kind">What kind of thing.</param>
/// <param name="Name">What to ask for in a shop.</param>
/// <param name="PerKit">How much one kit takes.</param>
/// <param name="ForAll">How much all kits take.</param>
/// <param name="Spare">How much more is bought in case something goes wrong.</param>
/// <param name="Pack">What it is sold in; null when that is not known.</param>
public sealed record Purchase(PurchaseKind Kind, string Name, decimal PerKit, decimal ForAll, decimal Spare, Pack? Pack)
{
    /// <summary>How much there has to be.</summary>
    public decimal Total => ForAll + Spare;

    /// <summary>Whole packs to buy; null when it is not known what it is sold in.</summary>
    public int? Packs => Pack?.Holding(Total);

    /// <summary>What they cost; null when that is not known.</summary>
    public decimal? Cost => Packs * Pack?.Price;
}

/// <summary>Everything to buy for so many kits.</summary>
/// <param name="Kits">How many kits.</param>
/// <param name="Purchases">Stocks, adhesive, extras.</param>
public sealed record ShoppingList(int Kits, IReadOnlyList<Purchase> Purchases)
{
    /// <summary>What everything costs whose price is known; null when no price is.</summary>
    public decimal? Total => Purchases.Any(purchase => purchase.Cost is not null) ? Purchases.Sum(purchase => purchase.Cost ?? 0) : null;

    /// <summary>What one kit costs, whole packs being paid for, rounded up to the hundredth; null when no price is known.</summary>
    public decimal? PerKit => Total is { } total ? decimal.Ceiling(total / Kits * 100) / 100 : null;

    /// <summary>What has no price, by name; it is not in the total.</summary>
    public IReadOnlyList<string> Unpriced => [.. Purchases.Where(purchase => purchase.Cost is null).Select(purchase => purchase.Name)];

    /// <summary>How much more of something counted is bought, for a spare allowance such as 0.1; whole, rounded up.</summary>
    public static int SpareOf(int needed, decimal allowance) => (int)decimal.Ceiling(needed * allowance);
}
