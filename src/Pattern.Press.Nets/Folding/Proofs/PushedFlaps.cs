namespace Pattern.Press.Nets.Folding.Proofs;

/// <summary>
/// The flaps of a piece that hang on folds along arcs, as hands push them in: a tube glued flat is squeezed until its faces
/// bow, and then one flap after the other springs in. While it springs, card bends across its rulings; before and after, it
/// holds still.
/// </summary>
/// <remarks>
/// That strips cannot follow the spring is no want of a better way. At every end of a ruling four folds meet: the ruling, as it
/// goes straight on in the flap, and two stretches of the arc. Such a point either folds along the ruling, both stretches
/// flat, or along all four; one changes to the other only where all four are flat. Each stretch joins two such points, so all of
/// them would have to change at once, with the face flat; and a face that is glued to another one with a flap in is not.
/// </remarks>
public sealed class PushedFlaps
{
    private readonly StripPiece strips;
    private readonly List<List<string>> flaps;

    private PushedFlaps(StripPiece strips, List<List<string>> flaps) => (this.strips, this.flaps) = (strips, flaps);

    /// <summary>The strips of all of them, by name.</summary>
    public IReadOnlySet<string> Names => flaps.SelectMany(names => names).ToHashSet(StringComparer.Ordinal);

    /// <summary>The flaps of a piece; none where no fold runs along an arc.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="strips">The same, cut into strips.</param>
    public static PushedFlaps Of(Piece piece, StripPiece strips)
    {
        ArgumentNullException.ThrowIfNull(piece);
        ArgumentNullException.ThrowIfNull(strips);
        var kinds = strips.Closing.Select(fold => strips.Piece.Panel(fold.Child).Kind).ToHashSet(StringComparer.Ordinal);
        return new(strips, [.. piece.Panels.Where(panel => kinds.Contains(panel.Kind)).Select(panel => strips.StripsOf(panel.Name).Select(strip => strip.Name).ToList())]);
    }

    /// <summary>
    /// The tube on its way from flat to bowed, every flap straight on from its face: each ruling turns by the same part of its
    /// finished angle, and the folds beside the faces, over at first, give as much as those bow.
    /// </summary>
    /// <param name="positions">How many positions.</param>
    public IEnumerable<Pose> Bowing(int positions)
    {
        if (flaps.Count == 0)
            return [];
        var bowed = Out(_ => true).Angles;
        return Enumerable.Range(0, positions).Select(i => (double)i / positions).Select(part => Folder.Pose(
            strips,
            fold => strips.Rulings.Contains(fold) ? bowed[fold] * part : Joins(fold) ? 180 - (part * (180 - fold.Angle)) : bowed[fold]));

        bool Joins(Fold fold) => !strips.Closing.Contains(fold) && bowed[fold] > 90;
    }

    /// <summary>The bowed piece with some flaps in and the others out: every state in which it holds still before the last is in.</summary>
    public IEnumerable<Pose> SomeIn() => Enumerable.Range(0, (1 << flaps.Count) - 1).Select(mask => Out(i => (mask & (1 << i)) == 0));

    private Pose Out(Func<int, bool> isOut) => Folder.Opened(strips, [.. flaps.Where((_, i) => isOut(i)).SelectMany(names => names)], 0);
}
