using Pattern.Press.Booklets.Figures;
using Pattern.Press.Typesetting.Fonts;
using Pattern.Press.Typesetting.Pages;

namespace Pattern.Press.Booklets.Templates;

/// <summary>Text broken into lines of a width: as many words on each as fit.</summary>
internal static class Lines
{
    public static IReadOnlyList<LetteringLine> Break(string text, double width, FontFace face, double size, string language)
    {
        var lines = new List<LetteringLine>();
        var words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var line = "";
        LetteringLine? set = null;
        foreach (var word in words)
        {
            var longer = line.Length == 0 ? word : line + " " + word;
            var next = Lettering.Set(longer, face, size, language);
            if (set is not null && next.Width > width)
            {
                lines.Add(set);
                longer = word;
                next = Lettering.Set(word, face, size, language);
            }

            (line, set) = (longer, next);
        }

        if (set is not null)
            lines.Add(set);
        return lines;
    }

    /// <summary>Sets lines below each other, the first with its top at y.</summary>
    /// <returns>The items and where the next line would start.</returns>
    public static (IReadOnlyList<PageItem> Items, double Next) Put(IReadOnlyList<LetteringLine> lines, double x, double y, double leading, Colour colour)
    {
        var items = new List<PageItem>();
        foreach (var line in lines)
        {
            items.AddRange(line.At(x, y + line.Ascent, colour));
            y += leading;
        }

        return (items, y);
    }
}
