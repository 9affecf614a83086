using System.Globalization;
using Pattern.Press.Booklets.Content;
using Pattern.Press.Plans.Materials;
using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Booklets.Composing.Parts;

/// <summary>What to buy, how much of it, and what it costs where prices are known.</summary>
internal static class ShoppingTable
{
    /// <summary>The table, and below it what its sum leaves out.</summary>
    public static IReadOnlyList<Block> Make(BookletContext context, MakersWords words)
    {
        var (phrases, source) = (context.Phrases, context.Source);
        var list = Shopping.List(context);
        var amounts = new Amounts(phrases, source.Currency);
        var priced = list.Total is not null && !source.Without.Contains(BookletPart.Costs);
        var several = list.Kits > 1;
        var spare = list.Purchases.Any(purchase => purchase.Spare > 0);
        var all = several ? phrases.Format("class.buy.all", ("count", list.Kits.ToString(CultureInfo.InvariantCulture))) : phrases["class.buy.one_kit"];

        var heads = new List<TableCell> { Words.Head(phrases["class.buy.what"]) };
        if (several)
            heads.Add(Words.Head(phrases["class.buy.one_kit"]));
        heads.Add(Words.Head(all));
        if (spare)
            heads.Add(Words.Head(phrases["class.buy.spare"]));
        heads.Add(Words.Head(phrases["class.buy.packs"]));
        if (priced)
            heads.Add(Words.Head(phrases["class.buy.cost"]));

        var rows = new List<TableRow>();
        foreach (var purchase in list.Purchases)
        {
            var cells = new List<TableCell> { new(purchase.Kind == PurchaseKind.Stock ? Words.Plain(purchase.Name) : words.Inlines(purchase.Name), IsHeader: true) };
            if (several)
                cells.Add(new TableCell(amounts.Of(purchase.Kind, purchase.PerKit)));
            cells.Add(new TableCell(amounts.Of(purchase.Kind, purchase.ForAll)));
            if (spare)
                cells.Add(purchase.Spare > 0 ? new TableCell(amounts.Of(purchase.Kind, purchase.Spare)) : Words.Cell(phrases["class.buy.nothing"]));
            cells.Add(new TableCell(amounts.ToBuy(purchase)));
            if (priced)
                cells.Add(purchase.Cost is { } cost ? new TableCell([amounts.Money(cost)]) : Words.Cell(phrases["class.buy.nothing"]));
            rows.Add(new TableRow(cells));
        }

        if (priced)
        {
            TableRow Sum(string what, decimal sum, bool starts) => new(
                [new TableCell([new TextInline(what, Emphasis.Bold)], IsHeader: true, heads.Count - 1), new TableCell([amounts.Money(sum) with { Emphasis = Emphasis.Bold }])],
                StartsGroup: starts);
            rows.Add(Sum(phrases["class.buy.total"], list.Total!.Value, starts: true));
            if (several)
                rows.Add(Sum(phrases["class.buy.per_kit"], list.PerKit!.Value, starts: false));
        }

        var blocks = new List<Block>
        {
            new TableBlock(
                [ColumnAlignment.Left, .. Enumerable.Repeat(ColumnAlignment.Right, heads.Count - 1)],
                [new TableRow(heads)],
                rows),
        };
        if (priced)
        {
            var note = new List<Inline>(phrases.Inlines("class.buy.rounded"));
            if (list.Unpriced.Count > 0)
            {
                note.Add(new TextInline(" "));
                var things = new List<Inline>();
                foreach (var name in list.Unpriced)
                {
                    if (things.Count > 0)
                        things.Add(new TextInline(phrases["list.semicolon"] + " "));
                    things.AddRange(words.Inlines(name));
                }

                note.AddRange(phrases.Inlines("class.buy.without", ("things", things)));
            }

            blocks.Add(new ParagraphBlock(note, ParagraphKind.Small) { KeepsWithPrevious = true });
        }

        return blocks;
    }
}
