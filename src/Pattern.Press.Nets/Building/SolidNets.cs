using Pattern.Press.Nets.Folding;

namespace Pattern.Press.Nets.Building;

/// <summary>The faces of a convex solid with equal regular faces, and ways to lay them out flat.</summary>
internal sealed class SolidNets
{
    private const int Attempts = 300;
    private const int Kept = 40;
    private readonly int sides;

    // By face and side: the face across, and its side.
    private readonly (int Face, int Side)[][] across;

    public SolidNets(IReadOnlyList<Vector3d> corners)
    {
        var faces = FacesOf(corners);
        sides = faces[0].Count;
        across = [.. faces.Select(face => Enumerable.Range(0, sides).Select(side => Across(faces, face[side], face[(side + 1) % sides])).ToArray())];
        var (one, other) = (Normal(corners, faces[0]), Normal(corners, faces[across[0][0].Face]));
        Dihedral = 180 - (Math.Acos(one.Dot(other)) * 180 / Math.PI);
        Trees = [.. BestTrees()];
    }

    /// <summary>A layout: the faces' outlines, the folds, and the tabs.</summary>
    internal sealed record Layout(IReadOnlyList<Outline> Faces, IReadOnlyList<Hang> Folds, IReadOnlyList<(int On, int OnEdge)> Tabs);

    /// <summary>A face and the side of another that it hangs from.</summary>
    internal readonly record struct Hang(int Face, int By, int On, int OnEdge);

    /// <summary>The angle between two neighbouring faces, inside, in degrees.</summary>
    public double Dihedral { get; }

    /// <summary>Spanning trees, those with the smallest sheets first, each with how the first face is turned for that.</summary>
    public IReadOnlyList<(IReadOnlyList<Hang> Folds, double Turn)> Trees { get; }

    /// <summary>A tree with a tab on one side of every edge that is cut, or null when there is no room for them.</summary>
    public Layout? WithTabs((IReadOnlyList<Hang> Folds, double Turn) tree, double side, Outline strip)
    {
        var face = Motion.Turn(tree.Turn, default).Apply(Polygons.Regular(sides, side));
        var placed = Place(tree.Folds, face);
        var joined = tree.Folds.SelectMany(hang => new[] { (hang.Face, hang.By), (hang.On, hang.OnEdge) }).ToHashSet();
        var taken = placed.ToList();
        var tabs = new List<(int, int)>();
        for (var one = 0; one < across.Length; one++)
        {
            for (var edge = 0; edge < sides; edge++)
            {
                var other = across[one][edge];
                if (joined.Contains((one, edge)) || one > other.Face)
                    continue;
                var found = new[] { (Face: one, Side: edge), other }
                    .Select(seam => (Seam: seam, Outline: On(placed[seam.Face].Edges[seam.Side], strip)))
                    .Where(tab => taken.TrueForAll(region => !region.Bounds.Overlaps(tab.Outline.Bounds) || Overlap.Area(region, tab.Outline) < 1e-3 * side))
                    .Select(tab => ((int Face, int Side, Outline Outline)?)(tab.Seam.Face, tab.Seam.Side, tab.Outline)).FirstOrDefault();
                if (found is not { } free)
                    return null;
                tabs.Add((free.Face, free.Side));
                taken.Add(free.Outline);
            }
        }

        // The first face is given the way it lies; the others are moved to where they hang.
        return new Layout([.. Enumerable.Repeat(face, across.Length)], tree.Folds, tabs);
    }

    private static Outline On(Edge side, Outline strip)
    {
        var by = strip.Edges[2];
        return Motion.Laying(by.To, by.From, side.From, side.To).Apply(strip);
    }

    private List<Outline> Place(IReadOnlyList<Hang> tree, Outline face)
    {
        var placed = new Outline?[across.Length];
        placed[0] = face;
        foreach (var hang in tree)
        {
            var (by, on) = (face.Edges[hang.By], placed[hang.On]!.Edges[hang.OnEdge]);
            placed[hang.Face] = Motion.Laying(by.To, by.From, on.From, on.To).Apply(face);
        }

        return [.. placed.OfType<Outline>()];
    }

