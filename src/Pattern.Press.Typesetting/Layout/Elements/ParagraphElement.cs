using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Layout.Flow;
using Pattern.Press.Typesetting.Structure;

namespace Pattern.Press.Typesetting.Layout.Elements;

/// <summary>A paragraph, parted from its neighbours by room and not by an indent.</summary>
internal sealed class ParagraphElement : BlockElement<ParagraphBlock>
{
    protected override void LayOut(ParagraphBlock block, Column column, StripList strips)
    {
        var looks = column.Session.Looks;
        var gap = column.Session.Styles.Spacing.Paragraph;
        var look = block.Kind switch
        {
            ParagraphKind.Lead => looks.Lead,
            ParagraphKind.Small => looks.Small,
            _ => looks.Body,
        };
        if (block.Content.Count == 0)
            return;
        strips.Space(gap);
        column.SetText(block.Content, look, column.Parent.Add(Role.P), strips);
        strips.EndParagraph(column.Parent);
        strips.Space(block.Kind == ParagraphKind.Lead ? gap * 1.6 : gap);
    }
}
