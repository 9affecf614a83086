namespace Pattern.Press.Typesetting.Fonts;

/// <summary>The part of a font file that draws some of its glyphs, packed with Flate for a PDF file.</summary>
/// <param name="Packed">The font file, packed.</param>
/// <param name="Length">Its length before packing.</param>
/// <param name="Tag">Six capitals that tell subsets of one face apart, made from the glyphs (ISO 32000-1, 9.6.4).</param>
internal sealed record FontSubset(byte[] Packed, int Length, string Tag);
