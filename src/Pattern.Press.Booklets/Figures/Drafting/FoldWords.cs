using Pattern.Press.Nets;
using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Booklets.Figures.Drafting;

/// <summary>Writes which way they fold along fold lines, where there is room beside the line.</summary>
internal sealed class FoldWords(IFigureWords words, StyleSheet styles)
{
    /// <summary>The word for a fold's direction.</summary>
    public string Of(Fold fold) => (fold.Direction, fold.GoesOver) switch
    {
        (FoldDirection.Valley, false) => words.Say("drawing.fold.valley"),
        (FoldDirection.Valley, true) => words.Say("drawing.fold.valley_flat"),
        (_, false) => words.Say("drawing.fold.mountain"),
        (_, true) => words.Say("drawing.fold.mountain_flat"),
    };

    /// <summary>
    /// Writes along the folds that are folded flat, one for each pair of kinds of panels that meet, the longest that has
    /// room. Which way a fold goes can be seen from its line, but not how far.
    /// </summary>
    public void DrawFlat(Board board, Placing placing, Piece piece)
    {
        var done = new HashSet<string>(StringComparer.Ordinal);
        foreach (var fold in piece.Folds.Where(fold => fold.GoesOver).OrderByDescending(fold => fold.From.DistanceTo(fold.To)))
        {
            var kinds = $"{piece.Panel(fold.Parent).Kind}|{piece.Panel(fold.Child).Kind}|{Of(fold)}";
            if (!done.Contains(kinds) && AlongLine.Write(board, placing.Put(fold.From, fold.To), Of(fold), styles))
                done.Add(kinds);
        }
    }
}
