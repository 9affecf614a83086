using Pattern.Press.Measure;
using Pattern.Press.Nets.Folding;

namespace Pattern.Press.Nets.Tests.Folding;

/// <summary>Regular solids laid out flat: faces put edge to edge, from the combinatorics of the solid alone.</summary>
internal static class Solids
{
    private static readonly double Golden = (1 + Math.Sqrt(5)) / 2;

    public static IReadOnlyList<Vector3d> Corners(string solid) => solid switch
    {
        "tetrahedron" => [new(1, 1, 1), new(1, -1, -1), new(-1, 1, -1), new(-1, -1, 1)],
        "cube" => [.. Signs(1, 1, 1)],
        "octahedron" => [new(1, 0, 0), new(-1, 0, 0), new(0, 1, 0), new(0, -1, 0), new(0, 0, 1), new(0, 0, -1)],
        "dodecahedron" =>
        [
            .. Signs(1, 1, 1), .. Signs(0, 1 / Golden, Golden), .. Signs(1 / Golden, Golden, 0), .. Signs(Golden, 0, 1 / Golden),
        ],
        "icosahedron" => [.. Signs(0, 1, Golden), .. Signs(1, Golden, 0), .. Signs(Golden, 0, 1)],
        _ => throw new ArgumentException(solid),
    };

    /// <summary>The faces of a solid, each by the places of its corners in order as seen from outside.</summary>
    public static List<int[]> Faces(IReadOnlyList<Vector3d> corners)
    {
        var faces = new List<int[]>();
        for (var a = 0; a < corners.Count; a++)
        {
            for (var b = a + 1; b < corners.Count; b++)
            {
                for (var c = b + 1; c < corners.Count; c++)
                {
                    var normal = (corners[b] - corners[a]).Cross(corners[c] - corners[a]);
                    var heights = corners.Select(corner => normal.Dot(corner - corners[a])).ToArray();
                    if (heights.Any(h => h > 1e-9) && heights.Any(h => h < -1e-9))
                        continue;
                    var on = Enumerable.Range(0, corners.Count).Where(i => Math.Abs(heights[i]) < 1e-9).ToArray();
                    if (on[0] != a || on[1] != b || faces.Any(face => face.Order().SequenceEqual(on)))
                        continue;
                    if (heights.Any(h => h > 1e-9))
                        normal = -normal;
                    var middle = on.Aggregate(default(Vector3d), (sum, i) => sum + corners[i]) * (1.0 / on.Length);
                    var (u, v) = ((corners[a] - middle).Unit, normal.Unit.Cross((corners[a] - middle).Unit));
                    faces.Add([.. on.OrderBy(i => Math.Atan2(v.Dot(corners[i] - middle), u.Dot(corners[i] - middle)))]);
                }
            }
        }

        return faces;
    }

    /// <summary>A net of a regular solid: each face hangs on the first one already laid that it shares an edge with.</summary>
    /// <param name="solid">Its name.</param>
    /// <param name="edge">The length of its edges in millimetres.</param>
    /// <param name="dihedral">The published angle between its faces.</param>
    public static Piece Net(string solid, double edge, double dihedral)
    {
        var faces = Faces(Corners(solid));
        var laid = new Dictionary<int, Point[]> { [0] = Regular(faces[0].Length, new(1000, 1000), new(1000 + edge, 1000)) };
        var order = new List<int> { 0 };
        var folds = new List<Fold>();
        for (var next = 0; next < order.Count; next++)
        {
            var parent = faces[order[next]];
            for (var i = 0; i < parent.Length; i++)
            {
                // As seen from outside, a neighbour runs along the shared edge the other way.
                var (p, q) = (parent[i], parent[(i + 1) % parent.Length]);
                var child = faces.FindIndex(face => Enumerable.Range(0, face.Length).Any(k => face[k] == q && face[(k + 1) % face.Length] == p));
                if (laid.ContainsKey(child))
                    continue;

                // Seen from inside, the facing side, the order of the corners is the other way round: clockwise on the page
                // when it was anticlockwise from outside.
                var (from, to) = (laid[order[next]][i], laid[order[next]][(i + 1) % parent.Length]);
                var corners = Regular(faces[child].Length, to, from);
                var start = Array.IndexOf(faces[child], q);
                laid[child] = [.. Enumerable.Range(0, corners.Length).Select(k => corners[((k - start) + corners.Length) % corners.Length])];
                order.Add(child);
                folds.Add(new Fold($"face {order[next]}", $"face {child}", from, to, FoldDirection.Valley, 180 - dihedral));
            }
        }

        var panels = order.Select(i => new Panel($"face {i}", "face", PanelRole.Panel, Outline.Through(laid[i])));
        return ByHand(solid, "face 0", [.. panels], folds);
    }

    /// <summary>A piece as it is, for folding only.</summary>
    public static Piece ByHand(string id, string root, IReadOnlyList<Panel> panels, IReadOnlyList<Fold> folds) => new()
    {
        Id = id,
        Name = id,
        Sheet = new Measure.Size(Length.FromMillimetres(2000), Length.FromMillimetres(2000)),
        Root = root,
        Panels = panels,
        Folds = folds,
        Waste = [],
        GlueAreas = [],
        Cuts = [],
        Outline = panels[0].Outline,
    };

    // A regular polygon whose first side runs between two points, clockwise on the page.
    private static Point[] Regular(int sides, Point from, Point to)
    {
        var corners = new Point[sides];
        var (at, arrow) = (from, to - from);
        var (sine, cosine) = Math.SinCos(2 * Math.PI / sides);
        for (var i = 0; i < sides; i++)
        {
            corners[i] = at;
            at += arrow;
            arrow = new Point((cosine * arrow.X) - (sine * arrow.Y), (sine * arrow.X) + (cosine * arrow.Y));
        }

        return corners;
    }

    private static IEnumerable<Vector3d> Signs(double x, double y, double z)
    {
        foreach (var a in x == 0 ? new[] { 0.0 } : [x, -x])
        {
            foreach (var b in y == 0 ? new[] { 0.0 } : [y, -y])
            {
                foreach (var c in z == 0 ? new[] { 0.0 } : [z, -z])
                    yield return new Vector3d(a, b, c);
            }
        }
    }
}
