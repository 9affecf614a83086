using Pattern.Press.Measure;
using Pattern.Press.Structures.Fitting;
using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Booklets.Composing.Parts;

/// <summary>What was checked about the fit, in both columns.</summary>
internal static class ChecksPart
{
    /// <summary>The table of checks, below its heading and on the same page.</summary>
    public static IReadOnlyList<Block> Compose(BookletContext context, ValueText values)
    {
        var phrases = context.Phrases;
        var there = context.Secondary.Checks.ToDictionary(check => check.Name, StringComparer.Ordinal);
        var rows = context.Primary.Checks
            .Where(check => there.ContainsKey(check.Name))
            .Select(here => new TableRow(
            [
                Words.Head(here.Name),
                Cell(values, here.Found, there[here.Name].Found),
                Least(context, values, here.Least, there[here.Name].Least),
            ]));
        return
        [
            new KeepTogetherBlock(
            [
                Words.Subheading(2, phrases["measurements.checks.title"], "checked"),
                Words.Phrase(phrases, "measurements.checks.lead"),
                new TableBlock(
                    [ColumnAlignment.Left, ColumnAlignment.Right, ColumnAlignment.Right],
                    [new TableRow([Words.Head(phrases["measurements.what"]), Words.Head(phrases["measurements.checks.found"]), Words.Head(phrases["measurements.checks.least"])])],
                    [.. rows]),
            ]),
        ];
    }

    private static TableCell Least(BookletContext context, ValueText values, Length here, Length there) =>
        here == Length.Zero && there == Length.Zero ? Words.Cell(context.Phrases["measurements.none"]) : Cell(values, here, there);

    private static TableCell Cell(ValueText values, Length here, Length there) =>
        new(values.Both(new LengthValue(here), new LengthValue(there)));
}
