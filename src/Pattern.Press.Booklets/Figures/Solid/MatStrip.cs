using Pattern.Press.Nets;

namespace Pattern.Press.Booklets.Figures.Solid;

/// <summary>What of a mat lies on one strip of a panel that bends.</summary>
internal static class MatStrip
{
    private const double Close = 1e-6;

    /// <summary>The part of a mat on a strip, in the order of the mat's corners; too few corners where it does not reach it.</summary>
    /// <param name="mat">The mat's corners on the sheet.</param>
    /// <param name="strip">The strip's outline, clockwise on the page and convex.</param>
    public static IReadOnlyList<Point> Of(IReadOnlyList<Point> mat, Outline strip)
    {
        List<Point> rest = [.. mat];
        foreach (var edge in strip.Edges)
        {
            var along = edge.To - edge.From;
            var part = new List<Point>();
            for (var i = 0; i < rest.Count; i++)
            {
                var (here, next) = (rest[i], rest[(i + 1) % rest.Count]);
                var (a, b) = (along.Cross(here - edge.From), along.Cross(next - edge.From));
                if (a >= 0)
                    part.Add(here);
                if ((a > 0 && b < 0) || (a < 0 && b > 0))
                    part.Add(here + ((next - here) * (a / (a - b))));
            }

            rest = part;
        }

        return rest;
    }

    /// <summary>Whether a side of such a part lies on the mat's own outline, not on a ruling.</summary>
    public static bool IsEdge(IReadOnlyList<Point> mat, Point from, Point to)
    {
        for (var i = 0; i < mat.Count; i++)
        {
            var edge = new Edge(mat[i], mat[(i + 1) % mat.Count]);
            if (edge.DistanceTo(from) < Close && edge.DistanceTo(to) < Close)
                return true;
        }

        return false;
    }
}
