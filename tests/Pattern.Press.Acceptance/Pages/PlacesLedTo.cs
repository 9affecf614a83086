using System.Text.RegularExpressions;
using Pattern.Press.Acceptance.Booklets;
using Pattern.Press.Acceptance.Printed;

namespace Pattern.Press.Acceptance.Pages;

/// <summary>
/// Contents, cross-references and bookmarks, read back from the files: each leads to the page whose number it names, and
/// there stands what it says.
/// </summary>
public sealed partial class PlacesLedTo
{
    [Theory]
    [MemberData(nameof(Workshop.Files), MemberType = typeof(Workshop))]
    public void Every_line_of_the_contents_names_the_page_that_it_leads_to_and_the_words_there(string name, string paper)
    {
        Workshop.Of(name, paper, out var printed);

        // An entry of two lines has a link on each, and its number on the last.
        var words = "";
        var entries = new List<(string Title, string Page, PrintedPlace To)>();
        foreach (var link in printed.Links.Where(link => link.Page == 1))
        {
            words = $"{words} {Words(printed.Pages[link.Page], link)}".Trim();
            if (Entry().Match(words) is not { Success: true } entry)
                continue;
            entries.Add((entry.Groups["title"].Value, entry.Groups["page"].Value, link.To));
            words = "";
        }

        Assert.True(entries.Count > 10, $"Only {entries.Count} entries.");
        foreach (var (title, page, to) in entries)
        {
            Assert.Equal(printed.Pages[to.Page].Label, page);
            AssertStands(printed, title, to);
        }

        // Every heading that has a bookmark is in the contents, in the same order; templates, too.
        Assert.Equal(
            printed.Bookmarks.Where(bookmark => printed.Pages[bookmark.To.Page].Label.Length > 0).Select(bookmark => (bookmark.Title, bookmark.To)),
            entries.Select(entry => (entry.Title, entry.To)));
    }

    [Theory]
    [MemberData(nameof(Workshop.Files), MemberType = typeof(Workshop))]
    public void Every_bookmark_leads_to_the_words_that_it_says(string name, string paper)
    {
        Workshop.Of(name, paper, out var printed);
        Assert.True(printed.Bookmarks.Count > 10);
        foreach (var bookmark in printed.Bookmarks)
            AssertStands(printed, bookmark.Title, bookmark.To);
    }

    [Fact]
    public void Every_reference_in_the_text_names_the_page_figure_or_step_that_it_leads_to()
    {
        var told = new SortedSet<string>(StringComparer.Ordinal);
        foreach (var printed in Workshop.Names.SelectMany(name => Workshop.Of(name).Printed.Values))
        {
            foreach (var link in printed.Links.Where(link => link.Page != 1))
            {
                var words = Words(printed.Pages[link.Page], link);
                var there = printed.Pages[link.To.Page];
                if (PageNumber().Match(words) is { Success: true } page)
                    Assert.Equal(there.Label, page.Groups["number"].Value);
                else if (Numbered().IsMatch(words))
                    Assert.Contains(words, there.Text, StringComparison.OrdinalIgnoreCase);
                else
                    continue;
                told.Add(words.Split(' ', '\u00A0')[0]);
            }
        }

        Assert.Contains("Figure", told);
    }

    [Theory]
    [MemberData(nameof(Workshop.Files), MemberType = typeof(Workshop))]
    public void The_page_that_is_said_to_have_the_key_has_it(string name, string paper)
    {
        var booklet = Workshop.Of(name, paper, out var printed);
        var said = KeyPage().Match(printed.Body);
        Assert.True(said.Success);
        var page = Assert.Single(printed.Pages, page => page.Label == said.Groups["number"].Value);
        Assert.Contains(booklet.Phrases["key.title"], page.Text, StringComparison.Ordinal);
    }

    // Below the place, as far as a heading with the line above it reaches; templates are led to as pages.
    private static void AssertStands(PrintedBook printed, string title, PrintedPlace to)
    {
        const double HeadingReaches = 40;
        var page = printed.Pages[to.Page];

        // The cover and the templates as a whole have no heading; they start there.
        if (to.Page == 0 || (page.Label == "T1" && title == "Templates"))
            return;
        var there = PrintedPage.Joined(to.Top < 1 ? page.Runs : page.Runs.Where(run => run.Middle.Y > to.Top - 1 && run.Middle.Y < to.Top + HeadingReaches));
        foreach (var part in title.Split(": "))
            Assert.Contains(part, there, StringComparison.OrdinalIgnoreCase);
    }

    private static string Words(PrintedPage page, PrintedLink link) => Dots().Replace(
        PrintedPage.Joined(page.Runs.Where(run => run.Middle.X > link.Area.Left - 0.5 && run.Middle.X < link.Area.Right + 0.5 && run.Middle.Y > link.Area.Top && run.Middle.Y < link.Area.Bottom)),
        " ").Trim();

    [GeneratedRegex(@"^(?<title>.*\S)\s+(?<page>T?\d+)$")]
    private static partial Regex Entry();

    [GeneratedRegex(@"^(?:page\s)?(?<number>T?\d+)$")]
    private static partial Regex PageNumber();

    [GeneratedRegex(@"^(?:Figure|Step)\s\d+$", RegexOptions.IgnoreCase)]
    private static partial Regex Numbered();

    [GeneratedRegex(@"key on page\s(?<number>\d+)")]
    private static partial Regex KeyPage();

    [GeneratedRegex(@"(?:\s*\.){3,}\s*")]
    private static partial Regex Dots();
}
