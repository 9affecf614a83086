using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Fonts;
using Pattern.Press.Typesetting.Layout.Flow;
using Pattern.Press.Typesetting.Layout.Text;
using Pattern.Press.Typesetting.Pages;

namespace Pattern.Press.Typesetting.Layout;

/// <summary>What stands in the margins of every page of running text: the running head, and the page's number.</summary>
internal sealed class PageFurniture(LayoutSession session)
{
    private const double HeadShare = 0.6;
    private const double FootShare = 0.5;
    private const double LineDrop = 1.7;
    private const double LineWidth = 0.15;

    // What is too long for the line ends after a word that fits, with an ellipsis: the cover has it in full.
    private ShapedRun Head(string title, TextStyle style)
    {
        var run = style.Run(title);
        var end = title.Length;
        while (run.Width > session.TextWidth && end > 1)
        {
            var space = title.LastIndexOf(' ', end - 1);
            end = space > 0 ? space : end - 1;
            run = style.Run(title[..end].TrimEnd(' ', ',', ';', ':', '.', '–', '-') + "…");
        }

        return run;
    }

    /// <summary>Draws it.</summary>
    public void Draw(PageCanvas canvas, string label)
    {
        var (book, spacing) = (session.Book, session.Styles.Spacing);
        if (book.RunningTitle.Length > 0)
        {
            var look = session.Looks.RunningHead;
            var run = Head(book.RunningTitle, session.Texts.Get(look, Emphasis.None));
            var y = spacing.Top * HeadShare;
            var line = PathBuilder.Line(spacing.Left, y + LineDrop, book.Paper.Width - spacing.Right, y + LineDrop);
            canvas.Furnish(
                ArtifactKind.Header,
                new TextItem(run, spacing.Left, y, look.Colour),
                new PathItem(line, null, new Stroke(session.Styles.Palette.Rule, LineWidth)));
        }

        if (label.Length > 0)
        {
            var look = session.Looks.PageNumber;
            var run = session.Texts.Get(look, Emphasis.None).Run(label);
            var y = book.Paper.Height - (spacing.Bottom * FootShare);
            canvas.Furnish(ArtifactKind.Footer, new TextItem(run, book.Paper.Width - spacing.Right - run.Width, y, look.Colour));
        }
    }
}
