using System.Text.RegularExpressions;
using Pattern.Press.Typesetting.Fonts;
using Pattern.Press.Typesetting.Pages;

namespace Pattern.Press.Booklets.Figures;

/// <summary>One line of lettering in a drawing, shaped: fractions are real fractions.</summary>
/// <param name="Runs">The shaped runs with where each starts, in millimetres from the line's start.</param>
/// <param name="Width">The width of the line in millimetres.</param>
/// <param name="Ascent">The height above the baseline that it takes.</param>
/// <param name="Descent">The depth below the baseline that it takes.</param>
public sealed record LetteringLine(IReadOnlyList<(ShapedRun Run, double X)> Runs, double Width, double Ascent, double Descent)
{
    /// <summary>What it says.</summary>
    public string Text => string.Concat(Runs.Select(run => run.Run.Text));

    /// <summary>
    /// The line with a space after it that takes no room: readers take letters one after the other, and a line that goes on
    /// below is otherwise read together with its next word.
    /// </summary>
    public LetteringLine GoingOn() => Runs.Count == 0 || Text.EndsWith(' ') ? this : this with
    {
        Runs = [.. Runs, (Shaper.Shape(" ", Runs[^1].Run.Face, Runs[^1].Run.Size), Width)],
    };

    /// <summary>The line with its start and baseline at a point.</summary>
    public IEnumerable<PageItem> At(double x, double baseline, Colour colour) =>
        Runs.Select(run => new TextItem(run.Run, x + run.X, baseline, colour));
}

/// <summary>Sets words and measures for drawings.</summary>
public static partial class Lettering
{
    private const double MillimetresPerPoint = 25.4 / 72;

    // The same words are tried in many places of a drawing.
    private static readonly BoundedCache<(string Text, FontFace Face, double Size, string Language), LetteringLine> Known = new(4096);

    /// <summary>Sets a line. Fractions such as <c>1/4</c> become real fractions with a narrow space before them.</summary>
    /// <param name="text">What it says; no line breaks.</param>
    /// <param name="face">The face.</param>
    /// <param name="size">The size in points; drawings go down to 6.</param>
    /// <param name="language">A BCP 47 tag.</param>
    public static LetteringLine Set(string text, FontFace face, double size, string language = "en")
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(face);
        if (!Known.TryGet((text, face, size, language), out var line))
        {
            line = Shape(text, face, size, language);
            Known.Add((text, face, size, language), line);
        }

        return line;
    }

    private static LetteringLine Shape(string text, FontFace face, double size, string language)
    {
        var runs = new List<(ShapedRun Run, double X)>();
        double x = 0;
        var done = 0;
        foreach (var match in Fraction().EnumerateMatches(text))
        {
            var space = match.Index > done + 1 && text[match.Index - 1] == ' ' && char.IsAsciiDigit(text[match.Index - 2]);
            Add(text[done..(space ? match.Index - 1 : match.Index)], FontFeatures.LiningFigures, 1);
            if (space)
                Add(" ", FontFeatures.LiningFigures, 0.4);
            Add(text.Substring(match.Index, match.Length), FontFeatures.LiningFigures | FontFeatures.Fraction, 1);
            done = match.Index + match.Length;
        }

        Add(text[done..], FontFeatures.LiningFigures, 1);
        // Capitals and ascenders rise about this far in the faces that themes use; lower parts hang below.
        return new LetteringLine(runs, x, 0.74 * size * MillimetresPerPoint, 0.22 * size * MillimetresPerPoint);

        void Add(string part, FontFeatures features, double stretch)
        {
            if (part.Length == 0)
                return;
            var run = Shaper.Shape(part, face, size, features, language);
            if (stretch < 1)
                run = run with { Tracking = (int)Math.Round(run.Glyphs[0].Advance * (stretch - 1)) };
            runs.Add((run, x));
            x += run.Width;
        }
    }

    [GeneratedRegex(@"\d+/\d+", RegexOptions.CultureInvariant)]
    private static partial Regex Fraction();
}
