using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Layout.Flow;

namespace Pattern.Press.Typesetting.Layout.Elements;

/// <summary>Blocks that go to the next page together if they do not fit the rest of this one.</summary>
internal sealed class KeepTogetherElement : BlockElement<KeepTogetherBlock>
{
    protected override void LayOut(KeepTogetherBlock block, Column column, StripList strips)
    {
        var first = strips.Count;
        column.LayOut(block.Content, strips);
        if (column.FigureScale != FigureScale.Divided)
            strips.KeepTogether(first, column.Session.TextHeight);
        // What is kept together is complete: its last words do not introduce what follows it.
        strips.EndParagraph(null);
    }
}
