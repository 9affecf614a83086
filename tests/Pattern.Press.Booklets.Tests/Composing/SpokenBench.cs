using System.Globalization;
using System.Text.RegularExpressions;
using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Size = Pattern.Press.Measure.Size;

namespace Pattern.Press.Booklets.Tests.Composing;

/// <summary>
/// A maker who has a sheet and the printed sentences and nothing else: scores and cuts what they say, in millimetres or in
/// inches.
/// </summary>
/// <param name="sheet">The sheet.</param>
/// <param name="points">The printed table of lettered points, for a piece that is taken from it.</param>
internal sealed partial class SpokenBench(Size sheet, IReadOnlyDictionary<string, Point>? points = null)
{
    private readonly Dictionary<string, Point> _points = new(points ?? new Dictionary<string, Point>(), StringComparer.Ordinal);
    private readonly List<Bounds> _boxes = [];
    private readonly List<(Bounds Box, Outline Kept)> _ends = [];
    private readonly List<Outline> _holes = [];
    private readonly List<Edge> _slits = [];
    private readonly List<Edge> _said = [];
    private (Bounds Box, List<Point> Corners, string End) _lastEnd;
    private Outline? _outline;
    private bool _turned;
    private Action<Func<Point, Point>> _last = _ => { };

    public List<Edge> Scores { get; } = [];

    public IReadOnlyList<Bounds> CutAway => _boxes;

    public IReadOnlyList<Edge> Slits => _slits;

    /// <summary>Every line along which something is cut, and the edges of the sheet.</summary>
    public IEnumerable<Edge> Lines =>
    [
        .. Outline.Rectangle(0, 0, Width, Height).Edges,
        .. _boxes.SelectMany(box => Rectangle(box).Edges),
        .. _ends.SelectMany(end => Rectangle(end.Box).Edges.Concat(end.Kept.Edges)),
        .. _holes.SelectMany(hole => hole.Edges),
        .. _slits,
        .. _outline?.Edges ?? [],
        .. _said,
    ];

    private double Width => sheet.Width.Millimetres;

    private double Height => sheet.Height.Millimetres;

    private double Depth => _turned ? Width : Height;

    /// <summary>The printed table of points, read back.</summary>
    public static Dictionary<string, Point> PointsOf(IEnumerable<(string Letter, string Left, string Top)> rows) =>
        rows.ToDictionary(row => row.Letter, row => new Point(Numbers(row.Left).Single(), Numbers(row.Top).Single()), StringComparer.Ordinal);

    /// <summary>Whether there is card at a point when everything is cut.</summary>
    public bool IsCard(Point at) =>
        at.X > 0 && at.Y > 0 && at.X < Width && at.Y < Height
        && (_outline is null || _outline.Contains(at))
        && !_boxes.Exists(box => Holds(box, at))
        && !_holes.Exists(hole => hole.Contains(at))
        && _ends.TrueForAll(end => !Holds(end.Box, at) || end.Kept.Contains(at));

    public void Do(string action)
    {
        foreach (var sentence in Sentence().Split(action).Where(sentence => sentence.Length > 0))
            DoOne(sentence);
    }

    private static Outline Rectangle(Bounds box) => Outline.Rectangle(box.Left, box.Top, box.Right, box.Bottom);

    private static bool Holds(Bounds box, Point at) => at.X > box.Left && at.X < box.Right && at.Y > box.Top && at.Y < box.Bottom;

