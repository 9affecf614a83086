namespace Pattern.Press.Typesetting.Fonts;

/// <summary>One glyph of a run.</summary>
/// <remarks>A long book has millions, so each is kept as small as what fonts and lines can hold: 16 bytes.</remarks>
public readonly record struct ShapedGlyph
{
    private readonly short _offsetX;
    private readonly short _offsetY;
    private readonly ushort _length;

    /// <summary>A glyph in its place.</summary>
    /// <param name="id">Its number in the face.</param>
    /// <param name="advance">How far the pen moves on.</param>
    /// <param name="offsetX">How far right of the pen it is drawn.</param>
    /// <param name="offsetY">How far above the pen it is drawn.</param>
    /// <param name="start">Where the characters it stands for start in the run's text.</param>
    /// <param name="length">How many characters it stands for.</param>
    /// <exception cref="OverflowException">An offset or the length is beyond its range.</exception>
    public ShapedGlyph(ushort id, int advance, int offsetX, int offsetY, int start, int length) =>
        (Id, Advance, OffsetX, OffsetY, Start, Length) = (id, advance, offsetX, offsetY, start, length);

    /// <summary>Its number in the face.</summary>
    public ushort Id { get; init; }

    /// <summary>How far the pen moves on, in font units, kerning included.</summary>
    public int Advance { get; init; }

    /// <summary>How far right of the pen it is drawn, in font units; 16 bits, as in the tables of fonts.</summary>
    public int OffsetX
    {
        get => _offsetX;
        init => _offsetX = checked((short)value);
    }

    /// <summary>How far above the pen it is drawn, in font units; 16 bits.</summary>
    public int OffsetY
    {
        get => _offsetY;
        init => _offsetY = checked((short)value);
    }

    /// <summary>Where the characters it stands for start in the run's text.</summary>
    public int Start { get; init; }

    /// <summary>
    /// How many characters it stands for, at most 65,535; a ligature stands for several. When several glyphs stand for the
    /// same characters, the first carries them all and the others have length 0.
    /// </summary>
    public int Length
    {
        get => _length;
        init => _length = checked((ushort)value);
    }
}

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
