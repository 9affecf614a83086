using Pattern.Press.Nets;

namespace Pattern.Press.Plans.Scoring;

/// <summary>
/// One straight line across the sheet, down or across, with what lies on it. Positions run from 0 to the sheet's other
/// side, in millimetres.
/// </summary>
internal sealed class ScoreLine
{
    private const double Near = 1e-5;

    private readonly Piece _piece;
    private readonly bool _down;
    private readonly double _at;
    private readonly double _end;

    public ScoreLine(Piece piece, bool down, double at)
    {
        (_piece, _down, _at) = (piece, down, at);
        _end = (down ? piece.Sheet.Height : piece.Sheet.Width).Millimetres;
    }

    private enum Ground
    {
        Fold,
        Free,
        Card,
    }

    /// <summary>
    /// The fewest strokes that score every fold on the line and touch no card: folds are joined over gaps of waste or
    /// cut, and reach out to the edges over the same.
    /// </summary>
    public IReadOnlyList<(double From, double To)> Strokes()
    {
        var stretches = Stretches();
        var strokes = new List<(double From, double To)>();
        var free = 0.0;
        foreach (var (from, to, ground) in stretches)
        {
            if (ground == Ground.Card)
            {
                free = double.NaN;
            }
            else if (ground == Ground.Fold)
            {
                // Free ground since the edge or since the last fold is scored over.
                if (strokes.Count > 0 && !double.IsNaN(free) && free == strokes[^1].To)
                    strokes[^1] = (strokes[^1].From, to);
                else
                    strokes.Add((double.IsNaN(free) ? from : 0, to));
                free = to;
            }
        }

        if (strokes.Count > 0 && !double.IsNaN(free))
            strokes[^1] = (strokes[^1].From, _end);
        return strokes;
    }

    private List<(double From, double To, Ground Ground)> Stretches()
    {
        var folds = OnLine(_piece.Folds.Where(fold => fold.Bulge == 0).Select(fold => new Edge(fold.From, fold.To)));
        var cuts = OnLine(_piece.Cuts.Where(cut => !cut.IsArc));
        var stops = new List<double> { 0, _end };
        stops.AddRange(folds.Concat(cuts).SelectMany(span => new[] { span.From, span.To }));
        foreach (var cut in _piece.Cuts)
            AddCrossings(cut, stops);
        var sorted = stops.Where(stop => stop > -Near && stop < _end + Near).Order().ToList();
        var result = new List<(double, double, Ground)>();
        var start = sorted[0];
        foreach (var stop in sorted)
        {
            if (stop - start < Near)
                continue;
            var middle = (start + stop) / 2;
            var ground = folds.Exists(span => middle > span.From && middle < span.To) ? Ground.Fold
                : cuts.Exists(span => middle > span.From && middle < span.To) ? Ground.Free
                : _piece.Panels.Any(panel => panel.Outline.Contains(At(middle))) ? Ground.Card
                : Ground.Free;
            result.Add((start, stop, ground));
            start = stop;
        }

        return result;
    }

    private Point At(double along) => _down ? new Point(_at, along) : new Point(along, _at);

    private (double Across, double Along) Turned(Point point) => _down ? (point.X, point.Y) : (point.Y, point.X);

    private List<(double From, double To)> OnLine(IEnumerable<Edge> edges)
    {
        var spans = new List<(double, double)>();
        foreach (var edge in edges)
        {
            var (from, to) = (Turned(edge.From), Turned(edge.To));
            if (Math.Abs(from.Across - _at) < Near && Math.Abs(to.Across - _at) < Near)
                spans.Add((Math.Min(from.Along, to.Along), Math.Max(from.Along, to.Along)));
        }

        return spans;
    }

    private void AddCrossings(Edge cut, List<double> stops)
    {
        if (!cut.IsArc)
        {
            AddCrossing(cut.From, cut.To, stops);
            return;
        }

        var before = cut.From;
        foreach (var corner in cut.Flattened(0.001).Skip(1).Append(cut.To))
        {
            AddCrossing(before, corner, stops);
            before = corner;
        }
    }

    private void AddCrossing(Point start, Point end, List<double> stops)
    {
        var (from, to) = (Turned(start), Turned(end));
        if (Math.Abs(to.Across - from.Across) < Near)
            return;
        var part = (_at - from.Across) / (to.Across - from.Across);
        if (part is > -1e-9 and < 1 + 1e-9)
            stops.Add(from.Along + (part * (to.Along - from.Along)));
    }
}
