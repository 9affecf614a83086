using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Booklets.Figures.Solid;

/// <summary>A drawing of one or more scenes, to one scale, side by side.</summary>
public sealed class SolidDrawing : IDrawing
{
    /// <summary>Room around for half the width of the widest line, in millimetres.</summary>
    private const double Margin = 0.5;

    /// <summary>Things are not drawn larger than life by more than this.</summary>
    private const double Largest = 1.5;

    private readonly SceneView[] views;
    private readonly double gap;

    /// <summary>A drawing of one scene.</summary>
    public SolidDrawing(Scene scene, Axonometry view)
        : this([(scene, view)])
    {
    }

    /// <summary>A drawing of several scenes, from left to right, standing on one level.</summary>
    /// <param name="scenes">The scenes with the place each is seen from.</param>
    /// <param name="gap">The room between them, as a part of the height of the tallest.</param>
    public SolidDrawing(IReadOnlyList<(Scene Scene, Axonometry View)> scenes, double gap = 0.12)
    {
        ArgumentNullException.ThrowIfNull(scenes);
        views = [.. scenes.Select(scene => new SceneView(scene.Scene, scene.View))];
        this.gap = gap * views.Max(view => view.Height);
    }

    /// <inheritdoc/>
    public DrawnFigure Draw(double maxWidth, double maxHeight, StyleSheet styles)
    {
        var (width, height) = (views.Sum(view => view.Width) + (gap * (views.Length - 1)), views.Max(view => view.Height));
        var scale = Math.Min(Largest, Math.Min((maxWidth - (2 * Margin)) / width, (maxHeight - (2 * Margin)) / height));
        var items = new List<PageItem>();
        var x = Margin;
        foreach (var view in views)
        {
            items.AddRange(view.Draw(x, Margin + ((height - view.Height) * scale), scale, styles));
            x += (view.Width + gap) * scale;
        }

        return new DrawnFigure((width * scale) + (2 * Margin), (height * scale) + (2 * Margin), items);
    }
}
