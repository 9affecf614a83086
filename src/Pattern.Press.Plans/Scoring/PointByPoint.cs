using Pattern.Press.Measure;
using Pattern.Press.Nets;

namespace Pattern.Press.Plans.Scoring;

/// <summary>
/// The schedule of a piece whose lines run aslant or along curves: every corner has a letter and a place, and the piece is
/// scored and cut from letter to letter.
/// </summary>
internal sealed class PointByPoint(Piece piece)
{
    private const double Near = 1e-5;

    private readonly List<ScorePoint> _points = [];
    private readonly Dictionary<(long X, long Y), string> _letters = [];

    public ScoreSchedule Schedule()
    {
        // Letters run round the outline first, so that they are found in their order.
        var paths = new List<CutPath> { Closed(CutPathKind.Outline, FromTopLeft(piece.Outline)) };
        paths.AddRange(piece.Panels.SelectMany(panel => panel.Holes).Select(hole => Closed(CutPathKind.Hole, hole)));
        var slits = SlitLines.Of(piece).Select(slit => slit.Line)
            .OrderBy(line => Math.Round(line.From.Y, 4)).ThenBy(line => Math.Round(line.From.X, 4));
        paths.AddRange(slits.Select(line => new CutPath(CutPathKind.Slit, Letter(line.From), [Step(line)])));
        var scores = SlantedScores.Joined(piece.Folds.Where(fold => !fold.Line.IsArc))
            .Concat(piece.Folds.Where(fold => fold.Line.IsArc).Select(fold => fold.Line))
            .OrderBy(line => Math.Round(Math.Min(line.From.Y, line.To.Y), 4)).ThenBy(line => Math.Round(Math.Min(line.From.X, line.To.X), 4))
            .Select(line => new SlantedScore(Letter(line.From), Letter(line.To), line.IsArc ? Letter(line.Middle) : null))
            .ToList();
        return new ScoreSchedule
        {
            Sheet = piece.Sheet,
            IsByPoints = true,
            Turns = [],
            Points = _points,
            Slanted = scores,
            CuttingAway = new CuttingAway { Paths = paths },
        };
    }

    private CutPath Closed(CutPathKind kind, Outline outline) =>
        new(kind, Letter(outline.Edges[0].From), [.. outline.Edges.Select(Step)]);

    private PathStep Step(Edge edge)
    {
        var through = edge.IsArc ? Letter(edge.Middle) : null;
        return new PathStep(Letter(edge.To), through);
    }

    private string Letter(Point at)
    {
        var (left, top) = (Length.FromMillimetres(at.X), Length.FromMillimetres(at.Y));
        // Corners that are a nanometre apart by rounding are one.
        var key = (left.Nanometres / 1000, top.Nanometres / 1000);
        for (var dx = -1; dx <= 1; dx++)
        {
            for (var dy = -1; dy <= 1; dy++)
            {
                if (_letters.TryGetValue((key.Item1 + dx, key.Item2 + dy), out var known))
                    return known;
            }
        }

        var letter = Letters.Of(_points.Count);
        _letters[key] = letter;
        _points.Add(new ScorePoint(letter, left, top));
        return letter;
    }

    // Straight stretches that run on into each other are one cut; it starts at the corner nearest to the sheet's own.
    private static Outline FromTopLeft(Outline outline)
    {
        var edges = outline.Edges.ToList();
        for (var i = 0; i < edges.Count && edges.Count > 3; i++)
        {
            var next = (i + 1) % edges.Count;
            if (edges[i].IsArc || edges[next].IsArc || new Edge(edges[i].From, edges[next].To).DistanceTo(edges[i].To) > Near)
                continue;
            edges[i] = new Edge(edges[i].From, edges[next].To);
            edges.RemoveAt(next);
            i--;
        }

        var first = edges.FindIndex(edge => edge == edges.MinBy(e => Math.Round(e.From.X + e.From.Y, 4)));
        return new Outline([.. edges.Skip(first), .. edges.Take(first)]);
    }
}
