namespace Pattern.Press.Acceptance.Templates;

/// <summary>Whether lines cover each other, however each is divided into stretches.</summary>
public static class LineCover
{
    /// <summary>How far a printed line may be from where it belongs, in millimetres.</summary>
    public const double Tolerance = 0.01;

    /// <summary>The stretches of lines that no line of the same kind among others lies on.</summary>
    public static IReadOnlyList<DrawnLine> Uncovered(IEnumerable<DrawnLine> lines, IReadOnlyCollection<DrawnLine> others)
    {
        var left = new List<DrawnLine>();
        var stretches = new List<(double From, double To)>();
        foreach (var line in lines.Where(line => line.Length > Tolerance))
        {
            var reached = 0.0;
            stretches.Clear();
            foreach (var other in others)
            {
                if (other.Kind == line.Kind && On(line, other) is { } stretch)
                    stretches.Add(stretch);
            }

            stretches.Sort();
            foreach (var (from, to) in stretches)
            {
                if (from - reached > Tolerance)
                    left.Add(Part(line, reached, from));
                reached = Math.Max(reached, to);
            }

            if (line.Length - reached > Tolerance)
                left.Add(Part(line, reached, line.Length));
        }

        return left;
    }

    /// <summary>Where the same line is drawn twice on one page, for more than a spot.</summary>
    public static IReadOnlyList<DrawnLine> Doubled(IReadOnlyList<DrawnLine> lines)
    {
        ArgumentNullException.ThrowIfNull(lines);
        var doubled = new List<DrawnLine>();
        for (var i = 0; i < lines.Count; i++)
        {
            for (var j = i + 1; j < lines.Count; j++)
            {
                // Lines of two kinds in one place would contradict each other.
                if (Parallel(lines[i], lines[j]) && On(lines[i], lines[j]) is { } shared && shared.To - shared.From > 10 * Tolerance)
                    doubled.Add(Part(lines[i], shared.From, shared.To));
            }
        }

        return doubled;
    }

    /// <summary>What of some lines lies on lines of another page, for more than a spot.</summary>
    public static IReadOnlyList<DrawnLine> Shared(IReadOnlyList<DrawnLine> lines, IReadOnlyList<DrawnLine> others)
    {
        ArgumentNullException.ThrowIfNull(lines);
        ArgumentNullException.ThrowIfNull(others);
        return
        [
            .. from line in lines
               from other in others
               let shared = On(line, other)
               where shared is { } stretch && stretch.To - stretch.From > 10 * Tolerance
               select Part(line, shared.Value.From, shared.Value.To),
        ];
    }

    // From where to where along a line another one lies on it, in millimetres from its start.
    private static (double From, double To)? On(DrawnLine line, DrawnLine other)
    {
        if (Apart(line.From.X, line.To.X, other.From.X, other.To.X) || Apart(line.From.Y, line.To.Y, other.From.Y, other.To.Y))
            return null;
        var length = line.Length;
        var along = (line.To - line.From) * (1 / length);
        var (a, b) = (other.From - line.From, other.To - line.From);
        var (start, end, offStart, offEnd) = (along.Dot(a), along.Dot(b), along.Cross(a), along.Cross(b));
        if (start > end)
            (start, end, offStart, offEnd) = (end, start, offEnd, offStart);
        if (end - start < 1e-9)
            return null;

        // The part of the other line that lies closer than the tolerance, then the part of that beside this line.
        var (low, high) = (0.0, 1.0);
        var slope = offEnd - offStart;
        if (Math.Abs(slope) > 1e-12)
        {
            var (enter, leave) = ((-Tolerance - offStart) / slope, (Tolerance - offStart) / slope);
            (low, high) = (Math.Max(0, Math.Min(enter, leave)), Math.Min(1, Math.Max(enter, leave)));
        }
        else if (Math.Abs(offStart) > Tolerance)
        {
            return null;
        }

        var (from, to) = (Math.Max(0, start + ((end - start) * low)), Math.Min(length, start + ((end - start) * high)));
        return to > from ? (from, to) : null;
    }

    // Two lines that meet at a narrow angle are close to each other near the corner; that is no line drawn twice.
    private static bool Parallel(DrawnLine a, DrawnLine b)
    {
        const double Narrow = 0.003;
        var (along, other) = (a.To - a.From, b.To - b.From);
        return Math.Abs(along.Cross(other)) <= Narrow * a.Length * b.Length;
    }

    private static bool Apart(double a, double b, double c, double d) =>
        Math.Max(a, b) < Math.Min(c, d) - Tolerance || Math.Max(c, d) < Math.Min(a, b) - Tolerance;

    private static DrawnLine Part(DrawnLine line, double from, double to)
    {
        var along = (line.To - line.From) * (1 / line.Length);
        return new DrawnLine(line.Kind, line.From + (along * from), line.From + (along * to));
    }
}
