using System.Buffers.Binary;
using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using UglyToad.PdfPig.Graphics.Operations.TextShowing;
using UglyToad.PdfPig.Graphics.Operations.TextState;
using UglyToad.PdfPig.Tokens;

namespace Pattern.Press.Conformance;

/// <summary>Checks that every character shown has a glyph in an embedded font, a width, and a meaning.</summary>
internal static partial class FontCheck
{
    public static void Run(PdfObjects objects, Findings findings)
    {
        var used = new SortedDictionary<long, SortedSet<int>>();
        for (var i = 0; i < objects.Pages.Count; i++)
            CollectCodes(objects, i, used, findings);
        foreach (var (number, codes) in used)
            CheckFont(objects, (DictionaryToken)objects.Object(number), codes, findings);
    }

    private static void CollectCodes(PdfObjects objects, int index, SortedDictionary<long, SortedSet<int>> used, Findings findings)
    {
        var fonts = objects.Dictionary(objects.Dictionary(objects.Pages[index].Page, "Resources"), "Font");
        SortedSet<int>? codes = null;
        var saved = new Stack<SortedSet<int>?>();
        foreach (var operation in objects.Operations(index))
        {
            // The font belongs to what q saves and Q brings back (ISO 32000-1, 8.4.2).
            if (operation.Operator == "q")
            {
                saved.Push(codes);
            }
            else if (operation.Operator == "Q")
            {
                codes = saved.Pop();
            }
            else if (operation is SetFontAndSize set)
            {
                var number = fonts is null ? 0 : PdfObjects.Reference(fonts, set.Font.Data);
                if (number == 0)
                {
                    findings.Report("A 6.2.2b", $"Page {index + 1} uses a font that it does not have.");
                    return;
                }

                if (!used.TryGetValue(number, out codes))
                    used[number] = codes = [];
            }
            else if (operation is ShowTextsWithPositioning show)
            {
                foreach (var bytes in show.Array.Select(Bytes))
                {
                    for (var at = 0; at + 1 < bytes.Length; at += 2)
                        codes!.Add(BinaryPrimitives.ReadUInt16BigEndian(bytes.AsSpan(at)));
                }
            }
            else if (operation.Operator is "Tj" or "'" or "\"")
            {
                findings.Report("Press fonts", $"Text on page {index + 1} is shown in a way this check does not read.");
            }
        }
    }

    private static byte[] Bytes(IToken token) => token switch
    {
        HexToken hex => hex.Bytes.ToArray(),
        StringToken text => text.GetBytes(),
        _ => [],
    };

    private static void CheckFont(PdfObjects objects, DictionaryToken font, SortedSet<int> codes, Findings findings)
    {
        var name = objects.Name(font, "BaseFont") ?? "?";
        var descendant = objects.Array(font, "DescendantFonts")?.Data.Select(objects.Resolve).OfType<DictionaryToken>().FirstOrDefault();
        if (objects.Name(font, "Subtype") != "Type0" || objects.Name(font, "Encoding") != "Identity-H" || descendant is null)
        {
            findings.Report("31-006", $"The font {name} is not a composite font with codes of two bytes.");
            return;
        }

        var map = CodesToGlyphs(objects, descendant, name, findings);
        var descriptor = objects.Dictionary(descendant, "FontDescriptor");
        if (objects.Get<StreamToken>(descriptor, "FontFile2") is not { } program)
        {
            findings.Report("31-009", $"The font {name} is not embedded.");
            return;
        }

        if (!SubsetName().IsMatch(name) || objects.Name(descriptor, "FontName") != name || objects.Name(descendant, "BaseFont") != name)
            findings.Report("PDF 9.6.4", $"The font {name} is not named as a subset.");
        var data = objects.Data(program);
        if (objects.Number(program.StreamDictionary, "Length1") != data.Length)
            findings.Report("PDF 9.9", $"The program of the font {name} is not as long as it says.");
        CheckGlyphList(objects, descriptor!, map, name, codes, findings);
        var toUnicode = objects.Get<StreamToken>(font, "ToUnicode");
        var meanings = toUnicode is null ? [] : Meanings(Encoding.ASCII.GetString(objects.Data(toUnicode)));
        CheckGlyphs(objects, descendant, data, map, name, codes, meanings, findings);
        if (toUnicode is null)
        {
            findings.Report("31-027", $"The characters of the font {name} have no meaning.");
            return;
        }

        foreach (var code in codes)
        {
            if (!meanings.TryGetValue(code, out var meaning) || meaning.Length == 0)
                findings.Report("10-001", $"The character {code} of the font {name} has no meaning.");
            else if (meaning.Contains('\0'))
                findings.Report("31-028", $"The character {code} of the font {name} means the number 0.");
            else if (meaning.Contains('\uFEFF') || meaning.Contains('\uFFFE'))
                findings.Report("31-029", $"The character {code} of the font {name} means no character.");
            else if (meaning.Any(c => c is >= '\uE000' and <= '\uF8FF'))
                findings.Report("A 6.2.11.7", $"The character {code} of the font {name} means something of private use.");
        }
    }

    /// <summary>ISO 19005-2, 6.2.11.4.2: a list of the glyphs in the program, which need not be there, names them all.</summary>
    private static void CheckGlyphList(PdfObjects objects, DictionaryToken descriptor, Func<int, int> map, string name, SortedSet<int> codes, Findings findings)
    {
        if (objects.Get<StreamToken>(descriptor, "CIDSet") is not { } set)
            return;
        var bits = objects.Data(set);
        if (codes.Any(code => code / 8 >= bits.Length || (bits[code / 8] & (0x80 >> (code % 8))) == 0 || map(code) == 0))
            findings.Report("31-014", $"The list of the glyphs of the font {name} is not complete.");
    }

