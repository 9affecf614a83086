using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Booklets.Figures;

/// <summary>Lines of drawings beside those of the pieces themselves.</summary>
public static class DrawingStrokes
{
    /// <summary>
    /// Where a page is trimmed before it is joined to the next: thin, long dashes with two dots, as ISO 128-2 has it for
    /// outlines of adjacent parts (from memory).
    /// </summary>
    public static Stroke Trim(LineStyles lines)
    {
        ArgumentNullException.ThrowIfNull(lines);
        var d = lines.ThinWidth;
        return new(lines.Dimension, d, [24 * d, 3 * d, 2 * d, 3 * d, 2 * d, 3 * d]);
    }
}
