using Pattern.Press.Booklets.Composing;
using Pattern.Press.Booklets.Content;
using Pattern.Press.Booklets.Phrases;
using Pattern.Press.Booklets.Tests.Content;
using Pattern.Press.Booklets.Tests.Markdown;
using Pattern.Press.Structures.Reading;
using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Styles;
using static Pattern.Press.Booklets.Tests.Markdown.Reading;

namespace Pattern.Press.Booklets.Tests.Composing;

public sealed class NumberingTests
{
    private static readonly PhraseBook Phrases = PhraseBook.Load(Resources.OfProgram.PhrasesFolder, "en-GB", new Problems())!;

    private static readonly StepSource[] Steps =
    [
        .. Enumerable.Range(1, 3).Select(number => new StepSource
        {
            Number = number,
            File = $"steps/0{number}-x.md",
            Title = $"Step title {number}",
            Body = new MarkdownText("", new Place("x.md", 1, 1)),
        }),
    ];

    private static (IReadOnlyList<Block> Blocks, Problems Problems) Numbered(params IReadOnlyList<Block> blocks)
    {
        var problems = new Problems();
        var parts = Numbering.Apply([new FlowPart(blocks)], Phrases, Steps, problems);
        return (Assert.IsType<FlowPart>(parts[0]).Blocks, problems);
    }

    private static FigureBlock Figure(string caption, string? name = null) => new(new Nothing(), "A drawing.", caption.Length > 0 ? [new TextInline(caption)] : [])
    {
        Destination = name is null ? null : Numbering.FigurePrefix + name,
        Source = new BlockSource("steps/01-x.md", 12),
    };

    private static string Caption(Block block) => Shape(Assert.IsType<FigureBlock>(block).Caption);

    [Fact]
    public void Figures_are_numbered_in_reading_order_wherever_they_stand()
    {
        var (blocks, problems) = Numbered(
            new KeepTogetherBlock([new BesideBlock([new QuoteBlock([Figure("in words")])], new FigureRowBlock([Figure("left"), Figure("right")]))]),
            new ListBlock(ListKind.Bulleted, 1, [[Figure("in a list")]]),
            new ColumnsBlock([new CalloutBlock(CalloutKind.Tip, "Tip", [Figure("in a tip")])], 2),
            Figure("last"));
        Assert.Empty(problems.All);
        var beside = Assert.IsType<BesideBlock>(Assert.IsType<KeepTogetherBlock>(blocks[0]).Content[0]);
        Assert.Equal("**Figure 1.** in words", Caption(Assert.IsType<QuoteBlock>(beside.Text[0]).Content[0]));
        Assert.Equal(["**Figure 2.** left", "**Figure 3.** right"], Assert.IsType<FigureRowBlock>(beside.Figure).Figures.Select(Caption));
        Assert.Equal("**Figure 4.** in a list", Caption(Assert.IsType<ListBlock>(blocks[1]).Items[0][0]));
        Assert.Equal("**Figure 5.** in a tip", Caption(Assert.IsType<CalloutBlock>(Assert.IsType<ColumnsBlock>(blocks[2]).Content[0]).Content[0]));
        Assert.Equal("**Figure 6.** last", Caption(blocks[3]));
    }

    [Fact]
    public void A_figure_without_a_caption_has_no_number_and_takes_none()
    {
        var (blocks, _) = Numbered(Figure(""), Figure("second"));
        Assert.Empty(Assert.IsType<FigureBlock>(blocks[0]).Caption);
        Assert.Equal("**Figure 1.** second", Caption(blocks[1]));
    }

    [Theory]
    [InlineData("See [](#figure-waste).", "See [Figure\u00A02→figure-waste#].")]
    [InlineData("See [](#step-3) and [](#key).", "See [Step\u00A03→step-3#] and [page PageNumberInline→key#].")]
    [InlineData("See [drawing {{number}} on page {{page}}](#figure-waste).", "See [drawing 2 on page PageNumberInline→figure-waste#].")]
    [InlineData("**[](#figure-first)**", "[**Figure\u00A01**→figure-first#]")]
    public void Links_say_the_number_of_what_they_lead_to(string markdown, string shape)
    {
        var (words, problems) = Read(markdown, options: Options with { Destinations = ["step-3", "key"] });
        Assert.Empty(problems.All);
        var (blocks, wrong) = Numbered([.. words, Figure("first", "first"), Figure("waste", "waste")]);
        Assert.Empty(wrong.All);
        Assert.Equal($"p({shape})", Shape(blocks[0]));
    }

    [Fact]
    public void A_link_to_a_figure_that_is_not_there_is_said_with_its_line_and_the_nearest_name()
    {
        var (words, _) = Read("One.\n\nSee [](#figure-wsate).");
        var (_, problems) = Numbered([.. words, Figure("waste", "waste")]);
        var problem = Assert.Single(problems.All);
        Assert.Equal((FileName, LinesBefore + 3), (problem.File, problem.Line));
        Assert.Contains("“wsate”", problem.Message, StringComparison.Ordinal);
        Assert.Contains("“waste”", problem.Advice, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_figures_of_one_name_are_a_problem()
    {
        var (_, problems) = Numbered(Figure("a", "lid"), Figure("b", "lid"));
        Assert.Contains("“lid” already", Assert.Single(problems.All).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_number_outside_a_link_is_a_problem()
    {
        var (_, problems) = Read("On page {{page}}.");
        Assert.Contains("{{page}}", Assert.Single(problems.All).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_web_link_still_needs_words()
    {
        var (_, problems) = Read("[](https://example.org)");
        Assert.Contains("no words", Assert.Single(problems.All).Message, StringComparison.Ordinal);
    }

    private sealed class Nothing : IDrawing
    {
        public DrawnFigure Draw(double maxWidth, double maxHeight, StyleSheet styles) => new(0, 0, []);
    }
}
