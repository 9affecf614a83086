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

    /// <summary>Whether more is seen in it when it is larger, so that it is worth the room of an empty page.</summary>
    bool GainsFromSize => true;
}

/// <summary>A finished drawing, in millimetres from its own top-left corner.</summary>
public sealed class DrawnFigure
{
    // Half of the names may be left out: small tabs often have no room, and the rest of the drawing explains them.
    private const double MostCrowding = 0.5;

    private readonly Lazy<IReadOnlyList<PageItem>> _items;
    private readonly Lazy<double> _crowding;

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
    /// <param name="crowding">Finds how much of its lettering has no room; null where there is room for all. Called once at most.</param>
    public DrawnFigure(double width, double height, Func<IReadOnlyList<PageItem>> draw, Func<double>? crowding = null) =>
        (Width, Height, _items, _crowding) = (width, height, new Lazy<IReadOnlyList<PageItem>>(draw), new Lazy<double>(crowding ?? (() => 0)));

    /// <summary>Its width.</summary>
    public double Width { get; }

    /// <summary>Its height.</summary>
    public double Height { get; }

    /// <summary>What is drawn.</summary>
    public IReadOnlyList<PageItem> Items => _items.Value;

    /// <summary>How much of its lettering found no room, or of its lines cannot be told apart, from 0 for none to 1 for all.</summary>
    public double Crowding => _crowding.Value;

    /// <summary>Whether so much is missing that it wants to be drawn larger.</summary>
    public bool IsCrowded => Crowding > MostCrowding;
}
