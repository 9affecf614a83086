namespace Pattern.Press.Typesetting.Fonts;

/// <summary>One glyph of a run.</summary>
/// <param name="Id">Its number in the face.</param>
/// <param name="Advance">How far the pen moves on, in font units, kerning included.</param>
/// <param name="OffsetX">How far right of the pen it is drawn, in font units.</param>
/// <param name="OffsetY">How far above the pen it is drawn, in font units.</param>
/// <param name="Start">Where the characters it stands for start in the run's text.</param>
/// <param name="Length">
/// How many characters it stands for; a ligature stands for several. When several glyphs stand for the same characters,
/// the first carries them all and the others have length 0.
/// </param>
public readonly record struct ShapedGlyph(ushort Id, int Advance, int OffsetX, int OffsetY, int Start, int Length);

/// <summary>Text in one face at one size, shaped: glyphs with their places.</summary>
/// <param name="Face">The face.</param>
/// <param name="Size">The size in points of 1/72 in.</param>
/// <param name="Text">What the run says, and what text extraction gives.</param>
/// <param name="Glyphs">The glyphs, left to right.</param>
public sealed record ShapedRun(FontFace Face, double Size, string Text, IReadOnlyList<ShapedGlyph> Glyphs)
{
    private const double MillimetresPerPoint = 25.4 / 72;

    /// <summary>Extra room after every glyph, in font units: letter-spacing for small headings.</summary>
    public int Tracking { get; init; }

    /// <summary>Millimetres in one font unit at this size.</summary>
    public double Scale => Size * MillimetresPerPoint / Face.UnitsPerEm;

    /// <summary>The width of the run in millimetres.</summary>
    public double Width
    {
        get
        {
            long units = 0;
            foreach (var glyph in Glyphs)
                units += glyph.Advance + Tracking;
            return units * Scale;
        }
    }
}
