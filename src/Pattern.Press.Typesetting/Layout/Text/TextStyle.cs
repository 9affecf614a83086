using Pattern.Press.Typesetting.Fonts;
using Pattern.Press.Typesetting.Pages;

namespace Pattern.Press.Typesetting.Layout.Text;

/// <summary>A face at a size in a colour. Two pieces of text with the same style object become one run.</summary>
internal sealed class TextStyle
{
    /// <summary>Millimetres in a point.</summary>
    public const double Point = 25.4 / 72;

    // The room between a whole number and its fraction: enough to tell 2 1/4 from 21/4, too little to part them.
    private const double FractionSpaceEms = 0.15;

    // Some faces have a space so narrow that words run together at small sizes: a fifth of an em is the least between
    // words (common practice, no source). Inside measurements the face's own space stays.
    private const double LeastSpaceEms = 0.2;

    private readonly ShapedWords _words;
    private readonly string _language;
    private ShapedWords? _fractions;
    private ShapedWord? _fractionSpace;
    private ShapedWord? _lineEndSpace;

    public TextStyle(FontFace face, double size, Colour colour, FontFeatures features, string language, int tracking = 0)
    {
        (Face, Size, Colour, Features, Tracking) = (face, size, colour, features, tracking);
        _language = language;
        _words = ShapedWords.Of(face, features, language);
        Scale = size * Point / face.UnitsPerEm;
        Space = _words.Get(" ");
        SpaceWidth = Math.Max(WidthOf(Space), LeastSpaceEms * Em);
    }

    public FontFace Face { get; }

    /// <summary>In points.</summary>
    public double Size { get; }

    public Colour Colour { get; }

    public FontFeatures Features { get; }

    /// <summary>Extra room after every glyph, in font units.</summary>
    public int Tracking { get; }

    /// <summary>Millimetres in a font unit.</summary>
    public double Scale { get; }

    /// <summary>One em in millimetres.</summary>
    public double Em => Size * Point;

    public ShapedWord Space { get; }

    /// <summary>The width of a space between words, in millimetres.</summary>
    public double SpaceWidth { get; }

    /// <summary>A space that takes no room, so that words at the ends of lines stay apart in what is read out.</summary>
    public ShapedWord LineEndSpace => _lineEndSpace ??= SpaceOf(-Tracking);

    /// <summary>The space between a whole number and its fraction.</summary>
    public ShapedWord FractionSpace => _fractionSpace ??=
        SpaceOf((int)Math.Round(Math.Min(FractionSpaceEms * Face.UnitsPerEm, Space.Units)));

    public ShapedWord Shape(ReadOnlySpan<char> text) => _words.Get(text);

    /// <summary>A fraction such as 1/4, with a real numerator and denominator.</summary>
    public ShapedWord ShapeFraction(ReadOnlySpan<char> text) =>
        (_fractions ??= ShapedWords.Of(Face, (Features & ~FontFeatures.TabularFigures) | FontFeatures.Fraction, _language)).Get(text);

    /// <summary>The width of a word in millimetres.</summary>
    public double WidthOf(ShapedWord word) => (word.Units + (word.Glyphs.Length * (long)Tracking)) * Scale;

    /// <summary>A run of the whole text, on one line.</summary>
    public ShapedRun Run(string text) => new(Face, Size, text, _words.Get(text).Glyphs) { Tracking = Tracking };

    private ShapedWord SpaceOf(int units) => new(" ", [Space.Glyphs[0] with { Advance = units }], units);
}
