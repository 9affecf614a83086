using Pattern.Press.Booklets.Figures.Drafting;
using Pattern.Press.Nets;
using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Booklets.Figures;

/// <summary>
/// A square of 50 mm and a bar of 2 in to measure after printing. It is drawn at true size whatever room there is.
/// </summary>
/// <param name="SquareLabel">What stands in the square: <c>50 mm</c>.</param>
/// <param name="BarLabel">What stands at the bar: <c>2 in</c>.</param>
public sealed record CheckSquare(string SquareLabel = "50 mm", string BarLabel = "2 in") : IDrawing
{
    /// <summary>The side of the square, in millimetres.</summary>
    public const double Side = 50;

    /// <summary>The length of the bar, in millimetres: 2 in.</summary>
    public const double Bar = 50.8;

    private const double Edge = 0.5;
    private const double BarHeight = 3;

    /// <inheritdoc/>
    public DrawnFigure Draw(double maxWidth, double maxHeight, StyleSheet styles)
    {
        ArgumentNullException.ThrowIfNull(styles);
        var board = new Board();
        var lines = styles.Lines;
        var line = new Stroke(lines.Cut, lines.FoldWidth);
        var thin = new Stroke(lines.Dimension, lines.ThinWidth);
        board.Mark(PathBuilder.Rectangle(Edge, Edge, Side, Side), line);

        // Marks every 10 mm along the inside of two sides, like those of a ruler.
        for (var i = 1; i < 5; i++)
        {
            var at = Edge + (10 * i);
            board.Line(new Segment(new Point(at, Edge + Side), new Point(at, Edge + Side - 2)), thin);
            board.Line(new Segment(new Point(Edge, at), new Point(Edge + 2, at)), thin);
        }

        var big = Label.Of(SquareLabel, styles.Text.Bold, styles.Scale.Drawing + 2, styles.Language);
        var up = Label.Of(SquareLabel, styles.Text.Bold, styles.Scale.Drawing + 2, styles.Language, upwards: true);
        board.Write(big, Edge + (Side / 2), Edge + Side - 2.8 - (big.Height / 2), styles.Palette.Text);
        board.Write(up, Edge + 2.8 + (up.Width / 2), Edge + (Side / 2), styles.Palette.Text);

        var top = Edge + Side + 5;
        var (left, right) = (Edge, Edge + Bar);
        board.Line(new Segment(new Point(left, top + BarHeight), new Point(right, top + BarHeight)), line);
        for (var i = 0; i <= 8; i++)
        {
            var x = Edge + (Bar * i / 8);
            var tall = i % 4 == 0 ? BarHeight : i % 2 == 0 ? BarHeight * 0.6 : BarHeight * 0.35;
            board.Line(new Segment(new Point(x, top + BarHeight), new Point(x, top + BarHeight - tall)), i % 8 == 0 ? line : thin);
        }

        var bar = Label.Of(BarLabel, styles.Text.Bold, styles.Scale.Drawing + 2, styles.Language);
        var below = top + BarHeight + 1.2 + (bar.Height / 2);
        board.Write(bar, left + (Bar / 2), below, styles.Palette.Text);
        return new DrawnFigure(right + Edge, below + (bar.Height / 2), board.Items);
    }
}