    private void DoOne(string sentence)
    {
        if (Regex.Match(sentence, @"^Lay the top side, (.+), against|^Turn the sheet back, so that the top side, (.+), lies") is { Success: true } top)
        {
            Assert.Equal([Width], Numbers(top.Value), (a, b) => Math.Abs(a - b) < 1e-6);
            _turned = false;
        }
        else if (Regex.Match(sentence, @"^Turn the sheet a quarter to the left") is { Success: true })
        {
            Assert.Equal([Height], Numbers(sentence), (a, b) => Math.Abs(a - b) < 1e-6);
            _turned = true;
        }
        else if (Regex.Match(sentence, @"^Score from edge to edge at (.+)$") is { Success: true } full)
        {
            foreach (var mark in Numbers(full.Groups[1].Value))
                Score(mark, 0, Depth);
        }
        else if (Regex.Match(sentence, @"^At (.+), score from (the edge at the fence|the edge away from the fence|both edges) in to (.+)$") is { Success: true } partial)
        {
            var to = Assert.Single(Numbers(partial.Groups[3].Value));
            foreach (var mark in Numbers(partial.Groups[1].Value))
            {
                if (partial.Groups[2].Value != "the edge away from the fence")
                    Score(mark, 0, to);
                if (partial.Groups[2].Value != "the edge at the fence")
                    Score(mark, Depth - to, Depth);
            }
        }
        else if (Regex.Match(sentence, @"^At (.+), score from (.+) to (.+), both counted from the fence$") is { Success: true } between)
        {
            foreach (var mark in Numbers(between.Groups[1].Value))
                Score(mark, Numbers(between.Groups[2].Value).Single(), Numbers(between.Groups[3].Value).Single());
        }
        else if (Regex.Match(sentence, @"^Mark (.+): (.+) from the top edge, and (.+) from the left edge$") is { Success: true } mark)
        {
            var letters = Regex.Matches(mark.Groups[1].Value, @"[A-Z]\d*").Select(letter => letter.Value).ToList();
            var lefts = Numbers(mark.Groups[3].Value);
            Assert.Equal(letters.Count, lefts.Count);
            foreach (var (letter, left) in letters.Zip(lefts))
                _points.Add(letter, new Point(left, Numbers(mark.Groups[2].Value).Single()));
        }
        else if (sentence.StartsWith("Lay a ruler from", StringComparison.Ordinal))
        {
            foreach (Match join in Regex.Matches(sentence, @"([A-Z]\d*) to ([A-Z]\d*)"))
                Scores.Add(new Edge(_points[join.Groups[1].Value], _points[join.Groups[2].Value]));
        }
        else if (sentence.StartsWith("Score an even curve from", StringComparison.Ordinal))
        {
            foreach (Match join in Regex.Matches(sentence, @"([A-Z]\d*) through ([A-Z]\d*) to ([A-Z]\d*)"))
                Scores.Add(Curve(_points[join.Groups[1].Value], _points[join.Groups[2].Value], _points[join.Groups[3].Value]));
        }
        else if (Regex.Match(sentence, @"^(Cut round the piece|Cut out a hole|Cut):? from ([A-Z]\d*) (.+)$") is { Success: true } path)
        {
            FollowPath(path.Groups[1].Value, path.Groups[2].Value, path.Groups[3].Value);
        }
        else if (Regex.Match(sentence, @"^Cut a rectangle off each corner of the sheet: (.+) along the top or bottom edge, (.+) along the side$") is { Success: true } corners)
        {
            var (w, h) = (Numbers(corners.Groups[1].Value).Single(), Numbers(corners.Groups[2].Value).Single());
            _boxes.AddRange([new(0, 0, w, h), new(Width - w, 0, Width, h), new(0, Height - h, w, Height), new(Width - w, Height - h, Width, Height)]);
        }
        else if (Regex.Match(sentence, @"^Between (.+) from the (top|left) edge, cut (.+) off the (.+)$") is { Success: true } side)
        {
            var (deep, edges) = (Numbers(side.Groups[3].Value).Single(), side.Groups[4].Value);
            foreach (var (from, to) in Spans(side.Groups[1].Value))
            {
                if (edges.Contains("left", StringComparison.Ordinal))
                    _boxes.Add(new(0, from, deep, to));
                if (edges.Contains("right", StringComparison.Ordinal))
                    _boxes.Add(new(Width - deep, from, Width, to));
                if (edges.Contains("top", StringComparison.Ordinal))
                    _boxes.Add(new(from, 0, to, deep));
                if (edges.Contains("bottom", StringComparison.Ordinal))
                    _boxes.Add(new(from, Height - deep, to, Height));
            }
        }
        else if (Regex.Match(sentence, @"^Cut away the rectangle between (.+) from the left edge and between (.+) from the top edge$") is { Success: true } rectangle)
        {
            foreach (var (left, right) in Spans(rectangle.Groups[1].Value))
            {
                foreach (var (high, low) in Spans(rectangle.Groups[2].Value))
                    _boxes.Add(new(left, high, right, low));
            }
        }
        else if (Regex.Match(sentence, @"^Taper the (.+) that lies between (.+) from the left edge and between (.+) from the top edge: leave its (upper|right|lower|left) end only between (.+) from the (?:left|top) edge$") is { Success: true } taper)
        {
            var (left, right) = Spans(taper.Groups[2].Value).Single();
            var (high, low) = Spans(taper.Groups[3].Value).Single();
            var (from, to) = Spans(taper.Groups[5].Value).Single();
            EndOf(new Bounds(left, high, right, low), taper.Groups[4].Value, from, to);
        }
        else if (Regex.Match(sentence, @"^Round both corners of that end with a radius of (.+)$") is { Success: true } also)
        {
            RoundLast(Numbers(also.Groups[1].Value).Single());
        }
        else if (Regex.Match(sentence, @"^Round both corners at the (upper|right|lower|left) end of the (.+) that lies between (.+) from the left edge and between (.+) from the top edge, with a radius of (.+)$") is { Success: true } round)
        {
            var (left, right) = Spans(round.Groups[3].Value).Single();
            var (high, low) = Spans(round.Groups[4].Value).Single();
            var end = round.Groups[1].Value;
            var level = end is "upper" or "lower";
            EndOf(new Bounds(left, high, right, low), end, level ? left : high, level ? right : low);
            RoundLast(Numbers(round.Groups[5].Value).Single());
        }
        else if (Regex.Match(sentence, @"^Cut an even bow for the thumb into the (top|right|bottom|left) edge: between (.+) from the (?:left|top) edge, and (.+) deep in its middle$") is { Success: true } notch)
        {
            var (from, to) = Spans(notch.Groups[2].Value).Single();
            var deep = Numbers(notch.Groups[3].Value).Single();
            Point At(double along, double into) => notch.Groups[1].Value switch
            {
                "top" => new(along, into),
                "bottom" => new(along, Height - into),
                "left" => new(into, along),
                _ => new(Width - into, along),
            };
            Hole([Curve(At(from, 0), At((from + to) / 2, deep), At(to, 0)), new Edge(At(to, 0), At(from, 0))]);
        }
        else if (Regex.Match(sentence, @"^Cut an even bow for the thumb into the (upper|right|lower|left) edge of the .+?, (.+) from the (?:left|top) edge: between (.+) from the (?:left|top) edge, and (.+) deep in its middle$") is { Success: true } inside)
        {
            var line = Numbers(inside.Groups[2].Value).Single();
            var (from, to) = Spans(inside.Groups[3].Value).Single();
            var deep = Numbers(inside.Groups[4].Value).Single();
            Point At(double along, double into) => inside.Groups[1].Value switch
            {
                "upper" => new(along, line + into),
                "lower" => new(along, line - into),
                "left" => new(line + into, along),
                _ => new(line - into, along),
            };
            Hole([Curve(At(from, 0), At((from + to) / 2, deep), At(to, 0)), new Edge(At(to, 0), At(from, 0))]);
        }
        else if (Regex.Match(sentence, @"^Cut a hole with half circles for ends into the (.+): between (.+) from the left edge and between (.+) from the top edge$") is { Success: true } hole)
        {
            var (left, right) = Spans(hole.Groups[2].Value).Single();
            var (high, low) = Spans(hole.Groups[3].Value).Single();
            Hole(RoundEnded(left, high, right, low));
        }
        else if (Regex.Match(sentence, @"^Cut (?:.+) apart at (.+) from the (left|top) edge, between (.+) from the (?:top|left) edge$") is { Success: true } slit)
        {
            var at = Numbers(slit.Groups[1].Value).Single();
            var (from, to) = Spans(slit.Groups[3].Value).Single();
            var line = slit.Groups[2].Value == "left" ? new Edge(new(at, from), new(at, to)) : new Edge(new(from, at), new(to, at));
            _slits.Add(line);
            _last = image => _slits.Add(new Edge(image(line.From), image(line.To)));
        }
        else if (Regex.Match(sentence, @"^Do the same, mirrored, (on the right half|on the lower half|in the other three quarters) of the sheet$") is { Success: true } again)
        {
            Point Across(Point p) => new(Width - p.X, p.Y);
            Point Down(Point p) => new(p.X, Height - p.Y);
            var where = again.Groups[1].Value;
            if (where != "on the lower half")
                _last(Across);
            if (where != "on the right half")
                _last(Down);
            if (where == "in the other three quarters")
                _last(p => Across(Down(p)));
        }
        else
        {
            Assert.Fail($"“{sentence}” cannot be followed.");
        }
    }

