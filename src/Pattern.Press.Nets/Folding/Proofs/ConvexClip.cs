namespace Pattern.Press.Nets.Folding.Proofs;

/// <summary>Cuts polygons by planes.</summary>
internal static class ConvexClip
{
    /// <summary>The part of a flat polygon where the scalar product with an arrow is at least a number.</summary>
    public static List<Vector3d> Keep(List<Vector3d> corners, Vector3d up, double atLeast)
    {
        var kept = new List<Vector3d>(corners.Count + 1);
        for (var i = 0; i < corners.Count; i++)
        {
            var (here, next) = (corners[i], corners[(i + 1) % corners.Count]);
            var (a, b) = (up.Dot(here) - atLeast, up.Dot(next) - atLeast);
            if (a >= 0)
                kept.Add(here);
            if ((a > 0 && b < 0) || (a < 0 && b > 0))
                kept.Add(here.Towards(next, a / (a - b)));
        }

        return kept;
    }
}
