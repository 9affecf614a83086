namespace Pattern.Press.Booklets.Figures.Solid;

/// <summary>How a visible line stands in the drawing.</summary>
public enum LineRank
{
    /// <summary>Behind it on one side is nothing, or something farther away.</summary>
    Outline,

    /// <summary>Surfaces meet in it on both sides.</summary>
    Crease,
}

/// <summary>A visible stretch of a line.</summary>
/// <param name="From">One end, as it appears.</param>
/// <param name="To">The other end.</param>
/// <param name="Kind">What the line is.</param>
/// <param name="Rank">How it stands in the drawing.</param>
public readonly record struct SeenLine(Seen From, Seen To, LineKind Kind, LineRank Rank);

/// <summary>Finds what is seen of lines, exactly: each surface hides a stretch of each line, and what is left is visible.</summary>
public sealed class LineVisibility
{
    /// <summary>Layers lie at least this far from each other, in millimetres; a nearer surface is the line's own.</summary>
    private const double Slack = 0.03;

    /// <summary>A line that only touches a surface is hidden by it where it lies at least this far from the edges, in millimetres.</summary>
    private const double Inside = 0.05;

    /// <summary>A surface this near to a line, in millimetres, touches it.</summary>
    private const double Touching = 0.35;

    /// <summary>Stretches shorter than this, in millimetres, are left out.</summary>
    private const double Sliver = 0.15;

    private readonly SeenFace[] faces;
    private readonly double aside;

    /// <summary>Prepares to look at lines among surfaces.</summary>
    public LineVisibility(IEnumerable<Face> faces, Axonometry view)
    {
        this.faces = [.. faces.Where(face => PaintOrder.IsSeen(face, view)).Select(face => new SeenFace(face, view))];
        View = view;
        var extent = this.faces.Length == 0 ? 1 : this.faces.Max(face => face.Right) - this.faces.Min(face => face.Left);
        aside = Math.Max(extent * 1e-3, 0.05);
    }

    /// <summary>The place they are seen from.</summary>
    public Axonometry View { get; }

    /// <summary>The visible stretches of lines, in the order of the lines.</summary>
    public IReadOnlyList<SeenLine> Of(IEnumerable<SpaceLine> lines)
    {
        var seen = new List<SeenLine>();
        var hidden = new List<(double From, double To)>();
        foreach (var line in lines)
        {
            if (line.Kind == LineKind.Rounded && !TurnsAway(line))
                continue;
            var (from, to) = (View.See(line.From), View.See(line.To));
            var length = Math.Sqrt(((to.X - from.X) * (to.X - from.X)) + ((to.Y - from.Y) * (to.Y - from.Y)));
            if (length < 1e-6)
                continue;
            hidden.Clear();
            if (line.Kind == LineKind.HiddenGlue)
            {
                seen.Add(new SeenLine(from, to, line.Kind, LineRank.Crease));
                continue;
            }

            foreach (var face in faces)
            {
                var part = face.Hides(from, to, Slack);

                // What it is the edge of lies behind a surface that it only touches, as a flap that leans against a wall.
                if (part.To <= part.From && line.Inwards is { Count: > 0 } inwards && face.IsBefore(inwards))
                    part = face.Hides(from, to, -Slack, Inside);
                if (part.To > part.From)
                    hidden.Add(part);
            }

            hidden.Sort();
            var done = 0.0;
            foreach (var (start, end) in hidden)
            {
                Add(done, start);
                done = Math.Max(done, end);
            }

            Add(done, 1);

            void Add(double start, double end)
            {
                // Where a hidden line starts from a corner that is seen, its first bit lies within the slack.
                if ((end - start) * length < Sliver && length > Sliver)
                    return;
                var rank = line.Kind switch
                {
                    LineKind.Rounded => LineRank.Outline,
                    LineKind.Detail or LineKind.Mat or LineKind.Glue or LineKind.GlueBehind => LineRank.Crease,
                    _ => Rank(from, to, (start + end) / 2, length),
                };
                seen.Add(new SeenLine(Between(from, to, start), Between(from, to, end), line.Kind, rank));
            }
        }

        return seen;
    }

    private bool TurnsAway(SpaceLine line) => line.Left.Dot(View.Viewer) > 0 != line.Right.Dot(View.Viewer) > 0;

    private LineRank Rank(Seen from, Seen to, double part, double length)
    {
        var at = Between(from, to, part);
        var (acrossX, acrossY) = (-(to.Y - from.Y) / length * aside, (to.X - from.X) / length * aside);
        return Touches(at, acrossX, acrossY) && Touches(at, -acrossX, -acrossY) ? LineRank.Crease : LineRank.Outline;
    }

    // Whether the nearest surface beside the line reaches up to the line, rather than lying behind it.
    private bool Touches(Seen at, double asideX, double asideY)
    {
        var (x, y) = (at.X + asideX, at.Y + asideY);
        SeenFace? nearest = null;
        var near = double.NegativeInfinity;
        foreach (var face in faces)
        {
            if (!face.Covers(x, y))
                continue;
            var here = face.NearAt(x, y);
            if (here > near)
                (nearest, near) = (face, here);
        }

        return nearest is not null && Math.Abs(nearest.NearAt(at.X, at.Y) - at.Near) < Touching;
    }

    private static Seen Between(Seen a, Seen b, double part) =>
        new(a.X + ((b.X - a.X) * part), a.Y + ((b.Y - a.Y) * part), a.Near + ((b.Near - a.Near) * part));
}
