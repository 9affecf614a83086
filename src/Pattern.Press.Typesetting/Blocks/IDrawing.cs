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
public sealed class DrawnFigure
{
    private readonly Lazy<IReadOnlyList<PageItem>> _items;

    /// <summary>A drawing that is there.</summary>
    /// <param name="width">Its width.</param>
    /// <param name="height">Its height.</param>
    /// <param name="items">What is drawn; no tagged or artifact items.</param>
    public DrawnFigure(double width, double height, IReadOnlyList<PageItem> items)
        : this(width, height, () => items)
    {
    }

    /// <summary>
    /// A drawing whose size is known before it is drawn. Layout asks for many that it only measures, so what does not
    /// decide the size can wait.
    /// </summary>
    /// <param name="width">Its width.</param>
    /// <param name="height">Its height.</param>
    /// <param name="draw">Draws it; no tagged or artifact items. Called once at most.</param>
    public DrawnFigure(double width, double height, Func<IReadOnlyList<PageItem>> draw) =>
        (Width, Height, _items) = (width, height, new Lazy<IReadOnlyList<PageItem>>(draw));

    /// <summary>Its width.</summary>
    public double Width { get; }

    /// <summary>Its height.</summary>
    public double Height { get; }

    /// <summary>What is drawn.</summary>
    public IReadOnlyList<PageItem> Items => _items.Value;
}
