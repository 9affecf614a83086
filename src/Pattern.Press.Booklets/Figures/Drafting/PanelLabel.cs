using Pattern.Press.Nets;
using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Booklets.Figures.Drafting;

/// <summary>Fits a label into a panel: level if it can be, on two lines or reading upwards if not, smaller last.</summary>
internal static class PanelLabel
{
    private const double Least = 6.5;

    public static (Label Label, Point At)? Find(Room room, Shape shape, string text, StyleSheet styles, bool bold, Box? within = null, double largest = 0)
    {
        var face = bold ? styles.Text.Bold : styles.Text.Regular;
        var size = Math.Max(styles.Scale.Drawing, largest);
        var halves = Halves(text);
        return (size > Least ? Sized(size) : null) ?? Sized(Least);

        (Label Label, Point At)? Sized(double points) => Turned(points, false) ?? Turned(points, true);

        (Label Label, Point At)? Turned(double points, bool upwards) =>
            Set(text, null, points, upwards) ?? (halves is { } two ? Set(two.First, two.Second, points, upwards) : null);

        (Label Label, Point At)? Set(string first, string? second, double points, bool upwards)
        {
            var label = Label.Of(first, second, face, points, styles.Language, upwards);
            return room.Find(shape, label.Width, label.Height, 0.6, within) is { } at ? (label, at) : null;
        }
    }

    // Parted at the space nearest to the middle; null if there is none.
    private static (string First, string Second)? Halves(string text)
    {
        var middle = text.Length / 2;
        var at = -1;
        for (var i = 1; i < text.Length - 1; i++)
        {
            if (text[i] == ' ' && (at < 0 || Math.Abs(i - middle) < Math.Abs(at - middle)))
                at = i;
        }

        return at > 0 ? (text[..at], text[(at + 1)..]) : null;
    }
}
