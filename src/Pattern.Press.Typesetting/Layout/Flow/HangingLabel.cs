using Pattern.Press.Typesetting.Fonts;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Structure;

namespace Pattern.Press.Typesetting.Layout.Flow;

/// <summary>What hangs to the left of an item of a list.</summary>
internal abstract class HangingLabel
{
    /// <summary>Draws it on a baseline.</summary>
    public abstract void Draw(PageCanvas canvas, double left, double baseline);
}

/// <summary>A bullet or a number.</summary>
internal sealed class TextLabel(StructureElement element, ShapedRun run, double x, Colour colour) : HangingLabel
{
    public override void Draw(PageCanvas canvas, double left, double baseline) =>
        canvas.Tag(element, new TextItem(run, left + x, baseline, colour));
}

/// <summary>A box to tick.</summary>
internal sealed class BoxLabel(double x, double side, Colour colour) : HangingLabel
{
    private const double LineWidth = 0.25;

    public override void Draw(PageCanvas canvas, double left, double baseline) =>
        canvas.Decorate(new PathItem(
            PathBuilder.Rectangle(left + x + (LineWidth / 2), baseline - side + (LineWidth / 2), side - LineWidth, side - LineWidth),
            null,
            new Stroke(colour, LineWidth)));
}
