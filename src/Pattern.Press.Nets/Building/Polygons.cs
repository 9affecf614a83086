namespace Pattern.Press.Nets.Building;

/// <summary>Regular polygons.</summary>
public static class Polygons
{
    /// <summary>A regular polygon about the origin whose first side lies level at the bottom, the others clockwise from it.</summary>
    /// <param name="sides">How many sides; at least 3.</param>
    /// <param name="side">How long each is, in millimetres.</param>
    public static Outline Regular(int sides, double side)
    {
        var radius = side / (2 * Math.Sin(Math.PI / sides));
        var corners = new Point[sides];
        for (var i = 0; i < sides; i++)
        {
            var angle = (Math.PI / 2) - (Math.PI / sides) + (i * 2 * Math.PI / sides);
            corners[i] = new Point(radius * Math.Cos(angle), radius * Math.Sin(angle));
        }

        return Outline.Through(corners);
    }
}
