using Pattern.Press.Booklets.Content;
using Pattern.Press.Booklets.Figures.Drafting;
using Pattern.Press.Nets;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Booklets.Figures;

/// <summary>What stands below a drawing of folds or glue: a sample of each line or hatching, and what it asks for.</summary>
internal sealed class FlatLegend
{
    private const double Sample = 12;
    private const double Between = 1.2;
    private const double Above = 1.5;
    private readonly StyleSheet _styles;
    private readonly List<(Label Label, Stroke Stroke, bool Hatched)> _rows = [];

    public FlatLegend(Piece piece, FigureShow show, IFigureWords words, StyleSheet styles)
    {
        _styles = styles;
        var lines = styles.Lines;
        if (show == FigureShow.Folds)
        {
            Add(piece.Folds.Any(fold => fold.Direction == FoldDirection.Valley), "drawing.legend.valley", lines.ValleyStroke, false);
            Add(piece.Folds.Any(fold => fold.Direction == FoldDirection.Mountain), "drawing.legend.mountain", lines.MountainStroke, false);
        }
        else if (show == FigureShow.Glue)
        {
            Add(piece.GlueAreas.Any(area => area.Side == SheetSide.Facing), "drawing.glue.facing", DrawingStrokes.Glue(lines, SheetSide.Facing), true);
            Add(piece.GlueAreas.Any(area => area.Side == SheetSide.Away), "drawing.glue.away", DrawingStrokes.Glue(lines, SheetSide.Away), true);
        }

        void Add(bool isThere, string key, Stroke stroke, bool hatched)
        {
            if (isThere)
                _rows.Add((Label.Of(words.Say(key), styles.Text.Regular, styles.Scale.Drawing, styles.Language), stroke, hatched));
        }
    }

    public double Width => _rows.Count == 0 ? 0 : _rows.Max(row => row.Label.Width) + Sample + 2;

    public double Height => _rows.Count == 0 ? 0 : Above + _rows.Sum(RowHeight);

    public void Draw(Board board, double x, double y)
    {
        y += Above;
        foreach (var row in _rows)
        {
            var middle = y + ((RowHeight(row) - Between) / 2);
            if (row.Hatched)
            {
                var box = Shape.Of(new Box(x, middle - 1.5, x + Sample, middle + 1.5));
                board.Mark(box.Path(), new Stroke(_styles.Lines.Cut, _styles.Lines.ThinWidth));
                board.Room.Add(box.Sides);
                if (Hatching.Fill([box], FlatPainter.GlueSpacing, true, [], new Point(x, middle)) is { } path)
                    board.Mark(path, row.Stroke);
            }
            else
            {
                board.Line(new Segment(new Point(x, middle), new Point(x + Sample, middle)), row.Stroke);
            }

            board.Write(row.Label, x + Sample + 2 + (row.Label.Width / 2), middle, _styles.Palette.Text);
            y += RowHeight(row);
        }
    }

    private static double RowHeight((Label Label, Stroke Stroke, bool Hatched) row) =>
        Math.Max(row.Label.Height, row.Hatched ? 3 : 0) + Between;
}
