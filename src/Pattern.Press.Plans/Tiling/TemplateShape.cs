using Pattern.Press.Nets;

namespace Pattern.Press.Plans.Tiling;

/// <summary>
/// A piece as a tile planner sees it: its extent, the lines that a seam had better keep away from, and where there is
/// card and where there is none. All in the millimetres of the template, turned or not.
/// </summary>
internal sealed class TemplateShape
{
    /// <summary>A tile counts as blank only if it stays this far from every panel, so that no line touches its edge.</summary>
    public const double BlankClearance = 0.5;

    // How far an arc's chord may stay from it; well inside the clearance.
    private const double Sagitta = 0.2;

    // A panel narrower than this is fiddly to put together from two pages.
    private const double SmallSide = 20;

    private readonly List<Trapezoid> _rows = [];
    private readonly List<Trapezoid> _columns = [];
    private readonly Dictionary<(bool Across, double From, double To), List<(double From, double To)>> _occupied = [];

    public TemplateShape(Piece piece, bool turned)
    {
        Turned = turned;
        var all = new List<Point>();
        Point Place(Point point) => QuarterTurn.OnTemplate(piece, turned, point);
        foreach (var panel in piece.Panels)
        {
            var corners = panel.Outline.Flattened(Sagitta).Select(Place).ToArray();
            all.AddRange(corners);

            // Chords of an arc fall short of how far it reaches.
            var reach = panel.Outline.Bounds;
            all.Add(Place(new Point(reach.Left, reach.Top)));
            all.Add(Place(new Point(reach.Right, reach.Bottom)));
            Divide(corners, across: true, _rows);
            Divide(corners, across: false, _columns);
            var (left, right) = (corners.Min(c => c.X), corners.Max(c => c.X));
            var (top, bottom) = (corners.Min(c => c.Y), corners.Max(c => c.Y));
            if (panel.Role == PanelRole.Tab || Math.Min(right - left, bottom - top) < SmallSide)
            {
                Across.Features.Add((left, right, bottom - top));
                Down.Features.Add((top, bottom, right - left));
            }
        }

        // To the last digit, bulges of curves included, or the outermost lines would be outside of every tile.
        var bounds = piece.Panels.Select(panel => panel.Outline.Bounds).Aggregate((one, other) => one.With(other));
        var (first, last) = (Place(new Point(bounds.Left, bounds.Top)), Place(new Point(bounds.Right, bounds.Bottom)));
        Across.Measure(Math.Min(first.X, last.X), Math.Max(first.X, last.X), all.Select(c => c.X));
        Down.Measure(Math.Min(first.Y, last.Y), Math.Max(first.Y, last.Y), all.Select(c => c.Y));
        foreach (var fold in piece.Folds)
            AddLine(Place(fold.From), Place(fold.To), 1);

        // A cut beside a seam is less trouble than a fold: it is not scored over the joint.
        foreach (var cut in piece.Cuts.Where(cut => !cut.IsArc))
            AddLine(Place(cut.From), Place(cut.To), 0.5);
    }

    public bool Turned { get; }

    /// <summary>What matters to seams that run down the page, by their x.</summary>
    public ShapeAxis Across { get; } = new();

    /// <summary>What matters to seams that run across the page, by their y.</summary>
    public ShapeAxis Down { get; } = new();

    /// <summary>
    /// Where there is card somewhere in a strip: intervals of x for a strip between two y (<paramref name="across"/>), or
    /// of y for a strip between two x. Sorted, apart from each other.
    /// </summary>
    public IReadOnlyList<(double From, double To)> Occupied(bool across, double from, double to)
    {
        if (_occupied.TryGetValue((across, from, to), out var known))
            return known;
        var found = new List<(double From, double To)>();
        var (low, high) = (from - BlankClearance + 1e-6, to + BlankClearance - 1e-6);
        foreach (var part in across ? _rows : _columns)
        {
            if (part.From < high && part.To > low)
                found.Add(part.Reach(Math.Max(part.From, low), Math.Min(part.To, high)));
        }

        found.Sort();
        var merged = new List<(double From, double To)>();
        foreach (var next in found)
        {
            if (merged.Count > 0 && next.From <= merged[^1].To)
                merged[^1] = (merged[^1].From, Math.Max(merged[^1].To, next.To));
            else
                merged.Add(next);
        }

        return _occupied[(across, from, to)] = merged;
    }

