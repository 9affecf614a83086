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
    /// Draws the upright bar on a page's drawing area where it crosses nothing: above the bars at the foot if that is free,
    /// outside the piece if it can be, without its label where only that fits.
    /// </summary>
    /// <param name="board">The drawing, whose lines and words are in the way.</param>
    /// <param name="area">Where the bar may stand.</param>
    /// <param name="shows">Where the template is.</param>
    /// <param name="panels">The template's panels.</param>
    /// <param name="styles">Fonts, colours and lines.</param>
    /// <returns>Whether there was room; a page full of small templates may have none.</returns>
    public static bool Down(Board board, Box area, Box shows, IReadOnlyList<Shape> panels, StyleSheet styles)
    {
        area = area with { Left = area.Left + Inset };
        var label = Words("50 mm", styles, true);
        foreach (var wide in new[] { label.Width, 0 })
        {
            var (width, height) = ((2 * Tick) + wide, Metric + 0.4);
            if (Free(board.Room, area, shows, panels, width, height) is not { } middle)
                continue;
            var stroke = new Stroke(styles.Lines.Cut, styles.Lines.FoldWidth);
            var x = middle.X - (width / 2) + Tick;
            var (top, bottom) = (middle.Y - (Metric / 2), middle.Y + (Metric / 2));
            board.Line(new Segment(new Point(x, top), new Point(x, bottom)), stroke);
            foreach (var end in new[] { top, bottom })
                board.Line(new Segment(new Point(x - Tick, end), new Point(x + Tick, end)), stroke);
            board.Room.Take(Box.Around(middle.X, middle.Y, width, height));
            if (wide > 0)
                board.Write(label, x + 0.6 + (label.Width / 2), middle.Y, styles.Palette.Text);
            return true;
        }

        return false;
    }

    private static Point? Free(Room room, Box area, Box shows, IReadOnlyList<Shape> panels, double width, double height)
    {
        const int columns = 48;
        const int rows = 24;
        Point? best = null;
        var least = double.MaxValue;
        if (area.Width < width || area.Height < height)
            return null;
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
                if (cost < least && room.IsFree(box.Grown(0.5)))
                    (best, least) = (at, cost);
            }
        }

        return best;
    }

    private static Label Words(string text, StyleSheet styles, bool upwards) =>
        new([text], styles.Text.Bold, Math.Max(6.5, styles.Scale.Drawing - 0.5), styles.Language, upwards);
}
