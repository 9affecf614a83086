using System.Buffers.Binary;
using System.Text;
using Pattern.Press.Typesetting.Fonts;
using SkiaSharp;

namespace Pattern.Press.Typesetting.Tests.Fonts;

public class FontFaceTests
{
    public static TheoryData<string> Faces() => [.. TestFonts.Files()];

    /// <summary>The measures are those that another library reads from the same file.</summary>
    [Theory]
    [MemberData(nameof(Faces))]
    public void Measures_are_those_of_the_file(string name)
    {
        using var face = TestFonts.Open(name);
        using var typeface = SKTypeface.FromFile(Path.Combine(AppContext.BaseDirectory, "fonts", name + ".ttf"));
        using var font = new SKFont(typeface, face.UnitsPerEm) { Hinting = SKFontHinting.None, LinearMetrics = true };
        Assert.Equal(typeface.UnitsPerEm, face.UnitsPerEm);
        Assert.Equal(typeface.GlyphCount, face.GlyphCount);
        Assert.Equal(name, face.PostScriptName);
        Assert.Equal(-font.Metrics.Ascent, face.Ascender, 1.0);
        Assert.Equal(-font.Metrics.Descent, face.Descender, 1.0);
        Assert.Equal(font.Metrics.CapHeight, face.CapHeight, 1.0);
        Assert.Equal(font.Metrics.XHeight, face.XHeight, 1.0);
        Assert.Equal(name.Contains("Italic", StringComparison.Ordinal), face.ItalicAngle < 0);
        Assert.Equal(typeface.FontWeight, face.WeightClass);
        var glyphs = typeface.GetGlyphs("Hamburgefonstiv 0123");
        Assert.Equal(font.GetGlyphWidths(glyphs), glyphs.Select(glyph => (float)face.Advances[glyph]), (a, b) => Math.Abs(a - b) < 0.6);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(11)]
    [InlineData(300)]
    [InlineData(4000)]
    public void A_file_cut_off_is_refused(int length)
    {
        var bytes = TestFonts.Sans.Bytes[..length];
        Assert.Contains("stub", Assert.Throws<FormatException>(() => new FontFace(bytes, "stub")).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("glyf")]
    [InlineData("hmtx")]
    [InlineData("OS/2")]
    public void A_file_without_a_table_is_refused_by_its_name(string table)
    {
        var bytes = TestFonts.Sans.Bytes.ToArray();
        for (var i = 0; i < BinaryPrimitives.ReadUInt16BigEndian(bytes.AsSpan(4)); i++)
        {
            if (Encoding.ASCII.GetString(bytes, 12 + (16 * i), 4) == table)
                bytes[12 + (16 * i)] = (byte)'z';
        }

        Assert.Contains($"“{table}”", Assert.Throws<FormatException>(() => new FontFace(bytes, "stub")).Message, StringComparison.Ordinal);
    }
}
