namespace Pattern.Press.Nets.Building;

/// <summary>Finds every line to cut: the sides of panels that are not folds, each once and as long as it runs on.</summary>
internal static class CutLines
{
    public static IReadOnlyList<Edge> Of(IReadOnlyList<Panel> panels, IReadOnlyList<Fold> folds)
    {
        var work = new LineWork(
            panels.SelectMany(panel => panel.Loops).SelectMany(loop => loop.Edges),
            folds.SelectMany(fold => new[] { fold.From, fold.To }));
        var scores = folds.Select(fold => fold.Line).ToArray();
        var lines = new List<Edge>();
        var seen = new List<LineWork.Stretch>();
        foreach (var stretch in work.Stretches)
        {
            var edge = work.EdgeOf(stretch);
            if (seen.Exists(stretch.IsReverseOf) || scores.Any(score => score.IsArc == edge.IsArc && score.DistanceTo(edge.Middle) < LineWork.Tolerance))
                continue;
            seen.Add(stretch);
            lines.Add(edge);
        }

        return [.. Joined(lines).Select(InReadingDirection)
            .OrderBy(line => Math.Round(line.From.Y, 4)).ThenBy(line => Math.Round(line.From.X, 4))
            .ThenBy(line => Math.Round(line.To.Y, 4)).ThenBy(line => Math.Round(line.To.X, 4)).ThenBy(line => line.Bulge)];
    }

    // Takes each line as far as it runs on at its end, then at its start.
    private static IEnumerable<Edge> Joined(List<Edge> lines)
    {
        while (lines.Count > 0)
        {
            var line = lines[^1];
            lines.RemoveAt(lines.Count - 1);
            while (TakeNext(lines, line) is { } longer)
                line = longer;
            line = line.Reversed;
            while (TakeNext(lines, line) is { } longer)
                line = longer;
            yield return line;
        }
    }

    private static Edge? TakeNext(List<Edge> lines, Edge line)
    {
        for (var i = 0; i < lines.Count; i++)
        {
            var other = lines[i];
            var next = other.From == line.To ? other : other.To == line.To ? other.Reversed : (Edge?)null;
            if (next is { } following && LineWork.Joined(line, following) is { } joined)
            {
                lines.RemoveAt(i);
                return joined;
            }
        }

        return null;
    }

    // From the upper end, or from the left one when it is level.
    private static Edge InReadingDirection(Edge line)
    {
        var down = line.To.Y - line.From.Y;
        return down < -LineWork.Tolerance || (down < LineWork.Tolerance && line.To.X < line.From.X) ? line.Reversed : line;
    }
}
