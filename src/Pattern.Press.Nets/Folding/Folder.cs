namespace Pattern.Press.Nets.Folding;

/// <summary>
/// Folds pieces in space. Panels are rigid and without thickness; each turns about its fold.
/// </summary>
public static class Folder
{
    /// <summary>
    /// Folds a piece part of the way. Folds at the root, and folds that no loop holds, turn by that part of their finished
    /// angle; folds of panels that form loops, such as gussets, take the angles that keep the loops closed, on the way that
    /// ends in the finished shape.
    /// </summary>
    /// <param name="piece">The piece.</param>
    /// <param name="opening">How far it is folded: 0 flat, 1 finished.</param>
    /// <exception cref="ArgumentOutOfRangeException">The opening is outside 0 to 1.</exception>
    /// <remarks>Whether the loops do close is for the caller to see from <see cref="Pose.Gaps"/>.</remarks>
    public static Pose Pose(Piece piece, double opening)
    {
        ArgumentNullException.ThrowIfNull(piece);
        return Pose(StripPiece.Of(piece), opening);
    }

    /// <summary>The same for a piece that was cut into strips before.</summary>
    internal static Pose Pose(StripPiece strips, double opening)
    {
        if (opening is not (>= 0 and <= 1))
            throw new ArgumentOutOfRangeException(nameof(opening), opening, "A piece is folded from 0 (flat) to 1 (finished).");
        var tree = HingeTree.Of(strips);
        var angles = tree.AnglesAt(opening);
        return Make(tree, hinge => angles[hinge.Fold]);
    }

    /// <summary>
    /// Folds a piece part of the way in the order that hands fold it: first the tabs, then the walls, last the panels that
    /// go all the way over, such as inner walls, those that face each other together. Panels that form loops move together, as
    /// in <see cref="Pose(Piece, double)"/>; those of them that are named open stand straight on from the walls until these stand.
    /// </summary>
    /// <param name="piece">The piece.</param>
    /// <param name="opening">How far it is folded: 0 flat, 1 finished. Each of the steps there are takes an equal share.</param>
    /// <param name="opens">The kinds of panels of the finished piece that are opened again, such as a roof.</param>
    /// <exception cref="ArgumentOutOfRangeException">The opening is outside 0 to 1.</exception>
    public static Pose InOrder(Piece piece, double opening, IReadOnlyList<string>? opens = null)
    {
        ArgumentNullException.ThrowIfNull(piece);
        return InOrder(StripPiece.Of(piece), opening, opens);
    }

    /// <summary>The same for a piece that was cut into strips before.</summary>
    internal static Pose InOrder(StripPiece strips, double opening, IReadOnlyList<string>? opens = null) =>
        opening is > 0 and < 1 ? FoldingOrder.Usual(HingeTree.Of(strips), opens ?? []).At(opening) : Pose(strips, opening);

    /// <summary>
    /// Opens a finished piece: panels of the kinds that are named keep only a part of their finished angles. Where loops hold
    /// them, the first kind is turned so and the others, gussets among them, take the angles that keep the loops closed;
    /// flaps on folds along arcs go wholly open, which strips allow, since on the way there the card bends across them.
    /// </summary>
    /// <param name="piece">The piece.</param>
    /// <param name="kinds">The kinds of panels that open, such as a roof; or single panels of a kind, by name.</param>
    /// <param name="part">How far they are still folded: 0 wholly open, 1 finished.</param>
    /// <exception cref="ArgumentOutOfRangeException">The part is outside 0 to 1.</exception>
    public static Pose Opened(Piece piece, IReadOnlyList<string> kinds, double part)
    {
        ArgumentNullException.ThrowIfNull(piece);
        ArgumentNullException.ThrowIfNull(kinds);
        return Opened(StripPiece.Of(piece), kinds, part);
    }

    /// <summary>The same for a piece that was cut into strips before.</summary>
    internal static Pose Opened(StripPiece strips, IReadOnlyList<string> kinds, double part)
    {
        if (part is not (>= 0 and <= 1))
            throw new ArgumentOutOfRangeException(nameof(part), part, "What opens is folded from 0 (open) to 1 (finished).");
        var tree = HingeTree.Of(strips);
        var angles = tree.Opening(kinds).Angles(part);
        return Make(tree, hinge => angles[hinge.Fold]);
    }

    /// <summary>Folds a piece to given angles, whether or not its loops close.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="angle">
    /// The angle of each fold in degrees, in its own direction: 0 flat, <see cref="Fold.Angle"/> finished. It is asked only
    /// for folds on the shortest way from the root to a panel; the others close loops and are measured.
    /// </param>
    public static Pose Pose(Piece piece, Func<Fold, double> angle)
    {
        ArgumentNullException.ThrowIfNull(piece);
        ArgumentNullException.ThrowIfNull(angle);
        return Make(HingeTree.Of(StripPiece.Of(piece)), hinge => angle(hinge.Fold));
    }

    /// <summary>The same for a piece that was cut into strips before.</summary>
    internal static Pose Pose(StripPiece strips, Func<Fold, double> angle) => Make(HingeTree.Of(strips), hinge => angle(hinge.Fold));

    /// <summary>Folds a piece to given angles, whether or not its loops close; folds that are not named stay flat.</summary>
    public static Pose Pose(Piece piece, IReadOnlyDictionary<Fold, double> angles)
    {
        ArgumentNullException.ThrowIfNull(angles);
        return Pose(piece, fold => angles.GetValueOrDefault(fold));
    }

    /// <summary>
    /// Folds a piece to the angles of its finished shape, as they are given, whether or not its loops close. Along curved
    /// folds the angles are given at one place only; there they are solved for.
    /// </summary>
    public static Pose Finished(Piece piece)
    {
        ArgumentNullException.ThrowIfNull(piece);
        var tree = HingeTree.Of(StripPiece.Of(piece));
        if (tree.Strips.Closing.Count == 0)
            return Make(tree, hinge => hinge.Fold.Angle);
        var angles = tree.AnglesAt(1);
        return Make(tree, hinge => angles[hinge.Fold]);
    }

    internal static Pose Make(HingeTree tree, Func<Hinge, double> angle)
    {
        var motions = new RigidMotion[tree.Piece.Panels.Count];
        tree.Fold(angle, motions);
        var angles = new Dictionary<Fold, double>(tree.Outwards.Count + tree.Loops.Count);
        foreach (var hinge in tree.Outwards)
            angles[hinge.Fold] = angle(hinge);
        var gaps = new LoopGap[tree.Loops.Count];
        for (var i = 0; i < gaps.Length; i++)
        {
            var loop = tree.Loops[i];
            var (a, b) = (motions[loop.Fixed], motions[loop.Turning]);
            angles[loop.Fold] = loop.AngleBetween(a, b);
            gaps[i] = new LoopGap(
                loop.Fold,
                Math.Max(a.Apply(loop.From).DistanceTo(b.Apply(loop.From)), a.Apply(loop.To).DistanceTo(b.Apply(loop.To))));
        }

        var panels = new PosedPanel[motions.Length];
        for (var i = 0; i < panels.Length; i++)
            panels[i] = new PosedPanel(tree.Piece.Panels[i], motions[i]);
        return new Pose(tree.Piece, panels, angles, gaps) { Strips = tree.Strips };
    }
}
