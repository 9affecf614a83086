using Pattern.Press.Nets;

namespace Pattern.Press.Booklets.Figures.Drafting;

/// <summary>Keeps account of what is taken in a drawing, and finds places for lettering.</summary>
internal sealed class Room
{
    private const int Steps = 10;
    private readonly List<Segment> _lines = [];
    private readonly List<Box> _taken = [];

    // What of both lies where a place is looked for.
    private readonly List<Segment> _linesThere = [];
    private readonly List<Box> _takenThere = [];

    /// <summary>The boxes of all lettering placed so far.</summary>
    public IReadOnlyList<Box> Taken => _taken;

    public void Add(Segment line) => _lines.Add(line);

    public void Add(IEnumerable<Segment> lines) => _lines.AddRange(lines);

    public void Take(Box box) => _taken.Add(box);

    /// <summary>Gives all room back.</summary>
    public void Clear()
    {
        _lines.Clear();
        _taken.Clear();
    }

    public bool IsFree(Box box) => IsFree(box, _taken, _lines);

    private static bool IsFree(Box box, List<Box> taken, List<Segment> lines)
    {
        foreach (var other in taken)
        {
            if (other.Meets(box))
                return false;
        }

        foreach (var line in lines)
        {
            if (line.Crosses(box))
                return false;
        }

        return true;
    }

    /// <summary>Whether a straight line keeps clear of all lettering.</summary>
    public bool IsClear(Segment line)
    {
        foreach (var box in _taken)
        {
            if (line.Crosses(box))
                return false;
        }

        return true;
    }

    /// <summary>How many lines a straight line passes through.</summary>
    public int Crossings(Segment line) => _lines.Count(other => Side(line, other.From) * Side(line, other.To) < 0 && Side(other, line.From) * Side(other, line.To) < 0);

    /// <summary>
    /// The middle of a free place of a size inside a shape and a box, as near as can be to where it is wanted (the middle of
    /// the shape unless said otherwise), or null if there is none.
    /// </summary>
    public Point? Find(Shape shape, double width, double height, double around, Box? within = null, Point? wanted = null)
    {
        var bounds = shape.Bounds;
        if (within is { } limit)
            bounds = bounds.Common(limit);
        var (w, h) = (width + (2 * around), height + (2 * around));
        if (bounds.Width < w || bounds.Height < h)
            return null;
        var ideal = wanted ?? (within is { } part ? shape.Within(part)?.Middle : null) ?? shape.Middle;
        if (Fits(ideal, _taken, _lines))
            return ideal;
        var all = bounds.Grown(1e-6);
        _linesThere.Clear();
        foreach (var line in _lines)
        {
            if (line.Within(all) is not null)
                _linesThere.Add(line);
        }

        _takenThere.Clear();
        foreach (var box in _taken)
        {
            if (box.Meets(all))
                _takenThere.Add(box);
        }

        Point? best = null;
        var distance = double.MaxValue;
        for (var row = 0; row <= Steps; row++)
        {
            for (var column = 0; column <= Steps; column++)
            {
                var at = new Point(
                    bounds.Left + (w / 2) + ((bounds.Width - w) * column / Steps),
                    bounds.Top + (h / 2) + ((bounds.Height - h) * row / Steps));
                var far = at.DistanceTo(ideal);
                if (far < distance - 1e-9 && Fits(at, _takenThere, _linesThere))
                    (best, distance) = (at, far);
            }
        }

        return best;

        bool Fits(Point at, List<Box> taken, List<Segment> lines)
        {
            var box = Box.Around(at.X, at.Y, w, h);
            return bounds.Grown(1e-9).Holds(box) && shape.Holds(box) && IsFree(box, taken, lines);
        }
    }

    private static double Side(Segment line, Point point) => (line.To - line.From).Cross(point - line.From);
}
