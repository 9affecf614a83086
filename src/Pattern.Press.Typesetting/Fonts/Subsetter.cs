using System.IO.Compression;
using System.Runtime.InteropServices;
using System.Security.Cryptography;
using System.Text;

namespace Pattern.Press.Typesetting.Fonts;

/// <summary>Cuts a face down to some of its glyphs with HarfBuzz. Glyph numbers stay as they are.</summary>
internal static class Subsetter
{
    // Text is shaped before it comes to a PDF file, so nothing that turns characters into glyphs is needed in there.
    private static readonly string[] _needless =
        ["GSUB", "GPOS", "GDEF", "BASE", "JSTF", "kern", "name", "post", "OS/2", "cmap", "DSIG", "gasp", "meta", "STAT", "hdmx", "VDMX", "LTSH"];

    /// <summary>Makes the subset for some glyphs.</summary>
    public static unsafe FontSubset Subset(nint face, string name, GlyphSet glyphs)
    {
        var input = HarfBuzzNative.InputCreate();
        if (input == 0)
            throw new InvalidOperationException("There is no memory left to subset a font.");
        try
        {
            HarfBuzzNative.InputSetFlags(input, HarfBuzzNative.RetainGlyphIds | HarfBuzzNative.NoHinting | HarfBuzzNative.NoLayoutClosure | HarfBuzzNative.NotdefOutline);
            var wanted = HarfBuzzNative.InputGlyphSet(input);
            for (var word = 0; word < glyphs.Bits.Length; word++)
            {
                for (var bits = glyphs.Bits[word]; bits != 0; bits &= bits - 1)
                    HarfBuzzNative.SetAdd(wanted, (uint)((word * 64) + System.Numerics.BitOperations.TrailingZeroCount(bits)));
            }

            var dropped = HarfBuzzNative.InputSet(input, HarfBuzzNative.DropTables);
            foreach (var table in _needless)
                HarfBuzzNative.SetAdd(dropped, (uint)((table[0] << 24) | (table[1] << 16) | (table[2] << 8) | table[3]));
            var subset = HarfBuzzNative.Subset(face, input);
            if (subset == 0)
                throw new InvalidOperationException($"The font {name} could not be subset.");
            var blob = HarfBuzzNative.FaceReferenceBlob(subset);
            HarfBuzzNative.FaceDestroy(subset);
            try
            {
                var data = HarfBuzzNative.BlobGetData(blob, out var length);
                var bytes = new ReadOnlySpan<byte>((void*)data, (int)length);
                return new FontSubset(Export.Pdf.PdfFile.Deflate(bytes), bytes.Length, Tag(name, glyphs));
            }
            finally
            {
                HarfBuzzNative.BlobDestroy(blob);
            }
        }
        finally
        {
            HarfBuzzNative.InputDestroy(input);
        }
    }

    private static string Tag(string name, GlyphSet glyphs)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        hash.AppendData(Encoding.UTF8.GetBytes(name));
        hash.AppendData(MemoryMarshal.AsBytes(glyphs.Bits));
        var digest = hash.GetHashAndReset();
        return string.Create(6, digest, (tag, from) =>
        {
            for (var i = 0; i < tag.Length; i++)
                tag[i] = (char)('A' + (from[i] % 26));
        });
    }
}
