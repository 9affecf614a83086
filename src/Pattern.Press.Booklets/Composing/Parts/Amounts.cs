using System.Globalization;
using Pattern.Press.Booklets.Phrases;
using Pattern.Press.Plans.Materials;
using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Booklets.Composing.Parts;

/// <summary>Sets amounts that are not measured on a piece: lengths of tape, masses, numbers, sums of money.</summary>
internal sealed class Amounts(PhraseBook phrases, string currency)
{
    // One foot is 0.3048 m and one ounce 28.349523125 g, both exactly (NIST SP 811, 2008, appendix B.8).
    private const decimal MillimetresPerFoot = 304.8m;
    private const decimal GramsPerOunce = 28.349523125m;

    /// <summary>A sum of money with its currency.</summary>
    public MeasureInline Money(decimal sum)
    {
        var amount = Point(sum.ToString("0.00", CultureInfo.InvariantCulture));
        // Codes and words stand behind the number, signs before it.
        return new MeasureInline(currency.Length > 0 && char.IsLetter(currency[0])
            ? phrases.Format("costs.money_after", ("amount", amount), ("currency", currency))
            : phrases.Format("costs.money_before", ("amount", amount), ("currency", currency)));
    }

    /// <summary>An amount of tape, in metres and feet, not too little of either.</summary>
    /// <param name="millimetres">How much.</param>
    /// <param name="inTable">Whether the second value may stand below the first, for want of room in a table's column.</param>
    public IReadOnlyList<Inline> Tape(decimal millimetres, bool inTable = false)
    {
        var metres = decimal.Ceiling(millimetres / 100) / 10;
        var feet = decimal.Ceiling(millimetres / MillimetresPerFoot);
        return
        [
            new MeasureInline(Number(metres) + "\u00A0m"),
            new TextInline(inTable ? " " : "\u00A0"),
            new MeasureInline($"({Number(feet)}\u00A0ft)"),
        ];
    }

    /// <summary>A mass, in grams and ounces.</summary>
    public IReadOnlyList<Inline> Mass(double grams)
    {
        var whole = decimal.Round((decimal)grams, grams < 10 ? 1 : 0, MidpointRounding.AwayFromZero);
        var ounces = decimal.Round((decimal)grams / GramsPerOunce, 1, MidpointRounding.AwayFromZero);
        return [new MeasureInline(Number(whole) + "\u00A0g"), new TextInline("\u00A0"), new MeasureInline($"({Number(ounces)}\u00A0oz)")];
    }

    /// <summary>How much of a purchase, in its own unit, for a table.</summary>
    public IReadOnlyList<Inline> Of(PurchaseKind kind, decimal amount) => kind switch
    {
        PurchaseKind.Adhesive => Tape(amount, inTable: true),
        PurchaseKind.Stock => Words.Plain(phrases.Plural("class.buy.sheets", (int)amount)),
        _ => Words.Plain(Number(amount)),
    };

    /// <summary>What is put into the basket: whole packs where it is sold in packs.</summary>
    public IReadOnlyList<Inline> ToBuy(Purchase purchase)
    {
        if (purchase.Packs is not { } packs)
            return Of(purchase.Kind, purchase.Total);
        var holds = purchase.Pack!.Holds;
        if (holds == 1)
            return Of(purchase.Kind, packs);
        return purchase.Kind == PurchaseKind.Adhesive
            ? [new MeasureInline($"{Number(packs)} × {Number(holds / 1000)}\u00A0m")]
            : [new MeasureInline($"{Number(packs)} × {Number(holds)}")];
    }

    /// <summary>A plain number.</summary>
    public string Number(decimal number) => Point(number.ToString("0.##", CultureInfo.InvariantCulture));

    private string Point(string text) => phrases.DecimalMark == "." ? text : text.Replace(".", phrases.DecimalMark, StringComparison.Ordinal);
}
