using Pattern.Press.Booklets.Figures.Drafting;
using Pattern.Press.Nets;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Booklets.Templates;

/// <summary>Which way the card's grain should run.</summary>
internal enum Grain
{
    /// <summary>It makes no difference.</summary>
    Any,

    /// <summary>From the sheet's top to its bottom.</summary>
    Down,

    /// <summary>From the sheet's left to its right.</summary>
    Across,
}

/// <summary>Which way the pattern or the grain of the stock runs in a template, and the arrows that show it.</summary>
internal static class Directions
{
    // Folds of one direction have to be so many times as long as those of the other for the grain to be worth a word.
    // Common practice, no source: card folds cleanly along its grain and may crack across it.
    private const double Clearly = 2;

    private const double Longest = 9;
    private const double Shortest = 4;
    private const double HeadLength = 2.4;

    /// <summary>The direction of most folds of a piece, where one is clearly the main one.</summary>
    public static Grain GrainOf(Piece piece)
    {
        double down = 0, across = 0;
        foreach (var fold in piece.Folds)
        {
            var along = fold.To - fold.From;
            var (x, y) = (Math.Abs(along.X), Math.Abs(along.Y));
            if (y > 4 * x)
                down += y;
            else if (x > 4 * y)
                across += x;
        }

        return down > Clearly * across ? Grain.Down : across > Clearly * down ? Grain.Across : Grain.Any;
    }

    /// <summary>An arrow to the top of the pattern, or one with two heads along the grain, in a panel that has room.</summary>
    /// <returns>Whether there was room.</returns>
    public static bool Draw(Board board, IEnumerable<Shape> panels, Box within, bool level, bool bothEnds, StyleSheet styles)
    {
        var shapes = panels.OrderByDescending(panel => panel.Bounds.Width * panel.Bounds.Height).ToArray();
        foreach (var length in new[] { Longest, (Longest + Shortest) / 2, Shortest })
        {
            foreach (var shape in shapes)
            {
                var (width, height) = level ? (length, 2.0) : (2.0, length);
                if (board.Room.Find(shape, width, height, 0.6, within) is not { } at)
                    continue;
                // A template turned by a quarter has its top at the right.
                var half = level ? new Point(-length / 2, 0) : new Point(0, length / 2);
                var (from, to) = (at + half, at - half);
                var stroke = new Stroke(styles.Lines.Dimension, styles.Lines.ThinWidth * 1.3);
                board.Line(new Segment(from, to), stroke);
                board.Solid(Arrow.Head(to, from, HeadLength), styles.Lines.Dimension);
                if (bothEnds)
                    board.Solid(Arrow.Head(from, to, HeadLength), styles.Lines.Dimension);
                board.Room.Take(Box.Around(at.X, at.Y, width, height));
                return true;
            }
        }

        return false;
    }
}
