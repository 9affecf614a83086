using System.Globalization;
using Pattern.Press.Measure;
using Pattern.Press.Plans.Cutting;
using Pattern.Press.Structures.Fitting;
using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Booklets.Composing.Parts;

/// <summary>Every rectangle to cut, stock by stock, in both columns.</summary>
internal static class CutTable
{
    /// <summary>Makes the table.</summary>
    public static TableBlock Make(BookletContext context, ValueText values)
    {
        var phrases = context.Phrases;
        var kits = context.Source.Kits;
        var inches = CutList.Make(context.Imperial.Kit, kits).Groups.SelectMany(group => group.Items)
            .ToDictionary(item => item.Part.Piece.Id, item => item.Size, StringComparer.Ordinal);
        var rows = new List<TableRow>();
        foreach (var group in CutList.Make(context.Metric.Kit, kits).Groups)
        {
            var stock = context.Source.Stocks[group.Stock];
            rows.Add(Words.Group(phrases.Format("measurements.cuts.from", ("stock", stock.Name)), columns: 5));
            rows.AddRange(group.Items.Select(item => new TableRow(
            [
                Words.Head(item.Part.Piece.Name),
                Words.Cell(item.Part.For ?? ""),
                Words.Cell(item.Quantity.ToString(CultureInfo.InvariantCulture)),
                new TableCell(values.One(new SizeValue(item.Size), context.Metric.Kit.Ruler)),
                new TableCell(values.One(new SizeValue(inches[item.Part.Piece.Id]), context.Imperial.Kit.Ruler)),
            ])));
        }

        return new TableBlock(
            [ColumnAlignment.Left, ColumnAlignment.Left, ColumnAlignment.Right, ColumnAlignment.Right, ColumnAlignment.Right],
            [new TableRow([
                Words.Head(phrases["measurements.cuts.piece"]),
                Words.Head(phrases["measurements.cuts.use"]),
                Words.Head(phrases["measurements.cuts.quantity"]),
                Columns.Head(context, UnitSystem.Metric),
                Columns.Head(context, UnitSystem.Imperial),
            ])],
            rows);
    }
}
