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
    /// <summary>Lines of the hatching across the size of the thing.</summary>
    private const double HatchingLines = 48;

    private static readonly Axonometry View = new(32, 34);
    private readonly SolidDrawing _drawing;

    private GluingDrawing(Piece piece, SeamClosing closing)
    {
        var shift = RigidMotion.By(-Vector3d.OnSheet(closing.At(closing.Apart).Root.Panel.Outline.Bounds.Centre));
        var pose = At(closing.Apart);
        var corners = pose.Panels.SelectMany(panel => panel.Corners).ToArray();
        var scene = new Scene { Ground = corners.Min(corner => corner.Z) };
        scene.Add(pose);
        var glued = closing.Seams.Select(seam => seam.Panel.Panel.Name).ToHashSet(StringComparer.Ordinal);
        var size = Math.Max(corners.Max(c => c.X) - corners.Min(c => c.X), corners.Max(c => c.Y) - corners.Min(c => c.Y));
        scene.AddGlue(pose, pose.Piece.GlueAreas.Where(area => glued.Contains(area.Panel)), size / HatchingLines);
        Arrows = MotionArrow.Gluing(closing, At, View.Viewer);
        foreach (var arrow in Arrows)
            scene.Add(arrow);
        _drawing = new SolidDrawing(scene, View);
        (Piece, Kinds) = (piece, [.. closing.Seams.Select(seam => seam.Panel.Panel.Kind).Distinct(StringComparer.Ordinal)]);
        Targets = [.. closing.Seams.Select(seam => seam.Target!.Panel.Kind).Distinct(StringComparer.Ordinal)];

        // Layers are a hair apart as in every drawing, so that none shines through another.
        Pose At(double moment) => Layers.Apart(closing.At(moment), FinishedThing.Hair).Moved(shift);
    }

    /// <summary>Draws the moment; null where no glue holds the piece to itself.</summary>
    /// <param name="kit">The kit that the piece is of.</param>
    /// <param name="piece">The piece.</param>
    /// <param name="kinds">The kinds of panels whose glue is meant; empty for what is glued first.</param>
    public static GluingDrawing? Of(Kit kit, Piece piece, IReadOnlyList<string> kinds)
    {
        ArgumentNullException.ThrowIfNull(kit);
        return SeamClosing.Of(piece, kit.Assembly.Seams, kinds, FinishedThing.Opens(kit, piece)) is { } closing ? new GluingDrawing(piece, closing) : null;
    }

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
