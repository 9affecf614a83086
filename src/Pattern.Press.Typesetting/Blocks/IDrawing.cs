using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Typesetting.Blocks;

/// <summary>A drawing that can be made to fit a width: line weights and lettering keep their size, the scale changes.</summary>
public interface IDrawing
{
    /// <summary>Draws it, as large as fits and never larger than life: with more room than it takes it comes out the same.</summary>
    /// <param name="maxWidth">The width there is, in millimetres; the result may be narrower.</param>
    /// <param name="maxHeight">The height there is, in millimetres; the result may be lower.</param>
    /// <param name="styles">Fonts, colours and line styles.</param>
    DrawnFigure Draw(double maxWidth, double maxHeight, StyleSheet styles);
}

/// <summary>A finished drawing, in millimetres from its own top-left corner.</summary>
/// <param name="Width">Its width.</param>
/// <param name="Height">Its height.</param>
/// <param name="Items">What is drawn; no tagged or artifact items.</param>
public sealed record DrawnFigure(double Width, double Height, IReadOnlyList<PageItem> Items);
