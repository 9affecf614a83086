using Pattern.Press.Measure;
using Pattern.Press.Structures.Fitting;
using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Booklets.Composing.Parts;

/// <summary>What was checked, what readers may do with the booklet, and thanks.</summary>
internal static class LicencePart
{
    /// <summary>Composes the last part.</summary>
    public static FlowPart Compose(BookletContext context, ValueText values)
    {
        var phrases = context.Phrases;
        var blocks = new List<Block>
        {
            Words.Heading(1, phrases["checked.title"], "checked"),
            Words.Paragraph(phrases["checked.lead"]),
            Checks(context, values),
        };
        if (context.Source.Licence.Length > 0 || context.Source.Credits.Count > 0)
            blocks.Add(Words.Heading(1, phrases["licence.title"], "licence"));
        if (context.Source.Licence.Length > 0)
            blocks.Add(Words.Paragraph(context.Source.Licence));
        foreach (var credit in context.Source.Credits)
            blocks.Add(Words.Paragraph(credit));
        blocks.Add(Words.Paragraph(phrases["licence.fonts"], ParagraphKind.Small));
        return new FlowPart(blocks, FlowsOn: true) { Title = phrases["licence.title"] };
    }

    private static TableBlock Checks(BookletContext context, ValueText values)
    {
        var phrases = context.Phrases;
        var rows = context.Primary.Checks.Zip(context.Secondary.Checks, (here, there) => new TableRow(
        [
            new TableCell(Words.Plain(here.Name), IsHeader: true),
            Cell(values, here.Found, there.Found),
            Cell(values, here.Least, there.Least),
        ]));
        return new TableBlock(
            [ColumnAlignment.Left, ColumnAlignment.Right, ColumnAlignment.Right],
            [new TableRow([Head(phrases["checked.what"]), Head(phrases["checked.found"]), Head(phrases["checked.least"])])],
            [.. rows]);
    }

    private static TableCell Cell(ValueText values, Length here, Length there) =>
        new(values.Both(new LengthValue(here), new LengthValue(there)));

    private static TableCell Head(string text) => new(Words.Plain(text), IsHeader: true);
}
