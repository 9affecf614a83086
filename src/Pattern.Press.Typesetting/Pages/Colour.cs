using System.Globalization;

namespace Pattern.Press.Typesetting.Pages;

/// <summary>An opaque sRGB colour.</summary>
public readonly record struct Colour(byte Red, byte Green, byte Blue)
{
    /// <summary>Black.</summary>
    public static Colour Black => default;

    /// <summary>White.</summary>
    public static Colour White => new(255, 255, 255);

    /// <summary>Relative luminance from 0 (black) to 1 (white), after WCAG 2.2.</summary>
    public double Luminance
    {
        get
        {
            return (0.2126 * Linear(Red)) + (0.7152 * Linear(Green)) + (0.0722 * Linear(Blue));

            static double Linear(byte channel)
            {
                var c = channel / 255.0;
                return c <= 0.04045 ? c / 12.92 : Math.Pow((c + 0.055) / 1.055, 2.4);
            }
        }
    }

    /// <summary>The contrast ratio of two colours, 1 to 21: (L₁ + 0.05)/(L₂ + 0.05), after WCAG 2.2.</summary>
    public double ContrastWith(Colour other)
    {
        var (a, b) = (Luminance, other.Luminance);
        return (Math.Max(a, b) + 0.05) / (Math.Min(a, b) + 0.05);
    }

    /// <summary>The grey of the same luminance.</summary>
    public Colour Grey
    {
        get
        {
            var y = Luminance;
            var c = y <= 0.0031308 ? y * 12.92 : (1.055 * Math.Pow(y, 1 / 2.4)) - 0.055;
            var g = (byte)Math.Round(c * 255);
            return new Colour(g, g, g);
        }
    }

    /// <summary>Reads <c>#1f6f5c</c>.</summary>
    public static bool TryParse(string? text, out Colour colour)
    {
        colour = default;
        if (text is not { Length: 7 } || text[0] != '#' ||
            !uint.TryParse(text.AsSpan(1), NumberStyles.AllowHexSpecifier, CultureInfo.InvariantCulture, out var rgb))
            return false;
        colour = new Colour((byte)(rgb >> 16), (byte)(rgb >> 8), (byte)rgb);
        return true;
    }

    /// <summary>The colour as <c>#1f6f5c</c>.</summary>
    public override string ToString() => $"#{Red:x2}{Green:x2}{Blue:x2}";
}
