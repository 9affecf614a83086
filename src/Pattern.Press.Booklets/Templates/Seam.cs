using Pattern.Press.Booklets.Figures;
using Pattern.Press.Booklets.Figures.Drafting;
using Pattern.Press.Nets;
using Pattern.Press.Plans.Tiling;

namespace Pattern.Press.Booklets.Templates;

/// <summary>A mark that two pages share.</summary>
/// <param name="At">Its centre, in the template's millimetres.</param>
/// <param name="Letter">The letter beside it on both pages.</param>
internal sealed record SeamMark(Point At, string Letter);

/// <summary>
/// Where two tiles join. The second one, right of the first or below it, is trimmed along <see cref="Line"/> and laid on
/// the first.
/// </summary>
/// <param name="First">The tile that lies below.</param>
/// <param name="Second">The tile that is trimmed.</param>
/// <param name="Upright">Whether the tiles are side by side.</param>
/// <param name="Line">The line where the second tile ends, in the template's millimetres.</param>
/// <param name="Marks">At least two marks on the line.</param>
internal sealed record Seam(Tile First, Tile Second, bool Upright, Segment Line, IReadOnlyList<SeamMark> Marks)
{
    /// <summary>The strip of the first tile that goes under the second, in the template's millimetres; null for none.</summary>
    public Box? Lap
    {
        get
        {
            var box = new Box(Line.From.X, Line.From.Y, Upright ? First.X + First.Width : Line.To.X, Upright ? Line.To.Y : First.Y + First.Height);
            return box.Width > 0.01 && box.Height > 0.01 ? box : null;
        }
    }

    // Room for half a cross and its letter.
    private const double Inset = 5.5;
    // The least distance of two marks: their circles stand clear of each other.
    private const double Apart = 6;
    private const double LongSeam = 150;

    public static IReadOnlyList<Seam> Of(TilePlan plan, IReadOnlyList<Segment> drawing)
    {
        var seams = new List<Seam>();
        var number = 0;
        foreach (var first in plan.Tiles)
        {
            foreach (var upright in new[] { true, false })
            {
                var second = plan.Tiles.FirstOrDefault(tile => upright
                    ? tile.Row == first.Row && tile.Column == first.Column + 1
                    : tile.Column == first.Column && tile.Row == first.Row + 1);
                if (second is null)
                    continue;
                var line = upright
                    ? new Segment(
                        new Point(second.X, Math.Max(first.Y, second.Y)),
                        new Point(second.X, Math.Min(first.Y + first.Height, second.Y + second.Height)))
                    : new Segment(
                        new Point(Math.Max(first.X, second.X), second.Y),
                        new Point(Math.Min(first.X + first.Width, second.X + second.Width), second.Y));
                var marks = Places(plan, first, upright, line, drawing).Select(at => new SeamMark(at, TileNames.Mark(number++))).ToArray();
                seams.Add(new Seam(first, second, upright, line, marks));
            }
        }

        return seams;
    }

    // Near both ends of the seam and, on a long one, in its middle; a little aside where the drawing is in the way. The
    // strips that pages above or beside also show are left to their own marks.
    private static IEnumerable<Point> Places(TilePlan plan, Tile first, bool upright, Segment line, IReadOnlyList<Segment> drawing)
    {
        bool Has(int row, int column) => plan.Tiles.Any(tile => tile.Row == row && tile.Column == column);
        var before = upright ? Has(first.Row - 1, first.Column) || Has(first.Row - 1, first.Column + 1) : Has(first.Row, first.Column - 1) || Has(first.Row + 1, first.Column - 1);
        var after = upright ? Has(first.Row + 1, first.Column) || Has(first.Row + 1, first.Column + 1) : Has(first.Row, first.Column + 1) || Has(first.Row + 1, first.Column + 1);
        var from = Inset + (before ? plan.Lap : 0);
        var to = line.Length - Inset - (after ? plan.Lap : 0);
        if (to < from)
            (from, to) = (line.Length * 0.25, line.Length * 0.75);

        // Across a narrow strip the two circles would lie over each other; they reach a little beyond it.
        if (to - from < Apart)
        {
            yield return line.At(((line.Length - Apart) / 2) / line.Length);
            yield return line.At(((line.Length + Apart) / 2) / line.Length);
            yield break;
        }

        var taken = new List<double>();
        foreach (var wanted in line.Length > LongSeam ? new[] { 0.08, 0.5, 0.92 } : [0.12, 0.88])
        {
            var ideal = from + ((to - from) * wanted);
            var best = ideal;
            var least = double.MaxValue;
            for (var at = from; at <= to + 1e-9; at += Math.Max(0.5, (to - from) / 200))
            {
                var centre = line.At(at / line.Length);
                var box = Box.Around(centre.X, centre.Y, 2 * Inset, 2 * Inset);
                var cost = (drawing.Count(other => other.Crosses(box)) * 40) + Math.Abs(at - ideal)
                    + (taken.Any(other => Math.Abs(other - at) < 3 * Inset) ? 1000 : 0);
                if (cost < least)
                    (best, least) = (at, cost);
            }

            taken.Add(best);
            yield return line.At(best / line.Length);
        }
    }
}
