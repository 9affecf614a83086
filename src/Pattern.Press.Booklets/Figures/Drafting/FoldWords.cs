using Pattern.Press.Nets;
using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Booklets.Figures.Drafting;

/// <summary>Writes which way they fold along fold lines, where there is room beside the line.</summary>
internal sealed class FoldWords(Piece piece, IFigureWords words, StyleSheet styles)
{
    private const double Away = 0.9;

    /// <summary>The key of the words for a fold's direction.</summary>
    public static string Key(Fold fold) =>
        (fold.Direction == FoldDirection.Valley ? "figure.fold.valley" : "figure.fold.mountain") + (fold.Angle >= 179.99 ? "-flat" : "");

    /// <summary>Writes along folds: all of them, or one for each pair of kinds of panels that meet.</summary>
    public void Draw(Board board, Placing placing, IReadOnlyList<Fold> folds, bool perKind, Box? within = null)
    {
        var done = new HashSet<string>(StringComparer.Ordinal);
        foreach (var fold in folds.OrderByDescending(fold => fold.From.DistanceTo(fold.To)))
        {
            var kinds = $"{piece.Panel(fold.Parent).Kind}|{piece.Panel(fold.Child).Kind}|{Key(fold)}";
            if (perKind && done.Contains(kinds))
                continue;
            if (TryAlong(board, placing.Put(fold.From, fold.To), words.Say(Key(fold)), within))
                done.Add(kinds);
        }
    }

    private bool TryAlong(Board board, Segment line, string text, Box? within)
    {
        var label = new Label([text], styles.Text.Italic, Math.Max(6, styles.Scale.Drawing - 0.5), styles.Language);
        if (line.Length < label.Width + 2)
            return false;
        // Words read from below or from the right.
        var along = (line.To - line.From) * (1 / line.Length);
        if (along.X < -1e-9 || (Math.Abs(along.X) < 1e-9 && along.Y > 0))
            along *= -1;
        var across = new Point(along.Y, -along.X);
        var angle = Math.Atan2(along.Y, along.X);
        var (s, c) = (Math.Abs(along.Y), Math.Abs(along.X));
        foreach (var part in new[] { 0.5, 0.35, 0.65, 0.25, 0.75 })
        {
            foreach (var side in new[] { 1, -1 })
            {
                var middle = line.At(part) + (across * (side * ((label.Height / 2) + Away)));
                var box = Box.Around(middle.X, middle.Y, (label.Width * c) + (label.Height * s), (label.Width * s) + (label.Height * c));
                if (!board.Room.IsFree(box.Grown(0.3)) || (within is { } limit && !limit.Holds(box)))
                    continue;
                board.WriteTurned(label, middle, angle * 180 / Math.PI, box, styles.Palette.Text);
                return true;
            }
        }

        return false;
    }
}
