using Pattern.Press.Booklets.Figures;
using Pattern.Press.Typesetting.Fonts;
using Pattern.Press.Typesetting.Pages;

namespace Pattern.Press.Booklets.Templates;

/// <summary>Text broken into lines of a width: as many words on each as fit.</summary>
internal static class Lines
{
    public static IReadOnlyList<LetteringLine> Break(string text, double width, FontFace face, double size, string language) =>
        Break(text, _ => width, face, size, language);

    /// <summary>Lines of a width of their own each, told by their number from 0.</summary>
    public static IReadOnlyList<LetteringLine> Break(string text, Func<int, double> width, FontFace face, double size, string language)
    {
        // Words are measured one by one and each line is shaped once; kerning across a space is too little to matter.
        var space = Lettering.Set(" ", face, size, language).Width;
        var lines = new List<LetteringLine>();
        var start = 0;
        double used = 0;
        var words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        for (var i = 0; i < words.Length; i++)
        {
            var word = Lettering.Set(words[i], face, size, language).Width;
            if (i > start && used + space + word > width(lines.Count))
            {
                lines.Add(Lettering.Set(string.Join(' ', words[start..i]), face, size, language).GoingOn());
                (start, used) = (i, word);
            }
            else
            {
                used += (i > start ? space : 0) + word;
            }
        }

        if (start < words.Length)
            lines.Add(Lettering.Set(string.Join(' ', words[start..]), face, size, language));
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
