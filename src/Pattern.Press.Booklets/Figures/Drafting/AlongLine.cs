using Pattern.Press.Nets;
using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Booklets.Figures.Drafting;

/// <summary>Small words beside a line, reading along it.</summary>
internal static class AlongLine
{
    private const double Away = 0.9;

    /// <summary>Writes where there is room.</summary>
    /// <param name="board">The drawing.</param>
    /// <param name="line">The line.</param>
    /// <param name="text">The words.</param>
    /// <param name="styles">Fonts and colours.</param>
    /// <param name="side">1 for the right of the line as it runs, −1 for its left, 0 for either.</param>
    /// <param name="within">What the words may not leave.</param>
    /// <param name="clear">How far from other words and lines they stand, in millimetres.</param>
    /// <param name="ends">How much farther other words are kept from their beginning and end, in millimetres.</param>
    /// <returns>Whether there was room.</returns>
    public static bool Write(Board board, Segment line, string text, StyleSheet styles, int side = 0, Box? within = null, double clear = 0.3, double ends = 0)
    {
        var label = Label.Of(text, styles.Text.Italic, Math.Max(6.5, styles.Scale.Drawing - 0.5), styles.Language);
        if (line.Length < label.Width + 2)
            return false;
        var right = (line.To - line.From) * (1 / line.Length);
        right = new Point(-right.Y, right.X);
        // Words read from below or from the right.
        var along = (line.To - line.From) * (1 / line.Length);
        if (along.X < -1e-9 || (Math.Abs(along.X) < 1e-9 && along.Y > 0))
            along *= -1;
        var angle = Math.Atan2(along.Y, along.X);
        var (s, c) = (Math.Abs(along.Y), Math.Abs(along.X));
        foreach (var part in new[] { 0.5, 0.38, 0.62, 0.26, 0.74, 0.18, 0.82, 0.44, 0.56, 0.35, 0.65, 0.32, 0.68 })
        {
            if (Math.Min(part, 1 - part) * line.Length < (label.Width / 2) + 0.5)
                continue;
            foreach (var way in side == 0 ? new[] { -1, 1 } : [side])
            {
                var middle = line.At(part) + (right * (way * ((label.Height / 2) + Away)));
                var box = Box.Around(middle.X, middle.Y, (label.Width * c) + (label.Height * s), (label.Width * s) + (label.Height * c));
                var kept = Box.Around(middle.X, middle.Y, box.Width + (2 * ends * c), box.Height + (2 * ends * s)).Grown(clear);
                if (!board.Room.IsFree(kept) || (within is { } limit && !limit.Holds(box)))
                    continue;
                board.WriteTurned(label, middle, angle * 180 / Math.PI, box, styles.Palette.Text);
                return true;
            }
        }

        return false;
    }
}
