using Pattern.Press.Measure;

namespace Pattern.Press.Nets;

/// <summary>Everything that is cut for one finished thing, fitted on one ruler.</summary>
/// <param name="Ruler">The ruler that every measured line lies on.</param>
/// <param name="Parts">Pieces first, then mats, in making order.</param>
public sealed record Kit(Ruler Ruler, IReadOnlyList<Part> Parts)
{
    /// <summary>
    /// How the pieces come together; where nothing else is said, the first piece stands as it is drawn and the item goes
    /// inside.
    /// </summary>
    public Assembly Assembly { get; init; } = Assembly.OfFirst(Parts);

    /// <summary>The pieces, without mats.</summary>
    public IEnumerable<Part> Pieces => Parts.Where(part => part.Kind == PartKind.Piece);
}
