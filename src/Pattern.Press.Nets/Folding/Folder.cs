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
    /// go all the way over, such as inner walls, those that face each other together. A piece whose panels form loops moves as a whole, as in
    /// <see cref="Pose(Piece, double)"/>.
    /// </summary>
    /// <param name="piece">The piece.</param>
    /// <param name="opening">How far it is folded: 0 flat, 1 finished. Each of the steps there are takes an equal share.</param>
    /// <exception cref="ArgumentOutOfRangeException">The opening is outside 0 to 1.</exception>
    public static Pose InOrder(Piece piece, double opening)
    {
        ArgumentNullException.ThrowIfNull(piece);
        return InOrder(StripPiece.Of(piece), opening);
    }

    /// <summary>The same for a piece that was cut into strips before.</summary>
    internal static Pose InOrder(StripPiece strips, double opening)
    {
        var tree = HingeTree.Of(strips);
        if (tree.Loops.Count > 0 || opening is not (> 0 and < 1))
            return Pose(strips, opening);
        var ranks = tree.Outwards.ToDictionary(hinge => hinge.Fold, hinge => Rank(hinge, tree.Piece));
        var steps = ranks.Values.Distinct().Order().ToList();
        return Make(tree, hinge =>
        {
            var share = (opening * steps.Count) - steps.IndexOf(ranks[hinge.Fold]);
            return hinge.Fold.Angle * Math.Clamp(share, 0, 1);
        });
    }

    // Panels that go all the way over pass through each other's way at the corners, so those that face each other go
    // together and the others after them: by the way their folds run, from 0 to below 180 degrees.
    private static double Rank(Hinge hinge, Piece piece)
    {
        if (hinge.Fold.Angle <= 179)
            return piece.Panels[hinge.Turning].Role == PanelRole.Tab ? 0 : 1;
        var along = hinge.To - hinge.From;
        var heading = Math.Round(Math.Atan2(along.Y, along.X) * 180 / Math.PI, 3);
        return 2 + (((heading % 180) + 180) % 180 / 180);
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

    private static Pose Make(HingeTree tree, Func<Hinge, double> angle)
    {
        var motions = new RigidMotion[tree.Piece.Panels.Count];
        tree.Fold(angle, motions);
        var angles = new Dictionary<Fold, double>();
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

        return new Pose(tree.Piece, [.. tree.Piece.Panels.Select((panel, i) => new PosedPanel(panel, motions[i]))], angles, gaps) { Strips = tree.Strips };
    }
}
