using System.Globalization;
using Pattern.Press.Booklets.Phrases;
using Pattern.Press.Nets;
using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Booklets.Composing.Parts;

/// <summary>What an instructor needs: what to buy and to cut beforehand for all, a timetable, and a checklist.</summary>
internal static class ClassPart
{
    /// <summary>Composes the part.</summary>
    public static FlowPart Compose(BookletContext context, ValueText values, MakersWords words)
    {
        var (phrases, kits) = (context.Phrases, context.Source.Kits);
        var count = kits.ToString(CultureInfo.InvariantCulture);
        var blocks = new List<Block>
        {
            Words.Heading(1, phrases["class.title"], "class"),
            Words.Phrase(phrases, "class.lead", ParagraphKind.Lead, ("kits", Words.Plain(phrases.Format("class.kits", ("count", count))))),
            Words.Subheading(2, phrases["class.buy.title"]),
        };
        blocks.AddRange(ShoppingTable.Make(context, words));
        if (context.Source.Steps.Any(step => step.Minutes is not null))
        {
            blocks.Add(new KeepTogetherBlock(
            [
                Words.Subheading(2, phrases["class.time.title"]),
                .. Timetable(context),
            ]));
        }

        blocks.Add(new KeepTogetherBlock([Words.Subheading(2, phrases["class.check.title"]), Words.Ticks(Checks(context, words, count))]));
        blocks.Add(Words.Subheading(2, phrases["class.cut.title"]));
        blocks.Add(Words.Phrase(phrases, "class.cut.lead", ParagraphKind.Body, ("count", Words.Plain(count))));
        blocks.Add(CutTable.Make(context, values, kits, withUse: false));
        return new FlowPart(blocks) { Title = phrases["class.title"] };
    }

    private static IEnumerable<Block> Timetable(BookletContext context)
    {
        var phrases = context.Phrases;
        var rows = new List<TableRow>();
        var at = 0;
        foreach (var step in context.Source.Steps)
        {
            var title = phrases.Format("steps.number", ("n", step.Number.ToString(CultureInfo.InvariantCulture))) + ": " + step.Title;
            var takes = step.Minutes is { } minutes ? new TableCell([new MeasureInline(phrases.Minutes(minutes))]) : Words.Cell(phrases["class.buy.nothing"]);
            rows.Add(new TableRow([Words.Head(Clock(context, at)), Words.Cell(title), takes]));
            at += step.Minutes ?? 0;
        }

        rows.Add(new TableRow([Words.Head(Clock(context, at)), new TableCell([new TextInline(phrases["class.time.end"], Emphasis.Bold)]), Words.Cell("")], StartsGroup: true));
        yield return new TableBlock(
            [ColumnAlignment.Right, ColumnAlignment.Left, ColumnAlignment.Right],
            [new TableRow([Words.Head(phrases["class.time.at"]), Words.Head(phrases["class.time.step"]), Words.Head(phrases["class.time.takes"])])],
            rows);
        if (context.Source.Steps.Any(step => step.Minutes is null))
            yield return Words.Paragraph(phrases["class.time.without"], ParagraphKind.Small) with { KeepsWithPrevious = true };
    }

    // The time of day when the maker said when it begins, else hours and minutes since the beginning.
    private static string Clock(BookletContext context, int minutes)
    {
        var time = context.Source.Starts is { } starts ? starts.AddMinutes(minutes) : new TimeOnly(0, 0).AddMinutes(minutes);
        return time.ToString("H:mm", CultureInfo.InvariantCulture);
    }

    private static IEnumerable<IReadOnlyList<Inline>> Checks(BookletContext context, MakersWords words, string count)
    {
        var (phrases, source) = (context.Phrases, context.Source);
        yield return phrases.Inlines("class.check.make");
        yield return phrases.Inlines("class.check.print", ("count", Words.Plain(count)), ("page", [new PageNumberInline("class")]));
        var pieces = Pieces(phrases, context.Primary.Kit.Parts.Where(part => part.Kind == PartKind.Piece).Sum(part => part.Quantity));
        var mats = context.Primary.Kit.Parts.Where(part => part.Kind == PartKind.Mat).Sum(part => part.Quantity);
        yield return mats > 0
            ? phrases.Inlines("class.check.envelopes", ("count", Words.Plain(count)), ("pieces", Words.Plain(pieces)), ("mats", Words.Plain(Pieces(phrases, mats))))
            : phrases.Inlines("class.check.envelopes_plain", ("count", Words.Plain(count)), ("pieces", Words.Plain(pieces)));
        var tools = new List<Inline>();
        foreach (var tool in MaterialsPart.Tools(context))
        {
            if (tools.Count > 0)
                tools.Add(new TextInline(phrases["list.semicolon"] + " "));
            tools.AddRange(words.Inlines(tool));
        }

        yield return phrases.Inlines("class.check.tools", ("tools", tools));
        yield return phrases.Inlines("class.check.blades");
        var careful = source.Steps.Where(step => step.Caution.Length > 0).Select(step => step.Number.ToString(CultureInfo.InvariantCulture)).ToArray();
        if (careful.Length > 0)
            yield return phrases.Inlines("class.check.care", ("steps", Words.Plain(phrases.Plural("class.check.steps", careful.Length, ("numbers", phrases.Join(careful))))));
        yield return phrases.Inlines("class.check.count");
    }

    private static string Pieces(PhraseBook phrases, int count) => phrases.Plural("class.check.pieces", count);
}
