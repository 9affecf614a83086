using Pattern.Press.Typesetting.Fonts;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Typesetting.Tests.Layout;

/// <summary>Two style sheets with the repository's fonts: a calm one, and one with a display face.</summary>
internal static class TestStyles
{
    private static readonly Lazy<FontFamily> AlegreyaSans = new(() => Family("alegreya-sans", "AlegreyaSans"));
    private static readonly Lazy<FontFamily> Bitter = new(() => Family("bitter", "Bitter"));

    public static StyleSheet Plain { get; } = new()
    {
        Name = "plain",
        Language = "en-GB",
        Text = AlegreyaSans.Value,
        Display = AlegreyaSans.Value,
        Scale = new TypeScale(10.5, 14, 12.5, 8.5, 9.5, 22, 15, 12, 34, 7.5),
        Palette = new Palette(
            Hex("#1c1c1c"), Hex("#111111"), Hex("#4a4a4a"), Hex("#5c5c5c"), Hex("#9a9a9a"), Hex("#f1f0ee"), Hex("#8a2a1c"), Hex("#ffffff"), Hex("#111111")),
        Spacing = new Spacing(26, 24, 34, 30, 2.4, 5, 7),
        Lines = Lines,
    };

    public static StyleSheet Display { get; } = Plain with
    {
        Name = "display",
        Display = Bitter.Value,
        Scale = new TypeScale(10.5, 14.5, 13, 8.5, 9.5, 24, 15, 11.5, 36, 7.5),
        Palette = new Palette(
            Hex("#22262b"), Hex("#1d3b3a"), Hex("#b0472d"), Hex("#5b646b"), Hex("#a9b5b2"), Hex("#eef3f1"), Hex("#b3261e"), Hex("#1d3b3a"), Hex("#ffffff")),
        Justified = true,
    };

    private static LineStyles Lines => new(
        0.5, 0.35, 0.15, Colour.Black, Hex("#1f5f8b"), Hex("#8b2f1f"), Hex("#777777"), Hex("#888888"), Hex("#444444"), Hex("#888888"), Hex("#f3eee4"), Hex("#e4dccb"));

    private static Colour Hex(string text) => Colour.TryParse(text, out var colour) ? colour : throw new ArgumentException(text);

    private static FontFamily Family(string folder, string name)
    {
        return new FontFamily(Face("Regular"), Face("Italic"), Face("Bold"), Face("BoldItalic"));

        FontFace Face(string style)
        {
            var file = $"{name}-{style}.ttf";
            return new FontFace(File.ReadAllBytes(Path.Combine(FontFolder(), folder, file)), file);
        }
    }

    private static string FontFolder()
    {
        for (var at = new DirectoryInfo(AppContext.BaseDirectory); at is not null; at = at.Parent)
        {
            var fonts = Path.Combine(at.FullName, "themes", "fonts");
            if (Directory.Exists(fonts))
                return fonts;
        }

        throw new DirectoryNotFoundException("themes/fonts");
    }
}
