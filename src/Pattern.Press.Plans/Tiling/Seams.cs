namespace Pattern.Press.Plans.Tiling;

/// <summary>
/// Places the seams along one direction. A seam is told by the middle of its lap; neighbouring tiles share the lap, so a
/// tile reaches from half a lap before one seam to half a lap after the next.
/// </summary>
internal sealed class Seams
{
    // Folds this near a lap's edge are as awkward to score over as those inside it.
    private const double Clearance = 3;
    private const int GridPoints = 48;
    private const int CornerLimit = 24;
    private const int WayLimit = 120;
    private const double LeastOwn = 10;

    // Millimetres of fold in a lap outweigh millimetres of uneven overlap.
    private const double TroubleWeight = 1000;

    private readonly ShapeAxis _axis;
    private readonly double _side;
    private readonly double _lap;

    public Seams(ShapeAxis axis, double side, double lap)
    {
        _axis = axis;
        _side = side;
        _lap = lap;
        Least = CountFor(axis.Length, side, lap);
    }

    /// <summary>The least number of tiles along this direction.</summary>
    public int Least { get; }

    /// <summary>Tiles needed for a length: 1, or as many as steps of side − lap take.</summary>
    public static int CountFor(double length, double side, double lap) =>
        length <= side + 1e-9 ? 1 : (int)Math.Ceiling(((length - lap) / (side - lap)) - 1e-9);

    /// <summary>From where to where each tile reaches, for seams at the given places.</summary>
    public (double From, double To)[] Tiles(double[] seams)
    {
        var tiles = new (double, double)[seams.Length + 1];
        for (var i = 0; i < tiles.Length; i++)
        {
            tiles[i] = (
                i == 0 ? _axis.From : seams[i - 1] - (_lap / 2),
                i == seams.Length ? _axis.To : seams[i] + (_lap / 2));
        }

        return tiles;
    }

    /// <summary>How much trouble the seams are and how uneven; less is better.</summary>
    public double Cost(double[] seams)
    {
        var cost = 0.0;
        for (var i = 0; i < seams.Length; i++)
            cost += Cost(seams[i], i, seams.Length);
        return cost;
    }

    /// <summary>The least troublesome seams for so many tiles, among those whose every tile is allowed.</summary>
    /// <param name="count">How many tiles; 1 or more.</param>
    /// <param name="allowed">Whether tile i may reach from one position to another; null for any.</param>
    /// <returns>The seams, or null when there are none.</returns>
    public double[]? Best(int count, Func<int, double, double, bool>? allowed = null)
    {
        if (count == 1)
            return allowed is null || allowed(0, _axis.From, _axis.To) ? [] : null;
        var columns = Enumerable.Range(0, count - 1).Select(i => Candidates(i, count)).ToArray();
        var costs = columns.Select(column => new double[column.Count]).ToArray();
        var before = columns.Select(column => new int[column.Count]).ToArray();
        for (var i = 0; i < columns.Length; i++)
        {
            for (var k = 0; k < columns[i].Count; k++)
            {
                var best = double.PositiveInfinity;
                if (i == 0)
                {
                    if (allowed is null || allowed(0, _axis.From, columns[i][k] + (_lap / 2)))
                        best = 0;
                }
                else
                {
                    for (var j = 0; j < columns[i - 1].Count; j++)
                    {
                        if (costs[i - 1][j] >= best || !Follows(columns[i - 1][j], columns[i][k]))
                            continue;
                        if (allowed is not null && !allowed(i, columns[i - 1][j] - (_lap / 2), columns[i][k] + (_lap / 2)))
                            continue;
                        best = costs[i - 1][j];
                        before[i][k] = j;
                    }
                }

                costs[i][k] = double.IsPositiveInfinity(best) ? best : best + Cost(columns[i][k], i, count - 1);
            }
        }

        var last = -1;
        for (var k = 0; k < columns[^1].Count; k++)
        {
            if (allowed is not null && !allowed(count - 1, columns[^1][k] - (_lap / 2), _axis.To))
                continue;
            if (!double.IsPositiveInfinity(costs[^1][k]) && (last < 0 || costs[^1][k] < costs[^1][last]))
                last = k;
        }

        if (last < 0)
            return null;
        var seams = new double[count - 1];
        for (var i = count - 2; i >= 0; i--)
        {
            seams[i] = columns[i][last];
            last = before[i][last];
        }

        return seams;
    }

