using Pattern.Press.Acceptance.BadInput;
using Pattern.Press.Acceptance.Printed;

namespace Pattern.Press.Acceptance.Booklets;

/// <summary>A step that says only what kind of work it is gets the figure that shows this work.</summary>
public sealed class FiguresOfKinds
{
    private const string Step = "steps/06-fold-and-glue-the-lid.md";

    [Theory]
    [InlineData("kind: glue", "How the lid is glued together", "Where glue goes on the lid")]
    [InlineData("figure: glue", "Where glue goes on the lid", "How the lid is glued together")]
    [InlineData("kind: fold", "How the lid folds", "Where glue goes on the lid")]
    public void The_first_figure_of_a_step_follows_from_its_kind(string line, string shown, string otherwise)
    {
        using var copy = new BookletCopy().Change(Step, "figure: glue", line);
        var text = File.ReadAllText(Path.Combine(copy.Folder, Step));

        // The figure that the step asks for itself would hide what its kind chooses.
        File.WriteAllText(Path.Combine(copy.Folder, Step), text[..text.IndexOf(":::", StringComparison.Ordinal)]);
        var (code, _, errors) = copy.Build("--paper", "a4");
        Assert.True(code == 0, errors);
        var pages = new PrintedBook(File.ReadAllBytes(Directory.GetFiles(copy.Out, "*.pdf").Single())).Pages;
        var words = string.Join(' ', string.Join(' ', pages.Select(page => page.Text)).Split(default(char[]), StringSplitOptions.RemoveEmptyEntries));
        Assert.Contains(shown, words, StringComparison.Ordinal);
        Assert.DoesNotContain(otherwise, words, StringComparison.Ordinal);
    }
}
