using Pattern.Press.Nets;
using Pattern.Press.Typesetting.Fonts;
using Pattern.Press.Typesetting.Pages;

namespace Pattern.Press.Booklets.Figures.Drafting;

/// <summary>How the lines of a label stand.</summary>
internal enum LabelSide
{
    Left,
    Centre,
    Right,
}

/// <summary>A few lines of lettering that are placed as one, level or reading upwards.</summary>
internal sealed class Label
{
    private const double Leading = 1.16;

    // The same words are tried in many places of a drawing, and of the same drawing at many sizes.
    private static readonly BoundedCache<(string First, string? Second, FontFace Face, double Size, string Language, bool Upwards), Label> Known = new(4096);

    private readonly LetteringLine[] _lines;
    private readonly double _leading;
    private readonly double _along;
    private readonly double _across;

    private Label(IReadOnlyList<string> lines, FontFace face, double size, string language, bool upwards = false)
    {
        _lines = new LetteringLine[lines.Count];
        for (var i = 0; i < lines.Count; i++)
        {
            _lines[i] = Lettering.Set(lines[i], face, size, language);
            _along = Math.Max(_along, _lines[i].Width);
        }

        _leading = size * Leading * 25.4 / 72;
        _across = _lines[0].Ascent + _lines[0].Descent + (_leading * (_lines.Length - 1));
        Upwards = upwards;
    }

    /// <summary>A label of one line; the same one each time it is asked for.</summary>
    public static Label Of(string text, FontFace face, double size, string language, bool upwards = false) => Of(text, null, face, size, language, upwards);

    /// <summary>A label of one line or two; the same one each time it is asked for.</summary>
    public static Label Of(string first, string? second, FontFace face, double size, string language, bool upwards = false)
    {
        var key = (first, second, face, size, language, upwards);
        if (!Known.TryGet(key, out var label))
        {
            label = new Label(second is null ? [first] : [first, second], face, size, language, upwards);
            Known.Add(key, label);
        }

        return label;
    }

    public bool Upwards { get; }

    public double Width => Upwards ? _across : _along;

    public double Height => Upwards ? _along : _across;

    public Box BoxAt(double x, double y) => Box.Around(x, y, Width, Height);

    /// <summary>The label with its middle at a point.</summary>
    public IEnumerable<PageItem> At(double x, double y, Colour colour, LabelSide side = LabelSide.Centre)
    {
        if (Upwards)
            return [new GroupItem(Transform.Turn(270).Then(Transform.Move(x - (_across / 2), y + (_along / 2))), null, [.. Level(0, 0, colour, side)])];
        return Level(x - (_along / 2), y - (_across / 2), colour, side);
    }

    /// <summary>The label along a line through a point, turned by so many degrees (clockwise).</summary>
    public PageItem TurnedAt(Point middle, double degrees, Colour colour) =>
        new GroupItem(
            Transform.Move(-_along / 2, -_across / 2).Then(Transform.Turn(degrees)).Then(Transform.Move(middle.X, middle.Y)),
            null,
            [.. Level(0, 0, colour, LabelSide.Centre)]);

    private IEnumerable<PageItem> Level(double left, double top, Colour colour, LabelSide side)
    {
        for (var i = 0; i < _lines.Length; i++)
        {
            var room = _along - _lines[i].Width;
            var x = left + (side switch { LabelSide.Left => 0, LabelSide.Right => room, _ => room / 2 });
            foreach (var item in _lines[i].At(x, top + _lines[i].Ascent + (_leading * i), colour))
                yield return item;
        }
    }
}
