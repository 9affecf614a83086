namespace Pattern.Press.Nets.Folding;

/// <summary>When folds that meet at one point inside a sheet let it fold flat.</summary>
/// <remarks>T. Hull, “On the mathematics of flat origamis”, Congressus Numerantium 100, 1994.</remarks>
public static class FlatFolding
{
    /// <summary>
    /// Kawasaki's sum: the angles between neighbouring folds around a point, added and subtracted in turn, in degrees. It
    /// is 0 exactly when the point can fold flat.
    /// </summary>
    /// <param name="angles">The angles in order around the point; they add up to 360.</param>
    /// <exception cref="ArgumentException">Their number is odd: such a point never folds flat.</exception>
    public static double KawasakiSum(IReadOnlyList<double> angles)
    {
        ArgumentNullException.ThrowIfNull(angles);
        if (angles.Count % 2 != 0)
            throw new ArgumentException("An odd number of folds around a point never folds flat.", nameof(angles));
        var sum = 0.0;
        for (var i = 0; i < angles.Count; i++)
            sum += i % 2 == 0 ? angles[i] : -angles[i];
        return sum;
    }

    /// <summary>Maekawa's difference: mountain folds minus valley folds. Where a point is folded flat it is 2 or −2.</summary>
    public static int MaekawaDifference(IEnumerable<FoldDirection> folds) =>
        folds.Sum(direction => direction == FoldDirection.Mountain ? 1 : -1);

    /// <summary>Whether folds around a point satisfy both conditions.</summary>
    /// <param name="point">The point with its folds.</param>
    /// <param name="tolerance">How far Kawasaki's sum may be from 0, in degrees.</param>
    public static bool Holds(InteriorPoint point, double tolerance = 1e-6)
    {
        ArgumentNullException.ThrowIfNull(point);
        return point.Folds.Count % 2 == 0
            && Math.Abs(KawasakiSum(point.Angles)) <= tolerance
            && Math.Abs(MaekawaDifference(point.Folds.Select(fold => fold.Direction))) == 2;
    }
}
