namespace Pattern.Press.Nets.Folding.Proofs;

/// <summary>A panel that takes glue, or is tucked in, and what it lies on in the folded thing.</summary>
/// <param name="Part">The part it is of.</param>
/// <param name="Panel">The panel.</param>
/// <param name="Other">The part it lies on; null when nothing lies there.</param>
/// <param name="Target">The panel it lies on; null when there is none.</param>
/// <param name="Side">The side of the target that it lies on.</param>
/// <param name="Away">How far its plane is from the target's, the farthest of its corners, in millimetres.</param>
/// <param name="Beyond">How far it reaches beyond the target, in millimetres.</param>
/// <param name="Hold">How it holds.</param>
public sealed record FoundSeam(
    PosedPart Part, PosedPanel Panel, PosedPart? Other, PosedPanel? Target, SheetSide Side, double Away, double Beyond, SeamHold Hold)
{
    /// <summary>Whether it lies on the panel that it hangs from, folded all the way over.</summary>
    public bool IsFoldedOver => Other == Part && Target is not null && Part.Pose!.Piece.Folds.Any(fold =>
        fold.GoesOver && ((fold.Child == Panel.Panel.Name && fold.Parent == Target.Panel.Name) || (fold.Parent == Panel.Panel.Name && fold.Child == Target.Panel.Name)));
}
