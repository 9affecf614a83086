using System.Runtime.InteropServices;
using Pattern.Press.Typesetting.Fonts;

namespace Pattern.Press.Typesetting.Export.Pdf;

/// <summary>
/// A face as one document uses it: a composite font whose codes are glyph numbers (ISO 32000-1, 9.7). A glyph that stands
/// for two different texts gets a second code above the glyph numbers, so that every code says one thing and text can be
/// taken out again without loss by any reader.
/// </summary>
internal sealed class EmbeddedFont
{
    /// <summary>What codes say that belong to the glyph before them: a mark that joins and takes no room.</summary>
    private const string Nothing = "\u2060";

    private readonly ulong[] _used;
    private readonly string?[] _texts;
    private readonly List<(int Glyph, string Text)> _extra = [];
    private readonly Dictionary<(int Glyph, string Text), int> _extraCodes = [];
    private readonly int[] _widths;

    public EmbeddedFont(FontFace face, int number, int id)
    {
        Face = face;
        Number = number;
        Id = id;
        _used = new ulong[(face.GlyphCount + 63) / 64];
        _used[0] = 1;
        _texts = new string?[face.GlyphCount];
        _widths = new int[face.GlyphCount];
        for (var glyph = 0; glyph < _widths.Length; glyph++)
            _widths[glyph] = (int)Math.Round(face.Advances[glyph] * 1000.0 * PdfBuffer.FixedPerUnit / face.UnitsPerEm);
    }

    public FontFace Face { get; }

    /// <summary>Its number in the document; the font is called F with this number.</summary>
    public int Number { get; }

    /// <summary>The number of its object.</summary>
    public int Id { get; }

    /// <summary>The width of a glyph in fixed thousandths of the size, as the file declares it.</summary>
    public int Width(int glyph) => _widths[glyph];

    /// <summary>The code that shows a glyph and says a text.</summary>
    public int Code(ushort glyph, ReadOnlySpan<char> text)
    {
        if (glyph == 0 || glyph >= _texts.Length)
            throw new ArgumentException($"The font {Face.Name} has no glyph for “{text}”.");
        if (_texts[glyph] is { } known)
        {
            if (text.SequenceEqual(known))
                return glyph;
            var said = Said(text);
            if (said == known)
                return glyph;
            if (!_extraCodes.TryGetValue((glyph, said), out var code))
            {
                code = _texts.Length + _extra.Count;
                if (code > ushort.MaxValue)
                    throw new ArgumentException($"The font {Face.Name} is used for too many different texts.");
                _extra.Add((glyph, said));
                _extraCodes.Add((glyph, said), code);
            }

            return code;
        }

        _texts[glyph] = Said(text);
        _used[glyph >> 6] |= 1UL << (glyph & 63);
        return glyph;
    }

    /// <summary>Writes the font's objects.</summary>
    public void Write(PdfFile file)
    {
        var subset = Face.Subset(new GlyphSet(_used));
        var name = $"{subset.Tag}+{Face.PostScriptName}";
        var (descendant, descriptor, program, unicode) = (file.Reserve(), file.Reserve(), file.Reserve(), file.Reserve());
        using var entries = new PdfBuffer();
        entries.Raw("/Filter/FlateDecode/Length1 "u8).Int(subset.Length);
        file.Stream(program, entries.Span, subset.Packed, isToBePacked: false);
        using var content = new PdfBuffer();
        WriteToUnicode(content);
        file.Stream(unicode, default, content.Span);
        var map = 0;
        if (_extra.Count > 0)
        {
            map = file.Reserve();
            content.Clear();
            WriteCodeMap(content);
            file.Stream(map, default, content.Span);
        }

        file.Object(Id).Raw("<</Type/Font/Subtype/Type0/BaseFont"u8).Name(name)
            .Raw("/Encoding/Identity-H/DescendantFonts["u8).Ref(descendant).Raw("]/ToUnicode "u8).Ref(unicode).Raw(">>"u8);
        var font = file.Object(descendant).Raw("<</Type/Font/Subtype/CIDFontType2/BaseFont"u8).Name(name)
            .Raw("/CIDSystemInfo<</Registry(Adobe)/Ordering(Identity)/Supplement 0>>/FontDescriptor "u8).Ref(descriptor)
            .Raw("/CIDToGIDMap"u8);
        if (map > 0)
            font.Byte((byte)' ').Ref(map);
        else
            font.Raw("/Identity"u8);
        font.Raw("/W["u8);
        WriteWidths(font);
        font.Raw("]>>"u8);
        WriteDescriptor(file.Object(descriptor), name, program);
    }

