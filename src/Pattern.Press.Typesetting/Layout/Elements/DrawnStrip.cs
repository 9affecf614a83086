using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Layout.Flow;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Structure;

namespace Pattern.Press.Typesetting.Layout.Elements;

/// <summary>A figure: items in coordinates of their own, content of a figure element.</summary>
internal sealed class DrawnStrip(StructureElement element, DrawnFigure drawn) : Strip
{
    public override string Kind => "A figure";

    public override double Height => drawn.Height;

    public override bool IsCrowded => drawn.IsCrowded;

    public override double Crowding => drawn.Crowding;

    protected override void Draw(PageCanvas canvas, double x, double y)
    {
        element.Box = (x, y, drawn.Width, drawn.Height);
        canvas.Tag(element, new GroupItem(Transform.Move(x, y), null, drawn.Items));
    }
}
