using Pattern.Press.Plans.Materials;

namespace Pattern.Press.Booklets.Composing;

/// <summary>What a booklet's maker has to buy.</summary>
internal static class Shopping
{
    /// <summary>Stocks, adhesive and extras for all kits; of the two columns whichever takes more.</summary>
    public static ShoppingList List(BookletContext context)
    {
        var source = context.Source;
        var purchases = new List<Purchase>();
        for (var i = 0; i < context.Materials.Primary.Stocks.Count; i++)
        {
            int Sheets(KitMaterials lists) => Math.Max(lists.Primary.Stocks[i].Sheets, lists.Secondary.Stocks[i].Sheets);
            var stock = context.Materials.Primary.Stocks[i].Stock;
            var all = Sheets(context.Materials);
            purchases.Add(new Purchase(PurchaseKind.Stock, stock.Name, Sheets(context.PerKit), all, ShoppingList.SpareOf(all, source.Spare), stock.Pack));
        }

        if (source.Adhesive is { } adhesive)
        {
            var perKit = Adhesive(context);
            purchases.Add(new Purchase(PurchaseKind.Adhesive, adhesive.Name, perKit, perKit * source.Kits, perKit * source.Kits * source.Spare, adhesive.Pack));
        }

        purchases.AddRange(source.Extras.Select(extra => new Purchase(PurchaseKind.Extra, extra.Name, extra.PerKit, extra.PerKit * source.Kits, 0, extra.Pack)));
        return new ShoppingList(source.Kits, purchases);
    }

    /// <summary>How much adhesive one kit takes, in millimetres.</summary>
    public static decimal Adhesive(BookletContext context) =>
        (decimal)Math.Max(
            context.PerKit.Primary.GlueLength + context.PerKit.Primary.MatGlueLength,
            context.PerKit.Secondary.GlueLength + context.PerKit.Secondary.MatGlueLength);
}