    /// <summary>Spaces that do not break are a matter of layout; to a reader they are spaces, and words end at them.</summary>
    private static string Said(ReadOnlySpan<char> text)
    {
        if (text.IsEmpty)
            return Nothing;
        if (text.Length == 1)
        {
            return text[0] switch
            {
                '\u00A0' or '\u202F' or '\u2007' or '\u2009' or '\u200A' => " ",
                _ => text.ToString(),
            };
        }

        return text.ToString();
    }

    private IEnumerable<(int Code, int Glyph, string Text)> Codes()
    {
        for (var glyph = 0; glyph < _texts.Length; glyph++)
        {
            if (_texts[glyph] is { } text)
                yield return (glyph, glyph, text);
        }

        for (var i = 0; i < _extra.Count; i++)
            yield return (_texts.Length + i, _extra[i].Glyph, _extra[i].Text);
    }

    private void WriteWidths(PdfBuffer to)
    {
        var next = -1;
        foreach (var (code, glyph, _) in Codes())
        {
            if (code != next)
            {
                if (next >= 0)
                    to.Byte((byte)']');
                to.Int(code).Byte((byte)'[');
            }
            else
            {
                to.Byte((byte)' ');
            }

            to.Fixed(_widths[glyph]);
            next = code + 1;
        }

        if (next >= 0)
            to.Byte((byte)']');
    }

    private void WriteCodeMap(PdfBuffer to)
    {
        var at = 0;
        foreach (var (code, glyph, _) in Codes())
        {
            for (; at < code; at++)
                to.Byte(0).Byte(0);
            to.Byte((byte)(glyph >> 8)).Byte((byte)glyph);
            at++;
        }
    }

    private void WriteToUnicode(PdfBuffer to)
    {
        // No more than 100 entries may stand in one block (Adobe technical note 5411).
        const int Block = 100;
        var codes = Codes().ToList();
        to.Raw("""
            /CIDInit /ProcSet findresource begin
            12 dict begin
            begincmap
            /CIDSystemInfo <</Registry (Adobe) /Ordering (UCS) /Supplement 0>> def
            /CMapName /Adobe-Identity-UCS def
            /CMapType 2 def
            1 begincodespacerange
            <0000> <FFFF>
            endcodespacerange

            """u8);
        for (var start = 0; start < codes.Count; start += Block)
        {
            var count = Math.Min(Block, codes.Count - start);
            to.Int(count).Raw(" beginbfchar\n"u8);
            foreach (var (code, _, text) in CollectionsMarshal.AsSpan(codes).Slice(start, count))
                to.Byte((byte)'<').Hex16(code).Raw("> <"u8).HexUnits(text).Raw(">\n"u8);
            to.Raw("endbfchar\n"u8);
        }

        to.Raw("""
            endcmap
            CMapName currentdict /CMap defineresource pop
            end
            end

            """u8);
    }

    private void WriteDescriptor(PdfBuffer to, string name, int program)
    {
        // Symbolic, since the codes belong to no standard set of characters; and italic where it is (9.8.2).
        var flags = 4 | (Face.ItalicAngle != 0 ? 64 : 0);
        var box = Face.BoundingBox;
        to.Raw("<</Type/FontDescriptor/FontName"u8).Name(name).Raw("/Flags "u8).Int(flags)
            .Raw("/FontBBox["u8).Number(Em(box.Left)).Byte((byte)' ').Number(Em(box.Bottom)).Byte((byte)' ')
            .Number(Em(box.Right)).Byte((byte)' ').Number(Em(box.Top))
            .Raw("]/ItalicAngle "u8).Number(Face.ItalicAngle)
            .Raw("/Ascent "u8).Number(Em(Face.Ascender))
            .Raw("/Descent "u8).Number(Em(Face.Descender))
            .Raw("/CapHeight "u8).Number(Em(Face.CapHeight))
            .Raw("/XHeight "u8).Number(Em(Face.XHeight))
            .Raw("/StemV "u8).Int(StemWidth(Face.WeightClass))
            .Raw("/FontFile2 "u8).Ref(program).Raw(">>"u8);
    }

    private double Em(int units) => units * 1000.0 / Face.UnitsPerEm;

    /// <summary>
    /// Readers use the width of stems only to stand in for a font that is missing, which never happens here; a usual
    /// estimate from the weight serves (common practice, no source).
    /// </summary>
    private static int StemWidth(int weight) => 50 + (int)Math.Round(Math.Pow(weight / 65.0, 2));
}
