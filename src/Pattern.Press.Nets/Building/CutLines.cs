namespace Pattern.Press.Nets.Building;

/// <summary>Finds every line to cut: the sides of panels that are not folds, each once and as long as it runs on.</summary>
internal static class CutLines
{
    public static IReadOnlyList<Edge> Of(IReadOnlyList<Panel> panels, IReadOnlyList<Fold> folds)
    {
        var work = new LineWork(
            panels.SelectMany(panel => panel.Outline.Edges),
            folds.SelectMany(fold => new[] { fold.From, fold.To }));
        var scores = folds.Select(fold => new Edge(fold.From, fold.To)).ToArray();
        var lines = new List<Edge>();
        var seen = new List<LineWork.Stretch>();
        foreach (var stretch in work.Stretches)
        {
            var edge = work.EdgeOf(stretch);
            if (seen.Exists(stretch.IsReverseOf) || (!edge.IsArc && scores.Any(score => score.DistanceTo(edge.Middle) < LineWork.Tolerance)))
                continue;
            seen.Add(stretch);
            lines.Add(edge);
        }

        return [.. Joined(lines).Select(InReadingDirection)
            .OrderBy(line => Math.Round(line.From.Y, 4)).ThenBy(line => Math.Round(line.From.X, 4))
            .ThenBy(line => Math.Round(line.To.Y, 4)).ThenBy(line => Math.Round(line.To.X, 4)).ThenBy(line => line.Bulge)];
    }

    // Joins two lines until no two are left that run on into each other.
    private static List<Edge> Joined(List<Edge> lines)
    {
        for (var i = 0; i < lines.Count; i++)
        {
            for (var j = 0; j < lines.Count; j++)
            {
                if (i == j || RunOn(lines[i], lines[j]) is not { } joined)
                    continue;
                lines[i] = joined;
                lines.RemoveAt(j);
                i -= j < i ? 1 : 0;
                j = -1;
            }
        }

        return lines;
    }

    private static Edge? RunOn(Edge a, Edge b)
    {
        foreach (var next in new[] { b, b.Reversed })
        {
            if (a.To.DistanceTo(next.From) < LineWork.Tolerance && LineWork.Joined(a, next) is { } after)
                return after;
            if (next.To.DistanceTo(a.From) < LineWork.Tolerance && LineWork.Joined(next, a) is { } before)
                return before;
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