    private void EndOf(Bounds box, string end, double from, double to)
    {
        List<Point> corners = end switch
        {
            "upper" => [new(from, box.Top), new(to, box.Top), new(box.Right, box.Bottom), new(box.Left, box.Bottom)],
            "right" => [new(box.Right, from), new(box.Right, to), new(box.Left, box.Bottom), new(box.Left, box.Top)],
            "lower" => [new(to, box.Bottom), new(from, box.Bottom), new(box.Left, box.Top), new(box.Right, box.Top)],
            _ => [new(box.Left, to), new(box.Left, from), new(box.Right, box.Top), new(box.Right, box.Bottom)],
        };
        _lastEnd = (box, corners, end);
        Keep(Outline.Through([.. corners]));
    }

    private void Keep(Outline kept)
    {
        var box = _lastEnd.Box;
        _ends.Add((box, kept));
        _last = image =>
        {
            var (a, b) = (image(new(box.Left, box.Top)), image(new(box.Right, box.Bottom)));
            // A mirror turns the way round, and with it the way arcs bulge.
            var edges = kept.Edges.Select(edge => new Edge(image(edge.From), image(edge.To), Turns(image) ? -edge.Bulge : edge.Bulge)).ToList();
            var outline = new Outline(edges);
            _ends.Add((new(Math.Min(a.X, b.X), Math.Min(a.Y, b.Y), Math.Max(a.X, b.X), Math.Max(a.Y, b.Y)), outline.IsClockwise ? outline : outline.Reversed));
        };
    }

