using Pattern.Press.Nets.Folding.Proofs;

namespace Pattern.Press.Nets.Folding;

/// <summary>
/// How hands close glued seams of a piece: what the glue goes on stands in its place already, and only what carries the glue
/// still comes towards it.
/// </summary>
/// <remarks>
/// Panels that form loops cannot be held that way; such a piece closes its seams as it is folded, what opens again standing
/// straight on from the walls.
/// </remarks>
public sealed class SeamClosing
{
    private const int Samples = 80;

    /// <summary>A seam is seen open once its sides are this far apart, as a part of the piece's size.</summary>
    private const double OpenEnough = 0.3;

    /// <summary>Nothing is opened by more than this part of its finished angle; what goes right over, a little more.</summary>
    private const double LeastFolded = 0.5;
    private const double LeastFoldedOver = 0.36;

    private readonly Pose finished;
    private readonly HashSet<Fold> moving;
    private readonly Pose rest;
    private readonly IReadOnlyList<string> opens;

    private SeamClosing(Pose finished, IReadOnlyList<FoundSeam> seams, IReadOnlyList<string> opens)
    {
        (this.finished, Seams, this.opens) = (finished, seams, opens);
        var tree = HingeTree.Of(finished.Strips);
        moving = [.. seams.SelectMany(seam => tree.Carrying(Place(seam.Panel), Place(seam.Target!))).Select(hinge => hinge.Fold)];
        Met = Meeting();
        rest = InOrder(Met);
        (Apart, Widest) = Opened();

        int Place(PosedPanel panel) => finished.Piece.Panels.ToList().FindIndex(one => one.Name == panel.Panel.Name);
    }

    /// <summary>The seams that close together.</summary>
    public IReadOnlyList<FoundSeam> Seams { get; }

    /// <summary>When they are seen well apart: how far the piece is folded then, from 0 to 1.</summary>
    public double Apart { get; }

    /// <summary>The earliest moment at which nothing is opened so far that one would not know it for the finished thing.</summary>
    public double Widest { get; }

    /// <summary>When they are closed.</summary>
    public double Met { get; }

    /// <summary>
    /// The glued seams of a piece with itself that close first, or those of the kinds of panels that are asked for; null where
    /// there are none, or where they close only as the last fold is made.
    /// </summary>
    /// <param name="piece">The piece.</param>
    /// <param name="said">The seams of its assembly that are said outright.</param>
    /// <param name="kinds">The kinds of panels that take glue; empty for those that close first.</param>
    /// <param name="opens">The kinds of panels of the finished piece that are opened again, such as a roof.</param>
    public static SeamClosing? Of(Piece piece, IEnumerable<Seam> said, IReadOnlyCollection<string> kinds, IReadOnlyList<string>? opens = null)
    {
        ArgumentNullException.ThrowIfNull(piece);
        ArgumentNullException.ThrowIfNull(said);
        ArgumentNullException.ThrowIfNull(kinds);
        var part = Finished(piece);
        var loops = part.Pose!.Gaps.Count > 0;
        if (part.Pose.Strips.Closing.Count > 0)
            return null;
        var found = Glued(part, said)
            .Where(seam => kinds.Count == 0 || kinds.Contains(seam.Panel.Panel.Kind))
            .GroupBy(seam => seam.Panel.Panel.Kind, StringComparer.Ordinal)
            .Select(group => new SeamClosing(part.Pose!, [.. group], opens ?? []))
            .Where(closing => !loops || closing.Met < 1);
        return found.MinBy(closing => Math.Round(closing.Met, 6));
    }

    /// <summary>Every glued seam of a piece with itself.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="said">The seams of its assembly that are said outright.</param>
    public static IReadOnlyList<FoundSeam> Glued(Piece piece, IEnumerable<Seam> said)
    {
        ArgumentNullException.ThrowIfNull(piece);
        ArgumentNullException.ThrowIfNull(said);
        return Glued(Finished(piece), said);
    }

    private static PosedPart Finished(Piece piece) => new(new AssembledPart(piece.Id), 0, Folder.Finished(piece), null, default);

    private static IReadOnlyList<FoundSeam> Glued(PosedPart part, IEnumerable<Seam> said)
    {
        var (id, seams) = (part.Part.Part, said.ToList());
        var elsewhere = seams.Where(seam => seam.Piece == id && seam.OtherPiece != id).Select(seam => seam.Panel).ToHashSet(StringComparer.Ordinal);
        var own = new Assembly([part.Part], [.. seams.Where(seam => seam.Piece == id && seam.OtherPiece == id)]);
        return [.. SeamFinding.Of(own, [part], 1.5).Where(seam => seam is { Hold: SeamHold.Glue, Target: not null } && !elsewhere.Contains(seam.Panel.Panel.Kind))];
    }

    /// <summary>The piece at a moment from <see cref="Widest"/> to <see cref="Met"/>.</summary>
    public Pose At(double moment)
    {
        var now = InOrder(moment).Angles;
        if (finished.Gaps.Count > 0)
            return InOrder(moment);
        return Folder.Pose(finished.Strips, fold => moving.Contains(fold) ? now[fold] : rest.Angles[fold]);
    }

    /// <summary>The place of a seam's glue: on the panel that carries it, on the sheet.</summary>
    public static Point Middle(FoundSeam seam)
    {
        ArgumentNullException.ThrowIfNull(seam);
        return seam.Panel.Panel.Outline.Centroid;
    }

    /// <summary>How far the two sides of a seam are from each other in a pose, in millimetres.</summary>
    public static double Gap(FoundSeam seam, Pose pose)
    {
        ArgumentNullException.ThrowIfNull(pose);
        var middle = Middle(seam);
        var lands = seam.Target!.Motion.Inverse.Apply(seam.Panel.At(middle));
        return pose.Panel(seam.Panel.Panel.Name).At(middle).DistanceTo(pose.Panel(seam.Target.Panel.Name).Motion.Apply(lands));
    }

    private Pose InOrder(double opening) => Folder.InOrder(finished.Strips, opening, opens);

    private double GapAt(Pose at) => Seams.Max(seam => Gap(seam, at));

    // Backwards from the finished shape, as long as the seams stay closed.
    private double Meeting()
    {
        var met = 1.0;
        for (var i = Samples - 1; i > 0; i--)
        {
            var at = (double)i / Samples;
            if (GapAt(InOrder(at)) > 0.01)
                break;
            met = at;
        }

        return met;
    }

    private (double Apart, double Widest) Opened()
    {
        var corners = finished.Panels.SelectMany(panel => panel.Corners).ToList();
        var size = Math.Max(corners.Max(c => c.X) - corners.Min(c => c.X), Math.Max(corners.Max(c => c.Y) - corners.Min(c => c.Y), corners.Max(c => c.Z) - corners.Min(c => c.Z)));
        var (apart, widest) = ((double?)null, Met);
        for (var at = Met - (0.5 / Samples); at > 0; at -= 0.5 / Samples)
        {
            var here = At(at);
            if (moving.Any(fold => here.Angles[fold] < (fold.Angle > 120 ? LeastFoldedOver : LeastFolded) * rest.Angles[fold]))
                break;
            widest = at;
            if (apart is null && GapAt(here) > OpenEnough * size)
                apart = at;
        }

        return (apart ?? widest, widest);
    }
}
