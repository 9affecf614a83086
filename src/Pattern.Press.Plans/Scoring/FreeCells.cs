using Pattern.Press.Measure;
using Pattern.Press.Nets;

namespace Pattern.Press.Plans.Scoring;

/// <summary>
/// What regions with level and upright sides leave free of a sheet. Lines along all their sides divide the sheet into cells;
/// those that are in no region are gathered into the largest rectangles there are, one after the other.
/// </summary>
internal static class FreeCells
{
    private const double Near = 1e-5;

    /// <summary>The rectangles; null when regions overlap.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="regions">Each as outlines that lie beside each other.</param>
    public static IReadOnlyList<Bounds>? Around(Size sheet, IReadOnlyList<IReadOnlyList<Outline>> regions)
    {
        var corners = regions.SelectMany(region => region).SelectMany(outline => outline.Corners).ToList();
        var xs = Levels(corners.Select(corner => corner.X).Append(0).Append(sheet.Width.Millimetres));
        var ys = Levels(corners.Select(corner => corner.Y).Append(0).Append(sheet.Height.Millimetres));
        var boxes = regions.Select(region => region.Select(outline => outline.Bounds).Aggregate((all, one) => all.With(one))).ToList();
        var free = new bool[ys.Count - 1, xs.Count - 1];
        for (var row = 0; row + 1 < ys.Count; row++)
        {
            for (var column = 0; column + 1 < xs.Count; column++)
            {
                var middle = new Bounds(xs[column], ys[row], xs[column + 1], ys[row + 1]).Centre;
                var held = 0;
                for (var i = 0; i < regions.Count; i++)
                {
                    if (middle.X > boxes[i].Left && middle.X < boxes[i].Right && middle.Y > boxes[i].Top && middle.Y < boxes[i].Bottom
                        && regions[i].Any(outline => outline.Contains(middle) || outline.DistanceTo(middle) < Near))
                    {
                        held++;
                    }
                }

                if (held > 1)
                    return null;
                free[row, column] = held == 0;
            }
        }

        var rectangles = new List<Bounds>();
        while (Largest(free, xs, ys) is var (top, left, bottom, right))
        {
            for (var row = top; row <= bottom; row++)
            {
                for (var column = left; column <= right; column++)
                    free[row, column] = false;
            }

            rectangles.Add(new Bounds(xs[left], ys[top], xs[right + 1], ys[bottom + 1]));
        }

        return rectangles;
    }

    private static (int Top, int Left, int Bottom, int Right)? Largest(bool[,] free, List<double> xs, List<double> ys)
    {
        (int, int, int, int)? best = null;
        var (most, widest) = (0.0, 0.0);
        for (var top = 0; top < ys.Count - 1; top++)
        {
            for (var left = 0; left < xs.Count - 1; left++)
            {
                var right = xs.Count - 2;
                for (var bottom = top; bottom < ys.Count - 1; bottom++)
                {
                    var reach = left;
                    while (reach <= right && free[bottom, reach])
                        reach++;
                    right = reach - 1;
                    if (right < left)
                        break;
                    var area = (ys[bottom + 1] - ys[top]) * (xs[right + 1] - xs[left]);
                    // Of two as large the wider one, so that corners that are alike are taken apart alike.
                    var wide = xs[right + 1] - xs[left];
                    if (area > most + Near || (area > most - Near && wide > widest + Near))
                        (most, widest, best) = (area, wide, (top, left, bottom, right));
                }
            }
        }

        return best;
    }

    private static List<double> Levels(IEnumerable<double> values)
    {
        var levels = new List<double>();
        foreach (var value in values.Order())
        {
            if (levels.Count == 0 || value - levels[^1] > Near)
                levels.Add(value);
        }

        return levels;
    }
}
