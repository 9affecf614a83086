using Pattern.Press.Booklets.Figures.Drafting;
using Pattern.Press.Nets;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Booklets.Figures;

/// <summary>The samples of fold lines below a drawing of folds, each with what the hands do.</summary>
internal sealed class FoldLegend
{
    private const double Sample = 12;
    private readonly StyleSheet _styles;
    private readonly List<(Label Label, Stroke Stroke)> _rows = [];

    public FoldLegend(Piece piece, IFigureWords words, StyleSheet styles)
    {
        _styles = styles;
        if (piece.Folds.Any(fold => fold.Direction == FoldDirection.Valley))
            _rows.Add((Make(words.Say("figure.legend.valley")), styles.Lines.ValleyStroke));
        if (piece.Folds.Any(fold => fold.Direction == FoldDirection.Mountain))
            _rows.Add((Make(words.Say("figure.legend.mountain")), styles.Lines.MountainStroke));

        Label Make(string text) => new([text], styles.Text.Regular, styles.Scale.Drawing, styles.Language);
    }

    public double Width => _rows.Count == 0 ? 0 : _rows.Max(row => row.Label.Width) + Sample + 2;

    public double Height => _rows.Sum(row => row.Label.Height + 1.2) + (_rows.Count > 0 ? 1.5 : 0);

    public void Draw(Board board, double x, double y)
    {
        y += 1.5;
        foreach (var (label, stroke) in _rows)
        {
            var middle = y + (label.Height / 2);
            board.Line(new Segment(new Point(x, middle), new Point(x + Sample, middle)), stroke);
            board.Write(label, x + Sample + 2 + (label.Width / 2), middle, _styles.Palette.Text);
            y += label.Height + 1.2;
        }
    }
}
