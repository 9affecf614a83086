using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Layout.Flow;
using Pattern.Press.Typesetting.Structure;

namespace Pattern.Press.Typesetting.Layout.Elements;

/// <summary>Somebody's words: in from both sides, in italics.</summary>
internal sealed class QuoteElement : BlockElement<QuoteBlock>
{
    private const double IndentEms = 2;

    protected override void LayOut(QuoteBlock block, Column column, StripList strips)
    {
        var indent = IndentEms * column.Session.Looks.Body.Size * 25.4 / 72;
        var gap = column.Session.Styles.Spacing.Paragraph * 1.5;
        strips.Space(gap);
        (column.Inset(indent, indent) with
        {
            Parent = column.Parent.Add(Role.BlockQuote),
            Base = column.Base ^ Emphasis.Italic,
        }).LayOut(block.Content, strips);
        strips.Space(gap);
    }
}
