using Pattern.Press.Nets.Folding;

namespace Pattern.Press.Booklets.Figures.Solid;

/// <summary>Cuts a flat polygon into convex ones.</summary>
internal static class ConvexParts
{
    /// <summary>The polygon itself when it is convex, else triangles; anticlockwise as seen from where the normal points.</summary>
    public static IEnumerable<Vector3d[]> Of(IReadOnlyList<Vector3d> corners, Vector3d normal)
    {
        var ring = corners.ToList();
        if (Area(ring, normal) < 0)
            ring.Reverse();
        if (Enumerable.Range(0, ring.Count).All(i => Turn(ring, i, normal) >= -1e-9))
        {
            yield return [.. ring];
            yield break;
        }

        // Ears are clipped one after the other: a corner that turns left and has no other corner in its triangle.
        while (ring.Count > 3)
        {
            var ear = Enumerable.Range(0, ring.Count).Where(i => IsEar(ring, i, normal)).DefaultIfEmpty(0).First();
            yield return [Before(ring, ear), ring[ear], After(ring, ear)];
            ring.RemoveAt(ear);
        }

        yield return [.. ring];
    }

    private static bool IsEar(List<Vector3d> ring, int at, Vector3d normal)
    {
        if (Turn(ring, at, normal) <= 1e-12)
            return false;
        var (a, b, c) = (Before(ring, at), ring[at], After(ring, at));
        foreach (var p in ring)
        {
            if (p == a || p == b || p == c)
                continue;
            if (Side(a, b, p, normal) > -1e-12 && Side(b, c, p, normal) > -1e-12 && Side(c, a, p, normal) > -1e-12)
                return false;
        }

        return true;
    }

    private static double Area(List<Vector3d> ring, Vector3d normal)
    {
        var sum = default(Vector3d);
        for (var i = 2; i < ring.Count; i++)
            sum += (ring[i - 1] - ring[0]).Cross(ring[i] - ring[0]);
        return sum.Dot(normal) / 2;
    }

    private static double Turn(List<Vector3d> ring, int at, Vector3d normal) => Side(Before(ring, at), ring[at], After(ring, at), normal);

    private static double Side(Vector3d a, Vector3d b, Vector3d c, Vector3d normal) => (b - a).Cross(c - a).Dot(normal);

    private static Vector3d Before(List<Vector3d> ring, int at) => ring[(at + ring.Count - 1) % ring.Count];

    private static Vector3d After(List<Vector3d> ring, int at) => ring[(at + 1) % ring.Count];
}
