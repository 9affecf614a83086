using Pattern.Press.Measure;

namespace Pattern.Press.Structures.Fitting;

/// <summary>The shape of what goes inside, seen from above.</summary>
public enum ItemShape
{
    /// <summary>A circle: a tin, a jar, a candle.</summary>
    Round,

    /// <summary>A rectangle: a bar of soap, a book, a cup's packing.</summary>
    Rectangular,
}

/// <summary>What goes inside.</summary>
/// <param name="Name">What it is, in words: <c>a round tin of loose tea</c>.</param>
/// <param name="Shape">Its shape seen from above.</param>
/// <param name="Width">Across, or the diameter.</param>
/// <param name="Depth">The other way across, or the diameter.</param>
/// <param name="Height">How tall it stands.</param>
public sealed record Item(string Name, ItemShape Shape, Length Width, Length Depth, Length Height);
