using HarfBuzzSharp;
using SkiaSharp;

namespace Pattern.Press.Typesetting.Fonts;

/// <summary>One face of a typeface: a static TrueType file, with the measures layout needs. Safe to share between threads.</summary>
public sealed class FontFace : IDisposable
{
    // A booklet has some thousand different words; forms of one text differ by features and language.
    private const int ShapedTexts = 8192;

    // Two booklets with two versions of each, and room for more.
    private const int KeptSubsets = 16;

    private readonly Blob _blob;
    private readonly Face _face;
    private readonly BoundedCache<GlyphSet, FontSubset> _subsets = new(KeptSubsets);
    private readonly Lazy<SKTypeface> _typeface;

    /// <summary>Opens a face.</summary>
    /// <param name="bytes">The whole font file.</param>
    /// <param name="name">A name for messages, such as the file's.</param>
    /// <exception cref="FormatException">The bytes are not a TrueType font with outlines that can be embedded.</exception>
    public FontFace(byte[] bytes, string name)
    {
        ArgumentNullException.ThrowIfNull(bytes);
        Bytes = bytes;
        Name = name;
        var pinned = System.Runtime.InteropServices.GCHandle.Alloc(bytes, System.Runtime.InteropServices.GCHandleType.Pinned);
        _blob = new Blob(pinned.AddrOfPinnedObject(), bytes.Length, MemoryMode.ReadOnly, () => pinned.Free());
        _face = new Face(_blob, 0) { Index = 0 };
        _face.MakeImmutable();
        var tables = new FontTables(bytes, name);
        UnitsPerEm = tables.UnitsPerEm;
        GlyphCount = tables.GlyphCount;
        Ascender = tables.Ascender;
        Descender = tables.Descender;
        CapHeight = tables.CapHeight;
        XHeight = tables.XHeight;
        ItalicAngle = tables.ItalicAngle;
        WeightClass = tables.WeightClass;
        PostScriptName = tables.PostScriptName;
        FamilyName = tables.FamilyName;
        BoundingBox = tables.BoundingBox;
        Advances = tables.Advances;
        Font = new Font(_face);
        Font.SetFunctionsOpenType();
        Font.SetScale(UnitsPerEm, UnitsPerEm);

        // Only what cannot change any more may be shared between threads.
        HarfBuzzNative.FontMakeImmutable(Font.Handle);
        _typeface = new Lazy<SKTypeface>(OpenTypeface);
    }

    /// <summary>The font file.</summary>
    public byte[] Bytes { get; }

    /// <summary>A name for messages.</summary>
    public string Name { get; }

    /// <summary>The name PDF and print systems know the face by.</summary>
    public string PostScriptName { get; }

    /// <summary>The name people know the typeface by.</summary>
    public string FamilyName { get; }

    /// <summary>Font units in one em.</summary>
    public int UnitsPerEm { get; }

    /// <summary>How many glyphs there are.</summary>
    public int GlyphCount { get; }

    /// <summary>Height above the baseline in font units.</summary>
    public int Ascender { get; }

    /// <summary>Depth below the baseline in font units; negative.</summary>
    public int Descender { get; }

    /// <summary>Height of capitals in font units.</summary>
    public int CapHeight { get; }

    /// <summary>Height of small letters in font units.</summary>
    public int XHeight { get; }

    /// <summary>Slant in degrees; negative when it leans to the right.</summary>
    public double ItalicAngle { get; }

    /// <summary>Weight from 100 to 900; 400 is regular.</summary>
    public int WeightClass { get; }

    /// <summary>The box around all glyphs, in font units: left, bottom, right, top.</summary>
    public (int Left, int Bottom, int Right, int Top) BoundingBox { get; }

    /// <summary>The advance width of each glyph, in font units.</summary>
    public IReadOnlyList<ushort> Advances { get; }

    /// <summary>The shaping engine's view of the face.</summary>
    internal Font Font { get; }

    /// <summary>The glyphs of texts shaped before; they do not depend on the size.</summary>
    internal BoundedCache<(string Text, FontFeatures Features, string Language), ShapedGlyph[]> Shaped { get; } = new(ShapedTexts);

    /// <summary>The picture library's view of the face.</summary>
    internal SKTypeface Typeface => _typeface.Value;

    /// <summary>The face as the shaping engine hands it out, for making subsets.</summary>
    internal nint NativeFace => _face.Handle;

    /// <summary>The font file cut down to some glyphs.</summary>
    internal FontSubset Subset(GlyphSet glyphs)
    {
        if (!_subsets.TryGet(glyphs, out var subset))
        {
            subset = Subsetter.Subset(NativeFace, PostScriptName, glyphs);
            _subsets.Add(glyphs, subset);
        }

        return subset;
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        if (_typeface.IsValueCreated)
            _typeface.Value.Dispose();
        Font.Dispose();
        _face.Dispose();
        _blob.Dispose();
    }

    private SKTypeface OpenTypeface()
    {
        using var data = SKData.CreateCopy(Bytes);
        return SKTypeface.FromData(data) ?? throw new FormatException($"The font {Name} cannot be drawn.");
    }
}
