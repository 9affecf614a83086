using System.Globalization;
using System.Text.RegularExpressions;
using Pattern.Press.Acceptance.Booklets;
using Pattern.Press.Acceptance.Measurements;
using Pattern.Press.Nets;

namespace Pattern.Press.Acceptance.Classes;

/// <summary>The pages for an instructor: everything for all kits, adding up.</summary>
public sealed partial class InstructorsPages
{
    private const string Booklet = "tea-tin-box";

    private static string Pages(string paper)
    {
        var booklet = Workshop.Of(Booklet, paper, out var printed);
        Assert.True(booklet.Source.Kits > 1);
        var pages = printed.Pages.Where(page => !page.Label.StartsWith('T')).Select(page => page.Text).ToList();
        var first = pages.FindLastIndex(page => page.Contains(booklet.Phrases["class.title"], StringComparison.Ordinal));
        Assert.True(first >= 0);
        return Spaces().Replace(string.Join(' ', pages.Skip(first)), " ");
    }

    [Theory]
    [InlineData("a4")]
    [InlineData("letter")]
    public void What_is_bought_adds_up(string paper)
    {
        var source = Workshop.Of(Booklet).Source;
        var text = Pages(paper);
        var sum = 0m;
        foreach (var stock in source.Stocks.Values)
        {
            var row = Regex.Match(text, Regex.Escape(stock.Name) + @" (\d+) sheets? (\d+) sheets? (\d+) sheets? (\d+) × (\d+) £(\d+\.\d\d)");
            Assert.True(row.Success, stock.Name);
            var all = Number(row, 2);
            Assert.InRange(all, 1, Number(row, 1) * source.Kits);
            var spare = Math.Ceiling(all * source.Spare);
            Assert.Equal(spare, Number(row, 3));
            Assert.Equal(stock.Pack!.Holds, Number(row, 5));

            // As many whole packs as hold everything, and not one more.
            var packs = Number(row, 4);
            Assert.True(packs * stock.Pack.Holds >= all + spare && (packs - 1) * stock.Pack.Holds < all + spare);
            Assert.Equal(packs * stock.Pack.Price!.Value, Number(row, 6));
            sum += Number(row, 6);
        }

        // Tape: metres for one and for all, in rolls.
        var tape = Regex.Match(text, @"(\d+(?:\.\d)?) m \(\d+ ft\) (\d+(?:\.\d)?) m \(\d+ ft\) (\d+(?:\.\d)?) m \(\d+ ft\) (\d+) × (\d+) m £(\d+\.\d\d)");
        Assert.True(tape.Success);
        Assert.InRange(Number(tape, 2), (Number(tape, 1) - 0.1m) * source.Kits, Number(tape, 1) * source.Kits);
        Assert.Equal(Math.Ceiling((Number(tape, 2) + Number(tape, 3)) / Number(tape, 5)), Number(tape, 4));
        sum += Number(tape, 6);
        var ribbon = Regex.Match(text, @"ribbon, if you like 1 (\d+) – (\d+) × 5 £(\d+\.\d\d)");
        Assert.True(ribbon.Success);
        Assert.Equal(source.Kits, Number(ribbon, 1));
        sum += Number(ribbon, 3);
        Assert.Contains(string.Create(CultureInfo.InvariantCulture, $"Everything £{sum:0.00} One kit £{Math.Ceiling(sum / source.Kits * 100) / 100:0.00}"), text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("a4")]
    [InlineData("letter")]
    public void The_timetable_runs_from_step_to_step(string paper)
    {
        var source = Workshop.Of(Booklet).Source;
        var text = Pages(paper);
        var at = source.Starts!.Value.ToTimeSpan();
        foreach (var step in source.Steps)
        {
            Assert.Contains($"{at:h\\:mm} Step {Sizes.Text(step.Number)}: {step.Title} {Sizes.Text(step.Minutes!.Value)} min", text, StringComparison.Ordinal);
            at += TimeSpan.FromMinutes(step.Minutes.Value);
        }

        Assert.Contains($"{at:h\\:mm} End", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("a4")]
    [InlineData("letter")]
    public void Everything_is_cut_for_all_kits_and_the_pupils_pages_are_for_one(string paper)
    {
        var booklet = Workshop.Of(Booklet, paper, out var printed);
        var phrases = booklet.Phrases;
        var columns = new[] { phrases.Format("measurements.primary", ("system", phrases["system.metric"])), phrases["system.imperial"] };
        var rows = PrintedTable.Read(printed.Pages, [phrases["measurements.cuts.piece"], phrases["measurements.cuts.quantity"], .. columns], leftAligned: 1);
        var cut = rows.Where(row => row[1].Length > 0).Select(row => $"{row[0]} {row[1]} {row[2]}");
        Assert.Equal(
            booklet.Metric.Kit.Parts.GroupBy(part => part.Stock, StringComparer.Ordinal).SelectMany(stock => stock)
                .Select(part => $"{part.Piece.Name} {Sizes.Text(part.Quantity * booklet.Source.Kits)} {Sizes.Text(part.Piece.Sheet, booklet.Metric.Kit.Ruler)}"),
            cut);

        Assert.Contains(phrases["sheets.title"], Pages(paper), StringComparison.Ordinal);
        Assert.Contains(phrases["materials.kits"], printed.Body, StringComparison.Ordinal);
    }

    private static decimal Number(Match match, int group) => decimal.Parse(match.Groups[group].Value, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();
}
