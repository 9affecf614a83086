using Pattern.Press.Nets;
using Pattern.Press.Nets.Folding;
using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Booklets.Figures.Solid;

/// <summary>One piece, folded part of the way or wholly, in axonometric projection.</summary>
public sealed class FoldedDrawing : IDrawing
{
    /// <summary>How much farther arrows go than the piece is folded.</summary>
    private const double Onwards = 0.3;

    private static readonly Axonometry View = new(32, 34);
    private readonly SolidDrawing _drawing;

    /// <summary>Draws a piece.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="opening">How far it is folded, in the order of hands: 0 flat, 1 finished.</param>
    /// <param name="upsideDown">Whether its facing side looks down, as a platform stands in its box.</param>
    /// <param name="mats">Mats on its panels.</param>
    /// <param name="turned">Whether an arrow shows that it was turned over.</param>
    /// <param name="part">Its part in the assembly, which says how it stands once it is finished and what is opened again then.</param>
    public FoldedDrawing(Piece piece, double opening = 1, bool upsideDown = false, IReadOnlyList<PlacedMat>? mats = null, bool turned = false, AssembledPart? part = null)
    {
        ArgumentNullException.ThrowIfNull(piece);
        var asked = piece;
        piece = SolidDrawing.Fine(piece, At(opening).Panels.SelectMany(panel => panel.Corners), View);
        var pose = At(opening);
        var corners = pose.Panels.SelectMany(panel => panel.Corners).ToArray();
        var scene = new Scene { Ground = corners.Min(corner => corner.Z) };
        scene.Add(pose, mats);

        // Where it is going: a third of the whole way on, as it is going to stand.
        if (opening is > 0 and < 1)
        {
            foreach (var arrow in MotionArrow.Folding(piece, At, opening, Math.Min(1, opening + Onwards), View.Viewer))
                scene.Add(arrow);
        }
        else if (turned)
        {
            scene.Add(MotionArrow.TurningOver(corners));
        }

        _drawing = new SolidDrawing(scene, View);
        var (width, depth, height) = Extent(corners);
        Facts = new FoldedFacts(asked, opening, upsideDown, width, depth, height, pose.Angles, mats ?? []);

        Pose At(double folded) => Folded(piece, folded, upsideDown, part);
    }

    /// <summary>How large a folded piece is along the sheet's x and y and in height, in millimetres, without drawing it.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="opening">How far it is folded: 0 flat, 1 finished.</param>
    /// <param name="upsideDown">Whether its facing side looks down.</param>
    /// <param name="part">Its part in the assembly.</param>
    public static (double Width, double Depth, double Height) SizeOf(Piece piece, double opening, bool upsideDown, AssembledPart? part) =>
        Extent([.. Folded(piece, opening, upsideDown, part).Panels.SelectMany(panel => panel.Corners)]);

    private static Pose Folded(Piece piece, double folded, bool upsideDown, AssembledPart? part) =>
        folded >= 1 && part is not null && StandsUp(part) ? AssembledThing.Stood(FinishedThing.Standing(piece, folded), part)
        : upsideDown ? FinishedThing.UpsideDown(piece, folded, part?.Opens)
        : FinishedThing.Standing(piece, folded, part?.Opens);

    private static (double Width, double Depth, double Height) Extent(Vector3d[] corners) =>
        (corners.Max(c => c.X) - corners.Min(c => c.X), corners.Max(c => c.Y) - corners.Min(c => c.Y), corners.Max(c => c.Z) - corners.Min(c => c.Z));

    /// <summary>Whether a part stands on something else than what lies on the table while it is folded.</summary>
    public static bool StandsUp(AssembledPart? part) => part?.Stands is Stance.OnEdge or Stance.OnPanel;

    /// <summary>What is to be seen, with numbers, for a description in words.</summary>
    public FoldedFacts Facts { get; }

    /// <inheritdoc/>
    public DrawnFigure Draw(double maxWidth, double maxHeight, StyleSheet styles) => _drawing.Draw(maxWidth, maxHeight, styles);
}

/// <summary>What a drawing of a folded piece shows, in numbers.</summary>
/// <param name="Piece">The piece.</param>
/// <param name="Opening">How far it is folded: 0 flat, 1 finished.</param>
/// <param name="UpsideDown">Whether its facing side looks down.</param>
/// <param name="Width">Its extent along the sheet's x, in millimetres.</param>
/// <param name="Depth">Its extent along the sheet's y.</param>
/// <param name="Height">Its height.</param>
/// <param name="Angles">The angle of each fold, in degrees in its own direction.</param>
/// <param name="Mats">The mats that are on it.</param>
public sealed record FoldedFacts(
    Piece Piece,
    double Opening,
    bool UpsideDown,
    double Width,
    double Depth,
    double Height,
    IReadOnlyDictionary<Fold, double> Angles,
    IReadOnlyList<PlacedMat> Mats);
