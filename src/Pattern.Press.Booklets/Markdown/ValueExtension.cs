using Markdig;
using Markdig.Renderers;

namespace Pattern.Press.Booklets.Markdown;

/// <summary>Adds values in double braces to the Markdown that is read.</summary>
internal sealed class ValueExtension : IMarkdownExtension
{
    public void Setup(MarkdownPipelineBuilder pipeline)
    {
        if (!pipeline.InlineParsers.Contains<ValueInlineParser>())
            pipeline.InlineParsers.Insert(0, new ValueInlineParser());
    }

    public void Setup(MarkdownPipeline pipeline, IMarkdownRenderer renderer)
    {
        // Nothing is rendered from the syntax tree; it is turned into blocks.
    }
}
