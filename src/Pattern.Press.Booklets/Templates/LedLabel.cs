using Pattern.Press.Booklets.Figures.Drafting;
using Pattern.Press.Nets;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Booklets.Templates;

/// <summary>The name of a panel that is too small for it, beside the piece, with a thin line that ends in a dot in the panel.</summary>
internal static class LedLabel
{
    private const double Least = 6.5;
    private const double Nearest = 4;
    private const double Farthest = 60;
    private const int Ways = 24;

    // What crossing one more line is worth, in millimetres of leader.
    private const double Crossing = 12;

    /// <summary>Writes where there is room off the piece.</summary>
    /// <param name="board">The drawing; its lines and words are in the way.</param>
    /// <param name="text">The name.</param>
    /// <param name="panel">What is seen of the panel.</param>
    /// <param name="panels">All panels of the piece, none of which takes the name of another.</param>
    /// <param name="open">Where words may stand.</param>
    /// <param name="styles">Fonts, colours and lines.</param>
    /// <returns>Whether there was room.</returns>
    public static bool Write(Board board, string text, Shape panel, IReadOnlyList<Shape> panels, Box open, StyleSheet styles)
    {
        if (Inside(panel, board.Room) is not { } dot)
            return false;
        var label = Label.Of(text, styles.Text.Regular, Math.Max(Least, styles.Scale.Drawing), styles.Language);
        (Point At, Segment Leader)? best = null;
        var least = double.MaxValue;
        for (var far = Nearest; far <= Farthest; far += 2)
        {
            if (far + Crossing >= least)
                break;
            for (var way = 0; way < Ways; way++)
            {
                var (s, c) = Math.SinCos(2 * Math.PI * way / Ways);
                var end = dot + new Point(c * far, s * far);
                var at = end + new Point((label.Width / 2 + 0.8) * Math.Clamp(c * 1.5, -1, 1), ((label.Height / 2) + 0.5) * Math.Clamp(s * 1.5, -1, 1));
                var box = label.BoxAt(at.X, at.Y);
                var leader = new Segment(dot, end);
                var cost = far + (Crossing * board.Room.Crossings(leader));
                if (cost >= least || !open.Holds(box.Grown(0.3)) || !board.Room.IsFree(box.Grown(0.4)) || !board.Room.IsClear(leader) || leader.Crosses(box) || panels.Any(other => other.Meets(box)))
                    continue;
                (best, least) = ((at, leader), cost);
            }
        }

        if (best is not { } place)
            return false;
        board.Solid(PathBuilder.Circle(dot.X, dot.Y, 0.45), styles.Lines.Dimension);
        board.Line(place.Leader, new Stroke(styles.Lines.Dimension, styles.Lines.ThinWidth));
        board.Write(label, place.At.X, place.At.Y, styles.Palette.Text);
        return true;
    }

    // Well inside: the middle, or the free place farthest from the sides where the middle is outside or written on.
    private static Point? Inside(Shape panel, Room room)
    {
        Point? best = null;
        double clear = 0;
        var bounds = panel.Bounds;
        for (var row = 0; row <= 8; row++)
        {
            for (var column = 0; column <= 8; column++)
            {
                var at = row == 0 && column == 0
                    ? panel.Middle
                    : new Point(bounds.Left + (bounds.Width * column / 8), bounds.Top + (bounds.Height * row / 8));
                if (!panel.Holds(at) || !room.IsFree(Box.Around(at.X, at.Y, 1, 1)))
                    continue;
                var away = panel.Sides.Min(side => side.DistanceTo(at));
                if (away > clear + 1e-9)
                    (best, clear) = (at, away);
            }
        }

        return best;
    }
}
