using Pattern.Press.Nets;
using Pattern.Press.Typesetting.Fonts;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Booklets.Figures.Drafting;

/// <summary>
/// Distances from one edge along a side of the sheet, the way a scorer reads them off a ruler: superimposed running
/// dimensions after ISO 129-1 (from memory): one line with an open circle at its origin, an arrowhead at every distance,
/// the value at the end of each extension line. Values that would touch are moved apart along the side and joined to
/// their lines by a bend.
/// </summary>
internal sealed class RunningDimension
{
    private const double Gap = 1;
    private const double LineAway = 4.5;
    private const double Beyond = 1;
    private const double Bend = 3;
    private const double BetweenLines = 1.4;
    private const double BetweenWords = 2.4;
    private const double Circle = 0.8;
    private readonly IReadOnlyList<Station> _stations;
    private readonly bool _top;
    private readonly FontFace _face;
    private readonly double _size;
    private readonly string _language;
    private IReadOnlyList<Label> _labels;
    private double[] _places = [];
    private bool _oneLine;
    private bool _bent;

    public RunningDimension(IReadOnlyList<Station> stations, bool top, FontFace face, double size, string language)
    {
        (_stations, _top, _face, _size, _language) = (stations, top, face, size, language);
        _labels = Labels();
    }

    /// <summary>Whether its values had to be turned to have room side by side.</summary>
    public bool IsTurned => _top && _oneLine;

    /// <summary>How far it reaches out from the sheet.</summary>
    public double Depth => _stations.Count == 0 ? 0 : Foot + _labels.Max(Across);

    /// <summary>How far its values reach past the sheet's end, at least half of one.</summary>
    public double PastEnd(double end) => _stations.Count == 0
        ? 0
        : Math.Max(_labels.Max(Along) / 2, _places.Length == 0 ? 0 : _places[^1] + (Along(_labels[^1]) / 2) - end);

    // Values side by side on one level need more than values above each other.
    private double Between => _top && !_oneLine ? BetweenWords : BetweenLines;

    private double Foot => LineAway + Beyond + (_bent ? Bend : 0) + 0.7;

    /// <summary>Finds places for the values at a scale. Called again with another scale it only ever gets roomier.</summary>
    public void Choose(double scale, double low, double high)
    {
        if (_stations.Count == 0)
            return;
        if (!_oneLine && _labels.Sum(label => Along(label) + Between) > high - low)
        {
            _oneLine = true;
            _labels = Labels();
        }

        _places = Spread(scale, low, high);
        for (var i = 0; i < _places.Length; i++)
            _bent |= Math.Abs(_places[i] - (_stations[i].At * scale)) > 0.15;
    }

    public void Draw(Board board, double x, double y, double scale, StyleSheet styles)
    {
        if (_stations.Count == 0)
            return;
        var lines = styles.Lines;
        var thin = new Stroke(lines.Dimension, lines.ThinWidth);
        var start = Put(0, LineAway);
        board.Ring(start, Circle, thin);
        board.Room.Take(Box.Around(start.X, start.Y, 2 * Circle, 2 * Circle));
        board.Line(new Segment(Put(0, Gap), Put(0, LineAway - Circle)), thin);
        board.Line(new Segment(Put(Circle, LineAway), Put(_stations[^1].At * scale, LineAway)), thin);
        var zero = Label.Of("0", null, _face, _size, _language);
        var middle = Put(-Circle - 0.7 - (Along(zero) / 2), LineAway);
        board.Write(zero, middle.X, middle.Y, lines.Dimension);
        var before = Circle;
        for (var i = 0; i < _stations.Count; i++)
        {
            var at = _stations[i].At * scale;
            board.Line(new Segment(Put(at, Gap), Put(at, LineAway + Beyond)), thin);
            if (_bent)
                board.Line(new Segment(Put(at, LineAway + Beyond), Put(_places[i], LineAway + Beyond + Bend)), thin);
            var head = Math.Min(Arrow.Length, (at - before) * 0.9);
            if (head > 0.3)
                board.Head(Put(at, LineAway), Put(before, LineAway), head, lines.Dimension);
            before = at;
            var label = _labels[i];
            var place = Put(_places[i], Foot + (Across(label) / 2));
            board.Write(label, place.X, place.Y, lines.Dimension, _top ? LabelSide.Centre : LabelSide.Right);
        }

        Point Put(double along, double away) => _top ? new Point(x + along, y - away) : new Point(x - away, y + along);
    }

    private double Along(Label label) => _top ? label.Width : label.Height;

    private double Across(Label label) => _top ? label.Height : label.Width;

    private List<Label> Labels() =>
        [.. _stations.Select(station => _oneLine
            ? Label.Of(station.InOneLine, null, _face, _size, _language, _top)
            : Label.Of(station.First, station.Second, _face, _size, _language))];

    // Least squares with a least distance between neighbours: blocks of touching values move together to the mean of what
    // they want (the pool-adjacent-violators method).
    private double[] Spread(double scale, double low, double high)
    {
        var blocks = new List<(double Sum, int Count)>();
        var offsets = new double[_stations.Count];
        for (var i = 0; i < offsets.Length; i++)
        {
            if (i > 0)
                offsets[i] = offsets[i - 1] + ((Along(_labels[i - 1]) + Along(_labels[i])) / 2) + Between;
            var block = (Sum: (_stations[i].At * scale) - offsets[i], Count: 1);
            while (blocks.Count > 0 && blocks[^1].Sum / blocks[^1].Count > block.Sum / block.Count)
            {
                block = (blocks[^1].Sum + block.Sum, blocks[^1].Count + block.Count);
                blocks.RemoveAt(blocks.Count - 1);
            }

            blocks.Add(block);
        }

        var first = low + (Along(_labels[0]) / 2);
        var last = high - (Along(_labels[^1]) / 2) - offsets[^1];
        var places = new double[offsets.Length];
        var at = 0;
        foreach (var (sum, count) in blocks)
        {
            var mean = Math.Max(first, Math.Min(last, sum / count));
            for (var i = 0; i < count; i++, at++)
                places[at] = mean + offsets[at];
        }

        return places;
    }
}
