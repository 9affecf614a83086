using Pattern.Press.Booklets.Figures.Drafting;
using Pattern.Press.Nets;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Booklets.Templates;

/// <summary>What is measured after printing: a square of 50 mm and an upright bar of 2 in beside it.</summary>
internal static class ScaleCheck
{
    /// <summary>The side of the square, in millimetres.</summary>
    public const double Metric = 50;

    /// <summary>The length of the bar, in millimetres: 2 in.</summary>
    public const double Imperial = 50.8;

    /// <summary>From the left of the square to the right of all, in millimetres.</summary>
    public const double Width = Metric + Between + 5;

    private const double Between = 4;
    private const double Tick = 1.6;
    private const double Mark = 1.4;

    /// <summary>Draws both, the square with its bottom left corner and the bar with its foot on one level.</summary>
    /// <returns>What is free inside the square, for words.</returns>
    public static Box Draw(Board board, double left, double bottom, StyleSheet styles)
    {
        var lines = styles.Lines;
        var line = new Stroke(lines.Cut, lines.FoldWidth);
        var thin = new Stroke(lines.Dimension, lines.ThinWidth);
        var square = new Box(left, bottom - Metric, left + Metric, bottom);
        board.Mark(PathBuilder.Rectangle(square.Left, square.Top, Metric, Metric), line);
        board.Room.Add(Shape.Of(square).Sides);
        for (var i = 1; i < 5; i++)
        {
            var at = 10 * i;
            board.Line(new Segment(new Point(square.Left + at, square.Top), new Point(square.Left + at, square.Top + Mark)), thin);
            board.Line(new Segment(new Point(square.Left, square.Top + at), new Point(square.Left + Mark, square.Top + at)), thin);
        }

        var (level, upright) = (Words("50 mm", styles, false), Words("50 mm", styles, true));
        board.Write(level, square.Left + (Metric / 2), square.Top + Mark + 0.8 + (level.Height / 2), styles.Palette.Text);
        board.Write(upright, square.Left + Mark + 0.8 + (upright.Width / 2), bottom - (Metric / 2), styles.Palette.Text);

        var x = square.Right + Between;
        var top = bottom - Imperial;
        board.Line(new Segment(new Point(x, top), new Point(x, bottom)), line);
        foreach (var end in new[] { top, bottom })
            board.Line(new Segment(new Point(x - Tick, end), new Point(x + Tick, end)), line);
        var inches = Words("2 in", styles, true);
        board.Write(inches, x + 0.6 + (inches.Width / 2), bottom - (Imperial / 2), styles.Palette.Text);
        return new Box(
            square.Left + Mark + upright.Width + 3,
            square.Top + Mark + level.Height + 3,
            square.Right - 2.5,
            bottom - 2.5);
    }

    private static Label Words(string text, StyleSheet styles, bool upwards) =>
        Label.Of(text, styles.Text.Bold, Math.Max(7, styles.Scale.Drawing), styles.Language, upwards);
}
