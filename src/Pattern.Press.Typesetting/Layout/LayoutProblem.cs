using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Typesetting.Layout;

/// <summary>Something that could not be laid out as asked.</summary>
/// <param name="Source">Where the block came from, if it was written by a maker.</param>
/// <param name="Message">What is wrong and what to do about it, as a sentence.</param>
public sealed record LayoutProblem(BlockSource? Source, string Message)
{
    /// <summary>The words that it is about, as they were to be set; empty when it is not about words.</summary>
    public string Words { get; init; } = "";

    /// <summary>The name of the place that a link should lead to; empty when it is not about a link.</summary>
    public string MissingPlace { get; init; } = "";

    /// <summary>The room there is for those words, in millimetres; 0 when it is not about room.</summary>
    public double Room { get; init; }
}
