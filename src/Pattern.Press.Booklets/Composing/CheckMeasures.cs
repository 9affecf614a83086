using Pattern.Press.Measure;

namespace Pattern.Press.Booklets.Composing;

/// <summary>What a reader measures to know that a page was printed at actual size.</summary>
public static class CheckMeasures
{
    /// <summary>The side of the check square.</summary>
    public static Length Square { get; } = Length.FromMillimetres(50);

    /// <summary>The length of the check bar.</summary>
    public static Length Bar { get; } = Length.Inch * 2;

    /// <summary>The ruler the square is read on.</summary>
    public static Ruler Millimetres => Ruler.WholeMillimetres;

    /// <summary>The ruler the bar is read on.</summary>
    public static Ruler Inches => Ruler.SixteenthInches;
}
