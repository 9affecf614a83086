using Pattern.Press.Nets;
using Pattern.Press.Nets.Folding;
using Pattern.Press.Nets.Folding.Proofs;

namespace Pattern.Press.Booklets.Figures.Solid;

/// <summary>An arrow along the way that something moves, drawn over everything else.</summary>
/// <param name="Path">Places on that way, in order; two for a straight one.</param>
public sealed record MotionArrow(IReadOnlyList<Vector3d> Path)
{
    /// <summary>How many stretches follow a way that bends.</summary>
    private const int Stretches = 14;

    /// <summary>How far outside a panel's edge its arrow runs, as a part of its depth.</summary>
    private const double Beyond = 0.1;

    /// <summary>A turn past this angle, in degrees, takes a panel over into where it came from.</summary>
    private const double FarOver = 120;

    /// <summary>What turns by less than this, in degrees, does not move to the eye.</summary>
    private const double LeastTurn = 5;

    // Between these parts of its way a straight arrow is drawn.
    private const double BeforeStart = 0.08;
    private const double BeforeEnd = 0.82;

    // In so many steps a straight arrow is followed until it is hidden.
    private const int Places = 100;

    /// <summary>What is behind card by less than this, in millimetres, lies on it.</summary>
    private const double Behind = 0.01;

    /// <summary>How much of an arrow has to be left before it is hidden, as a part of its length.</summary>
    private const double LeastInSight = 0.1;

    /// <summary>Its length in millimetres.</summary>
    public double Length => Path.Zip(Path.Skip(1), (a, b) => a.DistanceTo(b)).Sum();

    /// <summary>
    /// The ways that panels go while a piece is folded on: of the panels that move, those that are nearest to the viewer,
    /// each followed at the middle of its outer edge.
    /// </summary>
    /// <param name="piece">The piece, with the folds of its flat panels.</param>
    /// <param name="at">The piece folded part of the way, where it stands.</param>
    /// <param name="from">How far it is folded.</param>
    /// <param name="to">How far it is going to be.</param>
    /// <param name="viewer">Towards the viewer.</param>
    /// <param name="most">How many arrows there are at most.</param>
    public static IReadOnlyList<MotionArrow> Folding(Piece piece, Func<double, Pose> at, double from, double to, Vector3d viewer, int most = 2)
    {
        ArgumentNullException.ThrowIfNull(piece);
        ArgumentNullException.ThrowIfNull(at);
        var poses = Enumerable.Range(0, Stretches + 1).Select(i => at(from + ((to - from) * i / Stretches))).ToList();
        var arrows = new List<(MotionArrow Arrow, Fold Carrier)>();
        var goesOver = false;
        foreach (var fold in piece.Folds.Where(fold => fold.Bulge == 0))
        {
            // What turns with something else, and what is folded in between, would only confuse.
            var panel = piece.Panel(fold.Child);
            var turned = poses[0].Angles.TryGetValue(fold, out var angle) ? poses[^1].Angles[fold] - angle : 0;
            if (panel.Role == PanelRole.Gusset || panel.Bend is not null || Math.Abs(turned) < LeastTurn)
                continue;
            var outer = Outer(panel, fold);
            var path = poses.Select(pose => pose.Panel(panel.Name).At(outer)).ToList();

            // What goes all the way over ends behind its own wall: the last quarter is left out.
            if (Math.Abs(turned) > FarOver)
            {
                goesOver = true;
                path = path[..^(Stretches / 4)];
            }

            var arrow = new MotionArrow(path);
            if (arrow.Length > 1)
                arrows.Add((arrow, Carrier(fold)));
        }

        // What one fold carries along is one motion. Of those that go farthest the nearest; where they go in over a wall, only
        // those whose inside is seen.
        var motions = arrows.GroupBy(way => way.Carrier).Select(group => group.MaxBy(way => Math.Round(way.Arrow.Length, 3)).Arrow).ToList();
        motions.AddRange(piece.Panels.Where(IsRolled).SelectMany(panel => Ends(poses[0], panel))
            .Select(end => new MotionArrow([.. poses.Select(pose => pose.Panel(end.Strip).At(end.At))])).Where(arrow => arrow.Length > 1));
        var longest = motions.Select(arrow => arrow.Length).DefaultIfEmpty(0).Max();
        var middle = poses[0].Root.At(poses[0].Root.Panel.Outline.Centroid);
        double Near(MotionArrow arrow) => Math.Round(viewer.Dot((arrow.Path[0] - middle) with { Z = 0 }), 3);
        return [.. motions.Where(arrow => arrow.Length > 0.5 * longest && (!goesOver || Near(arrow) < 0)).OrderByDescending(Near).Take(most)];

        double Turned(Fold fold) => poses[0].Angles.TryGetValue(fold, out var angle) ? Math.Abs(poses[^1].Angles[fold] - angle) : 0;

        // The fold nearest to the root that turns and carries a panel.
        Fold Carrier(Fold fold)
        {
            var carrier = fold;
            for (var above = fold; above is not null; above = piece.Folds.FirstOrDefault(one => one.Child == above.Parent))
                carrier = Turned(above) < LeastTurn ? carrier : above;
            return carrier;
        }
    }

