using System.Globalization;
using Pattern.Press.Booklets.Content;
using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Plans.Materials;
using Pattern.Press.Structures.Fitting;
using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Booklets.Composing.Parts;

/// <summary>What is needed: stocks by the sheet, what to cut from them, other materials, and tools.</summary>
internal static class MaterialsPart
{
    /// <summary>Composes the part.</summary>
    public static FlowPart Compose(BookletContext context, ValueText values, MakersWords words)
    {
        var (phrases, source) = (context.Phrases, context.Source);
        var (list, other) = (context.PerKit.Primary, context.PerKit.Secondary);

        var blocks = new List<Block>
        {
            Words.Heading(1, phrases["materials.title"], "materials"),
            Words.Paragraph(phrases["materials.kits"]),
            Words.Subheading(2, phrases["materials.stocks.title"]),
            Stocks(context, values, list, other),
            Words.Paragraph(phrases["materials.stocks.substitute"], ParagraphKind.Small),
        };
        if (list.Stocks.Any(need => need.Stock.CaliperIsEstimate))
            blocks.Add(Words.Paragraph(phrases["materials.stocks.estimated_note"], ParagraphKind.Small));
        var amounts = new Amounts(phrases, source.Currency);
        if (list.GramsPerKit is { } grams)
            blocks.Add(new ParagraphBlock(phrases.Inlines("materials.stocks.mass", ("mass", amounts.Mass(grams))), ParagraphKind.Small));
        var lists = new List<Block>();
        var extras = Extras(context, amounts, words).ToList();
        if (extras.Count > 0)
            lists.Add(List(phrases["materials.extras.title"], extras));
        lists.Add(List(phrases["materials.tools.title"], Tools(context).Select(words.Inlines)));
        blocks.Add(Words.InColumns(context.Styles.Columns.Materials, lists));
        if (!context.IsForSeveral && !source.Without.Contains(BookletPart.Costs) && Shopping.List(context).Total is not null)
        {
            blocks.Add(Words.Subheading(2, phrases["costs.title"]));
            blocks.AddRange(ShoppingTable.Make(context, words));
        }

        // Short enough to begin below what comes before; a page is taken only when it is needed.
        return new FlowPart(blocks, FlowsOn: true) { Title = phrases["materials.title"] };
    }

    // A list and its heading stand in one column.
    private static KeepTogetherBlock List(string title, IEnumerable<IReadOnlyList<Inline>> items) =>
        new([Words.Subheading(2, title), Words.Ticks(items)]);

    private static IEnumerable<IReadOnlyList<Inline>> Extras(BookletContext context, Amounts amounts, MakersWords words)
    {
        if (context.Source.Adhesive is { } adhesive)
            yield return context.Phrases.Inlines("materials.extras.adhesive", ("adhesive", words.Inlines(adhesive.Name)), ("length", amounts.Tape(Shopping.Adhesive(context))));
        foreach (var extra in context.Source.Extras)
        {
            yield return extra.PerKit == 1
                ? words.Inlines(extra.Name)
                : context.Phrases.Inlines("materials.extras.several", ("count", Words.Plain(amounts.Number(extra.PerKit))), ("extra", words.Inlines(extra.Name)));
        }
    }

    /// <summary>
    /// The booklet's own tools if it lists them, and after them what its steps name beside; without either what every box
    /// takes.
    /// </summary>
    public static IReadOnlyList<string> Tools(BookletContext context)
    {
        var (source, phrases) = (context.Source, context.Phrases);
        var tools = source.Tools.ToList();
        var listed = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        foreach (var entry in tools.Concat(source.Extras.Select(extra => extra.Name)).Append(source.Adhesive?.Name ?? "").Append(source.Item?.Name ?? ""))
            listed.UnionWith(WordsOf(entry));
        foreach (var tool in source.Steps.SelectMany(step => step.Tools))
        {
            // Named already, perhaps in other words: “a pin” is found in “pin, to prick the template”.
            var words = WordsOf(tool).ToList();
            var named = words.Exists(word => word.Length > 3) ? words.Where(word => word.Length > 3) : words.Where(word => word.Length == 3);
            if (!named.All(listed.Contains))
                tools.Add(tool);
            listed.UnionWith(words);
        }

        return tools.Count > 0
            ? tools
            : [phrases["materials.tools.ruler"], phrases["materials.tools.knife"], phrases["materials.tools.scorer"], phrases["materials.tools.pencil"], phrases["materials.tools.adhesive"]];
    }

    private static IEnumerable<string> WordsOf(string text) =>
        text.Split(text.Where(letter => !char.IsLetterOrDigit(letter)).Distinct().ToArray(), StringSplitOptions.RemoveEmptyEntries);

    private static TableBlock Stocks(BookletContext context, ValueText values, MaterialsList list, MaterialsList other)
    {
        var phrases = context.Phrases;
        var rows = list.Stocks.Zip(other.Stocks, (need, there) => new TableRow(
        [
            Words.Head(need.Stock.Name),
            Words.Cell(phrases.Join([.. Uses(context, need.Stock)])),
            new TableCell(values.Sold(need.Stock.Sheet)),
            Words.Cell(Math.Max(need.Sheets, there.Sheets).ToString(CultureInfo.InvariantCulture)),
            new TableCell(Weight(context, values, need.Stock)),
        ]));
        return new TableBlock(
            [ColumnAlignment.Left, ColumnAlignment.Left, ColumnAlignment.Left, ColumnAlignment.Right, ColumnAlignment.Left],
            [new TableRow([
                Words.Head(phrases["materials.stocks.material"]),
                Words.Head(phrases["materials.stocks.use"]),
                Words.Head(phrases["materials.stocks.sheet"]),
                Words.Head(phrases["materials.stocks.sheets"]),
                Words.Head(phrases["materials.stocks.weight"]),
            ])],
            [.. rows]);
    }

    private static IEnumerable<string> Uses(BookletContext context, Stock stock)
    {
        var parts = context.Primary.Kit.Parts.Where(part => part.Stock == stock.Id).ToList();
        foreach (var piece in parts.Where(part => part.Kind == PartKind.Piece))
            yield return piece.Piece.Name.ToLowerInvariant();
        if (parts.Exists(part => part.Kind == PartKind.Mat))
            yield return context.Phrases["materials.stocks.mats"];
    }

    private static List<Inline> Weight(BookletContext context, ValueText values, Stock stock)
    {
        var phrases = context.Phrases;
        var inlines = new List<Inline>();
        if (stock.BasisWeight is { } basis)
        {
            inlines.Add(new MeasureInline(phrases.Format("materials.stocks.pounds", ("pounds", basis.Pounds.ToString("0.##", CultureInfo.InvariantCulture)), ("sheet", basis.Sheet.Name))));
            inlines.Add(new TextInline(phrases["list.comma"]));
        }

        if (stock.Grammage is { } grammage)
        {
            inlines.Add(new MeasureInline(phrases.Format("materials.stocks.weight_value", ("grams", Math.Round(grammage.GramsPerSquareMetre).ToString(CultureInfo.InvariantCulture)))));
            inlines.Add(new TextInline(phrases["list.comma"]));
        }

        var caliper = values.Exact(stock.Caliper, context.Metric.Kit.Ruler);
        inlines.Add(new MeasureInline(stock.CaliperIsEstimate ? phrases.Format("materials.stocks.estimated", ("caliper", caliper)) : caliper));
        return inlines;
    }
}
