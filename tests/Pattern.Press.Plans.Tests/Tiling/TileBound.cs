using Pattern.Press.Nets;
using Pattern.Press.Plans.Tiling;

namespace Pattern.Press.Plans.Tests.Tiling;

/// <summary>
/// A number of pages that no grid of tiles can go below, by area and by side. Knows nothing of how the planner searches.
/// </summary>
internal static class TileBound
{
    // Of points inside each panel, each way.
    private const int Samples = 16;

    public static int Of(Piece piece, TemplatePage page, double lap)
    {
        var points = piece.Panels.SelectMany(PointsOf).ToList();
        var (left, top) = (points.Min(p => p.X), points.Min(p => p.Y));
        var (width, height) = (points.Max(p => p.X) - left, points.Max(p => p.Y) - top);
        var card = piece.Panels.Sum(panel => Math.Abs(panel.Outline.Area));
        Point[] upright = [.. points.Select(p => new Point(p.X - left, p.Y - top))];
        Point[] turned = [.. upright.Select(p => new Point(p.Y, p.X))];
        var least = int.MaxValue;
        foreach (var lying in new[] { false, true })
        {
            var area = page.Drawing(lying);
            if (Math.Min(area.Width, area.Height) < 40)
                continue;
            var byArea = (int)Math.Ceiling((card / (area.Width * area.Height)) - 1e-9);
            least = Math.Min(least, Math.Max(byArea, OfGrids(upright, width, height, area, lap)));
            least = Math.Min(least, Math.Max(byArea, OfGrids(turned, height, width, area, lap)));
        }

        return least;
    }

    // Of every number of columns and rows. Card reaches from side to side and from top to bottom in one part, so the tiles
    // with card on them go from the first column to the last and from the first row to the last by steps to a neighbour:
    // columns + rows − 1 of them at least. More than three beyond the fewest are above what the fewest can need.
    private static int OfGrids(Point[] points, double width, double height, PageArea area, double lap)
    {
        var (columns, rows) = (Fewest(width, area.Width, lap), Fewest(height, area.Height, lap));
        var least = int.MaxValue;
        for (var c = columns; c <= columns * rows; c++)
        {
            for (var r = rows; c + r - 1 < least && r <= columns * rows; r++)
                least = Math.Min(least, Math.Max(c + r - 1, Needed(points, width, height, area, lap, c, r)));
        }

        return least;
    }

    // The tiles that card lies on which no other tile can show, wherever the seams are.
    private static int Needed(Point[] points, double width, double height, PageArea area, double lap, int columns, int rows) =>
        points.Select(p => (Only(p.X, width, area.Width, lap, columns), Only(p.Y, height, area.Height, lap, rows)))
            .Where(tile => tile is { Item1: >= 0, Item2: >= 0 })
            .Distinct()
            .Count();

    // The one tile that shows a place, or -1: beyond the farthest reach of the tile before, short of the nearest start of
    // the tile after.
    private static int Only(double at, double length, double side, double lap, int count)
    {
        for (var i = 0; i < count; i++)
        {
            var before = i == 0 ? double.NegativeInfinity : side + ((i - 1) * (side - lap));
            var after = i == count - 1 ? double.PositiveInfinity : length - side - ((count - 2 - i) * (side - lap));
            if (at > before + 1e-6 && at < after - 1e-6)
                return i;
        }

        return -1;
    }

    private static int Fewest(double length, double side, double lap)
    {
        var tiles = 1;
        for (var reach = side; reach < length - 1e-9; reach += side - lap)
            tiles++;
        return tiles;
    }

    private static IEnumerable<Point> PointsOf(Panel panel)
    {
        var corners = panel.Outline.Corners.ToList();
        foreach (var corner in corners)
            yield return corner;
        var (left, right, top, bottom) = (corners.Min(c => c.X), corners.Max(c => c.X), corners.Min(c => c.Y), corners.Max(c => c.Y));
        for (var i = 0; i < Samples; i++)
        {
            for (var j = 0; j < Samples; j++)
            {
                var point = new Point(left + ((right - left) * (i + 0.5) / Samples), top + ((bottom - top) * (j + 0.5) / Samples));
                if (IsInside(corners, point))
                    yield return point;
            }
        }
    }

    private static bool IsInside(List<Point> corners, Point point)
    {
        var inside = false;
        for (var i = 0; i < corners.Count; i++)
        {
            var (a, b) = (corners[i], corners[(i + 1) % corners.Count]);
            if (a.Y > point.Y != b.Y > point.Y && point.X < a.X + ((point.Y - a.Y) / (b.Y - a.Y) * (b.X - a.X)))
                inside = !inside;
        }

        return inside;
    }
}
