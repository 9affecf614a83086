namespace Pattern.Press.Nets.Checks;

/// <summary>Whether a line closes, runs clockwise, and neither crosses nor touches itself.</summary>
internal static class SimpleOutline
{
    // Arcs are looked at as chords this close to them, in millimetres.
    private const double Flatness = 0.01;

    /// <summary>The end of a sentence that says what is wrong with an outline, or null.</summary>
    public static string? Problem(Outline outline)
    {
        var edges = outline.Edges;
        if (edges.Count < 3 && !(edges.Count == 2 && edges.Any(edge => edge.IsArc)))
            return "has too few sides.";
        for (var i = 0; i < edges.Count; i++)
        {
            var numbers = new[] { edges[i].From.X, edges[i].From.Y, edges[i].Bulge };
            if (!numbers.All(double.IsFinite))
                return "has a corner that is nowhere.";
            if (edges[i].Chord < LineWork.Tolerance)
                return "has a side without length.";
            if (edges[i].To.DistanceTo(edges[(i + 1) % edges.Count].From) > LineWork.Tolerance)
                return "does not close.";
        }

        if (CrossesItself(outline.Flattened(Flatness)))
            return "crosses or touches itself.";
        return outline.Area > 0 ? null : "does not run clockwise.";
    }

    private static bool CrossesItself(IReadOnlyList<Point> corners)
    {
        var count = corners.Count;
        for (var i = 0; i < count; i++)
        {
            var a = new Edge(corners[i], corners[(i + 1) % count]);
            var next = new Edge(a.To, corners[(i + 2) % count]);

            // A side that doubles back on the one before it.
            if (count > 2 && (a.To - a.From).Dot(next.To - next.From) < 0
                && (a.DistanceTo(next.To) < LineWork.Tolerance || next.DistanceTo(a.From) < LineWork.Tolerance))
            {
                return true;
            }

        }

        // From left to right, so that each side is only held against those that begin before it ends.
        var sides = Enumerable.Range(0, count).Select(i => (Number: i, Edge: new Edge(corners[i], corners[(i + 1) % count])))
            .Select(side => (side.Number, side.Edge, Bounds: Widened(side.Edge.Bounds))).OrderBy(side => side.Bounds.Left).ToArray();
        for (var i = 0; i < count; i++)
        {
            var (number, side, bounds) = sides[i];
            for (var j = i + 1; j < count && sides[j].Bounds.Left <= bounds.Right; j++)
            {
                var apart = Math.Abs(number - sides[j].Number);
                if (apart == 1 || apart == count - 1 || sides[j].Bounds.Top > bounds.Bottom || sides[j].Bounds.Bottom < bounds.Top)
                    continue;
                if (Meet(side, sides[j].Edge))
                    return true;
            }
        }

        return false;
    }

    private static bool Meet(Edge a, Edge b)
    {
        if (a.DistanceTo(b.From) < LineWork.Tolerance || a.DistanceTo(b.To) < LineWork.Tolerance
            || b.DistanceTo(a.From) < LineWork.Tolerance || b.DistanceTo(a.To) < LineWork.Tolerance)
        {
            return true;
        }

        var (alongA, alongB) = (a.To - a.From, b.To - b.From);
        return alongA.Cross(b.From - a.From) > 0 != alongA.Cross(b.To - a.From) > 0
            && alongB.Cross(a.From - b.From) > 0 != alongB.Cross(a.To - b.From) > 0;
    }

    private static Bounds Widened(Bounds bounds) => new(
        bounds.Left - LineWork.Tolerance, bounds.Top - LineWork.Tolerance, bounds.Right + LineWork.Tolerance, bounds.Bottom + LineWork.Tolerance);
}
