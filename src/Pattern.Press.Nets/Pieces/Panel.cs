namespace Pattern.Press.Nets;

/// <summary>A flat region of a piece, bounded by folds and cuts.</summary>
/// <param name="Name">Unique in its piece, in words a maker reads: <c>long wall 1</c>.</param>
/// <param name="Kind">What several panels have in common, in a maker's words: <c>long wall</c>.</param>
/// <param name="Role">What it does.</param>
/// <param name="Outline">Its edge, in the sheet's millimetres.</param>
/// <param name="Note">For a tab or gusset, where it goes: <c>glued under the neighbouring wall</c>; else null.</param>
public sealed record Panel(string Name, string Kind, PanelRole Role, Outline Outline, string? Note = null);
