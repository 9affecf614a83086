using System.Globalization;
using Pattern.Press.Booklets.Figures;
using Pattern.Press.Booklets.Figures.Drafting;
using Pattern.Press.Plans.Tiling;
using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Structure;
using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Booklets.Templates;

/// <summary>
/// What every template page has: marks in the corners of its printable area, and along its foot the scale check, a heading
/// with a few lines and the page's number. Pages of words alone have their heading at the top and no scale check.
/// </summary>
internal sealed class PageFrame
{
    private const double Inset = 5;
    private const double Least = 6.5;

    // Only where the narrowest pages have much to say.
    private const double Smallest = 6;

    // Larger than anything else on the page, so that the eye goes there first.
    private const int LeastHeading = 11;

    // Of a page of words alone.
    private const double Head = 19;
    private const double Number = 8;

    // Of the last line from the edge of what the printer reaches.
    private const double Rise = 1.8;

    private readonly TemplateJob _job;
    private readonly StyleSheet _styles;
    private readonly List<FixedContent> _head = [];
    private readonly List<FixedContent> _foot = [];
    private readonly List<string> _lines = [];
    private readonly Box _words;
    private (double Width, double Height) _beside;
    private double _y;
    private string _stock = "";

    public PageFrame(TemplateJob job, bool lying, bool withTemplate = true)
    {
        (_job, _styles) = (job, job.Styles);
        var page = job.Page;
        (Width, Height) = lying ? (page.Height, page.Width) : (page.Width, page.Height);
        Printable = Of(page.Printable(lying));
        if (withTemplate)
        {
            Area = Of(page.Drawing(lying));
            var foot = Of(page.Foot(lying));
            _words = new Box(foot.Left + Inset + ScaleCheck.Width + 2, foot.Top + 1, foot.Right - Inset, foot.Bottom);
            Scale();
        }
        else
        {
            Area = Printable with { Top = Printable.Top + Head, Bottom = Printable.Bottom - Number };
            _words = new Box(Printable.Left + Inset, Printable.Top + 0.5, Printable.Right - Inset, Area.Top);
        }

        _y = _words.Top;
    }

    public double Width { get; }

    public double Height { get; }

    /// <summary>What the printer reaches.</summary>
    public Box Printable { get; }

    /// <summary>What is left for the drawing.</summary>
    public Box Area { get; }

    /// <summary>Where words start, clear of the marks in the corners and of the scale check.</summary>
    public double Left => _words.Left;

    /// <summary>Where words end.</summary>
    public double Right => _words.Right;

    /// <summary>Where the words' top is.</summary>
    public double Top => _words.Top;

    /// <summary>Keeps the top right corner of the words free for something else.</summary>
    public void LeaveRoom(double width, double height) => _beside = (width, height);

    /// <summary>The heading, with the rest of its line in lighter type.</summary>
    public void Heading(string title, string rest)
    {
        var width = Right - Left - _beside.Width;
        var (first, second) = Set(title, rest, Math.Min(_styles.Scale.Heading2, 14));
        for (var size = 13; size >= LeastHeading && first.Width + (second?.Width ?? 0) > width; size--)
            (first, second) = Set(title, rest, size);
        var items = new List<PageItem>();
        if (second is null || first.Width + second.Width <= width)
        {
            items.AddRange(first.At(Left, _y + first.Ascent, _styles.Palette.Heading));
            if (second is not null)
                items.AddRange(second.At(Left + first.Width, _y + first.Ascent, _styles.Palette.Heading));
            _y += ((first.Ascent + first.Descent) * 1.08) + 0.6;
        }
        else
        {
            // On a narrow page the heading goes on below itself.
            foreach (var (text, face, size) in new[] { (title, _styles.Display.Bold, (double)LeastHeading), (rest, _styles.Display.Regular, LeastHeading - 2) })
            {
                var lines = Lines.Break(text, width, face, size, _styles.Language);
                if (lines.FirstOrDefault(line => line.Width > width) is { } wide)
                    _job.Misfits.Add((string.Create(CultureInfo.InvariantCulture, $"“{wide.Text.Trim()}” is {wide.Width:0} mm wide in the heading of a template page, but there are only {width:0} mm for it."), ""));
                var (put, next) = Lines.Put(lines, Left, _y, Leading(size), _styles.Palette.Heading);
                items.AddRange(put);
                _y = next;
            }

            _y += 0.6;
        }

        _head.Add(new FixedContent(Role.H2, items));

        (LetteringLine First, LetteringLine? Second) Set(string bold, string light, double size) => (
            Lettering.Set(bold, _styles.Display.Bold, size, _styles.Language),
            light.Length == 0 ? null : Lettering.Set("  " + light, _styles.Display.Regular, size, _styles.Language));
    }

