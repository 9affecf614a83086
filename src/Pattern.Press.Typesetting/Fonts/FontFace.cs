using HarfBuzzSharp;

namespace Pattern.Press.Typesetting.Fonts;

/// <summary>One face of a typeface: a static TrueType file, with the measures layout needs. Safe to share between threads.</summary>
public sealed class FontFace : IDisposable
{
    private readonly Blob _blob;
    private readonly Face _face;

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
        BoundingBox = tables.BoundingBox;
        Advances = tables.Advances;
        Font = new Font(_face);
        Font.SetFunctionsOpenType();
        Font.SetScale(UnitsPerEm, UnitsPerEm);
    }

    /// <summary>The font file.</summary>
    public byte[] Bytes { get; }

    /// <summary>A name for messages.</summary>
    public string Name { get; }

    /// <summary>The name PDF and print systems know the face by.</summary>
    public string PostScriptName { get; }

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

    /// <inheritdoc/>
    public void Dispose()
    {
        Font.Dispose();
        _face.Dispose();
        _blob.Dispose();
    }
}
