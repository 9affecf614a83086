using Pattern.Press.Nets;
using Pattern.Press.Typesetting.Fonts;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Booklets.Figures.Drafting;

/// <summary>
/// The length of a side after ISO 129-1 (from memory): extension lines, a line with arrowheads at both ends, the value
/// above its middle, reading from below or from the right.
/// </summary>
internal sealed class SpanDimension(Station side, bool top, FontFace face, double size, string language)
{
    private const double Gap = 1;
    private const double LineAway = 4.5;
    private const double Beyond = 1;
    private readonly Label _label = Label.Of(side.InOneLine, null, face, size, language, upwards: !top);

    /// <summary>How far it reaches out from the sheet.</summary>
    public double Depth => LineAway + 0.6 + (top ? _label.Height : _label.Width);

    /// <summary>The length its value needs.</summary>
    public double Needs => top ? _label.Width : _label.Height;

    public void Draw(Board board, double x, double y, double scale, StyleSheet styles)
    {
        var lines = styles.Lines;
        var thin = new Stroke(lines.Dimension, lines.ThinWidth);
        var end = side.At * scale;
        board.Line(new Segment(Put(0, Gap), Put(0, LineAway + Beyond)), thin);
        board.Line(new Segment(Put(end, Gap), Put(end, LineAway + Beyond)), thin);
        board.Line(new Segment(Put(0, LineAway), Put(end, LineAway)), thin);
        var head = Math.Min(Arrow.Length, end / 3);
        board.Head(Put(0, LineAway), Put(end, LineAway), head, lines.Dimension);
        board.Head(Put(end, LineAway), Put(0, LineAway), head, lines.Dimension);
        var middle = Put(end / 2, LineAway + 0.6 + ((top ? _label.Height : _label.Width) / 2));
        board.Write(_label, middle.X, middle.Y, lines.Dimension);

        Point Put(double along, double away) => top ? new Point(x + along, y - away) : new Point(x - away, y + along);
    }
}