    /// <summary>Small text below what is there already.</summary>
    public void Line(string text) => _lines.Add(text);

    /// <summary>Which material is named among the words.</summary>
    public void Names(string stock) => _stock = stock;

    public void Add(FixedContent content) => _head.Add(content);

    /// <summary>The page's number.</summary>
    public void Foot(int number, int count)
    {
        var page = Lettering.Set(
            _job.Words.Say("template.page", ("label", TemplateJob.Label(number)), ("number", number.ToString(CultureInfo.InvariantCulture)), ("count", count.ToString(CultureInfo.InvariantCulture))),
            _styles.Text.Bold,
            Sizes[1],
            _styles.Language);
        _foot.Add(new FixedContent(Role.P, [.. page.At(Right - page.Width, Printable.Bottom - Rise, _styles.Palette.Text)]));
    }

    private void Scale()
    {
        var board = new Board();
        var (left, bottom) = (Printable.Left + Inset, Printable.Bottom - 0.8);
        var inside = ScaleCheck.Draw(board, left, bottom, _styles);
        _foot.Add(new FixedContent(Role.Figure, board.Items, _job.Words.Say("alternative.scale"))
        {
            Box = (left - 1, bottom - ScaleCheck.Imperial - 0.5, ScaleCheck.Width + 1, ScaleCheck.Imperial + 1.3),
        });
        foreach (var points in Sizes)
        {
            var lines = Lines.Break(_job.Words.Say("template.check"), inside.Width, _styles.Text.Regular, points, _styles.Language);
            if (lines.Count * Leading(points) > inside.Height && points > Least)
                continue;
            _foot.Add(new FixedContent(Role.P, Lines.Put(lines, inside.Left, inside.Top, Leading(points), _styles.Palette.Text).Items));
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

    // As large as there is room for.
    private IReadOnlyList<FixedContent> Words()
    {
        foreach (var size in (double[])[Math.Clamp(_styles.Scale.Small + 1, 8.5, 9.5), .. Sizes, Smallest])
        {
            var contents = new List<FixedContent>();
            var y = _y;
            foreach (var text in _lines)
            {
                var start = y;
                double Room(int line) => Right - Left - (start + (line * Leading(size)) < _words.Top + _beside.Height ? _beside.Width : 0);
                var (items, next) = Lines.Put(Lines.Break(text, Room, _styles.Text.Regular, size, _styles.Language), Left, y, Leading(size), _styles.Palette.Text);
                contents.Add(new FixedContent(Role.P, items));
                y = next + (size > Least ? 0.6 : 0.15);
            }

            // Above the page's number where that stands below the words.
            var fits = y <= Math.Min(_words.Bottom, Printable.Bottom - Rise - Leading(Sizes[1]));
            if (!fits && size == Smallest)
                _job.Misfits.Add(("The names of the piece and of its material are too long for the words of a template page.", _stock));
            if (fits || size == Smallest)
                return contents;
        }

        return [];
    }

    private static double Leading(double size) => size * 1.2 * 25.4 / 72;

    private static Box Of(PageArea area) => new(area.Left, area.Top, area.Right, area.Bottom);

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
