using Pattern.Press.Typesetting.Fonts;
using Pattern.Press.Typesetting.Pages;

namespace Pattern.Press.Typesetting.Export.Pdf;

/// <summary>
/// Text that readers would not get right from its glyphs alone, and that therefore says what it says word by word
/// (ISO 32000-1, 14.9.4).
/// </summary>
internal static class SpelledText
{
    /// <summary>
    /// From this much extra room between letters, in thousandths of the size, words are spelled out, because readers take
    /// gaps of about a tenth of the size for spaces.
    /// </summary>
    private const int WideTracking = 50;

    /// <summary>Whether a run holds such text: letters set wide, or several glyphs that stand for one character.</summary>
    public static bool IsNeeded(ShapedRun run)
    {
        if (run.Tracking * 1000 >= WideTracking * run.Face.UnitsPerEm)
            return true;
        var glyphs = run.Glyphs;
        for (var i = 0; i < glyphs.Count; i++)
        {
            if (glyphs[i].Length == 0)
                return true;
        }

        return false;
    }

    /// <summary>The words of a run, each with what it says, and the spaces between them with null.</summary>
    public static IEnumerable<(TextItem Part, string? Text)> Parts(TextItem item)
    {
        var run = item.Run;
        var glyphs = run.Glyphs;
        long pen = 0;
        for (var start = 0; start < glyphs.Count;)
        {
            var x = item.X + (pen * run.Scale);
            var spaces = IsSpace(run, glyphs[start]);
            var end = start;
            for (; end < glyphs.Count && IsSpace(run, glyphs[end]) == spaces; end++)
                pen += glyphs[end].Advance + run.Tracking;
            var from = glyphs[start].Start;
            var to = end < glyphs.Count ? glyphs[end].Start : glyphs[end - 1].Start + glyphs[end - 1].Length;
            for (var i = start; i < end; i++)
                to = Math.Max(to, glyphs[i].Start + glyphs[i].Length);
            var part = item with { Run = run with { Glyphs = [.. glyphs.Skip(start).Take(end - start)] }, X = x };
            yield return (part, spaces ? null : run.Text[from..to]);
            start = end;
        }
    }

    private static bool IsSpace(ShapedRun run, ShapedGlyph glyph) => glyph.Length == 1 && char.IsWhiteSpace(run.Text[glyph.Start]);
}
