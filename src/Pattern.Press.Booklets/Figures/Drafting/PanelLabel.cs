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
        foreach (var points in size > Least ? new[] { size, Least } : [Least])
        {
            foreach (var upwards in new[] { false, true })
            {
                foreach (var lines in Ways(text))
                {
                    var label = new Label(lines, face, points, styles.Language, upwards);
                    if (room.Find(shape, label.Width, label.Height, 0.6, within) is { } at)
                        return (label, at);
                }
            }
        }

        return null;
    }

    private static IEnumerable<IReadOnlyList<string>> Ways(string text)
    {
        yield return [text];
        var middle = text.Length / 2;
        var at = -1;
        for (var i = 1; i < text.Length - 1; i++)
        {
            if (text[i] == ' ' && (at < 0 || Math.Abs(i - middle) < Math.Abs(at - middle)))
                at = i;
        }

        if (at > 0)
            yield return [text[..at], text[(at + 1)..]];
    }
}
