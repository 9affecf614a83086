using Pattern.Press.Acceptance.Booklets;
using Pattern.Press.Acceptance.Printed;
using Pattern.Press.Booklets.Phrases;
using Pattern.Press.Measure;
using Pattern.Press.Nets;

namespace Pattern.Press.Acceptance.Templates;

/// <summary>What template pages are compared with.</summary>
/// <param name="Kit">The pieces that are drawn.</param>
/// <param name="Other">The same pieces fitted on the other ruler, whose sizes must not be there; null where there is no such fit.</param>
/// <param name="Phrases">The words.</param>
/// <param name="Margin">What the printer does not reach, in millimetres.</param>
/// <param name="Lap">What neighbouring pages share, in millimetres.</param>
public sealed record Expected(Kit Kit, Kit? Other, PhraseBook Phrases, double Margin, double Lap)
{
    public static Expected Of(Finished booklet)
    {
        ArgumentNullException.ThrowIfNull(booklet);
        return new Expected(booklet.Primary.Kit, booklet.Secondary.Kit, booklet.Phrases, booklet.Source.PrinterMargin.Millimetres, booklet.Source.Lap.Millimetres);
    }
}

/// <summary>Compares printed templates with the model, part by part.</summary>
public static class TemplateProof
{
    public static void Check(Expected expected, PrintedBook printed)
    {
        ArgumentNullException.ThrowIfNull(expected);
        ArgumentNullException.ThrowIfNull(printed);
        var all = TemplateReader.Read(printed);
        var templates = all.ToList();
        foreach (var part in expected.Kit.Parts)
        {
            var name = NameOf(part, expected);
            var found = templates.Where(template => template.Name == name || template.Name == part.Piece.Name).ToArray();
            Assert.True(found.Length == 1, $"“{name}” is there {found.Length} times among {string.Join(", ", templates.Select(template => template.Name))}.");
            templates.Remove(found[0]);
            var differences = ModelLines.Differences(found[0].Lines, ModelLines.Of(part.Piece));
            Assert.True(differences.Count == 0, $"{name}: {string.Join("; ", differences.Take(2).Concat(differences.TakeLast(2)))}");
            SaysHowManyOfWhatSize(part, expected, found[0]);
        }

        Assert.Empty(templates);
        foreach (var page in printed.TemplatePages)
            StaysInside(page, expected.Margin);
        Assert.All(all.Where(template => template.Pages.Count > 1), template => LapsAreWideEnough(template, expected.Lap));
        PageWords.Check(all, printed, expected);
    }

    private static string NameOf(Part part, Expected expected) => part.Hand switch
    {
        Hand.Left => expected.Phrases.Format("template.left_hand", ("piece", part.Piece.Name)),
        Hand.Right => expected.Phrases.Format("template.right_hand", ("piece", part.Piece.Name)),
        _ => part.Piece.Name,
    };

    private static void SaysHowManyOfWhatSize(Part part, Expected expected, PrintedTemplate template)
    {
        var here = Sizes.Text(part.Piece.Sheet, expected.Kit.Ruler);
        foreach (var page in template.Pages)
        {
            Assert.Contains(here, page.Page.Text, StringComparison.Ordinal);
            Assert.Contains(expected.Phrases.Format("template.cut_count", ("count", Sizes.Text(part.Quantity))), page.Page.Text, StringComparison.OrdinalIgnoreCase);

            // The other column's size is that of another set of pieces, so it must not be there.
            if (expected.Other is { } other)
                Assert.DoesNotContain(Sizes.Text(other.Parts.Single(there => there.Piece.Id == part.Piece.Id).Piece.Sheet, other.Ruler), page.Page.Text, StringComparison.Ordinal);
        }
    }

    // Lines may run along the edge of what the printer reaches; letters have to be inside.
    private static void StaysInside(PrintedPage page, double margin)
    {
        const double Slack = 0.01;
        var drawn = page.Strokes.SelectMany(stroke => stroke.Lines).SelectMany(line => new[] { line.From, line.To })
            .Concat(page.Strokes.SelectMany(stroke => stroke.Curves).SelectMany(curve => TemplatePage.Chords(LineKind.Cut, curve)).SelectMany(chord => new[] { chord.From, chord.To }))
            .Concat(page.Fills.SelectMany(fill => fill.Points));
        foreach (var point in drawn)
        {
            Assert.InRange(point.X, margin - Slack, page.Width - margin + Slack);
            Assert.InRange(point.Y, margin - Slack, page.Height - margin + Slack);
        }

        foreach (var run in page.Runs)
        {
            Assert.True(
                run.Ink.Left > margin - Slack && run.Ink.Right < page.Width - margin + Slack && run.Ink.Top > margin - Slack && run.Ink.Bottom < page.Height - margin + Slack,
                $"“{run.Text}” on page {page.Label} is outside of what the printer reaches.");
        }
    }

    private static void LapsAreWideEnough(PrintedTemplate template, double lap)
    {
        if (lap <= 0)
            return;
        var joined = template.Pages.SelectMany(page => page.Joins).Count();
        var laps = template.Pages.SelectMany(page => page.Laps).ToArray();

        // Each seam is drawn on two pages, and its strip on the one that lies below.
        Assert.Equal(joined, 2 * laps.Length);
        Assert.All(laps, strip => Assert.InRange(Math.Min(strip.Right - strip.Left, strip.Bottom - strip.Top), lap - 0.01, lap + 0.01));
    }
}
