using Pattern.Press.Measure;

namespace Pattern.Press.Structures.Fitting;

/// <summary>The lengths that anything made of paper, or put into it, can have.</summary>
internal static class LengthRange
{
    /// <summary>One millimetre: below that nobody cuts or scores.</summary>
    public static Length Least { get; } = Length.Millimetre;

    /// <summary>One metre: above that no card is sold flat.</summary>
    public static Length Most { get; } = Length.FromMillimetres(1000);

    /// <summary>What is wrong with a length, as advice; null when nothing is.</summary>
    public static string? Fault(Length length, Length least)
    {
        if (length < Length.Zero)
            return "A size cannot be less than nothing.";
        if (length == Length.Zero)
            return "A size cannot be nothing.";
        return length < least || length > Most ? $"Sizes here go from {Plain(least)} to 1 m (39 3/8 in)." : null;
    }

    private static string Plain(Length least) => LengthFormat.Format(least, Ruler.WholeMillimetres);
}
