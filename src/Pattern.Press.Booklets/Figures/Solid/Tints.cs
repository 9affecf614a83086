using Pattern.Press.Nets.Folding;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Booklets.Figures.Solid;

/// <summary>
/// Colours of surfaces: the tint of what they are made of, a little darker the more they turn away from a lamp above the
/// viewer's left shoulder. Steps of lightness carry the form, so that a grey print shows it as well.
/// </summary>
internal sealed class Tints(StyleSheet styles, Axonometry view)
{
    private const double Darkest = 0.76;

    private readonly Vector3d lamp = ((view.Up * 0.60) - (view.Right * 0.70) + (view.Viewer * 0.40)).Unit;

    public Colour Ink => styles.Lines.Cut;

    /// <summary>Lines inside a form.</summary>
    public Colour FineInk => Mix(styles.Lines.Cut, styles.Lines.Card, 0.2);

    /// <summary>The shadow on the ground.</summary>
    public Colour Shadow => Mix(Colour.White, styles.Palette.Text, 0.075);

    public Colour Of(Face face)
    {
        var front = face.Normal.Dot(view.Viewer) > 0;
        var lit = (1 + (front ? face.Normal : -face.Normal).Dot(lamp)) / 2;
        return Shade(Base(front ? face.Front : face.Back ?? face.Front), Darkest + ((1 - Darkest) * lit));
    }

    /// <summary>The colour of a pattern on a face.</summary>
    public Colour PatternOn(Face face) => Mix(Of(face), styles.Palette.Accent, 0.42);

    private Colour Base(Surface surface) => surface switch
    {
        Surface.CardFacing => styles.Lines.Card,
        Surface.CardAway => styles.Lines.CardAway,
        Surface.Item => Mix(styles.Palette.Accent, Colour.White, 0.62),
        _ => Mix(styles.Palette.Accent, styles.Lines.Card, 0.84),
    };

    public static Colour Mix(Colour a, Colour b, double part)
    {
        return new Colour(Channel(a.Red, b.Red), Channel(a.Green, b.Green), Channel(a.Blue, b.Blue));

        byte Channel(byte from, byte to) => (byte)Math.Round(from + ((to - from) * part));
    }

    private static Colour Shade(Colour colour, double by) => Mix(Colour.Black, colour, by);
}
