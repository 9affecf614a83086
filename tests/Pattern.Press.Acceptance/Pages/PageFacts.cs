using System.Text.RegularExpressions;
using Pattern.Press.Acceptance.Booklets;
using Pattern.Press.Acceptance.Printed;

namespace Pattern.Press.Acceptance.Pages;

/// <summary>What a reader of the finished files sees before reading a word: paper, numbers, title.</summary>
public sealed partial class PageFacts
{
    // Millimetres. A sizes: ISO 216:2007. Letter and Tabloid: ASME Y14.1, sizes A and B. Legal: 8.5 × 14 in, from memory.
    private static readonly Dictionary<string, (double Width, double Height)> _papers = new(StringComparer.Ordinal)
    {
        ["a3"] = (297, 420),
        ["a4"] = (210, 297),
        ["a5"] = (148, 210),
        ["letter"] = (215.9, 279.4),
        ["legal"] = (215.9, 355.6),
        ["tabloid"] = (279.4, 431.8),
    };

    [Fact]
    public void There_is_content() => Assert.NotEmpty(Workshop.Names);

    [Theory]
    [MemberData(nameof(Workshop.Files), MemberType = typeof(Workshop))]
    public void Every_page_is_the_paper_upright_or_for_templates_lying(string name, string paper)
    {
        Workshop.Of(name, paper, out var printed);
        var (width, height) = _papers[paper];
        Assert.NotEmpty(printed.Pages);
        foreach (var page in printed.Pages)
        {
            var lying = page.Width > page.Height;
            Assert.False(lying && !page.Label.StartsWith('T'), $"Page {page.Label} is lying.");
            Assert.Equal(lying ? height : width, page.Width, 0.001);
            Assert.Equal(lying ? width : height, page.Height, 0.001);
        }
    }

    [Theory]
    [MemberData(nameof(Workshop.Files), MemberType = typeof(Workshop))]
    public void The_file_says_what_it_is(string name, string paper)
    {
        var booklet = Workshop.Of(name, paper, out var printed);
        Assert.Equal(booklet.Source.Title, printed.Title);
        Assert.Equal(booklet.Source.Maker, printed.Author);
        Assert.Equal(booklet.Source.Language, printed.Language);
        var file = booklet.Files.Single(file => file.FileName == $"{name}-{paper}.pdf");
        Assert.Equal(file.Pages, printed.Pages.Count);
        Assert.Equal(file.TemplatePages, printed.TemplatePages.Count());
        Assert.True(file.TemplatePages > 0);
    }

    [Theory]
    [MemberData(nameof(Workshop.Files), MemberType = typeof(Workshop))]
    public void The_words_on_scoring_stand_above_the_first_piece_and_not_above_an_empty_page(string name, string paper)
    {
        var booklet = Workshop.Of(name, paper, out var printed);
        var lead = Assert.Single(printed.Pages.SelectMany(page => page.Pieces().Select(piece => (page, piece))), one => one.piece.Text == booklet.Phrases["scoring.lead"]);
        var first = booklet.Metric.Kit.Parts[0].Piece.Name;
        Assert.Contains(lead.page.Pieces(), piece => piece.Text == first && piece.From.Y > lead.piece.From.Y);
    }

    [Theory]
    [MemberData(nameof(Workshop.Files), MemberType = typeof(Workshop))]
    public void The_number_at_the_foot_of_a_page_is_the_one_that_viewers_show(string name, string paper)
    {
        var booklet = Workshop.Of(name, paper, out var printed);
        Assert.Equal(printed.Pages.Count, printed.Pages.Select(page => page.Label).Distinct().Count());
        var templates = printed.TemplatePages.ToArray();
        for (var i = 0; i < templates.Length; i++)
        {
            Assert.Equal($"T{i + 1}", templates[i].Label);
            Assert.Contains(
                booklet.Phrases.Format("template.page", ("label", templates[i].Label), ("number", Sizes.Text(i + 1)), ("count", Sizes.Text(templates.Length))),
                templates[i].Text,
                StringComparison.Ordinal);
        }

        // The cover has no number; the pages after it count from 1, templates left out.
        var body = printed.Pages.Skip(1).Where(page => !page.Label.StartsWith('T')).ToArray();
        for (var i = 0; i < body.Length; i++)
        {
            Assert.Equal(Sizes.Text(i + 1), body[i].Label);
            Assert.Contains(body[i].Runs, run => run.Text == body[i].Label && run.From.Y > body[i].Height - 30);
        }
    }

    [Theory]
    [MemberData(nameof(Workshop.Files), MemberType = typeof(Workshop))]
    public void The_contents_name_the_page_that_a_heading_is_on(string name, string paper)
    {
        var booklet = Workshop.Of(name, paper, out var printed);
        var lines = Entries(printed.Pages[1]).ToArray();
        Assert.True(lines.Length > 5, "There are hardly any contents.");
        foreach (var (title, label) in lines)
        {
            // The templates as a whole have no heading of their own; they start on their first page.
            if (title == booklet.Phrases["template.title"])
            {
                Assert.Equal("T1", label);
                continue;
            }

            var page = printed.Pages.Single(page => page.Label == label);
            var words = StepNumber().Replace(title, "");
            // In narrow columns a title goes on to a second line, and only its end stands beside the number.
            Assert.Contains(page.Runs, piece =>
                piece.IsBold && piece.Size > 11
                && (words.StartsWith(piece.Text.Trim(), StringComparison.Ordinal) || piece.Text.Trim().EndsWith(" " + words, StringComparison.Ordinal)));
        }
    }

    [Theory]
    [MemberData(nameof(Workshop.Files), MemberType = typeof(Workshop))]
    public void Nothing_is_drawn_outside_of_the_page(string name, string paper)
    {
        const double Slack = 0.001;
        Workshop.Of(name, paper, out var printed);
        foreach (var page in printed.Pages)
        {
            foreach (var stroke in page.Strokes)
            {
                var half = stroke.Width / 2;
                Assert.All(stroke.Points, point => Assert.True(
                    point.X >= half - Slack && point.X <= page.Width - half + Slack && point.Y >= half - Slack && point.Y <= page.Height - half + Slack,
                    $"A line reaches {point} on page {page.Label}."));
            }

            Assert.All(page.Fills, fill => Assert.True(
                fill.Left >= -Slack && fill.Top >= -Slack && fill.Right <= page.Width + Slack && fill.Bottom <= page.Height + Slack,
                $"An area leaves page {page.Label}."));
            Assert.All(page.Runs, run => Assert.True(
                run.Ink.Left >= 0 && run.Ink.Top >= 0 && run.Ink.Right <= page.Width && run.Ink.Bottom <= page.Height,
                $"“{run.Text}” leaves page {page.Label}."));
        }
    }

    // A title and, on the same baseline at the right, a page number.
    private static IEnumerable<(string Title, string Label)> Entries(PrintedPage page)
    {
        foreach (var line in page.Pieces().GroupBy(piece => Math.Round(piece.From.Y, 1)))
        {
            PrintedRun[] pieces = [.. line.OrderBy(piece => piece.From.X)];
            if (pieces.Length == 2 && Label().IsMatch(pieces[1].Text.Trim()))
                yield return (pieces[0].Text.Trim(), pieces[1].Text.Trim());
        }
    }

    [GeneratedRegex(@"^T?\d+$")]
    private static partial Regex Label();

    [GeneratedRegex(@"^\p{L}+ \d+: ")]
    private static partial Regex StepNumber();
}
