using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Typesetting.Layout;

/// <summary>Something that could not be laid out as asked.</summary>
/// <param name="Source">Where the block came from, if it was written by a maker.</param>
/// <param name="Message">What is wrong, as a sentence.</param>
public sealed record LayoutProblem(BlockSource? Source, string Message);

/// <summary>Lays out a book on pages.</summary>
public static class BookLayout
{
    /// <summary>Lays out a book.</summary>
    /// <param name="book">What to lay out.</param>
    /// <param name="styles">How it looks.</param>
    /// <param name="problems">What did not fit; anything here means the pages should not be printed.</param>
    public static PressDocument LayOut(Book book, StyleSheet styles, ICollection<LayoutProblem> problems) =>
        throw new NotImplementedException();
}
