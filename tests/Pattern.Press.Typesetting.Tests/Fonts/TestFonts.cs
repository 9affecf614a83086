using Pattern.Press.Typesetting.Fonts;

namespace Pattern.Press.Typesetting.Tests.Fonts;

/// <summary>The themes' faces, opened once for all tests: faces may be shared between threads.</summary>
internal static class TestFonts
{
    public static FontFace Sans { get; } = Open("AlegreyaSans-Regular");

    public static FontFace SansItalic { get; } = Open("AlegreyaSans-Italic");

    public static FontFace SansBold { get; } = Open("AlegreyaSans-Bold");

    public static FontFace Serif { get; } = Open("Bitter-Regular");

    public static FontFace SerifBold { get; } = Open("Bitter-Bold");

    public static IEnumerable<string> Files() => Directory
        .EnumerateFiles(Path.Combine(AppContext.BaseDirectory, "fonts"), "*.ttf")
        .Select(file => Path.GetFileNameWithoutExtension(file))
        .Order(StringComparer.Ordinal);

    public static FontFace Open(string name) =>
        new(File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "fonts", name + ".ttf")), name);
}
