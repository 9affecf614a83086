using HarfBuzzSharp;
using Buffer = HarfBuzzSharp.Buffer;

namespace Pattern.Press.Typesetting.Fonts;

/// <summary>Turns text into glyphs with HarfBuzz. Safe to use from several threads.</summary>
public static class Shaper
{
    // Words come again and again; whole paragraphs hardly ever do.
    private const int LongestKept = 64;

    // One list for each combination of features.
    private static readonly Feature[][] _featureLists = [.. Enumerable.Range(0, 32).Select(features => FeatureList((FontFeatures)features))];

    /// <summary>Shapes left-to-right text in one face.</summary>
    /// <param name="text">The text; must not hold line breaks.</param>
    /// <param name="face">The face.</param>
    /// <param name="size">The size in points.</param>
    /// <param name="features">Features to ask for.</param>
    /// <param name="language">A BCP 47 tag, for language-dependent forms.</param>
    public static ShapedRun Shape(string text, FontFace face, double size, FontFeatures features = FontFeatures.LiningFigures, string language = "en")
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(face);
        if (text.Length > LongestKept)
            return new ShapedRun(face, size, text, Glyphs(text, face, features, language));
        if (!face.Shaped.TryGet((text, features, language), out var glyphs))
        {
            glyphs = Glyphs(text, face, features, language);
            face.Shaped.Add((text, features, language), glyphs);
        }

        return new ShapedRun(face, size, text, glyphs);
    }

    /// <summary>Whether the face has a glyph for every character.</summary>
    public static bool Covers(FontFace face, string text)
    {
        foreach (var glyph in Shape(text, face, 10, FontFeatures.None).Glyphs)
        {
            if (glyph.Id == 0)
                return false;
        }

        return true;
    }

    private static ShapedGlyph[] Glyphs(string text, FontFace face, FontFeatures features, string language)
    {
        using var buffer = new Buffer { ClusterLevel = ClusterLevel.MonotoneCharacters };
        buffer.AddUtf16(text);
        buffer.Direction = Direction.LeftToRight;
        buffer.Script = Script.Latin;
        buffer.Language = new Language(language);
        face.Font.Shape(buffer, _featureLists[(int)features & (_featureLists.Length - 1)]);
        var infos = buffer.GetGlyphInfoSpan();
        var positions = buffer.GetGlyphPositionSpan();
        var glyphs = new ShapedGlyph[infos.Length];
        for (var i = 0; i < infos.Length; i++)
        {
            var start = (int)infos[i].Cluster;
            var first = i == 0 || infos[i - 1].Cluster != infos[i].Cluster;
            var length = first ? ClusterEnd(infos, i, text.Length) - start : 0;
            glyphs[i] = new ShapedGlyph((ushort)infos[i].Codepoint, positions[i].XAdvance, positions[i].XOffset, positions[i].YOffset, start, length);
        }

        return glyphs;
    }

    private static int ClusterEnd(ReadOnlySpan<GlyphInfo> infos, int at, int textLength)
    {
        for (var i = at + 1; i < infos.Length; i++)
        {
            if (infos[i].Cluster != infos[at].Cluster)
                return (int)infos[i].Cluster;
        }

        return textLength;
    }

    private static Feature[] FeatureList(FontFeatures features)
    {
        var list = new List<Feature>(6);
        if (features.HasFlag(FontFeatures.LiningFigures))
            list.Add(new Feature(Tag.Parse("lnum")));
        if (features.HasFlag(FontFeatures.TabularFigures))
            list.Add(new Feature(Tag.Parse("tnum")));
        if (features.HasFlag(FontFeatures.Fraction))
            list.Add(new Feature(Tag.Parse("frac")));
        if (features.HasFlag(FontFeatures.SmallCapitals))
            list.Add(new Feature(Tag.Parse("smcp")));
        if (features.HasFlag(FontFeatures.NoLigatures))
            list.Add(new Feature(Tag.Parse("liga"), 0));
        return [.. list];
    }
}
