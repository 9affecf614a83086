using System.Buffers.Binary;
using System.Text;

namespace Pattern.Press.Typesetting.Fonts;

/// <summary>Reads the few tables of a TrueType file that layout and PDF need (OpenType specification 1.9).</summary>
internal sealed class FontTables
{
    private readonly byte[] _bytes;
    private readonly string _name;
    private readonly Dictionary<string, (int Offset, int Length)> _tables = [];

    public FontTables(byte[] bytes, string name)
    {
        _bytes = bytes;
        _name = name;
        try
        {
            Read();
        }
        catch (ArgumentOutOfRangeException)
        {
            throw new FormatException($"The font {name} is damaged.");
        }
    }

    public int UnitsPerEm { get; private set; }

    public int GlyphCount { get; private set; }

    public int Ascender { get; private set; }

    public int Descender { get; private set; }

    public int CapHeight { get; private set; }

    public int XHeight { get; private set; }

    public double ItalicAngle { get; private set; }

    public int WeightClass { get; private set; }

    public string PostScriptName { get; private set; } = "";

    public string FamilyName { get; private set; } = "";

    public (int Left, int Bottom, int Right, int Top) BoundingBox { get; private set; }

    public ushort[] Advances { get; private set; } = [];

    private void Read()
    {
        if (_bytes.Length < 12 || U32(0) is not (0x00010000 or 0x74727565))
            throw new FormatException($"The font {_name} is not a TrueType font; use a static .ttf file.");
        int count = U16(4);
        for (var i = 0; i < count; i++)
        {
            var at = 12 + (16 * i);
            _tables[Encoding.ASCII.GetString(_bytes, at, 4)] = ((int)U32(at + 8), (int)U32(at + 12));
        }

        if (_tables.ContainsKey("fvar"))
            throw new FormatException($"The font {_name} is a variable font; use a static .ttf file.");
        var head = Table("head");
        UnitsPerEm = U16(head + 18);
        BoundingBox = (S16(head + 36), S16(head + 38), S16(head + 40), S16(head + 42));
        GlyphCount = U16(Table("maxp") + 4);
        var hhea = Table("hhea");
        Ascender = S16(hhea + 4);
        Descender = S16(hhea + 6);
        int longMetrics = U16(hhea + 34);
        var hmtx = Table("hmtx");
        Advances = new ushort[GlyphCount];
        for (var glyph = 0; glyph < GlyphCount; glyph++)
            Advances[glyph] = (ushort)U16(hmtx + (4 * Math.Min(glyph, longMetrics - 1)));
        var os2 = Table("OS/2");
        WeightClass = U16(os2 + 4);

        // The file may ask that its typographic measures be used (fsSelection, bit 7).
        if ((U16(os2 + 62) & 0x80) != 0)
            (Ascender, Descender) = (S16(os2 + 68), S16(os2 + 70));
        var hasHeights = U16(os2) >= 2;
        XHeight = hasHeights ? S16(os2 + 86) : UnitsPerEm / 2;
        CapHeight = hasHeights ? S16(os2 + 88) : UnitsPerEm * 7 / 10;
        ItalicAngle = (int)U32(Table("post") + 4) / 65536.0;
        _ = Table("glyf");
        PostScriptName = ReadName(6) ?? "Unnamed";
        // The typographic family if there is one, else the family.
        FamilyName = ReadName(16) ?? ReadName(1) ?? PostScriptName;
    }

    private string? ReadName(int id)
    {
        var name = Table("name");
        int count = U16(name + 2);
        var strings = name + U16(name + 4);
        for (var i = 0; i < count; i++)
        {
            var at = name + 6 + (12 * i);
            if (U16(at + 6) != id)
                continue;
            var raw = _bytes.AsSpan(strings + U16(at + 10), U16(at + 8));
            var text = U16(at) == 1 ? Encoding.ASCII.GetString(raw) : Encoding.BigEndianUnicode.GetString(raw);
            if (text.Length > 0)
                return text;
        }

        return null;
    }

    private int Table(string tag) => _tables.TryGetValue(tag, out var table)
        ? table.Offset
        : throw new FormatException($"The font {_name} has no “{tag}” table; use a static TrueType (.ttf) file.");

    private int U16(int at) => BinaryPrimitives.ReadUInt16BigEndian(_bytes.AsSpan(at, 2));

    private int S16(int at) => BinaryPrimitives.ReadInt16BigEndian(_bytes.AsSpan(at, 2));

    private uint U32(int at) => BinaryPrimitives.ReadUInt32BigEndian(_bytes.AsSpan(at, 4));
}
