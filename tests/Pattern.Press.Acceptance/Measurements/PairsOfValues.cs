using System.Text.RegularExpressions;
using Pattern.Press.Acceptance.Booklets;

namespace Pattern.Press.Acceptance.Measurements;

/// <summary>A size and what it is on the other ruler are read as one, so no line of running text ends between them.</summary>
public sealed partial class PairsOfValues
{
    [Theory]
    [MemberData(nameof(Workshop.Files), MemberType = typeof(Workshop))]
    public void No_line_of_running_text_ends_between_the_two(string name, string paper)
    {
        Workshop.Of(name, paper, out var printed);
        var pages = printed.Pages.Where(page => !page.Label.StartsWith('T')).ToList();

        // Drawings write the two below each other, in type of their own size: running text has the size that is most used.
        var body = pages.SelectMany(page => page.Runs).GroupBy(run => Math.Round(run.Size, 2)).MaxBy(group => group.Sum(run => run.Text.Length))!.Key;
        var together = 0;
        foreach (var page in pages)
        {
            var lines = page.Pieces().Where(line => Math.Abs(line.Size - body) < 0.02).ToList();
            together += lines.Sum(line => Pair().Count(line.Text));
            foreach (var (line, next) in lines.Zip(lines.Skip(1)))
            {
                var parted = next.From.Y - line.From.Y > 0.1 && End().IsMatch(line.Text) && Start().IsMatch(next.Text);
                Assert.False(parted, $"Page {page.Label}: “{line.Text}” / “{next.Text}”.");
            }
        }

        Assert.True(together > 0, "No pair of values was found at all.");
    }

    [GeneratedRegex(@"\d\s*(mm|in|m|g)\s*\(\d")]
    private static partial Regex Pair();

    [GeneratedRegex(@"\d\s*(mm|in|m|g)\s*$")]
    private static partial Regex End();

    [GeneratedRegex(@"^\s*\(\d")]
    private static partial Regex Start();
}
