using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Typesetting.Layout.Elements;

/// <summary>
/// Remembers drawings for as long as they live: layout tries a figure in several places, and mostly at the same sizes.
/// </summary>
internal static class Drawings
{
    private static readonly ConditionalWeakTable<IDrawing, ConcurrentDictionary<(double Width, double Height, StyleSheet Styles), DrawnFigure>> Drawn = [];

    /// <summary>A drawing at the most width and height there is, in millimetres.</summary>
    public static DrawnFigure Of(IDrawing drawing, double width, double height, StyleSheet styles) =>
        Drawn.GetOrCreateValue(drawing).GetOrAdd((width, height, styles), size => drawing.Draw(size.Width, size.Height, size.Styles));
}
