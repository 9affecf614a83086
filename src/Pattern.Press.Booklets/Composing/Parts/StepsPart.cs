using System.Globalization;
using Pattern.Press.Booklets.Content;
using Pattern.Press.Booklets.Markdown;
using Pattern.Press.Booklets.Phrases;
using Pattern.Press.Structures.Reading;
using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Booklets.Composing.Parts;

/// <summary>The steps: each with what it takes, its words and its figure, kept on one page where that can be.</summary>
internal static class StepsPart
{
    /// <summary>Composes the steps.</summary>
    public static FlowPart Compose(BookletContext context, IBindings bindings, MakersWords words, MarkdownOptions options, Problems problems)
    {
        var phrases = context.Phrases;
        var blocks = new List<Block> { Words.Heading(1, phrases["steps.title"], "steps") };
        if (context.Source.Steps.Sum(step => step.Minutes ?? 0) is > 0 and var minutes)
            blocks.Add(Words.Paragraph(phrases.Format("steps.total", ("time", phrases.Minutes(ToTheQuarter(minutes)))), ParagraphKind.Lead));
        foreach (var step in context.Source.Steps)
        {
            blocks.Add(new KeepTogetherBlock(Step(context, step, bindings, words, options, problems))
            {
                Source = new BlockSource(step.File, 1),
                KeepsWithPrevious = step == context.Source.Steps[0],
            });
        }

        // Below the last table where the first step fits there too; else the heading goes to the next page with it.
        return new FlowPart(blocks, FlowsOn: true) { Title = phrases["steps.title"] };
    }

    // A sum of estimates is not known to the minute.
    private static int ToTheQuarter(int minutes) => minutes < 60 ? minutes : (int)Math.Round(minutes / 15.0, MidpointRounding.AwayFromZero) * 15;

    /// <summary>The destination of a step.</summary>
    public static string Destination(StepSource step) => Destination(step.Number);

    /// <summary>The destination of the step with a number.</summary>
    public static string Destination(int number) => string.Create(CultureInfo.InvariantCulture, $"step-{number}");

    private static List<Block> Step(BookletContext context, StepSource step, IBindings bindings, MakersWords makers, MarkdownOptions options, Problems problems)
    {
        var phrases = context.Phrases;
        var number = phrases.Format("steps.number", ("n", step.Number.ToString(CultureInfo.InvariantCulture)));
        var blocks = new List<Block>
        {
            Words.Heading(2, step.Title, Destination(step), number) with { Source = new BlockSource(step.File, 1) },
        };
        if (Takes(context, step) is { Length: > 0 } takes)
            blocks.Add(Words.Paragraph(takes, ParagraphKind.Small));
        if (step.Caution.Length > 0)
            blocks.Add(new CalloutBlock(CalloutKind.Caution, phrases["callout.caution"], [new ParagraphBlock(makers.Inlines(step.Caution, step.File))]));

        var words = MarkdownReader.ToBlocks(step.Body, context.Source.Folder, bindings, problems, options with
        {
            TopHeading = 3,
            DestinationPrefix = Destination(step) + "-",
            Piece = step.Piece,
        });
        if (IsKnownPiece(context, step, problems) && step.Figure is { } asked && bindings.Figure(asked, problems) is { } figure)
            Place(blocks, words, figure);
        else
            blocks.AddRange(words);
        return blocks;
    }

    // The figure of a step shows its piece unless it says otherwise, so a wrong piece is reported once, where it is named.
    private static bool IsKnownPiece(BookletContext context, StepSource step, Problems problems) =>
        step.Piece is not { } piece || UnknownPiece.IsKnown(piece, step.PiecePlace, [.. context.Primary.Kit.Parts.Select(part => part.Piece.Id)], problems);

    // The figures stand with the words up to the first block that has to be wide: beside them, or in a row below them,
    // whichever is lower. What follows takes the whole width.
    private static void Place(List<Block> blocks, IReadOnlyList<Block> words, Block figure)
    {
        var narrow = words.TakeWhile(block => block is ParagraphBlock or ListBlock or FigureBlock).ToList();
        var text = narrow.Where(block => block is not FigureBlock).ToList();
        var figures = narrow.Prepend(figure).OfType<FigureBlock>().Select(one => text.Count > 0 ? one with { Width = FigureWidth.Full } : one).ToList();
        Block shown = figures.Count == 1 ? figures[0] : new FigureRowBlock(figures);
        blocks.Add(text.Count > 0 ? new BesideBlock(text, shown) : shown);
        blocks.AddRange(words.Skip(narrow.Count));
    }

    // Where a tool has a comma or a choice of its own, tools are parted by semicolons.
    private static string Tools(PhraseBook phrases, IReadOnlyList<string> tools) =>
        tools.Any(tool => tool.Contains(',', StringComparison.Ordinal) || tool.Contains($" {phrases["list.or"]} ", StringComparison.Ordinal))
            ? string.Join(phrases["list.semicolon"] + " ", tools)
            : phrases.Join(tools);

    private static string Takes(BookletContext context, StepSource step)
    {
        var phrases = context.Phrases;
        var takes = new List<string>();
        if (step.Minutes is { } minutes)
            takes.Add(phrases.Format("steps.time", ("time", phrases.Minutes(ToTheQuarter(minutes)))) + ".");
        if (step.Tools.Count > 0)
            takes.Add(phrases.Format("steps.tools", ("tools", Tools(phrases, step.Tools))));
        return string.Join(' ', takes);
    }
}
