using Pattern.Press.Nets;

namespace Pattern.Press.Plans.Scoring;

/// <summary>The straight cuts of a piece that have card on both sides.</summary>
internal static class SlitLines
{
    private const double Near = 1e-5;

    /// <summary>Each with the kinds of the two panels that it parts, in the order of the alphabet.</summary>
    public static IEnumerable<(Edge Line, IReadOnlyList<string> Kinds)> Of(Piece piece)
    {
        foreach (var cut in piece.Cuts.Where(cut => !cut.IsArc))
        {
            // A line that is one long cut may part panels along one stretch and border waste along another.
            var along = (cut.To - cut.From) * (1 / cut.Chord);
            var stops = piece.Panels.SelectMany(panel => panel.Outline.Corners)
                .Where(corner => cut.DistanceTo(corner) < Near)
                .Select(corner => along.Dot(corner - cut.From))
                .Append(0).Append(cut.Chord)
                .Order().ToList();
            var start = 0.0;
            foreach (var stop in stops.Where(stop => stop > Near))
            {
                if (stop - start < Near)
                    continue;
                var middle = cut.From + (along * ((start + stop) / 2));
                var aside = new Point(-along.Y, along.X) * (10 * Near);
                var beside = new[] { middle + aside, middle - aside }
                    .Select(point => piece.Panels.FirstOrDefault(panel => panel.Contains(point)))
                    .ToList();
                if (beside.TrueForAll(panel => panel is not null))
                    yield return (new Edge(cut.From + (along * start), cut.From + (along * stop)), [.. beside.Select(panel => panel!.Kind).Order(StringComparer.Ordinal)]);
                start = stop;
            }
        }
    }
}