    /// <summary>
    /// The ways to place seams that matter for blank tiles: each tile reaches as far as a page does, or stops just before
    /// a corner of the piece. Of ways whose tiles meet the same stretches between corners only the one that gets farthest
    /// is kept, since reaching farther never adds a page. Thinned out where there are very many.
    /// </summary>
    public IReadOnlyList<double[]> AtCorners(int count)
    {
        var stops = Stops();
        var ways = new List<double[]> { Array.Empty<double>() };
        for (var i = 0; i < count - 1; i++)
        {
            var (least, _) = Range(i, count);
            var longer = new SortedDictionary<string, double[]>(StringComparer.Ordinal);
            foreach (var way in ways)
            {
                var full = way.Length == 0 ? _axis.From + _side - (_lap / 2) : way[^1] + _side - _lap;
                foreach (var seam in stops.Append(full))
                {
                    if (seam < least - 1e-9 || seam > Math.Min(full, _axis.To - (_lap / 2)) + 1e-9)
                        continue;
                    if (way.Length == 0 ? seam < _axis.From + (_lap / 2) : !Follows(way[^1], seam))
                        continue;
                    double[] next = [.. way, seam];
                    var key = string.Join(',', next.Select(place => Meets(place)));
                    if (!longer.TryGetValue(key, out var known) || known[^1] < seam)
                        longer[key] = next;
                }
            }

            var stride = 1 + (longer.Count / WayLimit);
            ways = longer.Values.Where((_, k) => k % stride == 0).ToList();
        }

        return ways;
    }

    // The last stretch that the tile before a seam meets and the first that the tile after it does.
    private (int Last, int First) Meets(double seam)
    {
        const double Clearance = TemplateShape.BlankClearance - 1e-6;
        return (
            _axis.Corners.Count(corner => corner < seam + (_lap / 2) + Clearance),
            _axis.Corners.Count(corner => corner <= seam - (_lap / 2) - Clearance));
    }

    private List<double> Stops()
    {
        var stride = Math.Max(1, _axis.Corners.Count / CornerLimit);
        return [.. _axis.Corners.Where((_, i) => i % stride == 0).Select(corner => corner - (_lap / 2) - TemplateShape.BlankClearance)];
    }

    private bool Follows(double seam, double next) =>
        next - seam <= _side - _lap + 1e-9 && next - seam >= Math.Max(_lap, 1) - 1e-9;

    // The seam's whole range, from all later tiles being full to all earlier ones being full.
    private (double Least, double Most) Range(int seam, int count) => (
        _axis.To - _side + (_lap / 2) - ((count - 2 - seam) * (_side - _lap)),
        _axis.From + _side - (_lap / 2) + (seam * (_side - _lap)));

    private List<double> Candidates(int seam, int count)
    {
        // A tile that shows hardly more than its lap is not worth a page.
        var (least, most) = Range(seam, count);
        least = Math.Max(least, _axis.From + (_lap / 2) + LeastOwn);
        most = Math.Min(most, _axis.To - (_lap / 2) - LeastOwn);
        var places = new List<double> { least, most, Even(seam, count - 1) };
        foreach (var stop in Stops())
        {
            // On either side of the corner, as close as a blank tile may come to it or as far off as a fold should be.
            places.Add(stop);
            places.Add(stop + _lap + (2 * TemplateShape.BlankClearance));
            places.Add(stop + TemplateShape.BlankClearance - Clearance - 1e-6);
            places.Add(stop + TemplateShape.BlankClearance + _lap + Clearance + 1e-6);
        }

        for (var i = 1; i < GridPoints; i++)
            places.Add(least + ((most - least) * i / GridPoints));
        return places.Where(place => place >= least - 1e-9 && place <= most + 1e-9).Distinct().Order().ToList();
    }

    private double Even(int seam, int seams) =>
        _axis.From + (_lap / 2) + ((_axis.Length - _lap) * (seam + 1) / (seams + 1));

    private double Cost(double place, int seam, int seams)
    {
        var trouble = 0.0;
        var (from, to) = (place - (_lap / 2) - Clearance, place + (_lap / 2) + Clearance);
        foreach (var (at, weight) in _axis.Lines)
        {
            if (at > from && at < to)
                trouble += weight;
        }

        foreach (var (start, end, crossing) in _axis.Features)
        {
            if (start < to && end > from)
                trouble += crossing / 2;
        }

        return (trouble * TroubleWeight) + Math.Abs(place - Even(seam, seams));
    }
}
