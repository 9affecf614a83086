using Pattern.Press.Booklets.Content;
using Pattern.Press.Booklets.Markdown;
using Pattern.Press.Structures.Reading;
using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Booklets.Composing.Parts;

/// <summary>The maker's introduction, and the contents below it.</summary>
internal static class IntroductionPart
{
    /// <summary>Composes the opening of the booklet; null when there is nothing to open it with.</summary>
    public static FlowPart? Compose(BookletContext context, IBindings bindings, MarkdownOptions options, Problems problems)
    {
        var phrases = context.Phrases;
        var words = MarkdownReader.ToBlocks(context.Source.Introduction, context.Source.Folder, bindings, problems, options with { TopHeading = 2 });
        var blocks = new List<Block>();
        if (words.Count > 0)
        {
            blocks.Add(Words.Heading(1, phrases["introduction.title"], "introduction"));
            blocks.AddRange(words[0] is ParagraphBlock first ? [first with { Kind = ParagraphKind.Lead }, .. words.Skip(1)] : words);
        }

        if (!context.Source.Without.Contains(BookletPart.Contents))
        {
            blocks.Add(Words.Subheading(words.Count > 0 ? 2 : 1, phrases["contents.title"]));
            blocks.Add(Words.InColumns(context.Styles.Columns.Contents, [new ContentsBlock(Depth: 2)]) with { MoreToFit = true });
        }

        return blocks.Count > 0 ? new FlowPart(blocks) { Title = phrases["introduction.title"] } : null;
    }
}
