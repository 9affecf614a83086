namespace Pattern.Press.Nets;

/// <summary>Whether a part is built from or is glued on as decoration.</summary>
public enum PartKind
{
    /// <summary>A piece that folds into the structure.</summary>
    Piece,

    /// <summary>A decorative panel glued on a face.</summary>
    Mat,
}

/// <summary>Which of a mirrored pair a part is.</summary>
public enum Hand
{
    /// <summary>It is its own mirror image, or has none.</summary>
    Either,

    /// <summary>The one drawn with its slanted end to the left.</summary>
    Left,

    /// <summary>The mirror image of <see cref="Left"/>.</summary>
    Right,
}

/// <summary>A piece or mat with how many of it a kit takes and what it is cut from.</summary>
/// <param name="Piece">The shape; a mat has one panel and no folds.</param>
/// <param name="Kind">Structure or decoration.</param>
/// <param name="Stock">The stock it is cut from, by its id in the booklet: <c>card</c>, <c>patterned</c>.</param>
/// <param name="Quantity">How many one kit takes; 1 or more.</param>
/// <param name="For">The face or faces it is for, in a maker's words: <c>the two long walls</c>; null for a piece.</param>
/// <param name="Hand">Which of a mirrored pair.</param>
/// <param name="Goes">For a mat, the piece it is glued on, by id; null for a piece.</param>
/// <param name="On">For a mat, the kinds of that piece's panels that it is glued on; null for a piece.</param>
/// <param name="Side">
/// For a mat, the side of that piece's sheet that it is glued on: facing for the inside of a box, away for the outside.
/// </param>
public sealed record Part(
    Piece Piece,
    PartKind Kind,
    string Stock,
    int Quantity,
    string? For = null,
    Hand Hand = Hand.Either,
    string? Goes = null,
    IReadOnlyList<string>? On = null,
    SheetSide Side = SheetSide.Facing)
{
    /// <summary>For a mat in the shape of its face, how far inside that its edge lies, in millimetres; else null.</summary>
    public double? Inset { get; init; }
}
