using System.Globalization;
using Pattern.Press.Acceptance.Printed;
using Pattern.Press.Nets;

namespace Pattern.Press.Acceptance.Templates;

/// <summary>What template pages say, and that it can be read: every word clear of every line, none too small.</summary>
public static class PageWords
{
    // ISO 3098-1 has lettering of drawings at 1.8 mm or more, which is about 6 pt of type with capitals of 0.65 em
    // (from memory).
    private const double LeastPoints = 6;

    private const double Tolerance = 0.01;

    public static void Check(IReadOnlyList<PrintedTemplate> templates, PrintedBook printed, Expected expected)
    {
        ArgumentNullException.ThrowIfNull(templates);
        ArgumentNullException.ThrowIfNull(printed);
        ArgumentNullException.ThrowIfNull(expected);
        PrintedPage[] pages = [.. printed.TemplatePages];
        for (var i = 0; i < pages.Length; i++)
        {
            HasCorners(pages[i], expected.Margin);
            CanBeRead(pages[i]);
            var count = pages.Length.ToString(CultureInfo.InvariantCulture);
            Assert.Contains(
                expected.Phrases.Format("template.page", ("label", pages[i].Label), ("number", (i + 1).ToString(CultureInfo.InvariantCulture)), ("count", count)),
                pages[i].Text,
                StringComparison.Ordinal);
        }

        foreach (var template in templates.Where(template => template.Pages[0].Tile is not null))
            SaysWhatItJoins(template, expected);
    }

    // Whether a neighbour is beside a page or above it is told from the line that they share.
    private static void SaysWhatItJoins(PrintedTemplate template, Expected expected)
    {
        foreach (var page in template.Pages)
        {
            var tile = page.Tile!;
            var digits = tile.TakeWhile(char.IsLetter).Count();
            Assert.Contains(expected.Phrases.Format("template.place", ("row", tile[..digits]), ("column", tile[digits..])), page.Page.Text, StringComparison.Ordinal);
            foreach (var other in template.Pages.Where(other => other != page))
            {
                Target[] shared = [.. page.Targets.Where(target => other.Targets.Any(there => there.Letter == target.Letter))];
                if (shared.Length == 0)
                    continue;
                var upright = Math.Abs(shared[0].Centre.X - shared[^1].Centre.X) < Tolerance;

                // Names of tiles go from left to right and from top to bottom: A2 lies right of A1, B1 below it.
                var after = string.CompareOrdinal(other.Tile, tile) > 0;
                var side = upright ? (after ? "right" : "left") : after ? "below" : "above";
                var letters = expected.Phrases.Join([.. shared.Select(target => target.Letter).OrderBy(letter => letter.Length).ThenBy(letter => letter, StringComparer.Ordinal)]);
                var said = expected.Phrases.Format($"template.joins.{side}", ("tile", other.Tile!), ("marks", letters));
                Assert.Contains(said, page.Page.Text, StringComparison.Ordinal);
            }
        }
    }

    // Two short lines at right angles in each corner of what the printer reaches.
    private static void HasCorners(PrintedPage page, double margin)
    {
        foreach (var corner in new Point[] { new(margin, margin), new(page.Width - margin, margin), new(margin, page.Height - margin), new(page.Width - margin, page.Height - margin) })
        {
            Assert.True(
                page.Strokes.Any(stroke => stroke.Lines.Count == 2 && stroke.Lines.All(line => (line.From.DistanceTo(corner) < Tolerance || line.To.DistanceTo(corner) < Tolerance) && line.Length is > 3 and < 5)),
                $"Page {page.Label} has no mark in its corner at {corner}.");
        }
    }

    private static void CanBeRead(PrintedPage page)
    {
        // Ink that only touches is told from ink that crosses by a hair's breadth.
        const double Hair = 0.03;
        var runs = page.Runs.Where(run => run.Text.Trim().Length > 0 && (run.IsLevel || Math.Abs(run.From.X - run.To.X) < Tolerance)).ToArray();
        Assert.All(page.Runs, run => Assert.True(run.Size >= LeastPoints - 1e-6, $"“{run.Text}” on page {page.Label} is set at {run.Size} pt."));
        (Point From, Point To)[] lines =
        [
            .. page.Strokes.SelectMany(stroke => stroke.Lines).Select(line => (line.From, line.To)),
            .. page.Strokes.SelectMany(stroke => stroke.Curves).SelectMany(curve => TemplatePage.Chords(LineKind.Cut, curve)).Select(chord => (chord.From, chord.To)),
        ];
        for (var i = 0; i < runs.Length; i++)
        {
            var ink = Shrunk(runs[i]);
            foreach (var (from, to) in lines)
                Assert.False(Crosses(from, to, ink), $"A line from {from} to {to} crosses “{runs[i].Text}” on page {page.Label}.");
            for (var j = i + 1; j < runs.Length; j++)
            {
                var other = Shrunk(runs[j]);
                Assert.False(
                    ink.Left < other.Right && other.Left < ink.Right && ink.Top < other.Bottom && other.Top < ink.Bottom,
                    $"“{runs[i].Text}” and “{runs[j].Text}” touch on page {page.Label}.");
            }
        }

        static (double Left, double Top, double Right, double Bottom) Shrunk(PrintedRun run) =>
            (run.Ink.Left + Hair, run.Ink.Top + Hair, run.Ink.Right - Hair, run.Ink.Bottom - Hair);
    }

    private static bool Crosses(Point from, Point to, (double Left, double Top, double Right, double Bottom) box) =>
        Math.Max(from.X, to.X) > box.Left && Math.Min(from.X, to.X) < box.Right && Math.Max(from.Y, to.Y) > box.Top && Math.Min(from.Y, to.Y) < box.Bottom
        && new DrawnLine(LineKind.Cut, from, to).Within(box) is not null;
}