    /// <summary>
    /// The ways that glue goes while seams are closed: each followed at the middle of the panel that carries it, from where it
    /// is to where it lies on its target. Where targets show the viewer the side that is glued, only those; the nearest first.
    /// </summary>
    /// <param name="closing">The seams.</param>
    /// <param name="at">The piece at a moment, where it stands.</param>
    /// <param name="viewer">Towards the viewer.</param>
    /// <param name="from">The moment that is drawn.</param>
    /// <param name="most">How many arrows there are at most.</param>
    public static IReadOnlyList<MotionArrow> Gluing(SeamClosing closing, Func<double, Pose> at, Vector3d viewer, double from, int most = 2)
    {
        ArgumentNullException.ThrowIfNull(closing);
        ArgumentNullException.ThrowIfNull(at);
        var poses = Enumerable.Range(0, Stretches + 1).Select(i => at(from + ((closing.Met - from) * i / Stretches))).ToList();
        var ways = closing.Seams
            .Select(seam => (Arrow: new MotionArrow([.. poses.Select(pose => pose.Panel(seam.Panel.Panel.Name).At(SeamClosing.Middle(seam)))]), IsSeen: Shows(seam)))
            .Where(way => way.Arrow.Length > 1)
            .ToList();
        if (ways.Exists(way => way.IsSeen))
            ways.RemoveAll(way => !way.IsSeen);

        // What is seen almost from its end says nothing.
        var longest = ways.Select(way => Across(way.Arrow)).DefaultIfEmpty(0).Max();
        return [.. ways.Select(way => way.Arrow).Where(arrow => Across(arrow) > 0.5 * longest).OrderByDescending(arrow => Math.Round(viewer.Dot(arrow.Path[0]), 3)).Take(most)];

        double Across(MotionArrow arrow) => (arrow.Path[^1] - arrow.Path[0]).Cross(viewer).Length;

        bool Shows(FoundSeam seam)
        {
            var target = poses[0].Panel(seam.Target!.Panel.Name);
            return (seam.Side == SheetSide.Facing ? target.Facing : -target.Facing).Dot(viewer) > 0.05;
        }
    }

    /// <summary>
    /// A straight way: what stands in its place and what stands apart from it, followed at the foot of the side that looks
    /// to the viewer.
    /// </summary>
    /// <param name="apart">The part away from its place.</param>
    /// <param name="shift">From there to its place.</param>
    /// <param name="viewer">Towards the viewer.</param>
    public static MotionArrow? Straight(PosedPart apart, Vector3d shift, Vector3d viewer)
    {
        ArgumentNullException.ThrowIfNull(apart);
        var length = shift.Length;
        if (length < 1)
            return null;
        var corners = apart.Corners.ToList();
        var (left, right, front, back) = (corners.Min(c => c.X), corners.Max(c => c.X), corners.Min(c => c.Y), corners.Max(c => c.Y));
        var (low, high) = (corners.Min(c => c.Z), corners.Max(c => c.Z));
        var middle = new Vector3d((left + right) / 2, (front + back) / 2, (low + high) / 2);
        var way = shift * (1 / length);
        var start = middle + (way * corners.Max(corner => way.Dot(corner - middle)));
        if (Math.Abs(way.Z) > 0.5)
        {
            // Of the two sides that are seen, the one that looks more to the viewer.
            start += Math.Abs(viewer.X) > Math.Abs(viewer.Y)
                ? new Vector3d(Math.Sign(viewer.X) * (right - left) / 2, 0, 0)
                : new Vector3d(0, Math.Sign(viewer.Y) * (back - front) / 2, 0);
        }

        return new MotionArrow([start + (way * (BeforeStart * length)), start + (way * (BeforeEnd * length))]);
    }

