using Pattern.Press.Measure;
using Pattern.Press.Nets;

namespace Pattern.Press.Plans.Scoring;

/// <summary>
/// Takes a piece's waste apart into what a maker marks and cuts: upright rectangles where it can, and small trims.
/// </summary>
internal static class CuttingAwayMaker
{
    private const double Near = 1e-5;

    // Narrower than this is snipped off along the panel rather than marked out on the sheet.
    private const double StripWidth = 5;

    public static CuttingAway Make(Piece piece)
    {
        var rectangles = new List<Bounds>();
        var trims = new List<Outline>();
        foreach (var waste in piece.Waste)
        {
            if (waste.Holes.Count > 0 || waste.Outline.Edges.Any(edge => edge.IsArc))
                trims.Add(waste.Outline);
            else
                TakeApart(waste.Outline, rectangles, trims);
        }

        var strips = rectangles.Where(r => Math.Min(r.Width, r.Height) < StripWidth).ToList();
        var marked = rectangles.Except(strips)
            .OrderBy(r => Math.Round(r.Top, 4)).ThenBy(r => Math.Round(r.Left, 4))
            .Select(r => Rectangle(piece.Sheet, r))
            .ToList();
        var all = trims.Select(outline => (Outline: outline, IsStrip: false))
            .Concat(strips.Select(r => (Outline: Outline.Rectangle(r.Left, r.Top, r.Right, r.Bottom), IsStrip: true)))
            .OrderBy(trim => Math.Round(trim.Outline.Bounds.Top, 4)).ThenBy(trim => Math.Round(trim.Outline.Bounds.Left, 4))
            .Select(trim => new Trim(trim.Outline, PanelsAlong(piece, trim.Outline), trim.IsStrip))
            .ToList();
        return new CuttingAway(marked, all, [.. Slits(piece)]) { FourCorners = FourCorners(piece.Sheet, marked) };
    }

    private static CornerMarks? FourCorners(Size sheet, List<WasteRectangle> rectangles)
    {
        if (rectangles.Count != 4 || rectangles.Any(r => r.Corner is null || r.Size != rectangles[0].Size))
            return null;
        var (width, height) = (rectangles[0].Size.Width, rectangles[0].Size.Height);
        return new CornerMarks([width, sheet.Width - width], [height, sheet.Height - height], height, width);
    }

    private static WasteRectangle Rectangle(Size sheet, Bounds bounds)
    {
        var (left, top) = (Length.FromMillimetres(bounds.Left), Length.FromMillimetres(bounds.Top));
        var (right, bottom) = (Length.FromMillimetres(bounds.Right), Length.FromMillimetres(bounds.Bottom));
        SheetCorner? corner = (left == Length.Zero, right == sheet.Width, top == Length.Zero, bottom == sheet.Height) switch
        {
            (true, false, true, false) => SheetCorner.TopLeft,
            (false, true, true, false) => SheetCorner.TopRight,
            (true, false, false, true) => SheetCorner.BottomLeft,
            (false, true, false, true) => SheetCorner.BottomRight,
            _ => null,
        };
        return new WasteRectangle(left, top, new Size(right - left, bottom - top), corner);
    }

    // Lines through every corner of the waste divide it into cells. Whole cells are gathered into the largest rectangles
    // there are, one after the other; a cell that a slanted side runs through leaves a trim.
    private static void TakeApart(Outline waste, List<Bounds> rectangles, List<Outline> trims)
    {
        var xs = Levels(waste.Corners.Select(corner => corner.X));
        var ys = Levels(waste.Corners.Select(corner => corner.Y));
        var whole = new bool[ys.Count - 1, xs.Count - 1];
        for (var row = 0; row + 1 < ys.Count; row++)
        {
            for (var column = 0; column + 1 < xs.Count; column++)
            {
                var cell = new Bounds(xs[column], ys[row], xs[column + 1], ys[row + 1]);
                if (!waste.Edges.Any(edge => Cuts(edge, cell)))
                    whole[row, column] = waste.Contains(cell.Centre);
                else if (Inside(waste, cell) is { } part)
                    trims.Add(part);
            }
        }

        while (Largest(whole, xs, ys) is var (top, left, bottom, right))
        {
            for (var row = top; row <= bottom; row++)
            {
                for (var column = left; column <= right; column++)
                    whole[row, column] = false;
            }

            rectangles.Add(new Bounds(xs[left], ys[top], xs[right + 1], ys[bottom + 1]));
        }
    }

    private static (int Top, int Left, int Bottom, int Right)? Largest(bool[,] whole, List<double> xs, List<double> ys)
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
                    while (reach <= right && whole[bottom, reach])
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

