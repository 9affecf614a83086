using Pattern.Press.Measure;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Booklets.Content;

/// <summary>What printers and pages allow, for booklets and for the command line alike.</summary>
public static class PrintSettings
{
    /// <summary>
    /// The least printer margin. Nothing prints closer to the edge at actual size: printing without borders enlarges the
    /// page (common practice, no source).
    /// </summary>
    public static Length LeastMargin { get; } = Length.FromMillimetres(1);

    /// <summary>Few printers on a desk reach closer to the edge than this (common practice, no source).</summary>
    public static Length SafeMargin { get; } = Length.FromMillimetres(4);

    /// <summary>The widest printer margin.</summary>
    public static Length MostMargin { get; } = Length.FromMillimetres(40);

    /// <summary>The widest lap; the least is none at all, for edges that meet.</summary>
    public static Length MostLap { get; } = Length.FromMillimetres(20);

    /// <summary>The most kits that are worked out at once.</summary>
    public const int MostKits = 1000;

    /// <summary>The most copies of templates that are set side by side.</summary>
    public const int MostCopies = 100;

    /// <summary>The most pages that one template has without being asked for.</summary>
    public const int MostPages = 40;

    /// <summary>What is wrong with a printer margin and what to write instead; null for nothing.</summary>
    public static (string Message, string Advice)? WrongMargin(Length margin, string written)
    {
        if (!margin.IsNegative && margin < LeastMargin)
        {
            return (
                $"No printer prints as close to the edge as {written} at actual size; printing without borders enlarges the page.",
                $"{LengthRange.InWords(SafeMargin)} or more is safe for most, 10 mm for all.");
        }

        return LengthRange.Wrong("A printer margin", margin, written, LeastMargin, MostMargin);
    }

    /// <summary>What to be careful about with a printer margin that can be; null for nothing.</summary>
    public static (string Message, string Advice)? CarefulMargin(Length margin, string written) => margin >= SafeMargin
        ? null
        : ($"Few printers reach as close to the edge as {written}; lines there may be lost.", $"{LengthRange.InWords(SafeMargin)} or more is safe for most, 10 mm for all.");

    /// <summary>What is wrong with a lap and what to write instead; null for nothing.</summary>
    public static (string Message, string Advice)? WrongLap(Length lap, string written) =>
        LengthRange.Wrong("A lap", lap, written, Length.Zero, MostLap);

    /// <summary>Says that a paper is not known.</summary>
    public static string UnknownPaper(string written) => $"“{written}” is not a paper that is known here.";

    /// <summary>Says which papers are known, or which one was probably meant.</summary>
    public static string KnownPapers(string written)
    {
        var ids = PaperSize.All.Select(paper => paper.Id).ToList();
        return Spelling.Nearest(written, ids) is { } nearest
            ? $"Did you mean “{nearest}”?"
            : $"Known here: {string.Join(", ", ids)}; any other is written as two sides, such as 330 x 483 mm.";
    }
}
