using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Typesetting.Layout;

/// <summary>Lays out a book on pages.</summary>
public static class BookLayout
{
    // Page numbers in the text move lines, and lines move page numbers; it settles at once or nearly so.
    private const int MostPasses = 5;

    /// <summary>Lays out a book.</summary>
    /// <param name="book">What to lay out.</param>
    /// <param name="styles">How it looks.</param>
    /// <param name="problems">What did not fit; anything here means the pages should not be printed.</param>
    /// <param name="words">The book's words, where it is laid out on other papers too; null if not.</param>
    public static PressDocument LayOut(Book book, StyleSheet styles, ICollection<LayoutProblem> problems, BookWords? words = null)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(styles);
        ArgumentNullException.ThrowIfNull(problems);
        var outline = new BookOutline(book);
        var memory = new LayoutMemory(styles, words ?? new BookWords(book.Language));
        IReadOnlyDictionary<string, string> labels = new Dictionary<string, string>();
        for (var pass = 1; ; pass++)
        {
            var session = new LayoutSession(book, styles, outline, memory, labels);
            var layout = new BookPass(session);
            layout.Plan();
            var settled = session.UsedLabels.All(used => layout.Labels.TryGetValue(used.Key, out var label) ? label == used.Value : true);
            if (!settled && pass < MostPasses)
            {
                labels = layout.Labels;
                continue;
            }

            session.EndTrials(wordsToo: words is null);
            var document = layout.Draw();
            foreach (var problem in session.Problems)
                problems.Add(problem);
            return document;
        }
    }
}
