using Pattern.Press.Typesetting.Pages;

namespace Pattern.Press.Typesetting.Layout.Elements;

/// <summary>The marks of callouts, drawn to the right of a point and centred on its height.</summary>
internal static class CalloutMarks
{
    private const double Size = 4.6;

    /// <summary>A triangle with an exclamation mark, as warning signs have it (the shape of ISO 3864-1's general warning).</summary>
    public static IReadOnlyList<PageItem> Caution(double x, double middle, Colour colour, Colour ground)
    {
        const double height = Size * 0.88;
        var top = middle - (height * 0.56);
        var bottom = top + height;
        var centre = x + (Size / 2);
        return
        [
            new PathItem(
                PathBuilder.Polygon(new PagePoint(centre, top), new PagePoint(x + Size, bottom), new PagePoint(x, bottom)),
                colour,
                new Stroke(colour, 0.5, [], LineCap.Round)),
            new PathItem(
                PathBuilder.Polygon(
                    new PagePoint(centre - 0.32, top + (height * 0.34)),
                    new PagePoint(centre + 0.32, top + (height * 0.34)),
                    new PagePoint(centre + 0.2, top + (height * 0.7)),
                    new PagePoint(centre - 0.2, top + (height * 0.7))),
                ground,
                null),
            new PathItem(PathBuilder.Circle(centre, top + (height * 0.84), 0.32), ground, null),
        ];
    }

    /// <summary>A pencil, as for a note in the margin; its point is at the lower left.</summary>
    public static IReadOnlyList<PageItem> Tip(double x, double middle, Colour colour)
    {
        const double half = 0.72;
        const double wood = 1.5;
        const double body = 4.3;
        const double end = 5.5;
        const double gap = 0.32;
        const double lead = 0.6;
        var (left, bottom) = (x + 0.3, middle + (Size / 2) - 0.3);
        return
        [
            new PathItem(
                PathBuilder.Polygon(At(0.25, 0), At(wood, half - 0.12), At(wood, 0.12 - half)),
                null,
                new Stroke(colour, 0.24, [], LineCap.Round)),
            new PathItem(PathBuilder.Polygon(At(0, 0), At(lead, half * lead / wood), At(lead, -half * lead / wood)), colour, null),
            new PathItem(PathBuilder.Polygon(At(wood, half), At(body, half), At(body, -half), At(wood, -half)), colour, null),
            new PathItem(PathBuilder.Polygon(At(body + gap, half), At(end, half), At(end, -half), At(body + gap, -half)), colour, null),
        ];

        // So far from the point along the pencil, and so far to its right.
        PagePoint At(double along, double across) =>
            new(left + ((along + across) * Math.Sqrt(0.5)), bottom - ((along - across) * Math.Sqrt(0.5)));
    }
}
