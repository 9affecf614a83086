using Pattern.Press.Booklets.Figures;
using Pattern.Press.Typesetting.Fonts;
using Pattern.Press.Typesetting.Pages;

namespace Pattern.Press.Booklets.Composing;

/// <summary>Sets a few words in lines of even length, for covers, where paragraphs of a layout would be out of place.</summary>
internal static class SetLines
{
    /// <summary>
    /// Words broken into the fewest lines that fit, and among those the ones whose longest line is shortest: a title should
    /// not end in a single short word. No-break spaces hold.
    /// </summary>
    public static IReadOnlyList<LetteringLine> Break(string text, FontFace face, double size, double maxWidth, string language)
    {
        var words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (words.Length == 0)
            return [];
        LetteringLine Line(int from, int to) => Lettering.Set(string.Join(' ', words[from..to]).Replace('\u00A0', ' '), face, size, language);

        // best[n]: the fewest lines for the first n words, and the narrowest longest line among them.
        var best = new (int Lines, double Longest, int From)[words.Length + 1];
        for (var to = 1; to <= words.Length; to++)
        {
            best[to] = (int.MaxValue, 0, to - 1);
            for (var from = to - 1; from >= 0; from--)
            {
                var width = Line(from, to).Width;
                if (width > maxWidth && from < to - 1)
                    break;
                var candidate = (Lines: best[from].Lines + 1, Longest: Math.Max(best[from].Longest, width), From: from);
                if (candidate.Lines < best[to].Lines || (candidate.Lines == best[to].Lines && candidate.Longest < best[to].Longest))
                    best[to] = candidate;
            }
        }

        var lines = new List<LetteringLine>();
        for (var to = words.Length; to > 0; to = best[to].From)
            lines.Insert(0, to < words.Length ? Line(best[to].From, to).GoingOn() : Line(best[to].From, to));
        return lines;
    }

    /// <summary>Places lines below one another from a first baseline.</summary>
    /// <returns>The items, and the last baseline.</returns>
    public static (IReadOnlyList<PageItem> Items, double Last) Place(IReadOnlyList<LetteringLine> lines, double x, double firstBaseline, double leading, Colour colour)
    {
        var items = new List<PageItem>();
        for (var i = 0; i < lines.Count; i++)
            items.AddRange(lines[i].At(x, firstBaseline + (i * leading), colour));
        return (items, firstBaseline + (Math.Max(lines.Count - 1, 0) * leading));
    }
}
