using Pattern.Press.Nets;
using Pattern.Press.Typesetting.Pages;

namespace Pattern.Press.Booklets.Figures.Drafting;

/// <summary>The ends of dimension lines (ISO 129-1: a closed, filled arrowhead of about 15 degrees; from memory).</summary>
internal static class Arrow
{
    public const double Length = 2;
    private const double HalfWidth = 0.32;

    public static VectorPath Head(Point tip, Point from, double length = Length)
    {
        var along = (tip - from) * (1 / tip.DistanceTo(from));
        var across = new Point(-along.Y, along.X) * (HalfWidth * length / Length);
        var foot = tip - (along * length);
        var (a, b) = (foot + across, foot - across);
        return PathBuilder.Polygon(new(tip.X, tip.Y), new(a.X, a.Y), new(b.X, b.Y));
    }
}
