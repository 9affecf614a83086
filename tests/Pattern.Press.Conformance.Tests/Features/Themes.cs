using System.Collections.Concurrent;
using Pattern.Press.Booklets.Content;
using Pattern.Press.Booklets.Themes;
using Pattern.Press.Structures.Reading;
using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Conformance.Features;

/// <summary>The themes, each read once.</summary>
internal static class Themes
{
    private static readonly ConcurrentDictionary<string, Lazy<StyleSheet>> _read = new(StringComparer.Ordinal);

    public static IReadOnlyList<string> Names { get; } = ThemeReader.Names(Resources.OfProgram.ThemesFolder);

    public static TheoryData<string> All => [.. Names];

    public static StyleSheet Of(string name) => _read.GetOrAdd(name, key => new(() =>
    {
        var problems = new Problems();
        var styles = ThemeReader.Read(Resources.OfProgram.ThemesFolder, key, "en-GB", problems);
        Assert.True(styles is not null, string.Join(Environment.NewLine, problems.All));
        return styles;
    })).Value;
}
