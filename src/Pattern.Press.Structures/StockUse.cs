namespace Pattern.Press.Structures;

/// <summary>A stock a structure is made from.</summary>
/// <param name="Id">Its word in booklets: <c>card</c>.</param>
/// <param name="Means">What it is for and what suits, a sentence.</param>
/// <param name="When">The condition under which it is needed, as the file has it; null when it always is.</param>
public sealed record StockUse(string Id, string Means, string? When = null);
