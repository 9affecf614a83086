using System.Globalization;
using Pattern.Press.Booklets.Figures;
using Pattern.Press.Booklets.Figures.Drafting;
using Pattern.Press.Plans.Tiling;
using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Structure;
using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Booklets.Templates;

/// <summary>What every template page has: its printable area, a heading with a few lines, the scale check and its number.</summary>
internal sealed class PageFrame
{
    private readonly TemplateJob _job;
    private readonly StyleSheet _styles;
    private readonly List<FixedContent> _head = [];
    private readonly List<FixedContent> _foot = [];
    private readonly double _small;
    private readonly double _leading;
    private double _y;

    public PageFrame(TemplateJob job, bool lying)
    {
        (_job, _styles) = (job, job.Styles);
        var page = job.Page;
        (Width, Height) = lying ? (page.Height, page.Width) : (page.Width, page.Height);
        Printable = new Box(page.Margin, page.Margin, Width - page.Margin, Height - page.Margin);
        Area = Printable with { Top = Printable.Top + page.HeadRoom, Bottom = Printable.Bottom - page.FootRoom };
        _small = Math.Max(6.5, _styles.Scale.Drawing);
        _leading = _small * 1.2 * 25.4 / 72;
        _y = Printable.Top + 0.5;
    }

    public double Width { get; }

    public double Height { get; }

    /// <summary>What the printer reaches.</summary>
    public Box Printable { get; }

    /// <summary>What is left for the drawing.</summary>
    public Box Area { get; }

    /// <summary>The heading, with the rest of its line in lighter type.</summary>
    public void Heading(string title, string rest, double width)
    {
        var size = Math.Min(_styles.Scale.Heading2, 14);
        var first = Lettering.Set(title, _styles.Display.Bold, size, _styles.Language);
        var items = new List<PageItem>(first.At(Printable.Left, _y + first.Ascent, _styles.Palette.Heading));
        if (rest.Length > 0)
        {
            var second = Lettering.Set(" " + rest, _styles.Display.Regular, size, _styles.Language);
            if (first.Width + second.Width > width)
                second = Lettering.Set(" " + rest, _styles.Display.Regular, _small, _styles.Language);
            items.AddRange(second.At(Printable.Left + first.Width, _y + first.Ascent, _styles.Palette.Heading));
        }

        _head.Add(new FixedContent(Role.H2, items));
        _y += (first.Ascent + first.Descent) * 1.08;
    }

    /// <summary>A line or more of small text below what is there already, as far as the head has room.</summary>
    public void Line(string text, double width)
    {
        var lines = Lines.Break(text, width, _styles.Text.Regular, _small, _styles.Language);
        var (items, next) = Lines.Put(lines, Printable.Left, _y, _leading, _styles.Palette.Text);
        _head.Add(new FixedContent(Role.P, items));
        _y = next;
    }

    public void Add(FixedContent content) => _head.Add(content);

    /// <summary>The scale check along the bottom and the page's number.</summary>
    public void Foot(int number, int count)
    {
        var top = Area.Bottom;
        var board = new Board();
        // Side by side where the page is wide enough for words beside them, one below the other otherwise.
        var x = Printable.Left + 2;
        var upper = top + 4.6;
        var lower = Printable.Bottom - 1.8;
        ScaleCheck.Across(board, x, upper, ScaleCheck.Metric, "50 mm", _styles);
        ScaleCheck.Across(board, x, lower, ScaleCheck.Imperial, "2 in", _styles);
        _foot.Add(new FixedContent(Role.Figure, board.Items, _job.Words.Say("alt.scale"))
        {
            Box = (Printable.Left, top, ScaleCheck.Imperial + 4, Printable.Bottom - top),
        });
        var left = x + ScaleCheck.Imperial + 5;
        var page = Lettering.Set(
            _job.Words.Say("template.page", ("number", number.ToString(CultureInfo.InvariantCulture)), ("count", count.ToString(CultureInfo.InvariantCulture))),
            _styles.Text.Bold,
            _small,
            _styles.Language);
        var lines = Lines.Break(_job.Words.Say("template.check"), Printable.Right - left - page.Width - 6, _styles.Text.Regular, _small, _styles.Language);
        _foot.Add(new FixedContent(Role.P, Lines.Put(lines, left, Math.Max(top + 0.8, Printable.Bottom - (lines.Count * _leading)), _leading, _styles.Palette.Text).Items));
        _foot.Add(new FixedContent(Role.P, [.. page.At(Printable.Right - page.Width, Printable.Bottom - page.Descent - 0.4, _styles.Palette.Text)]));
    }

    public FixedPage Finish(IReadOnlyList<FixedContent> middle, string destination, string? bookmark, int level) => new()
    {
        Width = Width,
        Height = Height,
        Contents = [new FixedContent(null, [.. Corners()]), .. _head, .. middle, .. _foot],
        Destination = destination,
        Bookmark = bookmark,
        BookmarkLevel = level,
    };

    private IEnumerable<PageItem> Corners()
    {
        const double arm = 4;
        var stroke = new Stroke(_styles.Lines.Faded, _styles.Lines.ThinWidth);
        foreach (var (x, dx) in new[] { (Printable.Left, arm), (Printable.Right, -arm) })
        {
            foreach (var (y, dy) in new[] { (Printable.Top, arm), (Printable.Bottom, -arm) })
                yield return new PathItem(new PathBuilder().MoveTo(x + dx, y).LineTo(x, y).LineTo(x, y + dy).Build(), null, stroke);
        }
    }
}