    // Trees drawn by a fixed sequence of numbers, so that every machine finds the same ones.
    private IEnumerable<(IReadOnlyList<Hang> Folds, double Turn)> BestTrees()
    {
        var face = Polygons.Regular(sides, 1);
        var chance = 12345u;
        return Enumerable.Range(0, Attempts).Select(_ => Tree(ref chance))
            .Select(tree => (Tree: tree, Sheet: SmallestSheet(Place(tree, face))))
            .OrderBy(found => Math.Round(found.Sheet.Area, 6)).Take(Kept)
            .Select(found => ((IReadOnlyList<Hang>)found.Tree, found.Sheet.Turn)).ToList();
    }

    private List<Hang> Tree(ref uint chance)
    {
        var tree = new List<Hang>();
        var reached = new HashSet<int> { 0 };
        var border = Enumerable.Range(0, sides).Select(side => (On: 0, OnEdge: side)).ToList();
        while (reached.Count < across.Length)
        {
            // Numerical Recipes' quick generator; its upper bits are good enough to draw by.
            chance = unchecked((chance * 1664525) + 1013904223);
            var pick = (int)(chance >> 8) % border.Count;
            var (on, edge) = border[pick];
            border.RemoveAt(pick);
            var (face, by) = across[on][edge];
            if (!reached.Add(face))
                continue;
            tree.Add(new Hang(face, by, on, edge));
            border.AddRange(Enumerable.Range(0, sides).Where(side => side != by).Select(side => (face, side)));
        }

        return tree;
    }

    // A smallest rectangle around points has a side along one of their hull's; sides of faces are enough to look at.
    private static (double Area, double Turn) SmallestSheet(List<Outline> faces)
    {
        var best = (Area: double.PositiveInfinity, Turn: 0.0);
        foreach (var turn in faces.SelectMany(face => face.Edges).Select(edge => edge.To - edge.From)
            .Select(along => Math.Round(Math.Atan2(along.Y, along.X) * 180 / Math.PI, 6)).Select(angle => ((angle % 90) + 90) % 90).Distinct().Order())
        {
            var motion = Motion.Turn(-turn, default);
            var bounds = faces.Select(face => motion.Apply(face).Bounds).Aggregate((all, next) => all.With(next));
            if (bounds.Width * bounds.Height < best.Area - 1e-9)
                best = (bounds.Width * bounds.Height, -turn);
        }

        return best;
    }

    // A face is a plane with corners on it and all others on one side.
    private static List<List<int>> FacesOf(IReadOnlyList<Vector3d> corners)
    {
        var faces = new List<List<int>>();
        for (var i = 0; i < corners.Count; i++)
        {
            for (var j = i + 1; j < corners.Count; j++)
            {
                for (var k = j + 1; k < corners.Count; k++)
                {
                    var normal = (corners[j] - corners[i]).Cross(corners[k] - corners[i]);
                    double[] heights = [.. corners.Select(corner => normal.Dot(corner - corners[i]))];
                    if (heights.Any(height => height > 1e-9) && heights.Any(height => height < -1e-9))
                        continue;
                    var on = Enumerable.Range(0, corners.Count).Where(corner => Math.Abs(heights[corner]) < 1e-9).ToList();
                    if (on[0] == i && !faces.Exists(face => face.ToHashSet().SetEquals(on)))
                        faces.Add(Around(corners, on));
                }
            }
        }

        return faces;
    }

    // Clockwise as seen from inside, which is the side that faces the maker.
    private static List<int> Around(IReadOnlyList<Vector3d> corners, List<int> face)
    {
        var centre = face.Select(corner => corners[corner]).Aggregate((sum, corner) => sum + corner) * (1.0 / face.Count);
        var (out_, across) = (centre, corners[face[0]] - centre);
        var up = out_.Cross(across) * (1 / out_.Length);
        return [.. face.OrderBy(corner => Math.Round(Math.Atan2((corners[corner] - centre).Dot(up), (corners[corner] - centre).Dot(across)), 9))];
    }

    private static Vector3d Normal(IReadOnlyList<Vector3d> corners, List<int> face)
    {
        var normal = (corners[face[1]] - corners[face[0]]).Cross(corners[face[2]] - corners[face[0]]);
        return normal * (1 / normal.Length);
    }

    private static (int Face, int Side) Across(List<List<int>> faces, int from, int to)
    {
        for (var face = 0; face < faces.Count; face++)
        {
            for (var side = 0; side < faces[face].Count; side++)
            {
                if (faces[face][side] == to && faces[face][(side + 1) % faces[face].Count] == from)
                    return (face, side);
            }
        }

        throw new InvalidOperationException("The solid is not closed.");
    }
}
