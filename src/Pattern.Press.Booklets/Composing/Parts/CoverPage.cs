using System.Globalization;
using Pattern.Press.Booklets.Figures;
using Pattern.Press.Measure;
using Pattern.Press.Structures.Fitting;
using Pattern.Press.Structures.Reading;
using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Fonts;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Structure;
using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Booklets.Composing.Parts;

/// <summary>The cover: the title, a drawing of the finished thing, its size, and who made it.</summary>
/// <remarks>
/// Words too wide or too long for their place are set smaller, in steps down to six tenths; what does not fit then is a
/// problem that names its line.
/// </remarks>
internal sealed class CoverPage(BookletContext context, ValueText values, FinishedFigure solid, PaperSize paper, Problems problems)
{
    private const double MillimetresPerPoint = 25.4 / 72;

    // Of a page, what words may take of its height: the drawing wants the rest.
    private const double MostForTitle = 0.3;
    private const double MostForSubtitle = 0.14;
    private const double MostForFoot = 0.12;

    // Of the theme's size; words that are small from the start stay large enough to read.
    private static readonly double[] Shrinking = [1, 0.9, 0.8, 0.7, 0.6];
    private const double SmallestPoints = 8;

    private readonly StyleSheet _styles = context.Styles;
    private readonly List<FixedContent> _contents = [];

    /// <summary>Lays out the cover on a page.</summary>
    public FixedPart Compose(double width, double height)
    {
        var field = _styles.Cover == CoverStyle.Field;
        var left = _styles.Spacing.Left;
        var right = width - _styles.Spacing.Right;
        var measure = right - left;
        var titleColour = field ? _styles.Palette.CoverText : _styles.Palette.Heading;
        var lineColour = field ? _styles.Palette.CoverText : _styles.Palette.Muted;

        // The title block stands on a field of about two fifths of the page, or hangs below a short rule.
        var (title, titleSize) = Fitted("title", context.Source.Title, context.Source.TitlePlace, _styles.Display.Bold, _styles.Scale.Title, 1.12, (measure, MostForTitle * height));
        var titleLeading = titleSize * 1.12 * MillimetresPerPoint;
        var (subtitle, subtitleSize) = Fitted("subtitle", context.Source.Subtitle, context.Source.SubtitlePlace, _styles.Text.Regular, _styles.Scale.Lead * 1.15, 1.35, (measure, MostForSubtitle * height));
        var subtitleLeading = subtitleSize * 1.35 * MillimetresPerPoint;
        var top = field ? height * 0.11 : height * 0.12;
        var fieldHeight = top + (title.Count * titleLeading) + (subtitle.Count * subtitleLeading) + (height * 0.055);
        if (field)
            _contents.Add(Decoration(new PathItem(PathBuilder.Rectangle(0, 0, width, fieldHeight), _styles.Palette.CoverGround, null)));
        else
            _contents.Add(Decoration(new PathItem(PathBuilder.Line(left, top - 6, left + 24, top - 6), null, new Stroke(_styles.Palette.Accent, 1.2))));

        var y = Add(Role.H1, title, left, top + (titleSize * 0.75 * MillimetresPerPoint), titleLeading, titleColour);
        if (subtitle.Count > 0)
            Add(Role.P, subtitle, left, y + (subtitleLeading * 1.25), subtitleLeading, field ? _styles.Palette.CoverText : _styles.Palette.Text);

        // The last lines, from the bottom up.
        var small = _styles.Scale.Body;
        var leading = _styles.Scale.Leading * MillimetresPerPoint;
        var foot = height - _styles.Spacing.Bottom;
        var size = Lines(FinishedSize(), _styles.Text.Regular, small, measure);
        var maker = Fitted("maker", Maker(), context.Source.MakerPlace, _styles.Text.Bold, small, leading / small / MillimetresPerPoint, (measure, MostForFoot * height)).Lines;
        var footTop = foot - ((size.Count + maker.Count) * leading) - 2;

        var room = footTop - fieldHeight - 16;
        var drawing = solid.Finished();
        var drawn = drawing.Draw(measure, room, _styles);
        var x = left + ((measure - drawn.Width) / 2);
        var drawingTop = fieldHeight + 8 + ((room - drawn.Height) / 2);
        _contents.Add(new FixedContent(Role.Figure, [new GroupItem(Transform.Move(x, drawingTop), null, drawn.Items)], solid.Describe(drawing))
        {
            Box = (x, drawingTop, drawn.Width, drawn.Height),
        });

        _contents.Add(Decoration(new PathItem(PathBuilder.Line(left, footTop - 2, right, footTop - 2), null, new Stroke(_styles.Palette.Rule, 0.2))));
        var line = footTop + leading;
        if (maker.Count > 0)
            line = Add(Role.P, maker, left, line, leading, _styles.Palette.Text) + leading;
        Add(Role.P, size, left, line, leading, field ? _styles.Palette.Muted : lineColour);

        var page = new FixedPage
        {
            Width = width,
            Height = height,
            Contents = _contents,
            Source = new BlockSource(context.Source.TitlePlace.File, context.Source.TitlePlace.Line),
            Destination = "cover",
            Bookmark = context.Phrases["cover.bookmark"],
        };
        return new FixedPart([page], LabelPrefix: null) { Title = context.Phrases["cover.bookmark"] };
    }

