using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Nets.Folding;
using Pattern.Press.Nets.Folding.Proofs;

namespace Pattern.Press.Structures.Fitting;

/// <summary>Proves fits by folding them and putting them together.</summary>
public static class ModelProofs
{
    /// <summary>The name of the parameter that says how much room an item has on each side.</summary>
    private const string Ease = "size.ease";

    /// <summary>Everything that can be proven of a fit.</summary>
    /// <param name="model">The fit.</param>
    /// <param name="item">What it was fitted to; null when its sizes were given outright.</param>
    /// <param name="stocks">The stocks it was fitted with, in any order.</param>
    public static IReadOnlyList<FoldingProof> Of(Model model, Item? item, IEnumerable<Stock> stocks) =>
        KitProofs.Of(ToProve(model, item, stocks));

    /// <summary>How large the finished thing is outside, in millimetres: across, deep, high.</summary>
    /// <param name="model">The fit.</param>
    /// <param name="item">What it was fitted to; null when its sizes were given outright.</param>
    /// <param name="stocks">The stocks it was fitted with, in any order.</param>
    public static (double Width, double Depth, double Height) Outside(Model model, Item? item, IEnumerable<Stock> stocks) =>
        OutsideSize.Of(ToProve(model, item, stocks));

    private static KitToProve ToProve(Model model, Item? item, IEnumerable<Stock> stocks)
    {
        ArgumentNullException.ThrowIfNull(model);
        ArgumentNullException.ThrowIfNull(stocks);
        var calipers = new Dictionary<string, double>(StringComparer.Ordinal);
        foreach (var stock in stocks)
            calipers[stock.Id] = stock.Caliper.Millimetres;
        var ease = item is not null && model.Values.GetValueOrDefault(Ease) is LengthValue { Length: var room } ? room.Millimetres : 0;
        return new KitToProve(model.Kit, Body(item), ease, part => calipers.GetValueOrDefault(part.Stock));
    }

    /// <summary>An item as a body in space; null for none.</summary>
    public static ItemBody? Body(Item? item) => item is null
        ? null
        : new ItemBody(item.Shape == ItemShape.Round, item.Width.Millimetres, item.Depth.Millimetres, item.Height.Millimetres);
}
