using Pattern.Press.Measure;
using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Booklets.Composing;

/// <summary>Fits a theme to a paper smaller than the A4 and Letter that themes are drawn for.</summary>
internal static class PaperFit
{
    // A theme's margins would take a third of a small page and leave too little for a table; type stays as it is, because
    // eyes do not shrink with the paper.
    private const double LeastMargin = 10;

    /// <summary>The styles with margins in proportion to the paper's width, never wider than the theme has them.</summary>
    public static StyleSheet On(StyleSheet styles, PaperSize paper)
    {
        var part = paper.Size.Width / PaperSize.A4.Size.Width;
        if (part >= 1)
            return styles;
        double Fitted(double margin) => Math.Min(margin, Math.Max(LeastMargin, margin * (double)part));
        var spacing = styles.Spacing;
        return styles with
        {
            Spacing = spacing with { Left = Fitted(spacing.Left), Right = Fitted(spacing.Right), Top = Fitted(spacing.Top), Bottom = Fitted(spacing.Bottom) },
        };
    }
}
