using System.Text.RegularExpressions;
using Pattern.Press.Acceptance.Printed;
using Pattern.Press.Nets;

namespace Pattern.Press.Acceptance.Templates;

/// <summary>A target that must meet its other half on another page.</summary>
public readonly record struct Target(string Letter, Point Centre);

/// <summary>What a maker sees on a template page: lines of several kinds, targets with letters, a heading.</summary>
public sealed partial class TemplatePage
{
    // A cut is drawn at half a millimetre or more, a fold at a third; everything that is not to be worked on is thinner.
    private const double LeastCutWidth = 0.45;
    private const double LeastFoldWidth = 0.3;

    // Of the circle of a target, and how far away its letter may be.
    private const double Radius = 2.5;
    private const double LetterReach = 8;

    public TemplatePage(PrintedPage page)
    {
        ArgumentNullException.ThrowIfNull(page);
        Page = page;
        Lines = [.. page.Strokes.SelectMany(Read)];
        Work = [.. Lines.Where(line => line.Kind != LineKind.Join)];
        Joins = [.. Lines.Where(line => line.Kind == LineKind.Join)];
        Targets = [.. ReadTargets(page)];
        (Name, Tile) = ReadHeading(page);
    }

    public PrintedPage Page { get; }

    /// <summary>The bold words of the heading.</summary>
    public string Name { get; }

    /// <summary>A letter and a number for one of several pages; null on a page that stands alone.</summary>
    public string? Tile { get; }

    public IReadOnlyList<DrawnLine> Lines { get; }

    public IReadOnlyList<Target> Targets { get; }

    /// <summary>What is cut and folded.</summary>
    public IReadOnlyList<DrawnLine> Work { get; }

    /// <summary>Where the page joins others.</summary>
    public IReadOnlyList<DrawnLine> Joins { get; }

    /// <summary>Shaded strips that lie along a joining line: what goes under the next page.</summary>
    public IEnumerable<PrintedFill> Laps => Page.Fills.Where(fill => fill.Points.Count >= 4 && Joins.Any(line => line.From.X == line.To.X || Math.Abs(line.From.X - line.To.X) < 0.001
        ? Math.Abs(fill.Left - line.From.X) < 0.001 && Math.Abs(fill.Bottom - fill.Top - line.Length) < 0.001
        : Math.Abs(fill.Top - line.From.Y) < 0.001 && Math.Abs(fill.Right - fill.Left - line.Length) < 0.001));

    private static IEnumerable<DrawnLine> Read(PrintedStroke stroke)
    {
        LineKind? kind = stroke.Dash.Count switch
        {
            0 when stroke.Width >= LeastCutWidth => LineKind.Cut,
            2 when stroke.Width >= LeastFoldWidth => LineKind.Valley,
            4 when stroke.Width >= LeastFoldWidth => LineKind.Mountain,
            6 => LineKind.Join,
            _ => null,
        };
        return kind is { } known
            ? stroke.Lines.Select(line => new DrawnLine(known, line.From, line.To)).Concat(stroke.Curves.SelectMany(curve => Chords(known, curve)))
            : [];
    }

    // As many chords of equal shares of the curve's parameter as keep within the flatness: a chord over a share h strays by
    // no more than h² / 8 times the greatest second derivative.
    internal static IEnumerable<DrawnLine> Chords(LineKind kind, PrintedCurve curve)
    {
        var (a, b, c, d) = (curve.From, curve.First, curve.Second, curve.To);
        var bend = 6 * Math.Max((a - (b * 2) + c).DistanceTo(default), (b - (c * 2) + d).DistanceTo(default));
        var count = Math.Max(1, (int)Math.Ceiling(Math.Sqrt(bend / (8 * ModelLines.Flatness))));
        var from = a;
        for (var i = 1; i <= count; i++)
        {
            var (t, u) = ((double)i / count, 1 - ((double)i / count));
            var to = (a * (u * u * u)) + (b * (3 * u * u * t)) + (c * (3 * u * t * t)) + (d * (t * t * t));
            yield return new DrawnLine(kind, from, to);
            from = to;
        }
    }

    private static IEnumerable<Target> ReadTargets(PrintedPage page)
    {
        var letters = page.Runs.Where(run => Letter().IsMatch(run.Text)).ToList();
        var centres = new List<Point>();
        foreach (var circle in page.Strokes.Where(stroke => stroke.Curves.Count > 0 && stroke.Width < LeastFoldWidth))
        {
            var each = circle.Curves.Select(Centre).ToArray();
            var centre = new Point(each.Average(c => c.X), each.Average(c => c.Y));
            if (circle.Curves.SelectMany(curve => new[] { curve.From, curve.To }).All(point => Math.Abs(centre.DistanceTo(point) - Radius) <= 0.01))
                centres.Add(centre);
        }

        // As an eye does: what is closest belongs together, each letter to one target.
        while (centres.Count > 0)
        {
            Assert.True(letters.Count > 0, $"Page {page.Label} has a target without a letter.");
            var (at, letter) = centres.SelectMany(centre => letters.Select(letter => (centre, letter))).MinBy(pair => pair.letter.Middle.DistanceTo(pair.centre));
            Assert.True(letter.Middle.DistanceTo(at) < LetterReach, $"Page {page.Label} has a target without a letter.");
            centres.Remove(at);
            letters.Remove(letter);
            yield return new Target(letter.Text, at);
        }
    }

    // Of an arc that is short of half a circle: where the lines across its two ends meet.
    private static Point Centre(PrintedCurve curve)
    {
        var (a, b) = (curve.First - curve.From, curve.To - curve.Second);
        var (across, other) = (new Point(-a.Y, a.X), new Point(-b.Y, b.X));
        var away = curve.To - curve.From;
        return curve.From + (across * (away.Cross(other) / across.Cross(other)));
    }

    // The largest letters of the page; what follows them in lighter letters, beside or below, may name a tile.
    private static (string Name, string? Tile) ReadHeading(PrintedPage page)
    {
        var largest = page.Runs.Max(run => run.Size);
        PrintedRun[] fromName = [.. page.Runs.SkipWhile(run => run.Size < largest)];
        PrintedRun[] name = [.. fromName.TakeWhile(run => run.Size == largest && run.Font == fromName[0].Font)];
        var tile = TileOfTiles().Match(PrintedPage.Joined(fromName.Skip(name.Length).Take(1)));
        return (PrintedPage.Joined(name), tile.Success ? tile.Groups["tile"].Value : null);
    }

    [GeneratedRegex("^[A-Z][0-9]*$")]
    private static partial Regex Letter();

    // As in “page A1 of 4”, in any language.
    [GeneratedRegex(@"\b(?<tile>[A-Z]{1,2}\d{1,2})\b.*\b\d+\b")]
    private static partial Regex TileOfTiles();
}
