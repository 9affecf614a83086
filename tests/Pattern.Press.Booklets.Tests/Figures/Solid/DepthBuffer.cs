using Pattern.Press.Booklets.Figures.Solid;
using Pattern.Press.Nets.Folding;

namespace Pattern.Press.Booklets.Tests.Figures.Solid;

/// <summary>
/// Another way to the same picture: for each place, the nearest of all surfaces there. Surfaces are cut into triangles and
/// their depth is taken from the depths of the corners, without planes or any order.
/// </summary>
internal sealed class DepthBuffer
{
    private readonly double left;
    private readonly double top;
    private readonly double step;
    private readonly double[,] near;

    public DepthBuffer(IEnumerable<Face> faces, Axonometry view, int across, bool nearest = true)
    {
        var all = faces.Where(face => face.Back is not null || face.Normal.Dot(view.Viewer) > 1e-6).ToArray();
        var corners = all.SelectMany(face => face.Corners).Select(view.See).ToArray();
        (left, top) = (corners.Min(c => c.X), corners.Min(c => c.Y));
        step = Math.Max(corners.Max(c => c.X) - left, corners.Max(c => c.Y) - top) / across;

        // A little off the middle of each place, so that no place lies on an edge that runs along the grid.
        (left, top) = (left + (0.513 * step), top + (0.487 * step));
        near = new double[across, across];
        Owner = new int[across, across];
        Shown = new Surface?[across, across];
        for (var i = 0; i < across; i++)
        {
            for (var j = 0; j < across; j++)
                (near[i, j], Owner[i, j]) = (double.NegativeInfinity, -1);
        }

        foreach (var face in all)
        {
            for (var k = 2; k < face.Corners.Count; k++)
                Fill(face, view, view.See(face.Corners[0]), view.See(face.Corners[k - 1]), view.See(face.Corners[k]), nearest);
        }
    }

    public int[,] Owner { get; }

    public Surface?[,] Shown { get; }

    public double Near(int i, int j) => near[i, j];

    /// <summary>The surface at a place of the drawing; -1 for none.</summary>
    public int OwnerAt(double x, double y) => Owner[(int)Math.Round((x - left) / step), (int)Math.Round((y - top) / step)];

    /// <summary>How much the depth may differ between neighbouring places before an edge lies between them.</summary>
    public bool IsEven(int i, int j)
    {
        for (var a = Math.Max(0, i - 1); a <= Math.Min(near.GetLength(0) - 1, i + 1); a++)
        {
            for (var b = Math.Max(0, j - 1); b <= Math.Min(near.GetLength(1) - 1, j + 1); b++)
            {
                if (Owner[a, b] != Owner[i, j])
                    return false;
            }
        }

        return true;
    }

    private void Fill(Face face, Axonometry view, Seen a, Seen b, Seen c, bool nearest)
    {
        var area = ((b.X - a.X) * (c.Y - a.Y)) - ((c.X - a.X) * (b.Y - a.Y));
        if (Math.Abs(area) < 1e-9)
            return;
        var (x0, x1) = (Math.Min(a.X, Math.Min(b.X, c.X)), Math.Max(a.X, Math.Max(b.X, c.X)));
        var (y0, y1) = (Math.Min(a.Y, Math.Min(b.Y, c.Y)), Math.Max(a.Y, Math.Max(b.Y, c.Y)));
        for (var i = Math.Max(0, (int)((x0 - left) / step)); i < near.GetLength(0) && left + (i * step) <= x1; i++)
        {
            for (var j = Math.Max(0, (int)((y0 - top) / step)); j < near.GetLength(1) && top + (j * step) <= y1; j++)
            {
                var (x, y) = (left + (i * step), top + (j * step));
                var u = (((x - a.X) * (c.Y - a.Y)) - ((c.X - a.X) * (y - a.Y))) / area;
                var v = (((b.X - a.X) * (y - a.Y)) - ((x - a.X) * (b.Y - a.Y))) / area;
                if (u < 0 || v < 0 || u + v > 1)
                    continue;
                var depth = a.Near + (u * (b.Near - a.Near)) + (v * (c.Near - a.Near));
                if (nearest && depth <= near[i, j])
                    continue;
                near[i, j] = depth;
                Owner[i, j] = face.Owner;
                Shown[i, j] = face.Normal.Dot(view.Viewer) > 0 ? face.Front : face.Back;
            }
        }
    }
}
