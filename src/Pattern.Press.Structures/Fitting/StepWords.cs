namespace Pattern.Press.Structures.Fitting;

/// <summary>
/// What a structure says itself about how hands make it, in place of what a draft would say: sentences in the words of
/// booklets, values in double braces among them. Mostly there are none.
/// </summary>
public sealed record StepWords
{
    /// <summary>No words at all.</summary>
    public static StepWords None { get; } = new();

    /// <summary>Cautions of its own, beside the usual ones.</summary>
    public IReadOnlyList<string> Cautions { get; init; } = [];

    /// <summary>What is said of cutting a piece to shape beside what is always said, by the piece's id.</summary>
    public IReadOnlyDictionary<string, IReadOnlyList<string>> Cut { get; init; } = new Dictionary<string, IReadOnlyList<string>>();

    /// <summary>How a piece is folded and glued, by the piece's id.</summary>
    public IReadOnlyDictionary<string, IReadOnlyList<string>> Fold { get; init; } = new Dictionary<string, IReadOnlyList<string>>();

    /// <summary>How a piece, or the item, goes to its place, by its id.</summary>
    public IReadOnlyDictionary<string, IReadOnlyList<string>> Place { get; init; } = new Dictionary<string, IReadOnlyList<string>>();

    /// <summary>How it is closed when all is inside.</summary>
    public IReadOnlyList<string> Close { get; init; } = [];
}
