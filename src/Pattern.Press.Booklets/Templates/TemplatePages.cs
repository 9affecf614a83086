using System.Globalization;
using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Plans.Tiling;
using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Booklets.Templates;

/// <summary>Makes the pages of full-size templates.</summary>
public static class TemplatePages
{
    /// <summary>
    /// What the marks in the corners take above a template, in millimetres; for <see cref="TemplatePage.HeadRoom"/>.
    /// </summary>
    public const double HeadRoom = 4.5;

    /// <summary>
    /// What the scale check and the words beside it take below a template, in millimetres; for
    /// <see cref="TemplatePage.FootRoom"/>. A bar of 2 in stands upright in it.
    /// </summary>
    public const double FootRoom = 53;

    /// <summary>
    /// The least width of what the printer reaches, in millimetres, so that the words have room beside the scale check; for
    /// <see cref="TemplatePage.LeastWidth"/>.
    /// </summary>
    public const double LeastWidth = 106;

    /// <summary>The page that templates of a booklet are laid over.</summary>
    public static TemplatePage PageOf(PaperSize paper, double margin)
    {
        ArgumentNullException.ThrowIfNull(paper);
        return new TemplatePage(paper.Size.Width.Millimetres, paper.Size.Height.Millimetres, margin, HeadRoom, FootRoom) { LeastWidth = LeastWidth };
    }

    // Before the number of a template page.
    internal const string LabelPrefix = "T";

    /// <summary>
    /// The template pages of a kit at true size: how to join pages where a template takes several, then every template,
    /// then the shared pages. The first page has a bookmark of level 1, the first page of each template one of level 2.
    /// </summary>
    public static FixedPart Make(TemplateJob job)
    {
        ArgumentNullException.ThrowIfNull(job);
        var templates = job.Plan.Tiled
            .Select(plan => (Plan: plan, Seams: Seam.Of(plan, DrawingOf(plan, job.Styles))))
            .ToArray();
        var joining = new JoiningPages(job, templates).Plan();
        var count = joining.Count + job.Plan.Pages;
        var pages = new List<FixedPage>();
        foreach (var make in joining)
            pages.Add(make(pages.Count + 1, count, Bookmark(null), Level()));
        foreach (var (plan, seams) in templates)
        {
            foreach (var tile in plan.Tiles)
            {
                var first = tile == plan.Tiles[0];
                var name = $"template-{plan.Part.Piece.Id}" + (first ? "" : "-" + TileNames.Of(tile).ToLowerInvariant());
                pages.Add(new TilePage(job, plan, seams, tile).Make(pages.Count + 1, count, name, Bookmark(first ? plan.Part.Piece.Name : null), Level()));
            }
        }

        for (var i = 0; i < job.Plan.Shared.Count; i++)
        {
            var name = "template-small" + (i == 0 ? "" : "-" + (i + 1).ToString(CultureInfo.InvariantCulture));
            pages.Add(new SharedTemplatePage(job, job.Plan.Shared[i]).Make(
                pages.Count + 1, count, name, Bookmark(i == 0 ? job.Words.Say("template.shared") : null), Level()));
        }

        return new FixedPart(pages, LabelPrefix) { Title = job.Words.Say("template.title") };

        string? Bookmark(string? own) => pages.Count == 0 ? job.Words.Say("template.title") : own;
        int Level() => pages.Count == 0 ? 1 : 2;
    }

    private static Figures.Drafting.Segment[] DrawingOf(TilePlan plan, StyleSheet styles) =>
    [
        .. TemplatePainter.Lines(plan.Part.Piece, TemplatePainter.PlacingOf(plan.Part.Piece, plan.Turned, 0, 0), styles.Lines).Select(drawn => drawn.Line),
    ];
}
