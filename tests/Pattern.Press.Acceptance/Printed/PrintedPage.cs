using System.Text;
using System.Text.RegularExpressions;
using Pattern.Press.Nets;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Core;

namespace Pattern.Press.Acceptance.Printed;

/// <summary>A page read back from a file, in millimetres from its top-left corner.</summary>
public sealed partial class PrintedPage
{
    private const double PerPoint = 25.4 / 72;
    private readonly double _height;

    public PrintedPage(Page page, string label)
    {
        ArgumentNullException.ThrowIfNull(page);
        (Number, Label, _height) = (page.Number, label, page.MediaBox.Bounds.Top);
        (Width, Height) = (page.MediaBox.Bounds.Width * PerPoint, page.MediaBox.Bounds.Height * PerPoint);
        Runs = [.. ReadRuns(page)];
        Strokes = [.. page.Paths.Where(path => path.IsStroked).Select(Stroke)];
        Fills = [.. page.Paths.Where(path => path.IsFilled).Select(path => new PrintedFill([.. path.SelectMany(Points)]))];
    }

    /// <summary>Its place in the file, from 1.</summary>
    public int Number { get; }

    /// <summary>Its number as viewers show it.</summary>
    public string Label { get; }

    public double Width { get; }

    public double Height { get; }

    /// <summary>The letters, in the order of the file.</summary>
    public IReadOnlyList<PrintedRun> Runs { get; }

    public IReadOnlyList<PrintedStroke> Strokes { get; }

    public IReadOnlyList<PrintedFill> Fills { get; }

    /// <summary>All its level text in the order of the file, with single spaces.</summary>
    public string Text => Joined(Runs);

    /// <summary>
    /// Lines of text: runs on one baseline that follow each other in the file with no more than a word space between them.
    /// </summary>
    public IEnumerable<PrintedRun> Pieces()
    {
        PrintedRun? open = null;
        foreach (var run in Runs.Where(run => run.IsLevel))
        {
            if (open is not null && Math.Abs(open.From.Y - run.From.Y) < 0.1 && run.From.X - open.To.X is > -0.2 and var gap && gap < open.Em)
            {
                open = open with
                {
                    Text = open.Text + (gap > 0.15 * open.Em && !open.Text.EndsWith(' ') ? " " : "") + run.Text,
                    To = run.To,
                    Ink = (Math.Min(open.Ink.Left, run.Ink.Left), Math.Min(open.Ink.Top, run.Ink.Top), Math.Max(open.Ink.Right, run.Ink.Right), Math.Max(open.Ink.Bottom, run.Ink.Bottom)),
                };
                continue;
            }

            if (open is not null)
                yield return open;
            open = run;
        }

        if (open is not null)
            yield return open;
    }

    /// <summary>Runs as running text: a space wherever a line or a gap ends a word.</summary>
    public static string Joined(IEnumerable<PrintedRun> runs)
    {
        ArgumentNullException.ThrowIfNull(runs);
        var text = new StringBuilder();
        PrintedRun? last = null;
        foreach (var run in runs.Where(run => run.IsLevel))
        {
            var together = last is not null && Math.Abs(last.From.Y - run.From.Y) < 0.1 && Math.Abs(run.From.X - last.To.X) < 0.15 * last.Em;
            if (last is not null && !together)
                text.Append(' ');
            text.Append(run.Text);
            last = run;
        }

        return Spaces().Replace(text.ToString(), " ").Trim();
    }

    private IEnumerable<PrintedRun> ReadRuns(Page page)
    {
        foreach (var group in page.Letters.Select((letter, i) => (letter, i)).GroupBy(pair => pair.letter.TextSequence).OrderBy(group => group.Min(pair => pair.i)))
        {
            Letter[] letters = [.. group.Select(pair => pair.letter)];
            var shown = letters.Where(letter => letter.BoundingBox is { Width: > 0, Height: > 0 }).ToArray();
            var corners = shown.SelectMany(letter => new[] { letter.BoundingBox.BottomLeft, letter.BoundingBox.TopLeft, letter.BoundingBox.BottomRight, letter.BoundingBox.TopRight })
                .Select(At).DefaultIfEmpty(At(letters[0].StartBaseLine)).ToArray();
            yield return new PrintedRun(
                string.Concat(letters.Select(letter => letter.Value)),
                At(letters[0].StartBaseLine),
                At(letters[^1].EndBaseLine),
                letters[0].PointSize,
                letters[0].FontName ?? "",
                (corners.Min(p => p.X), corners.Min(p => p.Y), corners.Max(p => p.X), corners.Max(p => p.Y)));
        }
    }

    private PrintedStroke Stroke(UglyToad.PdfPig.Graphics.PdfPath path)
    {
        var lines = new List<PrintedLine>();
        var curves = new List<PrintedCurve>();
        foreach (var part in path)
        {
            PdfPoint? start = null;
            PdfPoint? at = null;
            foreach (var command in part.Commands)
            {
                switch (command)
                {
                    case PdfSubpath.Move move:
                        (start, at) = (move.Location, move.Location);
                        break;
                    case PdfSubpath.Line line:
                        lines.Add(new PrintedLine(At(line.From), At(line.To)));
                        at = line.To;
                        break;
                    case PdfSubpath.CubicBezierCurve curve:
                        curves.Add(new PrintedCurve(At(curve.StartPoint), At(curve.FirstControlPoint), At(curve.SecondControlPoint), At(curve.EndPoint)));
                        at = curve.EndPoint;
                        break;
                    case PdfSubpath.Close when start is { } first && at is { } last && At(first).DistanceTo(At(last)) > 1e-6:
                        lines.Add(new PrintedLine(At(last), At(first)));
                        break;
                }
            }
        }

        return new PrintedStroke((double)path.LineWidth * PerPoint, [.. path.LineDashPattern?.Array.Select(dash => (double)dash * PerPoint) ?? []], lines, curves);
    }

    private IEnumerable<Point> Points(PdfSubpath part) => part.Commands.SelectMany(command => command switch
    {
        PdfSubpath.Move move => [move.Location],
        PdfSubpath.Line line => [line.From, line.To],
        PdfSubpath.CubicBezierCurve curve => [curve.StartPoint, curve.FirstControlPoint, curve.SecondControlPoint, curve.EndPoint],
        _ => Array.Empty<PdfPoint>(),
    }).Select(At);

    private Point At(PdfPoint point) => new(point.X * PerPoint, (_height - point.Y) * PerPoint);

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();
}
