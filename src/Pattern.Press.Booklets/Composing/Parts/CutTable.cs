using System.Globalization;
using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Plans.Cutting;
using Pattern.Press.Structures.Fitting;
using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Booklets.Composing.Parts;

/// <summary>Every rectangle to cut, stock by stock, in both columns.</summary>
internal static class CutTable
{
    /// <summary>Makes the table.</summary>
    /// <param name="context">The booklet.</param>
    /// <param name="values">Sets measurements.</param>
    /// <param name="kits">For how many finished things.</param>
    /// <param name="withUse">Whether it says what each rectangle is for.</param>
    public static TableBlock Make(BookletContext context, ValueText values, int kits, bool withUse = true)
    {
        var phrases = context.Phrases;
        // A single piece is for the whole; there is nothing to say.
        withUse &= context.Metric.Kit.Parts.Count > 1;
        var inches = CutList.Make(context.Imperial.Kit, kits).Groups.SelectMany(group => group.Items)
            .ToDictionary(item => item.Part.Piece.Id, item => item.Size, StringComparer.Ordinal);
        var rows = new List<TableRow>();
        foreach (var group in CutList.Make(context.Metric.Kit, kits).Groups)
        {
            var stock = context.Source.Stocks[group.Stock];
            var from = stock switch
            {
                { OneWay: true } => phrases.Format("measurements.cuts.from_one_way", ("stock", stock.Name)),
                { Grain: not null } => phrases.Format("measurements.cuts.from_grain", ("stock", stock.Name)),
                _ => phrases.Format("measurements.cuts.from", ("stock", stock.Name)),
            };
            rows.Add(Words.Group(from, withUse ? 5 : 4));
            rows.AddRange(group.Items.Select(item => new TableRow(
            [
                Words.Head(item.Part.Piece.Name),
                .. withUse ? [Words.Cell(item.Part.For ?? Use(context, item.Part.Piece))] : Array.Empty<TableCell>(),
                Words.Cell(item.Quantity.ToString(CultureInfo.InvariantCulture)),
                new TableCell(values.One(new SizeValue(item.Size), context.Metric.Kit.Ruler)),
                new TableCell(values.One(new SizeValue(inches[item.Part.Piece.Id]), context.Imperial.Kit.Ruler)),
            ])));
        }

        return new TableBlock(
            [ColumnAlignment.Left, .. withUse ? [ColumnAlignment.Left] : Array.Empty<ColumnAlignment>(), ColumnAlignment.Right, ColumnAlignment.Right, ColumnAlignment.Right],
            [new TableRow([
                Words.Head(phrases["measurements.cuts.piece"]),
                .. withUse ? [Words.Head(phrases["measurements.cuts.use"])] : Array.Empty<TableCell>(),
                Words.Head(phrases["measurements.cuts.quantity"]),
                Columns.Head(context, UnitSystem.Metric),
                Columns.Head(context, UnitSystem.Imperial),
            ])],
            rows);
    }

    // A mat says which faces it is for; a piece, where it goes.
    private static string Use(BookletContext context, Piece piece)
    {
        var kit = context.Metric.Kit;
        if (kit.Assembly.Find(piece.Id) is not { To: { } to } placed)
            return context.Phrases["measurements.cuts.main"];
        var key = placed.Goes switch
        {
            GoesWhere.Over => "measurements.cuts.over",
            GoesWhere.Around => "measurements.cuts.around",
            GoesWhere.On => "measurements.cuts.on",
            GoesWhere.Beside => "measurements.cuts.beside",
            _ => "measurements.cuts.inside",
        };
        var other = kit.Parts.FirstOrDefault(part => part.Piece.Id == to)?.Piece.Name ?? context.Source.Item?.Name ?? to;
        return context.Phrases.Format(key, ("other", other.ToLower(CultureInfo.InvariantCulture)));
    }
}
