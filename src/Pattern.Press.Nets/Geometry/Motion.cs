namespace Pattern.Press.Nets;

/// <summary>A move on the page that keeps lengths: a turn about the origin, then a shift, both in millimetres.</summary>
/// <param name="Cosine">The cosine of the turn.</param>
/// <param name="Sine">The sine of the turn, which is clockwise as seen on the page when positive.</param>
/// <param name="Shift">The shift after the turn.</param>
public readonly record struct Motion(double Cosine, double Sine, Point Shift)
{
    /// <summary>No move at all.</summary>
    public static Motion None => new(1, 0, default);

    /// <summary>A shift without a turn.</summary>
    public static Motion By(Point shift) => new(1, 0, shift);

    /// <summary>A turn about a point, clockwise as seen on the page, in degrees.</summary>
    public static Motion Turn(double degrees, Point about)
    {
        var (sine, cosine) = Math.SinCos(degrees * Math.PI / 180);
        var turn = new Motion(cosine, sine, default);
        return turn with { Shift = about - turn.Apply(about) };
    }

    /// <summary>The move that lays one arrow on another, start on start; lengths may differ a little.</summary>
    public static Motion Laying(Point from, Point to, Point onFrom, Point onTo)
    {
        var arrow = to - from;
        var target = onTo - onFrom;
        var scale = Math.Sqrt(arrow.Dot(arrow) * target.Dot(target));
        var turn = new Motion(arrow.Dot(target) / scale, arrow.Cross(target) / scale, default);
        return turn with { Shift = onFrom.MidwayTo(onTo) - turn.Apply(from.MidwayTo(to)) };
    }

    /// <summary>Where a point ends up.</summary>
    public Point Apply(Point point) =>
        new((Cosine * point.X) - (Sine * point.Y) + Shift.X, (Sine * point.X) + (Cosine * point.Y) + Shift.Y);

    /// <summary>Where an edge ends up.</summary>
    public Edge Apply(Edge edge) => new(Apply(edge.From), Apply(edge.To), edge.Bulge);

    /// <summary>Where an outline ends up.</summary>
    public Outline Apply(Outline outline)
    {
        var self = this;
        return new Outline([.. outline.Edges.Select(edge => self.Apply(edge))]);
    }
}
