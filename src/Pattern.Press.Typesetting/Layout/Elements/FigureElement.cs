using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Layout.Flow;

namespace Pattern.Press.Typesetting.Layout.Elements;

/// <summary>A drawing, made for the width there is.</summary>
internal sealed class FigureElement : CaptionedElement<FigureBlock>
{
    protected override void LayOut(FigureBlock block, Column column, StripList strips)
    {
        var drawn = column.Session.Drawings.Of(block.Drawing, WidthOf(block.Width, column), MostHeight(column));
        Place(drawn, block.AlternativeText, block.Caption, column, strips);
    }
}
