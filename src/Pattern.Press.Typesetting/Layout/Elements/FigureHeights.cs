using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Typesetting.Layout.Elements;

/// <summary>How high figures are made that may take more height or less.</summary>
internal static class FigureHeights
{
    /// <summary>As low as a figure is made to save room, in millimetres: its lettering does not shrink with it.</summary>
    public const double Lowest = 44;

    // Of a page, from what goes well with text to what drowns it.
    private static readonly double[] Usual = [0.25, 0.35, 0.45, 0.6];

    // In millimetres.
    private static readonly double[] Tight = [Lowest, 50, 56];

    /// <summary>The least of the usual heights at which none of the figures is crowded; of low ones first where room is scarce.</summary>
    /// <param name="figures">The figures.</param>
    /// <param name="width">The width each of them has, in millimetres.</param>
    /// <param name="column">The column they stand in.</param>
    public static double For(IReadOnlyList<Block> figures, double width, Column column)
    {
        var page = column.Session.TextHeight;
        var usual = Usual.Select(part => Math.Max(Lowest, part * page));
        var best = (Height: Math.Max(Lowest, Usual[0] * page), Crowding: double.PositiveInfinity);
        foreach (var height in column.FigureScale == FigureScale.Tight ? Tight.Concat(usual) : usual)
        {
            var drawn = figures.OfType<FigureBlock>().Select(figure => column.Session.Drawings.Of(figure.Drawing, width, height)).ToList();
            if (!drawn.Exists(figure => figure.IsCrowded))
                return height;
            if (height >= Usual[0] * page && drawn.Max(figure => figure.Crowding) is var crowding && crowding < best.Crowding)
                best = (height, crowding);
        }

        // Nothing helps altogether, so the figure's words have to do.
        return best.Height;
    }
}