    // Whether a slanted edge runs through the inside of a cell; upright and level ones lie on the lines between cells.
    private static bool Cuts(Edge edge, Bounds cell)
    {
        var along = edge.To - edge.From;
        var (start, end) = (0.0, 1.0);
        foreach (var (from, step, low, high) in new[] { (edge.From.X, along.X, cell.Left, cell.Right), (edge.From.Y, along.Y, cell.Top, cell.Bottom) })
        {
            if (Math.Abs(step) < Near)
            {
                if (from <= low + Near || from >= high - Near)
                    return false;
                continue;
            }

            var (a, b) = ((low - from) / step, (high - from) / step);
            start = Math.Max(start, Math.Min(a, b));
            end = Math.Min(end, Math.Max(a, b));
        }

        if ((end - start) * edge.Chord < Near)
            return false;
        var middle = edge.From + (along * ((start + end) / 2));
        return middle.X > cell.Left + Near && middle.X < cell.Right - Near && middle.Y > cell.Top + Near && middle.Y < cell.Bottom - Near;
    }

    // The part of the waste in a cell (Sutherland and Hodgman), one side of the cell after the other.
    private static Outline? Inside(Outline waste, Bounds cell)
    {
        var corners = waste.Corners.ToList();
        corners = Kept(corners, point => point.X - cell.Left);
        corners = Kept(corners, point => cell.Right - point.X);
        corners = Kept(corners, point => point.Y - cell.Top);
        corners = Kept(corners, point => cell.Bottom - point.Y);
        for (var i = corners.Count - 1; i >= 0 && corners.Count > 2; i--)
        {
            var (before, after) = (corners[(i + corners.Count - 1) % corners.Count], corners[(i + 1) % corners.Count]);
            var (a, b) = (corners[i] - before, after - corners[i]);
            if (corners[i].DistanceTo(before) < Near || Math.Abs(a.Cross(b)) < Near * Math.Max(1, before.DistanceTo(after)))
                corners.RemoveAt(i);
        }

        return corners.Count > 2 ? Outline.Through([.. corners]) : null;
    }

    private static List<Point> Kept(List<Point> corners, Func<Point, double> inside)
    {
        var kept = new List<Point>();
        for (var i = 0; i < corners.Count; i++)
        {
            var (from, to) = (corners[i], corners[(i + 1) % corners.Count]);
            var (a, b) = (inside(from), inside(to));
            if (a >= -Near)
                kept.Add(from);
            if ((a > Near && b < -Near) || (a < -Near && b > Near))
                kept.Add(from + ((to - from) * (a / (a - b))));
        }

        return kept;
    }

    private static IReadOnlyList<string> PanelsAlong(Piece piece, Outline trim) =>
        [.. piece.Panels
            .Where(panel => panel.Outline.Edges.Any(side => trim.Edges.Any(edge => Shares(side, edge))))
            .Select(panel => panel.Name)];

    // Whether two straight sides lie on each other for some length; an arc is compared by its middle.
    private static bool Shares(Edge side, Edge edge)
    {
        if (side.IsArc || edge.IsArc)
            return side.IsArc == edge.IsArc && side.Middle.DistanceTo(edge.Middle) < Near;
        var along = (side.To - side.From) * (1 / side.Chord);
        var (from, to) = (edge.From - side.From, edge.To - side.From);
        if (Math.Abs(along.Cross(from)) > Near || Math.Abs(along.Cross(to)) > Near)
            return false;
        var (a, b) = (along.Dot(from), along.Dot(to));
        return Math.Min(Math.Max(a, b), side.Chord) - Math.Max(Math.Min(a, b), 0) > Near;
    }

    private static IEnumerable<Slit> Slits(Piece piece)
    {
        foreach (var cut in piece.Cuts.Where(cut => !cut.IsArc))
        {
            // A line that is one long cut may part panels along one stretch and border waste along another.
            var along = (cut.To - cut.From) * (1 / cut.Chord);
            var stops = piece.Panels.SelectMany(panel => panel.Outline.Corners)
                .Where(corner => cut.DistanceTo(corner) < Near)
                .Select(corner => along.Dot(corner - cut.From))
                .Append(0).Append(cut.Chord);
            var levels = Levels(stops);
            for (var i = 0; i + 1 < levels.Count; i++)
            {
                var middle = cut.From + (along * ((levels[i] + levels[i + 1]) / 2));
                var aside = new Point(-along.Y, along.X) * (10 * Near);
                var beside = new[] { middle + aside, middle - aside }
                    .Select(point => piece.Panels.FirstOrDefault(panel => panel.Outline.Contains(point)))
                    .ToList();
                if (beside.All(panel => panel is not null))
                {
                    yield return new Slit(
                        cut.From + (along * levels[i]),
                        cut.From + (along * levels[i + 1]),
                        [.. piece.Panels.Where(panel => beside.Contains(panel)).Select(panel => panel.Name)]);
                }
            }
        }
    }
}
