using Pattern.Press.Acceptance.Booklets;
using Pattern.Press.Acceptance.Printed;
using Pattern.Press.Acceptance.Templates;
using Pattern.Press.Nets;

namespace Pattern.Press.Acceptance.Measurements;

/// <summary>What makers measure to see whether their printer changed the scale measures what it says.</summary>
public sealed class ScaleChecks
{
    private const double Tolerance = 0.01;

    // 1 in is 25.4 mm exactly (NIST SP 811, 2008, appendix B.8).
    private const double TwoInches = 2 * 25.4;

    [Theory]
    [MemberData(nameof(Workshop.Files), MemberType = typeof(Workshop))]
    public void The_check_square_is_50_mm_and_its_bar_2_in(string name, string paper)
    {
        var booklet = Workshop.Of(name, paper, out var printed);
        var page = printed.Pages.Single(page => page.Pieces().Any(piece => piece.IsBold && piece.Text.StartsWith(booklet.Phrases["before.square.title"], StringComparison.Ordinal)));
        var squares = page.Strokes.Where(IsSquareOf50).ToArray();
        Assert.Single(squares);
        Assert.Single(Bars(page, level: true), bar => Math.Abs(bar.Length - TwoInches) < Tolerance);
        Assert.Contains("50 mm", page.Text, StringComparison.Ordinal);
        Assert.Contains("2 in", page.Text, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Workshop.Files), MemberType = typeof(Workshop))]
    public void Every_page_with_a_template_has_a_square_of_50_mm_and_a_bar_of_2_in(string name, string paper)
    {
        Workshop.Of(name, paper, out var printed);
        var pages = printed.TemplatePages.Where(page => new TemplatePage(page).Work.Count > 0).ToArray();
        Assert.NotEmpty(pages);
        foreach (var page in pages)
        {
            Assert.Single(page.Strokes, IsSquareOf50);
            var bar = Assert.Single(Bars(page, level: false));
            Assert.InRange(bar.Length, TwoInches - Tolerance, TwoInches + Tolerance);
            Assert.Contains("50 mm", page.Text, StringComparison.Ordinal);
            IsNamed(page, bar, "2 in");
        }
    }

    // A line with a short line across it at both of its ends.
    private static PrintedLine[] Bars(PrintedPage page, bool level)
    {
        var lines = page.Strokes.Where(stroke => stroke.Dash.Count == 0).SelectMany(stroke => stroke.Lines).ToArray();
        var ticks = lines.Where(line => line.Length is > 2 and < 5 && (level ? line.IsUpright() : line.IsLevel())).ToArray();
        bool Ends(Point end) => ticks.Any(tick => Distance(tick, end) < 0.001);
        return [.. lines.Where(line => line.Length is > 45 and < 55 && (level ? line.IsLevel() : line.IsUpright()) && Ends(line.From) && Ends(line.To))];
    }

    private static double Distance(PrintedLine line, Point point)
    {
        var along = line.To - line.From;
        return point.DistanceTo(line.From + (along * Math.Clamp((point - line.From).Dot(along) / along.Dot(along), 0, 1)));
    }

    private static void IsNamed(PrintedPage page, PrintedLine bar, string text)
    {
        var middle = bar.From.MidwayTo(bar.To);
        var nearest = page.Runs.MinBy(run => run.Middle.DistanceTo(middle));
        Assert.Equal(text, nearest!.Text.Trim());
    }

    private static bool IsSquareOf50(PrintedStroke stroke) =>
        stroke.Lines.Count == 4 && stroke.Curves.Count == 0
        && stroke.Lines.All(line => Math.Abs(line.Length - 50) < Tolerance)
        && stroke.Lines.Count(line => line.IsLevel()) == 2
        && stroke.Lines.Count(line => line.IsUpright()) == 2;
}
