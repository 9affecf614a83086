using Pattern.Press.Typesetting.Pages;

namespace Pattern.Press.Typesetting.Export.Png;

/// <summary>Draws a finished page as a PNG picture.</summary>
public static class PngExporter
{
    /// <summary>Draws a page at a width in pixels; the height follows.</summary>
    public static byte[] Render(Page page, int pixelWidth) => throw new NotImplementedException();
}
