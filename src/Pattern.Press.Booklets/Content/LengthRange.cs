using System.Globalization;
using Pattern.Press.Measure;

namespace Pattern.Press.Booklets.Content;

/// <summary>Says how a length is out of bounds.</summary>
internal static class LengthRange
{
    /// <summary>What is wrong with a length and what it can be; null for nothing.</summary>
    /// <param name="what">What is measured, as the start of a sentence: <c>A height</c>.</param>
    /// <param name="length">The length.</param>
    /// <param name="written">The length as it was written.</param>
    /// <param name="least">The least it may be.</param>
    /// <param name="most">The most it may be.</param>
    public static (string Message, string Advice)? Wrong(string what, Length length, string written, Length least, Length most)
    {
        var wrong =
            length.IsNegative ? "is less than nothing" :
            length < least ? (length == Length.Zero ? "is nothing at all" : "is too short") :
            length > most ? "is too long" : null;
        return wrong is null ? null : ($"{what} of {written} {wrong}.", $"It can be from {InWords(least)} to {InWords(most)}.");
    }

    public static string InWords(Length length) =>
        length.Nanometres % 1_000_000_000 == 0 && length > Length.Zero
            ? string.Create(CultureInfo.InvariantCulture, $"{length.Nanometres / 1_000_000_000} m")
            : LengthFormat.Format(length, Ruler.WholeMillimetres);
}