    /// <summary>
    /// The same way, ending where it goes in behind card, such as in the mouth of a box: drawn on, it would run down in front.
    /// Where too little of it is left before, or none of it is hidden, it is the way as it was.
    /// </summary>
    /// <param name="parts">What stands there.</param>
    /// <param name="viewer">Towards the viewer.</param>
    public MotionArrow EndingInSight(IEnumerable<PosedPart> parts, Vector3d viewer)
    {
        ArgumentNullException.ThrowIfNull(parts);
        var panels = parts.Where(part => part.Pose is not null).SelectMany(part => part.Pose!.Panels).Select(panel => new PanelInSight(panel, viewer)).ToList();
        var (from, way) = (Path[0], Path[^1] - Path[0]);
        for (var i = 0; i <= Places; i++)
        {
            // What is left of it is short: it begins at what moves, not at a distance.
            var part = (double)i / Places;
            if (panels.Exists(panel => panel.Meets(from + (way * part), Behind)))
                return part > LeastInSight ? new MotionArrow([from - (way * (BeforeStart / (BeforeEnd - BeforeStart))), from + (way * part)]) : this;
        }

        return this;
    }

    /// <summary>The way of a piece that is turned over about the line from left to right, beside its right end.</summary>
    /// <param name="corners">The piece's corners, where it lies turned over.</param>
    public static MotionArrow TurningOver(IReadOnlyCollection<Vector3d> corners)
    {
        ArgumentNullException.ThrowIfNull(corners);
        var (right, left) = (corners.Max(c => c.X), corners.Min(c => c.X));
        var (middle, level) = ((corners.Min(c => c.Y) + corners.Max(c => c.Y)) / 2, (corners.Min(c => c.Z) + corners.Max(c => c.Z)) / 2);
        var radius = 0.3 * (corners.Max(c => c.Y) - corners.Min(c => c.Y));
        var line = new Vector3d(right + (0.14 * (right - left)), middle, level);
        return new MotionArrow([.. Enumerable.Range(0, Stretches + 1)
            .Select(i => RigidMotion.Turn(line, Vector3d.UnitX, 180.0 * i / Stretches).Apply(line + new Vector3d(0, -radius, 0)))]);
    }

    // What goes round something, not only bows.
    private static bool IsRolled(Panel panel) => panel.Bend is { } bend && Math.Abs(bend.Turn) > FarOver;

    // The middles of both ends of what is rolled, each on its strip: as far beyond the strip's middle as the ruling that bounds
    // it lies before.
    private static IEnumerable<(string Strip, Point At)> Ends(Pose pose, Panel panel)
    {
        var strips = pose.Strips.StripsOf(panel.Name).ToList();
        var rulings = panel.Bend!.Rulings;
        foreach (var (strip, ruling) in new[] { (strips[0], rulings[0]), (strips[^1], rulings[^1]) })
        {
            var middle = ruling.From.MidwayTo(ruling.To);
            yield return (strip.Name, middle + ((strip.Outline.Centroid - middle) * 2));
        }
    }

    // Square to the fold at its middle, a little beyond the panel's farthest edge.
    private static Point Outer(Panel panel, Fold fold)
    {
        var middle = fold.From.MidwayTo(fold.To);
        var along = (fold.To - fold.From) * (1 / fold.From.DistanceTo(fold.To));
        var away = new Point(-along.Y, along.X);
        if (away.Dot(panel.Outline.Centroid - middle) < 0)
            away *= -1;
        return middle + (away * ((1 + Beyond) * panel.Outline.Corners.Max(corner => away.Dot(corner - middle))));
    }
}
