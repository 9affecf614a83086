using Pattern.Press.Nets;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Booklets.Figures;

/// <summary>Lines of drawings beside those of the pieces themselves.</summary>
public static class DrawingStrokes
{
    /// <summary>
    /// Where a page is trimmed before it is joined to the next: thin, long dashes with two dots, as ISO 128-2 has it for
    /// outlines of adjacent parts (from memory).
    /// </summary>
    public static Stroke Trim(LineStyles lines)
    {
        ArgumentNullException.ThrowIfNull(lines);
        var d = lines.ThinWidth;
        return new(lines.Dimension, 1.4 * d, [24 * d, 3 * d, 2 * d, 3 * d, 2 * d, 3 * d]);
    }

    /// <summary>Short dashes, in millimetres, for what is on the other side of the card.</summary>
    public static IReadOnlyList<double> HiddenDash { get; } = [1.2, 0.8];

    /// <summary>Hatching of areas that take glue: whole on the side that is drawn, broken where the glue goes on the other.</summary>
    public static Stroke Glue(LineStyles lines, SheetSide side)
    {
        ArgumentNullException.ThrowIfNull(lines);
        var stroke = new Stroke(lines.Glue, lines.ThinWidth);
        return side == SheetSide.Facing ? stroke : stroke with { Dash = HiddenDash };
    }

    /// <summary>The edge of a sheet that is cut away: thin and grey, so that nobody takes it for a cut.</summary>
    public static Stroke Sheet(LineStyles lines)
    {
        ArgumentNullException.ThrowIfNull(lines);
        return new(lines.Faded, lines.ThinWidth);
    }

    /// <summary>
    /// A broken line drawn at a length: as it is where its pattern shows whole, with a shorter pattern on a line too short
    /// for that, because what a fold is must still be read from its line.
    /// </summary>
    public static Stroke ForLength(Stroke stroke, double length)
    {
        ArgumentNullException.ThrowIfNull(stroke);
        if (stroke.Dash.Count == 0)
            return stroke;
        var needed = stroke.Dash.Sum() + stroke.Dash[0];
        var part = Math.Max(0.25, length / needed);
        return part >= 1 ? stroke : stroke with { Dash = [.. stroke.Dash.Select(dash => dash * part)] };
    }
}
