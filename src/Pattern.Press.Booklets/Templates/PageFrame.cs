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
    private const double Inset = 5;
    private const double Least = 6.5;
    private readonly TemplateJob _job;
    private readonly StyleSheet _styles;
    private readonly List<FixedContent> _head = [];
    private readonly List<FixedContent> _foot = [];
    private readonly List<(string Text, double Width)> _lines = [];
    private double _y;

    public PageFrame(TemplateJob job, bool lying)
    {
        (_job, _styles) = (job, job.Styles);
        var page = job.Page;
        (Width, Height) = lying ? (page.Height, page.Width) : (page.Width, page.Height);
        Printable = new Box(page.Margin, page.Margin, Width - page.Margin, Height - page.Margin);
        Area = Printable with { Top = Printable.Top + page.HeadRoom, Bottom = Printable.Bottom - page.FootRoom };
        _y = Printable.Top + 0.5;
    }

    public double Width { get; }

    public double Height { get; }

    /// <summary>What the printer reaches.</summary>
    public Box Printable { get; }

    /// <summary>What is left for the drawing.</summary>
    public Box Area { get; }

    /// <summary>Where words start, clear of the marks in the corners.</summary>
    public double Left => Printable.Left + Inset;

    /// <summary>Where words end.</summary>
    public double Right => Printable.Right - Inset;

    /// <summary>The heading, with the rest of its line in lighter type.</summary>
    public void Heading(string title, string rest, double width)
    {
        var size = Math.Min(_styles.Scale.Heading2, 14);
        var first = Lettering.Set(title, _styles.Display.Bold, size, _styles.Language);
        var items = new List<PageItem>(first.At(Left, _y + first.Ascent, _styles.Palette.Heading));
        if (rest.Length > 0)
        {
            var second = Lettering.Set("  " + rest, _styles.Display.Regular, size, _styles.Language);
            if (first.Width + second.Width > width)
                second = Lettering.Set("  " + rest, _styles.Display.Regular, Least, _styles.Language);
            items.AddRange(second.At(Left + first.Width, _y + first.Ascent, _styles.Palette.Heading));
        }

        _head.Add(new FixedContent(Role.H2, items));
        _y += ((first.Ascent + first.Descent) * 1.08) + 0.6;
    }

    /// <summary>Small text below what is there already.</summary>
    public void Line(string text, double width) => _lines.Add((text, width));

    public void Add(FixedContent content) => _head.Add(content);

    /// <summary>The scale check along the bottom and the page's number.</summary>
    public void Foot(int number, int count, bool withScale = true)
    {
        var size = Sizes[1];
        var page = Lettering.Set(
            _job.Words.Say("template.page", ("label", TemplateJob.Label(number)), ("number", number.ToString(CultureInfo.InvariantCulture)), ("count", count.ToString(CultureInfo.InvariantCulture))),
            _styles.Text.Bold,
            size,
            _styles.Language);
        var baseline = Printable.Bottom - 1.8;
        if (withScale)
            Scale(baseline, Right - page.Width - 6);
        _foot.Add(new FixedContent(Role.P, [.. page.At(Right - page.Width, baseline, _styles.Palette.Text)]));
    }

    private void Scale(double baseline, double right)
    {
        var top = Area.Bottom;
        var board = new Board();
        ScaleCheck.Across(board, Left, top + 4.6, ScaleCheck.Metric, "50 mm", _styles);
        ScaleCheck.Across(board, Left, Printable.Bottom - 1.8, ScaleCheck.Imperial, "2 in", _styles);
        _foot.Add(new FixedContent(Role.Figure, board.Items, _job.Words.Say("alternative.scale"))
        {
            Box = (Left - 1, top, ScaleCheck.Imperial + 2, Printable.Bottom - top),
        });
        var left = Left + ScaleCheck.Imperial + 5;
        foreach (var points in Sizes.Skip(1))
        {
            var lines = Lines.Break(_job.Words.Say("template.check"), right - left, _styles.Text.Regular, points, _styles.Language);
            var leading = Leading(points);
            var start = baseline - lines[0].Ascent - ((lines.Count - 1) * leading);
            if (start < top + 0.5 && points > Least)
                continue;
            _foot.Add(new FixedContent(Role.P, Lines.Put(lines, left, start, leading, _styles.Palette.Text).Items));
            break;
        }
    }

    public FixedPage Finish(IReadOnlyList<FixedContent> middle, string destination, string? bookmark, int level) => new()
    {
        Width = Width,
        Height = Height,
        Contents = [new FixedContent(null, [.. Corners()]), .. _head, .. Words(), .. middle, .. _foot],
        Destination = destination,
        Bookmark = bookmark,
        BookmarkLevel = level,
    };

    // As large as the head has room for.
    private IReadOnlyList<FixedContent> Words()
    {
        foreach (var size in Sizes)
        {
            var contents = new List<FixedContent>();
            var y = _y;
            foreach (var (text, width) in _lines)
            {
                var (items, next) = Lines.Put(Lines.Break(text, width, _styles.Text.Regular, size, _styles.Language), Left, y, Leading(size), _styles.Palette.Text);
                contents.Add(new FixedContent(Role.P, items));
                y = next;
            }

            if (y <= Area.Top - 0.8 || size == Least)
                return contents;
        }

        return [];
    }

    private static double Leading(double size) => size * 1.2 * 25.4 / 72;

    private double[] Sizes => [Math.Clamp(_styles.Scale.Small, 7.5, 8.5), 7, Least];

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