    private static Func<int, int> CodesToGlyphs(PdfObjects objects, DictionaryToken descendant, string name, Findings findings)
    {
        if (objects.Get<StreamToken>(descendant, "CIDToGIDMap") is { } stream)
        {
            var bytes = objects.Data(stream);
            return code => (2 * code) + 1 < bytes.Length ? BinaryPrimitives.ReadUInt16BigEndian(bytes.AsSpan(2 * code)) : 0;
        }

        var map = objects.Name(descendant, "CIDToGIDMap");
        if (map is null)
            findings.Report("31-005", $"The font {name} does not say which glyphs its characters are.");
        else if (map != "Identity")
            findings.Report("31-004", $"The font {name} has a map of glyphs called {map}.");
        return code => code;
    }

    private static void CheckGlyphs(
        PdfObjects objects,
        DictionaryToken descendant,
        byte[] program,
        Func<int, int> map,
        string name,
        SortedSet<int> codes,
        Dictionary<int, string> meanings,
        Findings findings)
    {
        var widths = Widths(objects, descendant);
        var tables = Tables(program);
        if (!tables.TryGetValue("maxp", out var maxp) || !tables.TryGetValue("hmtx", out var hmtx) || !tables.TryGetValue("hhea", out var hhea) ||
            !tables.TryGetValue("head", out var head) || !tables.ContainsKey("glyf") || !tables.TryGetValue("loca", out var loca))
        {
            findings.Report("31-009", $"The program of the font {name} lacks tables.");
            return;
        }

        var glyphCount = U16(maxp + 4);
        var longMetrics = U16(hhea + 34);
        var unitsPerEm = U16(head + 18);
        foreach (var code in codes)
        {
            var glyph = map(code);
            if (glyph == 0)
            {
                findings.Report("31-030", $"The character {code} of the font {name} has no glyph.");
            }
            else if (glyph >= glyphCount)
            {
                findings.Report("31-011", $"The glyph {glyph} is not in the program of the font {name}.");
            }
            else
            {
                // Only what is white may have no outline.
                if (Outline(glyph + 1) <= Outline(glyph) && !(meanings.TryGetValue(code, out var said) && said.All(c => char.IsWhiteSpace(c) || c == '\u2060')))
                    findings.Report("31-011", $"The glyph {glyph} in the program of the font {name} is empty.");

                // ISO 19005-2, 6.2.11.5: the widths in the file are those of the program, to one thousandth.
                var width = U16(hmtx + (4 * Math.Min(glyph, longMetrics - 1))) * 1000.0 / unitsPerEm;
                if (!(Math.Abs(widths.GetValueOrDefault(code, 1000) - width) <= 1))
                    findings.Report("31-016", $"The width of the character {code} of the font {name} is not that of its glyph.");
            }
        }

        // ISO/IEC 14496-22, “loca”: where outlines start, in two bytes or four.
        long Outline(int glyph) => U16(head + 50) == 0
            ? 2 * U16(loca + (2 * glyph))
            : BinaryPrimitives.ReadUInt32BigEndian(program.AsSpan(loca + (4 * glyph)));

        int U16(int at) => BinaryPrimitives.ReadUInt16BigEndian(program.AsSpan(at));
    }

    private static Dictionary<string, int> Tables(byte[] program)
    {
        var tables = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var i = 0; i < BinaryPrimitives.ReadUInt16BigEndian(program.AsSpan(4)); i++)
            tables[Encoding.ASCII.GetString(program, 12 + (16 * i), 4)] = BinaryPrimitives.ReadInt32BigEndian(program.AsSpan(20 + (16 * i)));
        return tables;
    }

    private static Dictionary<int, double> Widths(PdfObjects objects, DictionaryToken descendant)
    {
        var widths = new Dictionary<int, double>();
        var list = objects.Array(descendant, "W")?.Data ?? [];
        for (var i = 0; i + 1 < list.Count; i += 2)
        {
            var first = ((NumericToken)list[i]).Int;
            foreach (var (width, offset) in ((ArrayToken)list[i + 1]).Data.Cast<NumericToken>().Select((width, offset) => (width, offset)))
                widths[first + offset] = width.Double;
        }

        return widths;
    }

    private static Dictionary<int, string> Meanings(string map)
    {
        var meanings = new Dictionary<int, string>();
        foreach (Match block in CharacterBlock().Matches(map))
        {
            foreach (Match pair in Pair().Matches(block.Value))
            {
                var units = Enumerable.Range(0, pair.Groups[2].Length / 4).Select(i => (char)Hex(pair.Groups[2].Value.Substring(4 * i, 4)));
                meanings[Hex(pair.Groups[1].Value)] = string.Concat(units);
            }
        }

        return meanings;
    }

    private static int Hex(string digits) => int.Parse(digits, NumberStyles.HexNumber, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^[A-Z]{6}\+")]
    private static partial Regex SubsetName();

    [GeneratedRegex(@"beginbfchar(.*?)endbfchar", RegexOptions.Singleline)]
    private static partial Regex CharacterBlock();

    [GeneratedRegex(@"<([0-9A-F]+)>\s*<([0-9A-F]*)>")]
    private static partial Regex Pair();
}
