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
public sealed record DrawnFigure(double Width, double Height, IReadOnlyList<PageItem> Items)
{
    // Half of the names may be left out: small tabs often have no room, and the rest of the drawing explains them.
    private const double MostCrowding = 0.5;

    /// <summary>How much of its lettering found no room, from 0 for none to 1 for all.</summary>
    public double Crowding { get; init; }

    /// <summary>Whether so much is missing that it wants to be drawn larger.</summary>
    public bool IsCrowded => Crowding > MostCrowding;
}
