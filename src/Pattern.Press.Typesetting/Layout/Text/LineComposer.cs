using System.Text;
using Pattern.Press.Typesetting.Fonts;

namespace Pattern.Press.Typesetting.Layout.Text;

/// <summary>
/// Puts the words of one line side by side and joins those of one style into one run. Room is counted in whole font units,
/// as files hold it; what rounding leaves over is made good at the next space, so that justified lines end at the margin.
/// </summary>
internal sealed class LineComposer
{
    // Paragraphs are set one after the other, so one composer serves them all; it is empty between two.
    [ThreadStatic]
    private static LineComposer? _spare;

    private readonly List<LinePiece> _pieces = [];
    private readonly List<ShapedGlyph> _glyphs = [];
    private readonly StringBuilder _text = new();
    private TextStyle? _style;
    private InlinePart? _part;
    private string _destination = "";
    private double _runStart;
    private double _runVisible;
    private long _runUnits;
    private double _wanted;
    private double _visible;

    /// <summary>A composer for a paragraph.</summary>
    public static LineComposer ForParagraph() => _spare ??= new LineComposer();

    private double Pen => _runStart + (_style is null ? 0 : _runUnits * _style.Scale);

    /// <summary>Adds a word.</summary>
    public void Add(ShapedWord word, TextStyle style, InlinePart part, string destination = "")
    {
        Append(word.Text, word.Glyphs, style, part, destination);
        _wanted += style.WidthOf(word);
        _visible = Pen;
        _runVisible = _visible - _runStart;
    }

    /// <summary>Adds a space of a width in millimetres.</summary>
    public void AddSpace(double width, TextStyle style, InlinePart part)
    {
        Switch(style, part, "");
        _wanted += width;
        var advance = (int)Math.Round((_wanted - Pen) / style.Scale) - style.Tracking;
        Append(style.Space.Glyphs[0] with { Advance = advance, Start = style.Space.Glyphs[0].Start + _text.Length }, style);
        _text.Append(' ');
    }

    /// <summary>Ends the line with a space that takes no room.</summary>
    public void AddLineEnd(TextStyle style, InlinePart part) => Append(" ", style.LineEndSpace.Glyphs, style, part, "");

    /// <summary>The line; the composer is empty again.</summary>
    public SetLine Finish()
    {
        Flush();
        var line = new SetLine([.. _pieces], _visible);
        _pieces.Clear();
        (_style, _part, _destination, _runStart, _wanted, _visible) = (null, null, "", 0, 0, 0);
        return line;
    }

    private void Append(string text, ReadOnlySpan<ShapedGlyph> glyphs, TextStyle style, InlinePart part, string destination)
    {
        Switch(style, part, destination);
        var offset = _text.Length;
        foreach (var glyph in glyphs)
            Append(glyph with { Start = glyph.Start + offset }, style);
        _text.Append(text);
    }

    private void Append(ShapedGlyph glyph, TextStyle style)
    {
        _runUnits += glyph.Advance + style.Tracking;
        _glyphs.Add(glyph);
    }

    private void Switch(TextStyle style, InlinePart part, string destination)
    {
        if (ReferenceEquals(_style, style) && ReferenceEquals(_part, part) && _destination == destination)
            return;
        Flush();
        (_style, _part, _destination) = (style, part, destination);
    }

    private void Flush()
    {
        if (_style is not null && _part is not null && _glyphs.Count > 0)
        {
            var run = new ShapedRun(_style.Face, _style.Size, _text.ToString(), _glyphs.ToArray()) { Tracking = _style.Tracking };
            _pieces.Add(new LinePiece(_runStart, run, _runVisible, _style, _part, _destination));
            _runStart = Pen;
        }

        _glyphs.Clear();
        _text.Clear();
        (_runUnits, _runVisible) = (0, 0);
    }
}
