using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Typesetting.Layout;

/// <summary>Something that could not be laid out as asked.</summary>
/// <param name="Source">Where the block came from, if it was written by a maker.</param>
/// <param name="Message">What is wrong and what to do about it, as a sentence.</param>
public sealed record LayoutProblem(BlockSource? Source, string Message);
