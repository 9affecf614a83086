using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Fonts;

namespace Pattern.Press.Typesetting.Styles;

/// <summary>The four faces of a family that text needs.</summary>
public sealed record FontFamily(FontFace Regular, FontFace Italic, FontFace Bold, FontFace BoldItalic)
{
    /// <summary>The face for an emphasis.</summary>
    public FontFace Face(Emphasis emphasis) => (emphasis & (Emphasis.Bold | Emphasis.Italic)) switch
    {
        Emphasis.Bold => Bold,
        Emphasis.Italic => Italic,
        Emphasis.Bold | Emphasis.Italic => BoldItalic,
        _ => Regular,
    };
}
