using Pattern.Press.Booklets.Figures.Drafting;
using Pattern.Press.Nets;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Booklets.Templates;

/// <summary>Bars to measure after printing: 50 mm across, 50 mm down and 2 in across.</summary>
internal static class ScaleCheck
{
    public const double Metric = 50;
    public const double Imperial = 50.8;
    private const double Tick = 1.6;

    // Brings the upright bar over the start of the level ones.
    private const double Inset = 5 - Tick;

    public static void Across(Board board, double x, double y, double length, string text, StyleSheet styles)
    {
        var stroke = new Stroke(styles.Lines.Cut, styles.Lines.FoldWidth);
        board.Line(new Segment(new Point(x, y), new Point(x + length, y)), stroke);
        foreach (var end in new[] { x, x + length })
            board.Line(new Segment(new Point(end, y - Tick), new Point(end, y + Tick)), stroke);
        var label = Words(text, styles, false);
        board.Write(label, x + (length / 2), y - 0.6 - (label.Height / 2), styles.Palette.Text);
    }

    /// <summary>
    /// Finds a place for the upright bar on a page's drawing area where it crosses no line: above the bars at the foot if
    /// that is free, outside the piece if it can be.
    /// </summary>
    public static void Down(Board board, Box area, Box shows, IReadOnlyList<Shape> panels, StyleSheet styles)
    {
        const int columns = 48;
        const int rows = 24;
        var label = Words("50 mm", styles, true);
        var (width, height) = ((2 * Tick) + label.Width, Metric + 0.4);
        area = area with { Left = area.Left + Inset };
        Point? best = null;
        var least = double.MaxValue;
        for (var row = 0; row <= rows; row++)
        {
            for (var column = 0; column <= columns; column++)
            {
                var at = new Point(
                    area.Left + (width / 2) + ((area.Width - width) * column / columns),
                    area.Bottom - (height / 2) - ((area.Height - height) * row / rows));
                var box = Box.Around(at.X, at.Y, width, height);
                var cost = (column * 0.5) + row;
                if (cost < least && shows.Meets(box))
                    cost += panels.Any(panel => panel.Holds(at)) ? 300 : 100;
                if (cost < least && !board.Room.IsFree(box.Grown(0.5)))
                    cost += 1000;
                if (cost < least)
                    (best, least) = (at, cost);
            }
        }

        if (best is not { } middle)
            return;
        var stroke = new Stroke(styles.Lines.Cut, styles.Lines.FoldWidth);
        var x = middle.X - (width / 2) + Tick;
        var (top, bottom) = (middle.Y - (Metric / 2), middle.Y + (Metric / 2));
        board.Line(new Segment(new Point(x, top), new Point(x, bottom)), stroke);
        foreach (var end in new[] { top, bottom })
            board.Line(new Segment(new Point(x - Tick, end), new Point(x + Tick, end)), stroke);
        board.Room.Take(Box.Around(middle.X, middle.Y, width, height));
        var beside = new Point(x + 0.6 + (label.Width / 2), middle.Y);
        board.Write(label, beside.X, beside.Y, styles.Palette.Text);
    }

    private static Label Words(string text, StyleSheet styles, bool upwards) =>
        new([text], styles.Text.Bold, Math.Max(6, styles.Scale.Drawing - 0.5), styles.Language, upwards);
}
