using Pattern.Press.Booklets.Figures.Drafting;
using Pattern.Press.Nets;
using Pattern.Press.Typesetting.Pages;

namespace Pattern.Press.Booklets.Figures;

/// <summary>
/// A target that must meet its other half on the neighbouring page: a cross of 8 mm in a circle of 5 mm, centred on the
/// line where the pages join.
/// </summary>
internal static class RegistrationMark
{
    public const double Radius = 2.5;
    public const double Arm = 4;

    // The distance of a Bézier curve's control points that makes a quarter of a circle.
    private const double Kappa = 0.5522847498;

    /// <summary>Draws the part of a mark that lies inside a box, whose sides may cut it only through its centre or not at all.</summary>
    public static void Draw(Board board, Point centre, Box within, Stroke stroke)
    {
        board.Mark(Circle(centre, within), stroke);
        var flat = new Segment(centre - new Point(Arm, 0), centre + new Point(Arm, 0)).Within(within);
        var upright = new Segment(centre - new Point(0, Arm), centre + new Point(0, Arm)).Within(within);
        foreach (var arm in new[] { flat, upright })
        {
            if (arm is { } line)
                board.Mark(PathBuilder.Line(line.From.X, line.From.Y, line.To.X, line.To.Y), stroke);
        }

        board.Room.Take(Box.Around(centre.X, centre.Y, 2 * Arm, 2 * Arm).Common(within));
    }

    // Whole quarters only, so that what is left of a circle still has an exact centre.
    private static VectorPath Circle(Point centre, Box within)
    {
        (double X, double Y)[] starts = [(1, 0), (0, 1), (-1, 0), (0, -1)];
        var builder = new PathBuilder();
        var kept = new bool[4];
        for (var i = 0; i < 4; i++)
        {
            var (a, b) = (starts[i], starts[(i + 1) % 4]);
            var quarter = new Box(
                centre.X + (Radius * Math.Min(a.X, b.X)),
                centre.Y + (Radius * Math.Min(a.Y, b.Y)),
                centre.X + (Radius * Math.Max(a.X, b.X)),
                centre.Y + (Radius * Math.Max(a.Y, b.Y)));
            kept[i] = within.Grown(1e-6).Holds(quarter);
        }

        // Start after a gap, so that neighbouring quarters are one line.
        var first = Enumerable.Range(0, 4).FirstOrDefault(i => kept[i] && !kept[(i + 3) % 4]);
        var open = false;
        for (var n = 0; n < 4; n++)
        {
            var i = (first + n) % 4;
            if (!kept[i])
            {
                open = false;
                continue;
            }

            var (a, b) = (starts[i], starts[(i + 1) % 4]);
            if (!open)
                builder.MoveTo(centre.X + (Radius * a.X), centre.Y + (Radius * a.Y));
            builder.CurveTo(
                centre.X + (Radius * (a.X + (Kappa * b.X))),
                centre.Y + (Radius * (a.Y + (Kappa * b.Y))),
                centre.X + (Radius * (b.X + (Kappa * a.X))),
                centre.Y + (Radius * (b.Y + (Kappa * a.Y))),
                centre.X + (Radius * b.X),
                centre.Y + (Radius * b.Y));
            open = true;
        }

        return builder.Build();
    }
}
