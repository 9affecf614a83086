using System.Globalization;
using Pattern.Press.Structures.Reading;
using Pattern.Press.Typesetting.Pages;

namespace Pattern.Press.Booklets.Themes;

/// <summary>
/// Checks colours against their grounds after WCAG 2.2: 4.5:1 for text (success criterion 1.4.3) and 3:1 for lines that
/// carry meaning (1.4.11).
/// </summary>
internal static class Contrasts
{
    /// <summary>What text needs.</summary>
    public const double OfText = 4.5;

    /// <summary>What lines that carry meaning need.</summary>
    public const double OfLines = 3;

    /// <summary>Notes every ground on which a colour stands out too little.</summary>
    public static void Check(Paint? paint, double least, Problems problems, params ReadOnlySpan<Paint?> grounds)
    {
        if (paint is not { } front)
            return;
        // What also stands on white paper can only become darker.
        var onPaper = grounds.Contains(White);
        foreach (var ground in grounds)
        {
            if (ground is not { } back)
                continue;
            var ratio = front.Colour.ContrastWith(back.Colour);
            if (ratio >= least)
                continue;
            // Cut off, not rounded: 4.499 must not read as 4.5.
            var shown = (Math.Floor(ratio * 100) / 100).ToString("0.00", CultureInfo.InvariantCulture);
            problems.Error(
                front.Place,
                $"{front.Name} ({front.Colour}) on {back.Name} ({back.Colour}) has a contrast of {shown}:1; it needs {least.ToString(CultureInfo.InvariantCulture)}:1.",
                front.Colour.Luminance < back.Colour.Luminance ? "Make it darker."
                    : onPaper ? $"Make it darker, or {back.Name} lighter."
                    : "Make it lighter, or its ground darker.");
        }
    }

    /// <summary>The paper.</summary>
    public static Paint White { get; } = new("white paper", Colour.White, default);
}
