namespace Pattern.Press.Plans.Tiling;

/// <summary>The page that templates are laid over, in millimetres.</summary>
/// <remarks>
/// The head and the foot are kept free of templates on every page, tiled or shared, so whoever draws the page may count on
/// them: everything that a page says, and the lengths that tell whether it was printed to size, go there.
/// </remarks>
/// <param name="Width">The paper's width, upright.</param>
/// <param name="Height">The paper's height, upright.</param>
/// <param name="Margin">What the printer cannot reach, at every side.</param>
/// <param name="HeadRoom">Kept free along the top of the printable area, whichever way the page lies.</param>
/// <param name="FootRoom">Kept free along the bottom of the printable area, whichever way the page lies.</param>
public sealed record TemplatePage(double Width, double Height, double Margin, double HeadRoom, double FootRoom)
{
    /// <summary>The least width of the printable area that what stands in head and foot needs; a page laid so that it has less is not used.</summary>
    public double LeastWidth { get; init; }

    /// <summary>What the printer reaches.</summary>
    /// <param name="lying">Whether the page lies on its long side.</param>
    public PageArea Printable(bool lying) => lying
        ? new PageArea(Margin, Margin, Height - (2 * Margin), Width - (2 * Margin))
        : new PageArea(Margin, Margin, Width - (2 * Margin), Height - (2 * Margin));

    /// <summary>What is left for templates; none reaches out of it.</summary>
    /// <param name="lying">Whether the page lies on its long side.</param>
    public PageArea Drawing(bool lying)
    {
        var all = Printable(lying);
        return all with { Top = all.Top + HeadRoom, Height = all.Height - HeadRoom - FootRoom };
    }

    /// <summary>The strip along the bottom that no template comes into.</summary>
    /// <param name="lying">Whether the page lies on its long side.</param>
    public PageArea Foot(bool lying)
    {
        var all = Printable(lying);
        return all with { Top = all.Bottom - FootRoom, Height = FootRoom };
    }
}

/// <summary>A rectangle on a page, in millimetres from the page's top-left corner.</summary>
/// <param name="Left">Its left.</param>
/// <param name="Top">Its top.</param>
/// <param name="Width">Across; 0 or less where nothing is left.</param>
/// <param name="Height">Down; 0 or less where nothing is left.</param>
public readonly record struct PageArea(double Left, double Top, double Width, double Height)
{
    /// <summary>Its right.</summary>
    public double Right => Left + Width;

    /// <summary>Its bottom.</summary>
    public double Bottom => Top + Height;
}
