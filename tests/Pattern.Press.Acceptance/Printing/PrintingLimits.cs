using Pattern.Press.Acceptance.BadInput;
using Pattern.Press.Measure;

namespace Pattern.Press.Acceptance.Printing;

/// <summary>Papers, margins and laps that cannot be, in the booklet and at the keyboard: refused with what can be.</summary>
public sealed class PrintingLimits
{
    // 1 at the keyboard's end is wrong usage (2); what only comes out with the booklet is a problem of the content (1).
    [Theory]
    [InlineData("--paper", "lettre", "“letter”")]
    [InlineData("--paper", "foolscap", "330 x 483 mm")]
    [InlineData("--paper", "330x483", "no unit")]
    [InlineData("--paper", "90x140mm", "5 1/2 in (139.7 mm)")]
    [InlineData("--paper", "300x2001mm", "up to 2 m")]
    [InlineData("--printer-margin", "0mm", "actual size")]
    [InlineData("--printer-margin", "-3mm", "less than nothing")]
    [InlineData("--printer-margin", "41mm", "from 1 mm to 40 mm")]
    [InlineData("--printer-margin", "10", "no unit")]
    [InlineData("--lap", "21mm", "from 0 mm to 20 mm")]
    [InlineData("--lap", "-1mm", "less than nothing")]
    [InlineData("--lap", "wide", "not a length")]
    [InlineData("--copies", "0", "from 1 to 100")]
    [InlineData("--copies", "101", "from 1 to 100")]
    [InlineData("--copies", "two", "whole number")]
    [InlineData("--only", "steps", "--only templates")]
    public void What_no_printing_can_do_is_wrong_usage(string option, string value, string says)
    {
        using var copy = new BookletCopy();
        var (code, _, errors) = copy.Build(option, value);
        Assert.Equal(2, code);
        Assert.Contains(option, errors, StringComparison.Ordinal);
        Assert.Contains(says, errors, StringComparison.Ordinal);
        Assert.DoesNotContain("Exception", errors, StringComparison.Ordinal);
        Assert.False(Directory.Exists(copy.Out));
    }

    [Fact]
    public void A_margin_that_few_printers_manage_is_a_warning_that_lets_the_booklet_be_built()
    {
        using var copy = new BookletCopy();
        copy.Change("booklet.md", "papers: [a4, letter]", "papers: a4\nprinter_margin: 3 mm");
        foreach (var run in new[] { copy.Build(), BookletCopy.Run("check", copy.Folder) })
        {
            Assert.Equal(0, run.Code);
            Assert.Contains($"booklet.md:{copy.LineOf("booklet.md", "printer_margin")}:17: warning: Few printers reach", run.Errors, StringComparison.Ordinal);
            Assert.Contains("no errors, 1 warning.", run.Errors, StringComparison.Ordinal);
        }

        foreach (var run in new[] { copy.Build("--printer-margin", "2mm"), BookletCopy.Run("check", copy.Folder, "--printer-margin", "2mm") })
        {
            Assert.Equal(0, run.Code);
            Assert.Contains("--printer-margin: warning: Few printers reach as close to the edge as 2 mm", run.Errors, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_margin_that_leaves_no_usable_tile_is_refused_at_its_place_with_what_is_left()
    {
        using var copy = new BookletCopy();
        copy.Change("booklet.md", "papers: [a4, letter]", "papers: a5\nprinter_margin: 38 mm");
        var (code, _, errors) = copy.Build();
        Assert.Equal(1, code);
        Assert.Contains($"booklet.md:{copy.LineOf("booklet.md", "printer_margin")}:17: error: A printer margin of 38 mm leaves too little of A5", errors, StringComparison.Ordinal);
        Assert.Contains("Use a smaller printer margin or larger paper.", errors, StringComparison.Ordinal);
        Assert.False(Directory.Exists(copy.Out));
    }

    [Fact]
    public void A_lap_too_wide_for_the_tiles_of_a_page_is_refused_with_the_most_it_can_be()
    {
        using var copy = new BookletCopy();
        copy.Change("booklet.md", "papers: [a4, letter]", "papers: a5\nprinter_margin: 25 mm\nlap: 20 mm");
        var (code, _, errors) = copy.Build();

        // Lying, A5 leaves 148 − 2 × 25 − 57.5 = 40.5 mm for tiles; a third of them is 13.5 mm. Upright it is too narrow
        // for what every page says.
        Assert.Equal(1, code);
        Assert.Contains($"booklet.md:{copy.LineOf("booklet.md", "lap:")}:6: error: A lap of 20 mm is too wide", errors, StringComparison.Ordinal);
        Assert.Contains("Make it 13 mm or less", errors, StringComparison.Ordinal);
        Assert.Equal(0, BookletCopy.Run("check", copy.Folder, "--lap", "13mm").Code);
    }

    [Fact]
    public void A_template_of_more_than_forty_pages_is_printed_only_when_that_is_asked_for()
    {
        using var copy = new BookletCopy();
        copy.Change("booklet.md", "  round: 58 mm\n  height: 64 mm", "  round: 300 mm\n  height: 360 mm")
            .Change("booklet.md", "sheet: 12 x 12 in", "sheet: 2 x 2 m")
            .Change("booklet.md", "papers: [a4, letter]", "papers: a5")
            .Change("booklet.md", "  lid_depth: 22 mm\n", "");
        var (code, _, errors) = copy.Build("--only", "templates");
        Assert.Equal(1, code);
        var line = Assert.Single(errors.Split('\n'), line => line.Contains("“Base” takes", StringComparison.Ordinal));
        var pages = int.Parse(line.Split("takes ")[1].Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture);
        Assert.True(pages > 40);
        Assert.Contains($"add --force to print all {pages} pages.", errors, StringComparison.Ordinal);
        Assert.False(Directory.Exists(copy.Out));
        Assert.Equal(1, BookletCopy.Run("check", copy.Folder).Code);

        var (forced, output, _) = copy.Build("--only", "templates", "--force");
        Assert.Equal(0, forced);
        Assert.True(int.Parse(output.Split(": ")[1].Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture) > pages);

        // Larger paper, as the advice says, needs no force.
        Assert.Equal(0, copy.Build("--only", "templates", "--paper", "841x1189mm").Code);
    }

    [Fact]
    public void Every_paper_takes_a_whole_booklet_in_both_themes()
    {
        using var copy = new BookletCopy();
        string[] papers = [.. PaperSize.All.Select(paper => paper.Id), "330x483mm", "5.5x8in", "36x48in"];
        foreach (var theme in new[] { "handout", "market" })
        {
            var (code, output, errors) = copy.Build(["--theme", theme, .. papers.SelectMany(paper => new[] { "--paper", paper })]);
            Assert.Equal("", errors);
            Assert.Equal(0, code);
            Assert.All(papers, paper => Assert.Contains($"spoilt-box-{paper}.pdf", output, StringComparison.Ordinal));
        }
    }
}
