using Markdig;
using Markdig.Syntax;
using Pattern.Press.Booklets.Content;
using Pattern.Press.Structures.Reading;
using Pattern.Press.Typesetting.Blocks;
using Block = Pattern.Press.Typesetting.Blocks.Block;

namespace Pattern.Press.Booklets.Markdown;

/// <summary>
/// Turns a maker's Markdown into blocks: all of CommonMark but raw HTML, with pipe tables, task lists, values in double
/// braces, the containers <c>::: tip</c>, <c>::: caution</c> and <c>::: figure</c>, and quotations that start with
/// <c>[!TIP]</c> or <c>[!CAUTION]</c>, which are such containers too.
/// </summary>
public static class MarkdownReader
{
    private static readonly MarkdownPipeline Blocks = Pipeline(blocks: true);
    private static readonly MarkdownPipeline Inlines = Pipeline(blocks: false);

    /// <summary>Turns a text into blocks.</summary>
    /// <param name="text">The text, with the place it starts at.</param>
    /// <param name="folder">The booklet's folder, which pictures are read from.</param>
    /// <param name="bindings">What values and figures stand for.</param>
    /// <param name="problems">Takes everything that is wrong, each with its line and column in the file.</param>
    /// <param name="options">How headings, callouts and links are treated.</param>
    /// <returns>The blocks, each with its source; what is wrong is left out.</returns>
    public static IReadOnlyList<Block> ToBlocks(MarkdownText text, string folder, IBindings bindings, Problems problems, MarkdownOptions options)
    {
        if (Parse(text, Blocks, problems) is not { } document)
            return [];
        var context = Context(text, folder, bindings, problems, options);
        var blocks = new BlockConverter(context, document).Convert(document);
        context.CheckTargets();
        return blocks;
    }

    /// <summary>Turns a text of one paragraph, such as a caption, a caution or a title, into inlines.</summary>
    /// <inheritdoc cref="ToBlocks"/>
    /// <returns>The inlines. A text of several paragraphs, or one that holds a list, is a problem.</returns>
    public static IReadOnlyList<Inline> ToInlines(MarkdownText text, string folder, IBindings bindings, Problems problems, MarkdownOptions options)
    {
        if (Parse(text, Inlines, problems) is not { } document)
            return [];
        var context = Context(text, folder, bindings, problems, options);
        var inlines = new List<Inline>();
        foreach (var block in document)
        {
            if (block is Markdig.Syntax.ParagraphBlock paragraph && inlines.Count == 0)
                inlines.AddRange(new InlineConverter(context).Convert(paragraph.Inline));
            else if (block is not LinkReferenceDefinitionGroup)
                problems.Error(context.Places.At(block.Span.Start), "Only one paragraph can stand here.", "Leave out empty lines and everything but plain words.");
        }

        context.CheckTargets();
        return inlines;
    }

    private static MarkdownDocument? Parse(MarkdownText text, MarkdownPipeline pipeline, Problems problems)
    {
        try
        {
            return global::Markdig.Markdown.Parse(text.Text, pipeline);
        }
        catch (ArgumentException)
        {
            // The library's guard against texts made to exhaust the stack.
            problems.Error(text.Start with { Column = 0 }, "The text is nested too deep to be read.", "Take out some of its quotations, lists, brackets or emphasis.");
            return null;
        }
    }

    private static ConversionContext Context(MarkdownText text, string folder, IBindings bindings, Problems problems, MarkdownOptions options) => new()
    {
        Text = text,
        Folder = folder,
        Bindings = bindings,
        Problems = problems,
        Options = options,
        Places = new Positions(text),
    };

    private static MarkdownPipeline Pipeline(bool blocks)
    {
        var builder = new MarkdownPipelineBuilder().UsePreciseSourceLocation().UseAutoLinks();
        if (blocks)
            builder.UsePipeTables().UseTaskLists().UseCustomContainers();
        builder.Extensions.Add(new ValueExtension());
        if (!blocks)
        {
            // Words of one paragraph may start with what would begin a list, a heading or a quotation.
            builder.BlockParsers.RemoveAll(parser => parser is not Markdig.Parsers.ParagraphBlockParser);
        }

        return builder.Build();
    }
}