    // The first two corners are those of the end. The tangents of a circle in a corner are as long as its radius times the
    // tangent of half the angle through which the outline turns there.
    private void RoundLast(double radius)
    {
        var corners = _lastEnd.Corners;
        var edges = new List<Edge>();
        var cut = new List<(Point In, Point Out, double Bulge)>();
        foreach (var i in new[] { 0, 1 })
        {
            var (before, at, after) = (corners[(i + 3) % 4], corners[i], corners[i + 1]);
            var (a, b) = ((at - before) * (1 / at.DistanceTo(before)), (after - at) * (1 / at.DistanceTo(after)));
            var turn = Math.Atan2(a.Cross(b), a.Dot(b));
            var tangent = radius * Math.Tan(turn / 2);
            cut.Add((at - (a * tangent), at + (b * tangent), Math.Tan(turn / 4)));
        }

        edges.Add(new Edge(cut[0].In, cut[0].Out, cut[0].Bulge));
        edges.Add(new Edge(cut[0].Out, cut[1].In));
        edges.Add(new Edge(cut[1].In, cut[1].Out, cut[1].Bulge));
        edges.Add(new Edge(cut[1].Out, corners[2]));
        edges.Add(new Edge(corners[2], corners[3]));
        edges.Add(new Edge(corners[3], cut[0].In));
        _ends.RemoveAt(_ends.Count - 1);
        Keep(new Outline(edges));
    }

