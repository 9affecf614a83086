namespace Pattern.Press.Measure;

/// <summary>
/// The sheet that a basis weight in pounds refers to: so many pounds are the weight of 500 sheets of it. Sizes as in the
/// paper merchants' basis-weight tables.
/// </summary>
/// <param name="Name">The paper trade's word: <c>cover</c>.</param>
/// <param name="Size">The size of the basic sheet.</param>
public sealed record BasicSheet(string Name, Size Size)
{
    /// <summary>Bond and ledger, 17 × 22 in.</summary>
    public static BasicSheet Bond { get; } = Of("bond", 17, 22);

    /// <summary>Text, book and offset, 25 × 38 in.</summary>
    public static BasicSheet Text { get; } = Of("text", 25, 38);

    /// <summary>Cover, 20 × 26 in.</summary>
    public static BasicSheet Cover { get; } = Of("cover", 20, 26);

    /// <summary>Tag, 24 × 36 in.</summary>
    public static BasicSheet Tag { get; } = Of("tag", 24, 36);

    /// <summary>Index, 25½ × 30½ in.</summary>
    public static BasicSheet Index { get; } = Of("index", 25.5m, 30.5m);

    /// <summary>Every basic sheet, in alphabetical order.</summary>
    public static IReadOnlyList<BasicSheet> All { get; } = [Bond, Cover, Index, Tag, Text];

    private static BasicSheet Of(string name, decimal width, decimal height) =>
        new(name, new Size(Length.FromInches(width), Length.FromInches(height)));
}
