using Pattern.Press.Acceptance.Booklets;
using Pattern.Press.Acceptance.Printed;
using Pattern.Press.Measure;
using Pattern.Press.Nets;

namespace Pattern.Press.Acceptance.Templates;

/// <summary>Compares the templates of a printed booklet with the model, part by part.</summary>
public static class TemplateProof
{
    public static void Check(Finished booklet, PrintedBook printed)
    {
        ArgumentNullException.ThrowIfNull(booklet);
        ArgumentNullException.ThrowIfNull(printed);
        var all = TemplateReader.Read(printed);
        var templates = all.ToList();
        foreach (var part in booklet.Primary.Kit.Parts)
        {
            var name = NameOf(part, booklet);
            var found = templates.Where(template => template.Name == name || template.Name == part.Piece.Name).ToArray();
            Assert.True(found.Length == 1, $"“{name}” is there {found.Length} times among {string.Join(", ", templates.Select(template => template.Name))}.");
            templates.Remove(found[0]);
            Assert.Empty(ModelLines.Differences(found[0].Lines, ModelLines.Of(part.Piece)));
            SaysHowManyOfWhatSize(part, booklet, found[0]);
        }

        Assert.Empty(templates);
        var margin = booklet.Source.PrinterMargin.Millimetres;
        foreach (var page in printed.TemplatePages)
            StaysInside(page, margin);
        Assert.All(all.Where(template => template.Pages.Count > 1), template => LapsAreWideEnough(template, booklet.Source.Lap.Millimetres));
    }

    private static string NameOf(Part part, Finished booklet) => part.Hand switch
    {
        Hand.Left => booklet.Phrases.Format("template.left_hand", ("piece", part.Piece.Name)),
        Hand.Right => booklet.Phrases.Format("template.right_hand", ("piece", part.Piece.Name)),
        _ => part.Piece.Name,
    };

    private static void SaysHowManyOfWhatSize(Part part, Finished booklet, PrintedTemplate template)
    {
        var other = booklet.Secondary.Kit.Parts.Single(there => there.Piece.Id == part.Piece.Id);
        var (here, there) = (Sizes.Text(part.Piece.Sheet, booklet.Primary.Kit.Ruler), Sizes.Text(other.Piece.Sheet, booklet.Secondary.Kit.Ruler));
        foreach (var page in template.Pages)
        {
            // The other column's size is that of another set of pieces, so it must not be there.
            Assert.Contains(here, page.Page.Text, StringComparison.Ordinal);
            Assert.DoesNotContain(there, page.Page.Text, StringComparison.Ordinal);
            Assert.Contains(booklet.Phrases.Format("template.cut_count", ("count", Sizes.Text(part.Quantity))), page.Page.Text, StringComparison.OrdinalIgnoreCase);
        }
    }

    // Lines may run along the edge of what the printer reaches; letters have to be inside.
    private static void StaysInside(PrintedPage page, double margin)
    {
        const double Slack = 0.01;
        foreach (var point in page.Strokes.SelectMany(stroke => stroke.Points).Concat(page.Fills.SelectMany(fill => fill.Points)))
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
