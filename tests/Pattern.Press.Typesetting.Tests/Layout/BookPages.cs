using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Layout;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Structure;
using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Typesetting.Tests.Layout;

/// <summary>A line of words as it stands on a page.</summary>
internal sealed record WordsOnPage(string Text, double X, double Y, double Right, StructureElement? Element);

/// <summary>Lays out small books and reads their pages as a person would.</summary>
internal static class BookPages
{
    /// <summary>Lays out blocks on pages whose text area holds so many lines of body text, and so many millimetres across.</summary>
    public static PressDocument LayOut(double lines, double width, StyleSheet styles, ICollection<LayoutProblem> problems, params IReadOnlyList<Block> blocks) =>
        BookLayout.LayOut(Book(lines, width, styles, new FlowPart(blocks)), styles, problems);

    /// <summary>The same, and nothing may be wrong.</summary>
    public static PressDocument LayOut(double lines, double width, params IReadOnlyList<Block> blocks)
    {
        var problems = new List<LayoutProblem>();
        var document = LayOut(lines, width, TestStyles.Plain, problems, blocks);
        Assert.Empty(problems);
        return document;
    }

    public static Book Book(double lines, double width, StyleSheet styles, params IReadOnlyList<BookPart> parts) => new()
    {
        Title = "Test",
        Language = "en-GB",
        Paper = (width + styles.Spacing.Left + styles.Spacing.Right, (lines * styles.Scale.Leading * 25.4 / 72) + styles.Spacing.Top + styles.Spacing.Bottom + 0.01),
        Parts = parts,
    };

    public static ParagraphBlock Paragraph(string text) => new([new TextInline(text)]);

    /// <summary>A paragraph of so many lines.</summary>
    public static ParagraphBlock Lines(int count, string word) =>
        new([.. Enumerable.Range(1, count).SelectMany(i => i == 1 ? (Inline[])[new TextInline($"{word}{i}")] : [new BreakInline(), new TextInline($"{word}{i}")])]);

    /// <summary>What is read on a page, one line for each baseline in each element, top to bottom.</summary>
    public static IReadOnlyList<WordsOnPage> WordsOf(Page page)
    {
        var words = new List<WordsOnPage>();
        foreach (var item in page.Items)
        {
            if (item is TaggedItem tagged)
                Collect(tagged.Items, 0, 0, tagged.Element, words);
        }

        return words;
    }

    /// <summary>What is shown on a page but not read.</summary>
    public static IReadOnlyList<WordsOnPage> Unread(Page page)
    {
        var words = new List<WordsOnPage>();
        foreach (var artifact in page.Items.OfType<ArtifactItem>())
            Collect(artifact.Items, 0, 0, null, words);
        return words;
    }

    public static string[] TextOf(Page page) => [.. WordsOf(page).Select(words => words.Text.Trim())];

    /// <summary>All elements of a tree, in reading order.</summary>
    public static IEnumerable<StructureElement> All(StructureElement root) => root.Children.SelectMany(All).Prepend(root);

    /// <summary>The tree as nested words: <c>Sect(H1 P(Span Link))</c>.</summary>
    public static string Shape(StructureElement element) =>
        element.Children.Count == 0 ? element.Role.ToString() : $"{element.Role}({string.Join(" ", element.Children.Select(Shape))})";

    private static void Collect(IReadOnlyList<PageItem> items, double dx, double dy, StructureElement? element, List<WordsOnPage> words)
    {
        foreach (var item in items)
        {
            if (item is GroupItem group)
            {
                Collect(group.Items, dx + group.Transform.E, dy + group.Transform.F, element, words);
                continue;
            }

            if (item is not TextItem text)
                continue;
            var trailing = text.Run.Glyphs.Reverse().TakeWhile(glyph => glyph.Length > 0 && string.IsNullOrWhiteSpace(text.Run.Text.Substring(glyph.Start, glyph.Length)));
            var right = text.Run.Width - trailing.Sum(glyph => (glyph.Advance + text.Run.Tracking) * text.Run.Scale);
            var line = new WordsOnPage(text.Run.Text, text.X + dx, text.Y + dy, text.X + dx + right, element);
            if (words.Count > 0 && words[^1] is var last && Math.Abs(last.Y - line.Y) < 0.001 && ReferenceEquals(last.Element, element))
                words[^1] = last with { Text = last.Text + line.Text, Right = line.Right };
            else
                words.Add(line);
        }
    }
}
