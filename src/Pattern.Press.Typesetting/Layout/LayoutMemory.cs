using Pattern.Press.Typesetting.Layout.Elements;
using Pattern.Press.Typesetting.Layout.Text;
using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Typesetting.Layout;

/// <summary>What does not change from pass to pass over a book, and is remembered.</summary>
/// <param name="styles">How the book looks.</param>
/// <param name="words">Its words.</param>
internal sealed class LayoutMemory(StyleSheet styles, BookWords words)
{
    /// <summary>The styles of words.</summary>
    public TextStyles Texts => words.Styles;

    /// <summary>The paragraphs that were shaped.</summary>
    public ShapedParagraphs Paragraphs => words.Paragraphs;

    /// <summary>How high groups came out that have no numbers of pages in them.</summary>
    public Remembered<GroupHeight> GroupHeights { get; } = new();

    /// <summary>Which arrangement of text and figures was best where they have no numbers of pages in them.</summary>
    public Remembered<int> Arrangements { get; } = new();

    /// <summary>The figures that were drawn.</summary>
    public Drawings Drawings { get; } = new(styles);

    /// <summary>
    /// Forgets what only trials need: when all is planned there are none any more, and then pages that are drawn can let go
    /// of all they are made from, which in a long book is more than the pages.
    /// </summary>
    /// <param name="wordsToo">Whether nobody else has its words.</param>
    public void EndTrials(bool wordsToo)
    {
        GroupHeights.Clear();
        Arrangements.Clear();
        Drawings.Clear();
        if (wordsToo)
            Paragraphs.Clear();
    }
}
