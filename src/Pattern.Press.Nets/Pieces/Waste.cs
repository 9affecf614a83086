namespace Pattern.Press.Nets;

/// <summary>A region of the sheet that is cut away.</summary>
/// <param name="Outline">Its edge, in the sheet's millimetres.</param>
/// <param name="Holes">Regions inside it that stay, each an outline; mostly none.</param>
public sealed record Waste(Outline Outline, IReadOnlyList<Outline> Holes);
