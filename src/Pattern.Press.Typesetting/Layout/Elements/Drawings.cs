using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Typesetting.Layout.Elements;

/// <summary>
/// Remembers the drawings of a book: layout tries a figure in several places. A figure that has more room than it takes
/// comes out the same with a little less, so it is not drawn again as long as it fits.
/// </summary>
/// <param name="styles">How they look.</param>
internal sealed class Drawings(StyleSheet styles)
{
    // Widths that are meant to be equal differ by what sums round off, in millimetres.
    private const double Hair = 1e-6;

    private readonly Dictionary<IDrawing, List<(double Width, double Height, DrawnFigure Figure)>> _drawn = new(ReferenceEqualityComparer.Instance);

    /// <summary>A drawing at the most width and height there is, in millimetres.</summary>
    public DrawnFigure Of(IDrawing drawing, double width, double height)
    {
        if (!_drawn.TryGetValue(drawing, out var known))
            _drawn[drawing] = known = [];
        foreach (var one in known)
        {
            var (across, down) = (Math.Min(one.Figure.Width, one.Width), Math.Min(one.Figure.Height, one.Height));
            if (across <= width + Hair && width <= one.Width + Hair && down <= height + Hair && height <= one.Height + Hair)
                return one.Figure;
        }

        var figure = drawing.Draw(width, height, styles);
        known.Add((width, height, figure));
        return figure;
    }

    /// <summary>Forgets everything.</summary>
    public void Clear() => _drawn.Clear();
}
