namespace Pattern.Press.Nets;

/// <summary>
/// How the pieces of a kit come together in one frame: x to the right, y to the back, z up, in millimetres; the first piece
/// stands on the ground with the middle of its root at the origin. Nothing here depends on what a piece is called.
/// </summary>
/// <param name="Parts">
/// The pieces, and the item as <see cref="Item"/>, each after the one it goes to; the first stands on the ground. Pieces
/// that the kit does not have are not here either.
/// </param>
/// <param name="Seams">
/// Seams that are said outright. All others are found from the folded shape: a panel that takes glue lies on whatever it
/// touches on its glued side.
/// </param>
public sealed record Assembly(IReadOnlyList<AssembledPart> Parts, IReadOnlyList<Seam> Seams)
{
    /// <summary>The word for what goes inside, in place of a piece's id.</summary>
    public const string Item = "item";

    /// <summary>The assembly of a kit that says nothing: its first piece as it is drawn, the item inside.</summary>
    public static Assembly OfFirst(IReadOnlyList<Part> parts)
    {
        ArgumentNullException.ThrowIfNull(parts);
        var first = parts.FirstOrDefault(part => part.Kind == PartKind.Piece)?.Piece.Id;
        return first is null
            ? new Assembly([], [])
            : new Assembly([new AssembledPart(first), new AssembledPart(Item) { Goes = GoesWhere.Inside, To = first }], []);
    }

    /// <summary>The entry of a piece or of the item, or null.</summary>
    public AssembledPart? Find(string part) => Parts.FirstOrDefault(one => one.Part == part);
}
