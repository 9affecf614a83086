namespace Pattern.Press.Nets.Folding.Proofs;

/// <summary>Two panels that pass through each other.</summary>
/// <param name="First">One panel, by name.</param>
/// <param name="Second">The other, by name.</param>
/// <param name="Depth">
/// How far it goes, in millimetres: the least of the length along which they cross and the distances that each reaches out
/// on either side of the other.
/// </param>
public sealed record Crossing(string First, string Second, double Depth);

/// <summary>Finds panels that pass through each other.</summary>
/// <remarks>
/// The planes of two panels meet in a line. Each panel covers some stretches of it; where stretches of both lie on each
/// other, and each panel reaches out on both sides, they cross. Panels that touch, share a fold or lie flat on each other
/// do not.
/// </remarks>
public static class Crossings
{
    /// <summary>Less than this is rounding, in millimetres.</summary>
    public const double Tolerance = 1e-6;

    /// <summary>Every pair of panels, of one or several poses in one frame, that pass through each other.</summary>
    public static IReadOnlyList<Crossing> Of(IEnumerable<PosedPanel> panels)
    {
        var all = panels.ToArray();
        var boxes = all.Select(panel => Box.Around(panel.Corners)).ToArray();
        var found = new List<Crossing>();
        for (var i = 0; i < all.Length; i++)
        {
            for (var j = i + 1; j < all.Length; j++)
            {
                if (!boxes[i].Meets(boxes[j]))
                    continue;
                var depth = Depth(all[i], all[j]);
                if (depth > Tolerance)
                    found.Add(new Crossing(all[i].Panel.Name, all[j].Panel.Name, depth));
            }
        }

        return found;
    }

    /// <summary>How deep two panels pass through each other, in millimetres; 0 when they do not.</summary>
    public static double Depth(PosedPanel a, PosedPanel b)
    {
        var line = a.Facing.Cross(b.Facing);

        // Panels in parallel planes lie on each other or apart.
        if (line.Length < 1e-9)
            return 0;
        var reach = Reach(a, b);
        if (reach <= Tolerance)
            return 0;
        reach = Math.Min(reach, Reach(b, a));
        if (reach <= Tolerance)
            return 0;
        line = line.Unit;
        var (stretchesA, stretchesB) = (Stretches(a.Corners, Heights(a, b), line), Stretches(b.Corners, Heights(b, a), line));
        var common = Common(stretchesA, stretchesB);
        return common <= Tolerance ? 0 : Math.Min(common, reach);
    }

    private static double[] Heights(PosedPanel panel, PosedPanel over)
    {
        var (corners, start, up) = (panel.Corners, over.Corners[0], over.Facing);
        var heights = new double[corners.Count];
        for (var i = 0; i < heights.Length; i++)
            heights[i] = Height(corners[i], start, up);
        return heights;
    }

    // Most pairs of panels end here, so nothing is kept of them.
    private static double Reach(PosedPanel panel, PosedPanel over)
    {
        var (corners, start, up) = (panel.Corners, over.Corners[0], over.Facing);
        var (above, below) = (0.0, 0.0);
        for (var i = 0; i < corners.Count; i++)
        {
            var height = Height(corners[i], start, up);
            (above, below) = (Math.Max(above, height), Math.Max(below, -height));
        }

        return Math.Min(above, below);
    }

    private static double Height(Vector3d corner, Vector3d start, Vector3d up)
    {
        var height = up.Dot(corner - start);
        return Math.Abs(height) <= Tolerance ? 0 : height;
    }

    /// <summary>The stretches of the line that the inside of a panel covers. An edge that lies along the line covers none of it.</summary>
    private static List<(double From, double To)> Stretches(IReadOnlyList<Vector3d> corners, double[] heights, Vector3d line)
    {
        // Taking corners on the line as above it, and then as below it, counts an edge along the line once but not both times.
        var above = Covered(corners, heights, line, true);
        var below = Covered(corners, heights, line, false);
        var both = new List<(double, double)>();
        foreach (var (fromA, toA) in above)
        {
            foreach (var (fromB, toB) in below)
            {
                var (from, to) = (Math.Max(fromA, fromB), Math.Min(toA, toB));
                if (to > from)
                    both.Add((from, to));
            }
        }

        return both;
    }

    private static List<(double From, double To)> Covered(
        IReadOnlyList<Vector3d> corners, double[] heights, Vector3d line, bool zeroIsAbove)
    {
        var crossings = new List<double>();
        for (var i = 0; i < heights.Length; i++)
        {
            var next = (i + 1) % heights.Length;
            if (Above(heights[i]) == Above(heights[next]))
                continue;
            var part = heights[i] / (heights[i] - heights[next]);
            crossings.Add(line.Dot(corners[i].Towards(corners[next], part)));
        }

        crossings.Sort();
        var stretches = new List<(double, double)>();
        for (var i = 0; i + 1 < crossings.Count; i += 2)
            stretches.Add((crossings[i], crossings[i + 1]));
        return stretches;

        bool Above(double height) => height > 0 || (height == 0 && zeroIsAbove);
    }

    private static double Common(List<(double From, double To)> a, List<(double From, double To)> b)
    {
        var longest = 0.0;
        foreach (var (fromA, toA) in a)
        {
            foreach (var (fromB, toB) in b)
                longest = Math.Max(longest, Math.Min(toA, toB) - Math.Max(fromA, fromB));
        }

        return longest;
    }

    private readonly record struct Box(Vector3d Least, Vector3d Most)
    {
        public static Box Around(IReadOnlyList<Vector3d> corners)
        {
            var (least, most) = (corners[0], corners[0]);
            foreach (var c in corners)
            {
                least = new(Math.Min(least.X, c.X), Math.Min(least.Y, c.Y), Math.Min(least.Z, c.Z));
                most = new(Math.Max(most.X, c.X), Math.Max(most.Y, c.Y), Math.Max(most.Z, c.Z));
            }

            return new Box(least, most);
        }

        public bool Meets(Box other) =>
            Least.X <= other.Most.X + Tolerance && other.Least.X <= Most.X + Tolerance
            && Least.Y <= other.Most.Y + Tolerance && other.Least.Y <= Most.Y + Tolerance
            && Least.Z <= other.Most.Z + Tolerance && other.Least.Z <= Most.Z + Tolerance;
    }
}
