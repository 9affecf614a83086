using Pattern.Press.Measure;

namespace Pattern.Press.Nets;

/// <summary>Everything that is cut for one finished thing, fitted on one ruler.</summary>
/// <param name="Ruler">The ruler that every measured line lies on.</param>
/// <param name="Parts">Pieces first, then mats, in making order.</param>
public sealed record Kit(Ruler Ruler, IReadOnlyList<Part> Parts);