    /// <summary>Whether there is no card between two positions in a strip whose occupied intervals are given.</summary>
    public static bool IsBlank(IReadOnlyList<(double From, double To)> occupied, double from, double to)
    {
        const double Clearance = BlankClearance - 1e-6;
        for (var i = 0; i < occupied.Count; i++)
        {
            var (start, end) = occupied[i];
            if (start < to + Clearance && end > from - Clearance)
                return false;
        }

        return true;
    }

    private void AddLine(Point from, Point to, double weight)
    {
        const double Straight = 1e-6;
        if (Math.Abs(from.X - to.X) < Straight)
            Across.AddLine(from.X, Math.Abs(from.Y - to.Y) * weight);
        if (Math.Abs(from.Y - to.Y) < Straight)
            Down.AddLine(from.Y, Math.Abs(from.X - to.X) * weight);
    }

    // Between two neighbouring corner heights every cross section is the same sequence of sides: a row of trapezoids.
    private static void Divide(Point[] corners, bool across, List<Trapezoid> parts)
    {
        (double Along, double Level) At(Point point) => across ? (point.X, point.Y) : (point.Y, point.X);
        var levels = corners.Select(c => At(c).Level).Distinct().Order().ToList();
        var sides = new List<(double Middle, double AtFrom, double AtTo)>();
        for (var k = 0; k + 1 < levels.Count; k++)
        {
            var (a, b) = (levels[k], levels[k + 1]);
            if (b - a < 1e-9)
                continue;
            sides.Clear();
            for (var i = 0; i < corners.Length; i++)
            {
                var (x1, y1) = At(corners[i]);
                var (x2, y2) = At(corners[(i + 1) % corners.Length]);
                if (Math.Min(y1, y2) > a || Math.Max(y1, y2) < b || y1 == y2)
                    continue;
                var start = x1 + ((a - y1) / (y2 - y1) * (x2 - x1));
                var end = x1 + ((b - y1) / (y2 - y1) * (x2 - x1));
                sides.Add(((start + end) / 2, start, end));
            }

            sides.Sort();
            for (var i = 0; i + 1 < sides.Count; i += 2)
                parts.Add(new Trapezoid(a, b, (sides[i].AtFrom, sides[i].AtTo), (sides[i + 1].AtFrom, sides[i + 1].AtTo)));
        }
    }

    // Two parallel sides at From and To, and a least and a greatest side given by where they meet those two.
    private readonly record struct Trapezoid(double From, double To, (double AtFrom, double AtTo) Least, (double AtFrom, double AtTo) Most)
    {
        // How far the part between two levels reaches.
        public (double From, double To) Reach(double low, double high) => (
            Math.Min(On(Least, low), On(Least, high)),
            Math.Max(On(Most, low), On(Most, high)));

        private double On((double AtFrom, double AtTo) side, double level) =>
            side.AtFrom + ((level - From) / (To - From) * (side.AtTo - side.AtFrom));
    }
}

/// <summary>What matters to seams at right angles to one direction of a template.</summary>
internal sealed class ShapeAxis
{
    /// <summary>Where the piece starts.</summary>
    public double From { get; private set; }

    /// <summary>Where it ends.</summary>
    public double To { get; private set; }

    /// <summary>Every coordinate at which a panel has a corner, rising.</summary>
    public IReadOnlyList<double> Corners { get; private set; } = [];

    /// <summary>Lines that run along a seam: where, and how much they matter.</summary>
    public List<(double At, double Weight)> Lines { get; } = [];

    /// <summary>Tabs and small panels: from where to where, and how long a seam through them is.</summary>
    public List<(double From, double To, double Crossing)> Features { get; } = [];

    public double Length => To - From;

    public void Measure(double from, double to, IEnumerable<double> corners)
    {
        (From, To) = (from, to);
        Corners = corners.Select(c => Math.Round(c, 6)).Distinct().Order().ToList();
    }

    public void AddLine(double at, double weight)
    {
        // The edge of the template is at the edge of its outer tiles by nature.
        if (at - From > 1e-6 && To - at > 1e-6)
            Lines.Add((at, weight));
    }
}
