using Pattern.Press.Nets;
using Pattern.Press.Nets.Folding;
using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Booklets.Figures.Solid;

/// <summary>
/// The moment before glued seams of a piece are closed, in axonometric projection: the glue hatched where it is seen, and
/// arrows along the ways to where it is going to lie.
/// </summary>
public sealed class GluingDrawing : IDrawing
{
    private static readonly int[] Azimuths = [32, -32, 58, -58, 122, -122, 148, -148];

    /// <summary>Lines of the hatching across the size of the thing.</summary>
    private const double HatchingLines = 48;

    // The usual view first; then from all round, from lower down and from above, and last from below.
    private static readonly Axonometry[] Views =
        [new(32, 34), .. from elevation in new[] { 34, 20, 55 } from azimuth in Azimuths select new Axonometry(azimuth, elevation)];

    private static readonly Axonometry[] FromBelow = [.. Azimuths.Select(azimuth => new Axonometry(azimuth, -30))];

    // With less of the glue to be seen than this, as a part of its area, one walks round or looks a little earlier.
    private const double Enough = 0.25;

    // Less of it is not noticed, and needs no words.
    private const double Noticed = 0.02;

    // How many earlier moments are looked at.
    private const int Earlier = 4;

    private readonly SolidDrawing _drawing;

    private GluingDrawing(Piece piece, SeamClosing closing)
    {
        var shift = RigidMotion.By(-Vector3d.OnSheet(closing.At(closing.Apart).Root.Panel.Outline.Bounds.Centre));
        var glued = closing.Seams.Select(seam => seam.Panel.Panel.Name).ToHashSet(StringComparer.Ordinal);
        GlueArea[] areas = [.. At(closing.Apart).Piece.GlueAreas.Where(area => glued.Contains(area.Panel))];
        (Moment, View) = Choice(closing, areas, At);
        var pose = At(Moment);
        var corners = pose.Panels.SelectMany(panel => panel.Corners).ToArray();
        var scene = new Scene { Ground = View.Elevation > 0 ? corners.Min(corner => corner.Z) : null };
        scene.Add(pose);
        var size = Math.Max(corners.Max(c => c.X) - corners.Min(c => c.X), corners.Max(c => c.Y) - corners.Min(c => c.Y));
        var isSeen = areas.Any(area => GlueInSight.Share(pose, area, View) + GlueInSight.ShareOfBack(pose, area, View) > 0);
        foreach (var area in areas)
        {
            var through = GlueInSight.ShareOfBack(pose, area, View);
            scene.AddGlue(pose, area, size / HatchingLines, !isSeen ? LineKind.HiddenGlue : through > 0 ? LineKind.GlueBehind : LineKind.Glue);
            HidesGlue |= !isSeen || through > Noticed;
        }

        Arrows = MotionArrow.Gluing(closing, At, View.Viewer, Moment);
        foreach (var arrow in Arrows)
            scene.Add(arrow);
        _drawing = new SolidDrawing(scene, View);
        (Piece, Kinds) = (piece, [.. closing.Seams.Select(seam => seam.Panel.Panel.Kind).Distinct(StringComparer.Ordinal)]);
        Targets = [.. closing.Seams.Select(seam => seam.Target!.Panel.Kind).Distinct(StringComparer.Ordinal)];

        // Layers are a hair apart as in every drawing, so that none shines through another; two here, one for the hatching.
        Pose At(double moment) => Layers.Apart(closing.At(moment), 2 * FinishedThing.Hair).Moved(shift);
    }

    // As near to closing and to the usual view as shows enough of the glue; the usual one where none does. Moments at which tabs
    // would be drawn through faces are passed over, if there are others.
    private static (double Moment, Axonometry View) Choice(SeamClosing closing, GlueArea[] areas, Func<double, Pose> at)
    {
        var all = Enumerable.Range(0, Earlier + 1).Select(i => closing.Apart + ((closing.Widest - closing.Apart) * i / Earlier)).ToList();
        var whole = all.FindAll(moment => !Piercing.Of(closing.At(moment)));
        var moments = whole.Count > 0 ? whole : all;
        foreach (var moment in moments)
        {
            if (Best(moment, Views) is { } view)
                return (moment, view);
        }

        return (moments[0], Best(moments[0], FromBelow) ?? Views[0]);

        Axonometry? Best(double moment, Axonometry[] views)
        {
            var pose = at(moment);
            if (Worth(views[0]) >= Enough)
                return views[0];
            var best = views.MaxBy(Worth)!;
            return Worth(best) >= Enough ? best : null;

            // What is seen of the other side of the card, where the glue is marked in broken lines, is worth half.
            double Worth(Axonometry view) =>
                GlueInSight.Share(pose, areas, view) is var share and > Noticed ? share + (0.5 * GlueInSight.ShareOfBack(pose, areas, view)) : 0;
        }
    }

    /// <summary>Draws the moment; null where no glue holds the piece to itself.</summary>
    /// <param name="kit">The kit that the piece is of.</param>
    /// <param name="piece">The piece.</param>
    /// <param name="kinds">The kinds of panels whose glue is meant; empty for what is glued first.</param>
    public static GluingDrawing? Of(Kit kit, Piece piece, IReadOnlyList<string> kinds)
    {
        ArgumentNullException.ThrowIfNull(kit);
        var fine = SolidDrawing.Fine(piece, Folder.Finished(piece).Panels.SelectMany(panel => panel.Corners), Views[0]);
        return SeamClosing.Of(fine, kit.Assembly.Seams, kinds, FinishedThing.Opens(kit, piece)) is { } closing ? new GluingDrawing(piece, closing) : null;
    }

    /// <summary>The moment, from 0 flat to 1 finished.</summary>
    public double Moment { get; }

    /// <summary>Where it is seen from.</summary>
    public Axonometry View { get; }

    /// <summary>Whether some of the glue is behind card and drawn through it in broken lines.</summary>
    public bool HidesGlue { get; }

    /// <summary>The piece.</summary>
    public Piece Piece { get; }

    /// <summary>The kinds of panels that carry the glue.</summary>
    public IReadOnlyList<string> Kinds { get; }

    /// <summary>The kinds of panels that it goes on.</summary>
    public IReadOnlyList<string> Targets { get; }

    /// <summary>The ways shown.</summary>
    public IReadOnlyList<MotionArrow> Arrows { get; }

    /// <inheritdoc/>
    public DrawnFigure Draw(double maxWidth, double maxHeight, StyleSheet styles) => _drawing.Draw(maxWidth, maxHeight, styles);
}
