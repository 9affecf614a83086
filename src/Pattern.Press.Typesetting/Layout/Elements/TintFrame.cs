using Pattern.Press.Typesetting.Layout.Flow;
using Pattern.Press.Typesetting.Pages;

namespace Pattern.Press.Typesetting.Layout.Elements;

/// <summary>A tinted rectangle behind strips, with a line along its top where it starts.</summary>
internal sealed class TintFrame(Frame? parent, double x, double width, double padTop, double padBottom, Colour tint, Stroke? topLine)
    : Frame(parent, padTop, padBottom)
{
    /// <summary>Draws more where the frame starts: the mark of a callout. Gets the frame's top-left corner.</summary>
    public Func<double, double, IReadOnlyList<PageItem>>? Mark { get; init; }

    public override void Draw(PageCanvas canvas, double left, double top, double bottom, bool starts)
    {
        canvas.Decorate(new PathItem(PathBuilder.Rectangle(left + x, top, width, bottom - top), tint, null));
        if (!starts)
            return;
        if (topLine is not null)
            canvas.Decorate(new PathItem(PathBuilder.Line(left + x, top + (topLine.Width / 2), left + x + width, top + (topLine.Width / 2)), null, topLine));
        foreach (var item in Mark?.Invoke(left + x, top) ?? [])
            canvas.Decorate(item);
    }
}