    private void Hole(List<Edge> edges)
    {
        Outline Clockwise(IEnumerable<Edge> sides)
        {
            var outline = new Outline([.. sides]);
            return outline.IsClockwise ? outline : outline.Reversed;
        }

        _holes.Add(Clockwise(edges));
        _last = image => _holes.Add(Clockwise(edges.Select(edge => new Edge(image(edge.From), image(edge.To), Turns(image) ? -edge.Bulge : edge.Bulge))));
    }

    private static bool Turns(Func<Point, Point> image)
    {
        var (o, x, y) = (image(new(0, 0)), image(new(1, 0)), image(new(0, 1)));
        return (x - o).Cross(y - o) < 0;
    }

    private static List<Edge> RoundEnded(double left, double top, double right, double bottom)
    {
        var (w, h) = (right - left, bottom - top);
        if (w >= h)
        {
            var r = h / 2;
            return [new(new(left + r, top), new(right - r, top)), new(new(right - r, top), new(right - r, bottom), 1), new(new(right - r, bottom), new(left + r, bottom)), new(new(left + r, bottom), new(left + r, top), 1)];
        }

        var q = w / 2;
        return [new(new(right, top + q), new(right, bottom - q)), new(new(right, bottom - q), new(left, bottom - q), 1), new(new(left, bottom - q), new(left, top + q)), new(new(left, top + q), new(right, top + q), 1)];
    }

    private void FollowPath(string what, string from, string steps)
    {
        var edges = new List<Edge>();
        var at = _points[from];
        foreach (Match step in Regex.Matches(steps, @"(?:in an even curve through ([A-Z]\d*) (?:back )?to )?(?:back to |straight to |to )?([A-Z]\d*)(?=,| and |$)"))
        {
            var to = _points[step.Groups[2].Value];
            edges.Add(step.Groups[1].Success ? Curve(at, _points[step.Groups[1].Value], to) : new Edge(at, to));
            at = to;
        }

        if (what == "Cut")
        {
            _slits.AddRange(edges);
            return;
        }

        Assert.Equal(_points[from], at);
        if (what == "Cut round the piece")
        {
            Assert.Null(_outline);
            _outline = new Outline(edges);
            Assert.True(_outline.IsClockwise);
        }
        else
        {
            _holes.Add(new Outline(edges) is { IsClockwise: true } hole ? hole : new Outline(edges).Reversed);
        }
    }

    // The circle through three points: its bulge is how far the middle one lies beside the chord, over half the chord.
    private static Edge Curve(Point from, Point through, Point to)
    {
        var half = from.DistanceTo(to) / 2;
        var beside = (to - from).Cross(through - from) / (2 * half);
        return new Edge(from, to, -beside / half);
    }

    // The sheet turned a quarter to the left has the drawing's right side at the fence and its top edge at the left.
    private void Score(double mark, double from, double to) => Scores.Add(_turned
        ? new Edge(new Point(Width - from, mark), new Point(Width - to, mark))
        : new Edge(new Point(mark, from), new Point(mark, to)));

    private static List<(double From, double To)> Spans(string text)
    {
        var numbers = Numbers(text);
        Assert.Equal(0, numbers.Count % 2);
        return [.. numbers.Chunk(2).Select(pair => (pair[0], pair[1]))];
    }

    // Lengths in millimetres; those in inches are whole numbers, fractions, or both with a space between.
    private static List<double> Numbers(string text)
    {
        var inches = Regex.IsMatch(text, @"\d in\b");
        return [.. Number().Matches(text).Select(number =>
        {
            double Part(string name) => number.Groups[name].Success ? double.Parse(number.Groups[name].Value, CultureInfo.InvariantCulture) : 0;
            return (Part("whole") + (number.Groups["below"].Success ? Part("above") / Part("below") : 0)) * (inches ? 25.4 : 1);
        })];
    }

    [GeneratedRegex(@"(?<![/\d.])(?<above>\d+)/(?<below>\d+)|(?<![/\d.])(?<whole>\d+(\.\d+)?)(?![\d/])( (?<above>\d+)/(?<below>\d+))?")]
    private static partial Regex Number();

    [GeneratedRegex(@"\.(?:\s+|$)(?=[A-Z]|$)|\.$")]
    private static partial Regex Sentence();
}
