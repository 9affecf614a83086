using Pattern.Press.Nets;

namespace Pattern.Press.Acceptance.Templates;

/// <summary>The lines that a piece of the model has, and how a printed template lies on them.</summary>
public static class ModelLines
{
    /// <summary>How far a chord may stray from the curve it stands for, in millimetres.</summary>
    public const double Flatness = LineCover.Tolerance / 16;

    public static IReadOnlyList<DrawnLine> Of(Piece piece)
    {
        ArgumentNullException.ThrowIfNull(piece);
        var lines = new List<DrawnLine>();
        foreach (var fold in piece.Folds)
            Add(fold.Direction == FoldDirection.Valley ? LineKind.Valley : LineKind.Mountain, fold.Line);
        foreach (var cut in piece.Cuts)
            Add(LineKind.Cut, cut);
        return lines;

        void Add(LineKind kind, Edge edge)
        {
            Point[] points = [.. edge.Flattened(Flatness), edge.To];
            for (var i = 1; i < points.Length; i++)
                lines.Add(new DrawnLine(kind, points[i - 1], points[i]));
        }
    }

    /// <summary>
    /// What is missing from a printed template and what it has too many of, lying the way that it fits best: turned by
    /// quarters and moved, never mirrored.
    /// </summary>
    public static IReadOnlyList<string> Differences(IReadOnlyList<DrawnLine> printed, IReadOnlyList<DrawnLine> model)
    {
        ArgumentNullException.ThrowIfNull(model);
        var here = ToCorner(printed);
        IReadOnlyList<string>? best = null;
        for (var quarters = 0; quarters < 4; quarters++)
        {
            var there = ToCorner([.. model.Select(line => new DrawnLine(line.Kind, Turned(line.From, quarters), Turned(line.To, quarters)))]);
            string[] found =
            [
                .. LineCover.Uncovered(there, here).Select(line => $"missing: {line}"),
                .. LineCover.Uncovered(here, there).Select(line => $"too many: {line}"),
            ];
            if (best is null || found.Length < best.Count)
                best = found;
            if (best.Count == 0)
                break;
        }

        return best!;
    }

    private static Point Turned(Point point, int quarters) => quarters switch
    {
        0 => point,
        1 => new Point(-point.Y, point.X),
        2 => new Point(-point.X, -point.Y),
        _ => new Point(point.Y, -point.X),
    };

    private static DrawnLine[] ToCorner(IReadOnlyList<DrawnLine> lines)
    {
        var corner = new Point(lines.Min(line => Math.Min(line.From.X, line.To.X)), lines.Min(line => Math.Min(line.From.Y, line.To.Y)));
        return [.. lines.Select(line => line.Moved(default(Point) - corner))];
    }
}
