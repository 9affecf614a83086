using System.Globalization;
using Pattern.Press.Booklets.Content;
using Pattern.Press.Booklets.Markdown;
using Pattern.Press.Structures.Reading;
using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Booklets.Composing.Parts;

/// <summary>The steps: each with what it takes, its words and its figure, kept on one page where that can be.</summary>
internal static class StepsPart
{
    /// <summary>Composes the steps.</summary>
    public static FlowPart Compose(BookletContext context, IBindings bindings, Problems problems)
    {
        var blocks = new List<Block> { Words.Heading(1, context.Phrases["steps.title"], "steps") };
        foreach (var step in context.Source.Steps)
            blocks.Add(new KeepTogetherBlock(Step(context, step, bindings, problems)) { Source = new BlockSource(step.File, 1) });
        return new FlowPart(blocks) { Title = context.Phrases["steps.title"] };
    }

    private static List<Block> Step(BookletContext context, StepSource step, IBindings bindings, Problems problems)
    {
        var phrases = context.Phrases;
        var number = step.Number.ToString(CultureInfo.InvariantCulture);
        var blocks = new List<Block>
        {
            Words.Heading(2, step.Title, $"step-{number}", phrases.Format("steps.number", ("number", number))) with
            {
                Source = new BlockSource(step.File, 1),
            },
        };
        if (Takes(context, step) is { Count: > 0 } takes)
            blocks.Add(new ParagraphBlock(takes, ParagraphKind.Small));
        if (step.Caution.Length > 0)
            blocks.Add(new CalloutBlock(CalloutKind.Caution, phrases["caution.title"], [Words.Paragraph(step.Caution)]));

        var words = MarkdownReader.ToBlocks(step.Body, context.Source.Folder, bindings, problems, MarkdownOptions.ForStep);
        if (step.Figure is { } asked && bindings.Figure(asked, problems) is { } figure)
            Place(blocks, words, figure);
        else
            blocks.AddRange(words);
        return blocks;
    }

    // The figure stands beside the words up to the first block that has to be wide; what follows takes the whole width.
    private static void Place(List<Block> blocks, IReadOnlyList<Block> words, Block figure)
    {
        var beside = words.TakeWhile(block => block is ParagraphBlock or ListBlock).ToList();
        blocks.Add(beside.Count > 0 ? new BesideBlock(beside, figure) : figure);
        blocks.AddRange(words.Skip(beside.Count));
    }

    private static List<Inline> Takes(BookletContext context, StepSource step)
    {
        var phrases = context.Phrases;
        var takes = new List<Inline>();
        if (step.Minutes is { } minutes)
            takes.Add(new MeasureInline(phrases.Format("steps.minutes", ("minutes", minutes.ToString(CultureInfo.InvariantCulture)))));
        if (step.Tools.Count > 0)
        {
            if (takes.Count > 0)
                takes.Add(new TextInline(" · "));
            takes.Add(new TextInline(phrases.Format("steps.tools", ("tools", string.Join(", ", step.Tools)))));
        }

        return takes;
    }
}
