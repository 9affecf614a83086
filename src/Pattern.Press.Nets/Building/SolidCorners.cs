using Pattern.Press.Nets.Folding;

namespace Pattern.Press.Nets.Building;

/// <summary>The corners of the five regular solids, each about the origin, of any size.</summary>
internal static class SolidCorners
{
    // The golden ratio, in which the sides of the dodecahedron and the icosahedron stand.
    private static readonly double Golden = (1 + Math.Sqrt(5)) / 2;

    public static IReadOnlyList<Vector3d> Tetrahedron => [new(1, 1, 1), new(1, -1, -1), new(-1, 1, -1), new(-1, -1, 1)];

    public static IReadOnlyList<Vector3d> Cube =>
        [.. from x in Signs from y in Signs from z in Signs select new Vector3d(x, y, z)];

    public static IReadOnlyList<Vector3d> Octahedron =>
        [.. Signs.SelectMany(sign => new[] { new Vector3d(sign, 0, 0), new Vector3d(0, sign, 0), new Vector3d(0, 0, sign) })];

    public static IReadOnlyList<Vector3d> Icosahedron => [.. Turned(1, Golden)];

    public static IReadOnlyList<Vector3d> Dodecahedron => [.. Cube, .. Turned(1 / Golden, Golden)];

    private static readonly double[] Signs = [-1, 1];

    private static IEnumerable<Vector3d> Turned(double a, double b) =>
        from i in Signs
        from j in Signs
        from corner in new[] { new Vector3d(0, i * a, j * b), new Vector3d(i * a, j * b, 0), new Vector3d(j * b, 0, i * a) }
        select corner;
}
