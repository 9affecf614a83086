using System.Globalization;
using System.Text.RegularExpressions;
using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Size = Pattern.Press.Measure.Size;

namespace Pattern.Press.Booklets.Tests.Composing;

/// <summary>
/// A maker who has a sheet and the printed sentences and nothing else: scores and cuts what they say. Understands
/// millimetres only.
/// </summary>
internal sealed partial class SpokenBench(Size sheet)
{
    private readonly Dictionary<string, Point> _points = new(StringComparer.Ordinal);
    private bool _turned;

    public List<Edge> Scores { get; } = [];

    public List<Bounds> CutAway { get; } = [];

    /// <summary>Sentences about snips, which say how large they are and from what, but not where.</summary>
    public List<string> Snips { get; } = [];

    public List<Edge> Slits { get; } = [];

    private double Width => sheet.Width.Millimetres;

    private double Height => sheet.Height.Millimetres;

    public void Do(string action)
    {
        foreach (var sentence in Sentence().Split(action).Where(sentence => sentence.Length > 0))
            DoOne(sentence);
    }

    private void DoOne(string sentence)
    {
        if (Regex.Match(sentence, @"^Lay the top side, (.+), against|^Turn the sheet back, so that the top side, (.+), lies") is { Success: true } top)
        {
            Assert.Equal([Width], Numbers(top.Value));
            _turned = false;
        }
        else if (Regex.Match(sentence, @"^Turn the sheet a quarter to the left") is { Success: true })
        {
            Assert.Equal([Height], Numbers(sentence));
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
                Score(mark, Numbers(between.Groups[2].Value + " mm").Single(), Numbers(between.Groups[3].Value).Single());
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
        else if (Regex.Match(sentence, @"^Cut a rectangle off each corner of the sheet: (.+) along the top or bottom edge, (.+) along the side$") is { Success: true } corners)
        {
            var (w, h) = (Numbers(corners.Groups[1].Value).Single(), Numbers(corners.Groups[2].Value).Single());
            CutAway.AddRange([new(0, 0, w, h), new(Width - w, 0, Width, h), new(0, Height - h, w, Height), new(Width - w, Height - h, Width, Height)]);
        }
        else if (Regex.Match(sentence, @"^Between (.+) from the (top|left) edge, cut (.+) off the (.+)$") is { Success: true } side)
        {
            var (span, deep, edges) = (Numbers(side.Groups[1].Value), Numbers(side.Groups[3].Value).Single(), side.Groups[4].Value);
            if (edges.Contains("left", StringComparison.Ordinal))
                CutAway.Add(new(0, span[0], deep, span[1]));
            if (edges.Contains("right", StringComparison.Ordinal))
                CutAway.Add(new(Width - deep, span[0], Width, span[1]));
            if (edges.Contains("top", StringComparison.Ordinal))
                CutAway.Add(new(span[0], 0, span[1], deep));
            if (edges.Contains("bottom", StringComparison.Ordinal))
                CutAway.Add(new(span[0], Height - deep, span[1], Height));
        }
        else if (Regex.Match(sentence, @"^Cut a window: between (.+) from the left edge, and (.+) from the top edge$") is { Success: true } window)
        {
            var (across, down) = (Numbers(window.Groups[1].Value), Numbers(window.Groups[2].Value));
            CutAway.Add(new(across[0], down[0], across[1], down[1]));
        }
        else if (Regex.Match(sentence, @"^Cut between (.+): from the left edge (.+), from the top edge (.+)$") is { Success: true } slit)
        {
            var (across, down) = (Numbers(slit.Groups[2].Value), Numbers(slit.Groups[3].Value));
            Slits.Add(new Edge(new Point(across[0], down[0]), new Point(across[1], down[1])));
        }
        else if (sentence.StartsWith("Cut corners off slantwise", StringComparison.Ordinal) || sentence.StartsWith("Cut off narrow strips", StringComparison.Ordinal) || sentence.StartsWith("Cut round the outline", StringComparison.Ordinal))
        {
            Snips.Add(sentence);
        }
        else
        {
            Assert.Fail($"“{sentence}” cannot be followed.");
        }
    }

    private double Depth => _turned ? Width : Height;

    // The sheet turned a quarter to the left has the drawing's right side at the fence and its top edge at the left.
    private void Score(double mark, double from, double to) => Scores.Add(_turned
        ? new Edge(new Point(Width - from, mark), new Point(Width - to, mark))
        : new Edge(new Point(mark, from), new Point(mark, to)));

    private static List<double> Numbers(string text) =>
        [.. Regex.Matches(text, @"\d+(\.\d+)?(?!\.?\d)").Select(number => double.Parse(number.Value, CultureInfo.InvariantCulture))];

    [GeneratedRegex(@"\.(?:\s+|$)(?=[A-Z]|$)|\.$")]
    private static partial Regex Sentence();
}
