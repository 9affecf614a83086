namespace Pattern.Press.Nets;

/// <summary>One side of an outline: a straight line, or a circular arc.</summary>
/// <param name="From">Where it starts.</param>
/// <param name="To">Where it ends.</param>
/// <param name="Bulge">
/// 0 for a straight line; for an arc the tangent of a quarter of the angle it turns through, positive when it turns
/// clockwise as seen on the page (x right, y down). ±1 is a half circle.
/// </param>
public readonly record struct Edge(Point From, Point To, double Bulge = 0)
{
    // An arc flatter than this rises less than a nanometre above a chord of 200 mm, and its centre would be lost in rounding.
    private const double Flattest = 1e-8;

    /// <summary>Whether it is an arc; one too flat to be told from a straight line is taken as straight.</summary>
    public bool IsArc => Math.Abs(Bulge) > Flattest;

    /// <summary>The same side, walked the other way.</summary>
    public Edge Reversed => new(To, From, -Bulge);

    /// <summary>The straight distance between its ends, in millimetres.</summary>
    public double Chord => From.DistanceTo(To);

    /// <summary>How far it turns, in radians, positive when clockwise as seen on the page; 0 for a straight line.</summary>
    public double Sweep => IsArc ? 4 * Math.Atan(Bulge) : 0;

    /// <summary>The radius of an arc in millimetres; infinite for a straight line.</summary>
    public double Radius => IsArc ? Chord * (1 + (Bulge * Bulge)) / (4 * Math.Abs(Bulge)) : double.PositiveInfinity;

    /// <summary>The centre of an arc's circle.</summary>
    /// <exception cref="InvalidOperationException">It is straight.</exception>
    public Point Centre
    {
        get
        {
            if (!IsArc)
                throw new InvalidOperationException("A straight line has no centre.");
            var along = To - From;
            return From.MidwayTo(To) + (new Point(-along.Y, along.X) * ((1 - (Bulge * Bulge)) / (4 * Bulge)));
        }
    }

    /// <summary>Its length along the line or arc, in millimetres.</summary>
    public double Length => IsArc ? Radius * Math.Abs(Sweep) : Chord;

    /// <summary>The point half way along it.</summary>
    public Point Middle => At(0.5);

    /// <summary>The least upright rectangle around it.</summary>
    public Bounds Bounds
    {
        get
        {
            var (left, right) = From.X < To.X ? (From.X, To.X) : (To.X, From.X);
            var (top, bottom) = From.Y < To.Y ? (From.Y, To.Y) : (To.Y, From.Y);
            if (IsArc)
            {
                foreach (var turn in Turns)
                {
                    (left, right) = (Math.Min(left, turn.X), Math.Max(right, turn.X));
                    (top, bottom) = (Math.Min(top, turn.Y), Math.Max(bottom, turn.Y));
                }
            }

            return new Bounds(left, top, right, bottom);
        }
    }

    /// <summary>The point a part of the way along it: 0 is its start, 1 its end.</summary>
    public Point At(double part)
    {
        if (part <= 0)
            return From;
        if (part >= 1)
            return To;
        if (!IsArc)
            return From + ((To - From) * part);
        var centre = Centre;
        var (sine, cosine) = Math.SinCos(Sweep * part);
        return new Motion(cosine, sine, centre).Apply(From - centre);
    }

    /// <summary>The stretch of it between two parts of the way along it, the first below the second.</summary>
    public Edge Between(double start, double end) =>
        new(At(start), At(end), IsArc ? Math.Tan(Sweep * (end - start) / 4) : 0);

    /// <summary>The shortest distance from a point to it, in millimetres.</summary>
    public double DistanceTo(Point point)
    {
        if (IsArc)
        {
            var centre = Centre;
            var arrow = point - centre;
            return SweepsOver(Math.Atan2(arrow.Y, arrow.X))
                ? Math.Abs(point.DistanceTo(centre) - Radius)
                : Math.Min(point.DistanceTo(From), point.DistanceTo(To));
        }

        return point.DistanceTo(At(PartNearest(point)));
    }

    /// <summary>How many equal parts it has when none turns by more than an angle; 1 when it is straight.</summary>
    /// <param name="turn">The angle in radians; above 0.</param>
    public int PartsOf(double turn) => Math.Max(1, (int)Math.Ceiling((Math.Abs(Sweep) / turn) - 1e-9));

    /// <summary>
    /// Points along it, its start included and its end left out, such that straight lines between them stay within a
    /// distance of it.
    /// </summary>
    /// <param name="tolerance">The distance in millimetres; above 0.</param>
    public IEnumerable<Point> Flattened(double tolerance)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(tolerance);
        var steps = IsArc ? PartsOf(2 * Math.Acos(1 - Math.Min(1, tolerance / Radius))) : 1;
        for (var i = 0; i < steps; i++)
            yield return At((double)i / steps);
    }

    /// <summary>The points at which an arc runs level or upright.</summary>
    internal IEnumerable<Point> Turns
    {
        get
        {
            if (!IsArc)
                yield break;
            for (var quarter = 0; quarter < 4; quarter++)
            {
                if (SweepsOver(quarter * Math.PI / 2))
                    yield return Centre + (quarter switch { 0 => new(1, 0), 1 => new(0, 1), 2 => new(-1, 0), _ => new Point(0, -1) } * Radius);
            }
        }
    }

    /// <summary>How far along it, from 0 to 1, the point of it that is nearest to a point lies.</summary>
    internal double PartNearest(Point point)
    {
        if (!IsArc)
        {
            var along = To - From;
            return Math.Clamp((point - From).Dot(along) / along.Dot(along), 0, 1);
        }

        var (start, arrow) = (From - Centre, point - Centre);
        var turn = Math.Atan2(start.Cross(arrow), start.Dot(arrow)) * Math.Sign(Sweep);
        if (turn < 0)
            turn += 2 * Math.PI;
        var part = turn / Math.Abs(Sweep);
        return part <= 1 ? part : point.DistanceTo(From) < point.DistanceTo(To) ? 0 : 1;
    }

    /// <summary>The way it heads at its start, as an angle in radians, clockwise on the page from the right.</summary>
    internal double HeadingAtStart => Heading(To - From) - (Sweep / 2);

    /// <summary>The way it heads at its end.</summary>
    internal double HeadingAtEnd => Heading(To - From) + (Sweep / 2);

    private static double Heading(Point arrow) => Math.Atan2(arrow.Y, arrow.X);

    private bool SweepsOver(double angle)
    {
        var start = From - Centre;
        var turn = (angle - Math.Atan2(start.Y, start.X)) * Math.Sign(Sweep);
        turn -= Math.Floor(turn / (2 * Math.PI)) * 2 * Math.PI;
        return turn <= Math.Abs(Sweep);
    }

    /// <summary>Its ends and bulge, for debugging.</summary>
    // What a record writes by itself would go into Reversed, and from there never end.
    public override string ToString() => FormattableString.Invariant($"{From} to {To}, bulge {Bulge}");
}
