using System.Collections.Concurrent;
using System.Runtime.CompilerServices;

namespace Pattern.Press.Nets.Folding;

/// <summary>How finely what bends has to be cut into flat strips, so that these stand off the smooth surface by no more than asked.</summary>
/// <remarks>
/// The chord of an arc of radius r that turns by θ stands off its middle by the sagitta s = r (1 − cos(θ/2)), so s is kept by
/// θ ≤ 2 arccos(1 − s/r). Card does not stretch: a strip is as long as the arc, l = rθ, and so is the chord of a circle that is
/// a trifle wider, l/2 = R sin(θ/2), off which it stands by s = R (1 − cos(θ/2)) = (l/2) tan(θ/4). With every strip its own
/// length apart, the flat middles lie ⅔ s inside the smooth surface and the edges ⅓ s outside (both to the order of θ²).
/// </remarks>
public static class Facets
{
    /// <summary>How far strips may stand off the smooth surface in drawings, in millimetres on paper: less than a hair line is wide.</summary>
    public const double OnPaper = 0.1;

    /// <summary>No panel is cut into more strips for it: what is that large is shown smaller, and no hand rolls it truer.</summary>
    public const int Most = 360;

    // Far less than can be printed: a bend that turns so little, in degrees, or is so narrow, in millimetres, is flat.
    private const double Flat = 1e-6;

    private static readonly ConditionalWeakTable<Piece, ConcurrentDictionary<int, Piece>> Known = [];

    /// <summary>How many flat strips of equal width stand for an arc.</summary>
    /// <param name="radius">Its radius in millimetres; above 0.</param>
    /// <param name="turn">How far it turns in degrees; 360 for a circle.</param>
    /// <param name="tolerance">How far a strip may stand off it at most, in millimetres; above 0.</param>
    /// <returns>1 or more, and <see cref="Most"/> at most.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The radius or the tolerance is not above 0.</exception>
    public static int Of(double radius, double turn, double tolerance)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(radius);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(tolerance);
        var whole = Math.Abs(turn) * Math.PI / 180;
        if (tolerance >= 2 * radius)
            return Math.Max(1, (int)Math.Ceiling(whole / Math.PI));

        // By the chord of the same circle first; a strip is longer than that by so little that one more is enough.
        var count = Math.Clamp(Math.Ceiling(whole / (2 * Math.Acos(1 - Math.Min(1, tolerance / radius)))), 1, Most);
        while (count < Most && Sagitta(radius * whole / count, whole / count * 180 / Math.PI) > tolerance)
            count++;
        return (int)count;
    }

    /// <summary>How far a flat strip stands off the arc through its edges, in millimetres.</summary>
    /// <param name="width">How wide the strip is.</param>
    /// <param name="turn">How far the arc turns along it, in degrees; below 360.</param>
    public static double Sagitta(double width, double turn) => width / 2 * Math.Tan(Math.Abs(turn) * Math.PI / 720);

    /// <summary>
    /// A piece cut as finely as keeps a tolerance, but never more coarsely than it comes; a piece that is flat is itself.
    /// </summary>
    /// <param name="piece">The piece.</param>
    /// <param name="tolerance">How far a strip may stand off the smooth surface at most, in millimetres; above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The tolerance is not above 0.</exception>
    public static Piece Within(Piece piece, double tolerance)
    {
        ArgumentNullException.ThrowIfNull(piece);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(tolerance);
        var bends = piece.Panels.Select(panel => panel.Bend).OfType<Bend>().ToList();
        if (bends.Count == 0)
            return piece;
        var most = Math.Max(1, Most / bends.Max(bend => bend.Rulings.Count + 1));
        var times = Math.Min(bends.Max(bend => Times(bend, tolerance)), most);

        // A bow that tightens towards its sides turns more in the last of the narrower strips than in half of a wide one.
        while (times < most && Finer(times).Panels.Any(panel => panel.Bend is { } bend && Times(bend, tolerance) > 1))
            times++;
        return Finer(times);

        Piece Finer(int times) => times == 1 ? piece : Known.GetOrCreateValue(piece).GetOrAdd(times, piece.Finer);
    }

    /// <summary>The same for all pieces of a kit.</summary>
    /// <param name="kit">The kit.</param>
    /// <param name="tolerance">How far a strip may stand off the smooth surface at most, in millimetres; above 0.</param>
    public static Kit Within(Kit kit, double tolerance)
    {
        ArgumentNullException.ThrowIfNull(kit);
        Part[] parts = [.. kit.Parts.Select(part => part.Kind == PartKind.Piece && Within(part.Piece, tolerance) is var finer && finer != part.Piece ? part with { Piece = finer } : part)];
        return parts.SequenceEqual(kit.Parts, ReferenceEqualityComparer.Instance) ? kit : kit with { Parts = parts };
    }

    // Into how many each strip has to be cut.
    private static int Times(Bend bend, double tolerance)
    {
        var most = 1;
        foreach (var (width, turn) in Strips(bend).Where(strip => strip.Width > Flat && strip.Turn > Flat))
            most = Math.Max(most, Of(width / (turn * Math.PI / 180), turn, tolerance));
        return most;
    }

    /// <summary>
    /// How wide each strip between two rulings is where it is widest, in millimetres, and how far the smooth surface turns
    /// there, in degrees. The rim of a cone turns both with the bend and on the sheet, square to each other.
    /// </summary>
    internal static IEnumerable<(double Width, double Turn)> Strips(Bend bend)
    {
        for (var i = 1; i < bend.Rulings.Count; i++)
        {
            var (one, other) = (bend.Rulings[i - 1], bend.Rulings[i]);
            var width = Math.Max(one.From.DistanceTo(other.From), one.To.DistanceTo(other.To));
            var (along, next) = (one.To - one.From, other.To - other.From);
            var onSheet = Math.Atan2(Math.Abs(along.Cross(next)), along.Dot(next)) * 180 / Math.PI;
            yield return (width, double.Hypot(Math.Max(Math.Abs(one.Angle), Math.Abs(other.Angle)), onSheet));
        }
    }
}
