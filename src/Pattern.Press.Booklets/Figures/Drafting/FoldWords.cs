using Pattern.Press.Nets;
using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Booklets.Figures.Drafting;

/// <summary>Writes which way they fold along fold lines, where there is room beside the line.</summary>
internal sealed class FoldWords(IFigureWords words, StyleSheet styles)
{
    /// <summary>The word for a fold's direction.</summary>
    public string Of(Fold fold) => words.Say(
        (fold.Direction == FoldDirection.Valley ? "drawing.fold.valley" : "drawing.fold.mountain") + (fold.Angle >= 179.99 ? "_flat" : ""));

    /// <summary>Writes along one fold for each pair of kinds of panels that meet, the longest that has room.</summary>
    public void DrawPerKind(Board board, Placing placing, Piece piece)
    {
        var done = new HashSet<string>(StringComparer.Ordinal);
        foreach (var fold in piece.Folds.OrderByDescending(fold => fold.From.DistanceTo(fold.To)))
        {
            var kinds = $"{piece.Panel(fold.Parent).Kind}|{piece.Panel(fold.Child).Kind}|{Of(fold)}";
            if (!done.Contains(kinds) && AlongLine.Write(board, placing.Put(fold.From, fold.To), Of(fold), styles))
                done.Add(kinds);
        }
    }
}
