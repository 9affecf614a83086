using Pattern.Press.Nets;
using Pattern.Press.Typesetting.Pages;

namespace Pattern.Press.Booklets.Figures.Drafting;

/// <summary>Parallel lines that fill regions, cut exactly at their edges and left out around lettering.</summary>
internal static class Hatching
{
    /// <summary>Hatches regions (even–odd) with lines at 45 degrees.</summary>
    /// <param name="loops">The edges of the regions.</param>
    /// <param name="spacing">Millimetres between two lines.</param>
    /// <param name="rising">Whether the lines rise to the right; else they fall.</param>
    /// <param name="spared">Boxes that stay free.</param>
    /// <param name="origin">A point that one line goes through, so that two drawings of one thing hatch alike.</param>
    /// <returns>The lines, or null if there are none.</returns>
    public static VectorPath? Fill(IReadOnlyList<Shape> loops, double spacing, bool rising, IReadOnlyList<Box> spared, Point origin)
    {
        var builder = new PathBuilder();
        var any = false;
        foreach (var line in Lines(loops, spacing * Math.Sqrt(2), rising, spared, origin))
        {
            builder.MoveTo(line.From.X, line.From.Y).LineTo(line.To.X, line.To.Y);
            any = true;
        }

        return any ? builder.Build() : null;
    }

    /// <summary>The same as lines, rising to the right, nothing spared.</summary>
    public static IEnumerable<Segment> Lines(IReadOnlyList<Shape> loops, double spacing) =>
        Lines(loops, spacing * Math.Sqrt(2), true, [], new Point(0, 0));

    // Each line is x + y = k (rising) or x − y = k (falling); it is cut where that sum passes k along a side.
    private static IEnumerable<Segment> Lines(IReadOnlyList<Shape> loops, double step, bool rising, IReadOnlyList<Box> spared, Point origin)
    {
        if (loops.Count == 0)
            yield break;
        var sign = rising ? 1 : -1;
        double Level(Point p) => p.X + (sign * p.Y);
        var sides = loops.SelectMany(loop => loop.Sides).ToArray();
        var low = sides.Min(side => Level(side.From));
        var high = sides.Max(side => Level(side.From));
        var first = Level(origin) + (step * Math.Ceiling((low - Level(origin)) / step));
        var cuts = new List<double>();
        for (var k = first; k < high; k += step)
        {
            cuts.Clear();
            foreach (var side in sides)
            {
                var (a, b) = (Level(side.From) - k, Level(side.To) - k);
                if ((a > 0) != (b > 0))
                    cuts.Add(side.At(a / (a - b)).X);
            }

            cuts.Sort();
            for (var i = 0; i + 1 < cuts.Count; i += 2)
            {
                foreach (var (from, to) in Spare(cuts[i], cuts[i + 1], k, sign, spared))
                {
                    if (to - from > 0.25)
                        yield return new Segment(new Point(from, (k - from) * sign), new Point(to, (k - to) * sign));
                }
            }
        }
    }

    private static List<(double From, double To)> Spare(double from, double to, double k, int sign, IReadOnlyList<Box> spared)
    {
        var parts = new List<(double From, double To)> { (from, to) };
        foreach (var box in spared)
        {
            // Where the line is between the top and the bottom of the box.
            var (xTop, xBottom) = (k - (sign * box.Top), k - (sign * box.Bottom));
            var left = Math.Max(box.Left, Math.Min(xTop, xBottom));
            var right = Math.Min(box.Right, Math.Max(xTop, xBottom));
            if (left >= right)
                continue;
            for (var i = parts.Count - 1; i >= 0; i--)
            {
                var part = parts[i];
                if (left >= part.To || right <= part.From)
                    continue;
                parts.RemoveAt(i);
                if (right < part.To)
                    parts.Insert(i, (right, part.To));
                if (left > part.From)
                    parts.Insert(i, (part.From, left));
            }
        }

        return parts;
    }
}
