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

    /// <summary>A star of four points: a spark.</summary>
    public static IReadOnlyList<PageItem> Tip(double x, double middle, Colour colour)
    {
        var centre = x + (Size / 2);
        return [Spark(centre - 0.3, middle + 0.25, Size * 0.46, colour), Spark(centre + 1.75, middle - 1.6, Size * 0.2, colour)];
    }

    private static PathItem Spark(double x, double y, double r, Colour colour)
    {
        var k = r * 0.12;
        var path = new PathBuilder()
            .MoveTo(x, y - r)
            .CurveTo(x + k, y - k - k, x + k + k, y - k, x + r, y)
            .CurveTo(x + k + k, y + k, x + k, y + k + k, x, y + r)
            .CurveTo(x - k, y + k + k, x - k - k, y + k, x - r, y)
            .CurveTo(x - k - k, y - k, x - k, y - k - k, x, y - r)
            .Close()
            .Build();
        return new PathItem(path, colour, null);
    }
}