    private (IReadOnlyList<LetteringLine> Lines, double Size) Fitted(
        string what, string text, Place place, FontFace face, double largest, double leading, (double Width, double Height) room)
    {
        IReadOnlyList<LetteringLine> lines = [];
        var size = largest;
        foreach (var part in Shrinking)
        {
            if (largest * part < SmallestPoints && part < 1)
                break;
            size = largest * part;
            lines = Lines(text, face, size, room.Width);
            if (lines.All(line => line.Width <= room.Width) && lines.Count * size * leading * MillimetresPerPoint <= room.Height)
                return (lines, size);
        }

        if (lines.FirstOrDefault(line => line.Width > room.Width) is { } wide)
        {
            problems.Error(
                place,
                string.Create(CultureInfo.InvariantCulture, $"“{wide.Text.Trim()}” in the {what} is {wide.Width:0} mm wide on the cover even in small type, but there are only {room.Width:0} mm for it on {paper.Name}."),
                "Shorten it, or write it in several words.");
        }
        else
        {
            problems.Error(
                place,
                string.Create(CultureInfo.InvariantCulture, $"The {what} takes {lines.Count} lines on the cover even in small type, more than {paper.Name} has room for."),
                what == "title" ? "Shorten it, or put a part of it into the subtitle." : "Shorten it, and say the rest in the introduction.");
        }

        return (lines, size);
    }

    private string Maker() => context.Source.Maker.Length > 0 ? context.Phrases.Format("cover.maker", ("maker", context.Source.Maker)) : "";

    private string FinishedSize()
    {
        var (here, there) = solid.Outside;
        return context.Phrases.Format(
            here.Count == 2 ? "cover.flat_size" : "cover.size",
            ("primary", Outside(here, context.Primary)),
            ("secondary", Outside(there, context.Secondary)));
    }

    // Each size stays on one line.
    private string Outside(IReadOnlyList<Length> sizes, Model model) => values.Sides(sizes, model.Kit.Ruler).Replace(' ', '\u00A0');

    private IReadOnlyList<LetteringLine> Lines(string text, FontFace face, double size, double measure) =>
        SetLines.Break(text, face, size, measure, context.Source.Language);

    private double Add(Role role, IReadOnlyList<LetteringLine> lines, double x, double y, double leading, Colour colour)
    {
        var (items, last) = SetLines.Place(lines, x, y, leading, colour);
        if (items.Count > 0)
            _contents.Add(new FixedContent(role, items));
        return last;
    }

    private static FixedContent Decoration(PageItem item) => new(null, [item]);
}
