namespace Pattern.Press.Nets.Folding;

/// <summary>A piece folded to some angles. The root stays where it lies on the sheet, unless the pose was moved.</summary>
/// <param name="Piece">The piece; where panels bend, with those cut into strips.</param>
/// <param name="Panels">Its panels in space, in the piece's order.</param>
/// <param name="Angles">
/// The angle of every fold in degrees, in its own direction: 0 flat, <see cref="Fold.Angle"/> finished, below 0 bent the
/// wrong way. Those of folds that close loops are measured between their panels.
/// </param>
/// <param name="Gaps">For each fold that closes a loop, how well it closes.</param>
public sealed record Pose(
    Piece Piece, IReadOnlyList<PosedPanel> Panels, IReadOnlyDictionary<Fold, double> Angles, IReadOnlyList<LoopGap> Gaps)
{
    /// <summary>
    /// The piece with its panels that bend cut into strips; the panels and folds of the pose are those of this one.
    /// </summary>
    public StripPiece Strips { get; init; } = StripPiece.Of(Piece);

    /// <summary>The widest gap of any loop in millimetres; 0 when there are no loops.</summary>
    public double WidestGap => Gaps.Count == 0 ? 0 : Gaps.Max(gap => gap.Width);

    /// <summary>The panel of that name.</summary>
    /// <exception cref="ArgumentException">There is none.</exception>
    public PosedPanel Panel(string name) =>
        Panels.FirstOrDefault(panel => panel.Panel.Name == name)
        ?? throw new ArgumentException($"The piece “{Piece.Id}” has no panel “{name}”.", nameof(name));

    /// <summary>The root panel.</summary>
    public PosedPanel Root => Panel(Piece.Root);

    /// <summary>The same pose, moved as a whole.</summary>
    public Pose Moved(RigidMotion motion) =>
        this with { Panels = [.. Panels.Select(panel => new PosedPanel(panel.Panel, motion.After(panel.Motion)))] };
}

/// <summary>How well a loop of panels closes at the fold that was left out of the tree.</summary>
/// <param name="Fold">The fold.</param>
/// <param name="Width">How far apart its ends are on its two panels, the larger of the two distances, in millimetres.</param>
public readonly record struct LoopGap(Fold Fold, double Width);
