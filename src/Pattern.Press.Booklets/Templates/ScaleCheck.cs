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

    public static void Across(Board board, double x, double y, double length, string text, StyleSheet styles)
    {
        var stroke = new Stroke(styles.Lines.Cut, styles.Lines.FoldWidth);
        board.Line(new Segment(new Point(x, y), new Point(x + length, y)), stroke);
        foreach (var end in new[] { x, x + length })
            board.Line(new Segment(new Point(end, y - Tick), new Point(end, y + Tick)), stroke);
        var label = Words(text, styles, false);
        board.Write(label, x + (length / 2), y - 0.6 - (label.Height / 2), styles.Palette.Text);
    }

    /// <summary>Finds a place for the upright bar on a page's drawing area where it crosses no line: outside the piece first.</summary>
    public static void Down(Board board, Box area, IReadOnlyList<Shape> panels, StyleSheet styles)
    {
        var label = Words("50 mm", styles, true);
        var (width, height) = ((2 * Tick) + label.Width, Metric + 0.4);
        var whole = Shape.Of(area);
        Point? best = null;
        var least = double.MaxValue;
        for (var row = 0; row <= 24; row++)
        {
            for (var column = 0; column <= 40; column++)
            {
                var at = new Point(
                    area.Left + (width / 2) + ((area.Width - width) * column / 40),
                    area.Bottom - (height / 2) - ((area.Height - height) * row / 24));
                var box = Box.Around(at.X, at.Y, width, height);
                if (!whole.Holds(box.Grown(-1e-6)))
                    continue;
                var free = board.Room.IsFree(box.Grown(0.5));
                var inside = panels.Any(panel => panel.Holds(new Point(box.CentreX, box.CentreY)));
                var cost = (free ? 0 : 1000) + (inside ? 300 : 0) + (column * 0.5) + row;
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
