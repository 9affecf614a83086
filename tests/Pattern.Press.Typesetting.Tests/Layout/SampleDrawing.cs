using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Typesetting.Tests.Layout;

/// <summary>A rectangle with a cross of folds, of a given proportion.</summary>
internal sealed class SampleDrawing(double heightToWidth) : IDrawing
{
    public DrawnFigure Draw(double maxWidth, double maxHeight, StyleSheet styles)
    {
        var width = Math.Min(maxWidth, maxHeight / heightToWidth);
        var height = width * heightToWidth;
        var lines = styles.Lines;
        return new DrawnFigure(width, height,
        [
            new PathItem(PathBuilder.Rectangle(0.25, 0.25, width - 0.5, height - 0.5), lines.Card, lines.CutStroke),
            new PathItem(PathBuilder.Line(width / 3, 0, width / 3, height), null, lines.ValleyStroke),
            new PathItem(PathBuilder.Line(width * 2 / 3, 0, width * 2 / 3, height), null, lines.ValleyStroke),
            new PathItem(PathBuilder.Line(0, height / 3, width, height / 3), null, lines.MountainStroke),
        ]);
    }
}
