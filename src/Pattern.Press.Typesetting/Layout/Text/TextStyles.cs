using System.Collections.Concurrent;
using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Fonts;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Typesetting.Layout.Text;

/// <summary>How a paragraph's words are set, whatever their emphasis.</summary>
/// <param name="Family">The faces.</param>
/// <param name="Size">In points.</param>
/// <param name="Leading">From baseline to baseline, in millimetres.</param>
/// <param name="Colour">The colour.</param>
/// <param name="Base">Emphasis that all the words have; emphasis inside turns it over, so italics in italics are upright.</param>
/// <param name="Features">Features of all the words.</param>
internal sealed record TextLook(
    FontFamily Family,
    double Size,
    double Leading,
    Colour Colour,
    Emphasis Base = Emphasis.None,
    FontFeatures Features = FontFeatures.LiningFigures)
{
    /// <summary>Extra room between letters, in ems.</summary>
    public double Tracking { get; init; }

    /// <summary>From the top of a line's strip to its baseline: letters stand in the middle of their leading.</summary>
    public double Baseline => ((Leading - (Size * TextStyle.Point)) / 2) + (0.76 * Size * TextStyle.Point);
}

/// <summary>The styles of a book, each made once, so that equal styles are the same object.</summary>
internal sealed class TextStyles(string language)
{
    private readonly ConcurrentDictionary<(FontFace, double, Colour, FontFeatures, int), TextStyle> _styles = new();

    /// <summary>The style of words of an emphasis in a paragraph of a look.</summary>
    public TextStyle Get(TextLook look, Emphasis emphasis)
    {
        var features = look.Features;
        if ((emphasis & Emphasis.Literal) != 0)
            features |= FontFeatures.NoLigatures;
        // Bold in bold stays bold; italics in italics turn upright again.
        var set = look.Base ^ (emphasis & Emphasis.Italic);
        set |= emphasis & Emphasis.Bold;
        var face = look.Family.Face(set);
        var tracking = (int)Math.Round(look.Tracking * face.UnitsPerEm);
        var key = (face, look.Size, look.Colour, features, tracking);
        return _styles.TryGetValue(key, out var style)
            ? style
            : _styles.GetOrAdd(key, new TextStyle(face, look.Size, look.Colour, features, language, tracking));
    }
}
