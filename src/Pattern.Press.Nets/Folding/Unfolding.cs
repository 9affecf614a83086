namespace Pattern.Press.Nets.Folding;

/// <summary>
/// A solid with flat faces, cut open along some of its edges and laid flat: every spanning tree of its faces gives a net,
/// though faces may come to lie over each other.
/// </summary>
public sealed class Unfolding
{
    private readonly IReadOnlyList<IReadOnlyList<Vector3d>> faces;

    /// <summary>A solid.</summary>
    /// <param name="faces">The corners of each face in order, anticlockwise as seen from outside; neighbours share theirs exactly.</param>
    public Unfolding(IReadOnlyList<IReadOnlyList<Vector3d>> faces)
    {
        ArgumentNullException.ThrowIfNull(faces);
        this.faces = faces;
        var edges = new List<SolidEdge>();
        for (var a = 0; a < faces.Count; a++)
        {
            for (var b = a + 1; b < faces.Count; b++)
            {
                for (var i = 0; i < faces[a].Count; i++)
                {
                    for (var j = 0; j < faces[b].Count; j++)
                    {
                        if (Same(faces[a][i], Next(b, j)) && Same(Next(a, i), faces[b][j]))
                            edges.Add(new SolidEdge(a, i, b, j));
                    }
                }
            }
        }

        Edges = edges;
    }

    /// <summary>The edges at which two faces meet.</summary>
    public IReadOnlyList<SolidEdge> Edges { get; }

    /// <summary>Every way to leave just enough edges uncut that all faces hang together: the spanning trees, in a fixed order.</summary>
    public IEnumerable<IReadOnlyList<SolidEdge>> Trees() => Trees(0, [], [.. Enumerable.Range(0, faces.Count)]);

    /// <summary>The faces laid flat along a tree, seen from inside the solid; the first lies at the origin.</summary>
    /// <returns>The corners of each face on the page, clockwise, in the order of the solid's faces and their corners.</returns>
    public IReadOnlyList<IReadOnlyList<Point>> Flat(IReadOnlyList<SolidEdge> tree)
    {
        ArgumentNullException.ThrowIfNull(tree);
        var laid = new Point[faces.Count][];
        laid[0] = Lay(0, 0, default, new Point(1, 0));
        for (var done = 1; done < faces.Count;)
        {
            var before = done;
            foreach (var edge in tree)
            {
                var (from, fromSide, to, toSide) = laid[edge.First] is not null
                    ? (edge.First, edge.FirstSide, edge.Second, edge.SecondSide)
                    : (edge.Second, edge.SecondSide, edge.First, edge.FirstSide);
                if (laid[from] is null || laid[to] is not null)
                    continue;

                // The neighbour runs along the edge the other way.
                var (start, end) = (laid[from][(fromSide + 1) % laid[from].Length], laid[from][fromSide]);
                laid[to] = Lay(to, toSide, start, end - start);
                done++;
            }

            if (done == before)
                throw new ArgumentException("The edges do not hold all faces together.", nameof(tree));
        }

        return laid;
    }

    /// <summary>Whether no two faces lie over each other when they are laid flat.</summary>
    public static bool IsNet(IReadOnlyList<IReadOnlyList<Point>> flat)
    {
        ArgumentNullException.ThrowIfNull(flat);
        var outlines = flat.Select(face => Outline.Through([.. face])).ToList();
        for (var i = 0; i < outlines.Count; i++)
        {
            for (var j = i + 1; j < outlines.Count; j++)
            {
                if (Overlap.Area(outlines[i], outlines[j]) > 1e-6 * outlines[i].Area)
                    return false;
            }
        }

        return true;
    }

    private static bool Same(Vector3d a, Vector3d b) => a.DistanceTo(b) < 1e-6;

    private Vector3d Next(int face, int corner) => faces[face][(corner + 1) % faces[face].Count];

    // One face with a side of it where it is wanted. Anticlockwise from outside is clockwise from inside, on a page that
    // counts downwards: its turns keep their sense.
    private Point[] Lay(int face, int side, Point start, Point along)
    {
        var corners = faces[face];
        var origin = corners[side];
        var x = (Next(face, side) - origin).Unit;
        var normal = Normal(face);
        var y = normal.Cross(x);
        var (cosine, sine) = (along.X / Math.Sqrt(along.Dot(along)), along.Y / Math.Sqrt(along.Dot(along)));
        return [.. corners.Select(corner => corner - origin).Select(corner => (X: x.Dot(corner), Y: y.Dot(corner)))
            .Select(at => start + new Point((at.X * cosine) - (at.Y * sine), (at.X * sine) + (at.Y * cosine)))];
    }

    private Vector3d Normal(int face)
    {
        var corners = faces[face];
        var sum = default(Vector3d);
        for (var i = 2; i < corners.Count; i++)
            sum += (corners[i - 1] - corners[0]).Cross(corners[i] - corners[0]);
        return sum.Unit;
    }

    // Each edge in turn is kept, if it does not close a ring, or cut, if what is left can still reach every face.
    private IEnumerable<IReadOnlyList<SolidEdge>> Trees(int edge, List<SolidEdge> kept, int[] groups)
    {
        if (kept.Count == faces.Count - 1)
        {
            yield return [.. kept];
            yield break;
        }

        if (edge == Edges.Count || Edges.Count - edge < faces.Count - 1 - kept.Count)
            yield break;
        var (a, b) = (groups[Edges[edge].First], groups[Edges[edge].Second]);
        if (a != b)
        {
            int[] joined = [.. groups.Select(group => group == b ? a : group)];
            foreach (var tree in Trees(edge + 1, [.. kept, Edges[edge]], joined))
                yield return tree;
        }

        foreach (var tree in Trees(edge + 1, kept, groups))
            yield return tree;
    }
}

/// <summary>An edge of a solid: a side of one face and a side of another.</summary>
/// <param name="First">One face, by its place.</param>
/// <param name="FirstSide">The side of it, from that corner to the next.</param>
/// <param name="Second">The other face.</param>
/// <param name="SecondSide">The side of that.</param>
public readonly record struct SolidEdge(int First, int FirstSide, int Second, int SecondSide);
