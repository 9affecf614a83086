using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using Pattern.Press.Booklets.Figures.Drafting;
using Pattern.Press.Nets;
using Pattern.Press.Nets.Building;

namespace Pattern.Press.Booklets.Figures;

/// <summary>A mat on the panel it is glued on.</summary>
/// <param name="Part">The mat.</param>
/// <param name="Panel">The panel.</param>
/// <param name="Corners">The mat's corners on the piece's sheet as it is drawn, in millimetres.</param>
public sealed record PlacedMat(Part Part, Panel Panel, IReadOnlyList<Point> Corners)
{
    /// <summary>The side of the sheet it is glued on.</summary>
    public SheetSide Side => Part.Side;
}

/// <summary>
/// Finds the panels that mats are glued on: those of the kinds that the mat names or, where it names none, those it fits
/// with the same border all round.
/// </summary>
public static class MatPlacing
{
    private const double Close = 1e-4;

    // How far straight lines may stray from an arc of a mat, in millimetres.
    private const double Flatness = 0.02;

    // Every drawing of a piece asks for its mats.
    private static readonly ConditionalWeakTable<IReadOnlyList<Part>, ConcurrentDictionary<Piece, IReadOnlyList<PlacedMat>>> Known = [];

    /// <summary>
    /// Places as many of each mat as the kit takes, each on a panel of its own; the two sides of a panel may have one each.
    /// </summary>
    public static IReadOnlyList<PlacedMat> On(Piece piece, IReadOnlyList<Part> parts)
    {
        ArgumentNullException.ThrowIfNull(piece);
        ArgumentNullException.ThrowIfNull(parts);
        return Known.GetValue(parts, _ => new(ReferenceEqualityComparer.Instance)).GetOrAdd(piece, piece => Find(piece, parts));
    }

    private static List<PlacedMat> Find(Piece piece, IReadOnlyList<Part> parts)
    {
        var taken = new HashSet<(string Panel, SheetSide Side)>();
        var placed = new List<PlacedMat>();

        // What says where it goes comes first, so that a guess does not take its place.
        foreach (var part in parts.Where(part => part.Kind == PartKind.Mat && part.Goes == piece.Id).OrderBy(part => part.On is not { Count: > 0 }))
        {
            var found = 0;
            foreach (var panel in piece.Panels)
            {
                if (found == part.Quantity)
                    break;
                if (taken.Contains((panel.Name, part.Side)) || Place(part, panel, piece) is not { } mat)
                    continue;
                taken.Add((panel.Name, part.Side));
                placed.Add(mat);
                found++;
            }
        }

        return placed;
    }

    private static PlacedMat? Place(Part part, Panel panel, Piece piece)
    {
        if (part.On is not { Count: > 0 } kinds)
            return Lay(part, panel, [0, 1, 2, 3]) is { Even: < Close } guess ? guess.Mat : null;

        if (!kinds.Contains(panel.Kind, StringComparer.OrdinalIgnoreCase))
            return null;
        if (part.Inset is { } border)
            return Inset(part, panel, piece, border);

        // A mat's width runs along the fold that its panel hangs from: a mat for a wall that lies sideways is turned. Walls in a
        // row hang on one another by their sides, though; what goes on them evenly, or at all, only upright is not turned.
        var sideways = HangsSideways(panel, piece);
        var along = Lay(part, panel, sideways ? [1, 3] : [0, 2]);
        var across = Lay(part, panel, sideways ? [0, 2] : [1, 3]);
        return along is null || (along.Value.Even >= Close && across is { Even: < Close }) ? across?.Mat : along.Value.Mat;
    }

    // The face's own shape, less its border.
    private static PlacedMat? Inset(Part part, Panel panel, Piece piece, double border)
    {
        if (InsetMat.On(piece, panel, part.Side, border) is not { } shape)
            return null;
        var seen = part.Side == SheetSide.Away ? shape.MirroredAt(0) : shape;
        return Nets.Inset.IsSameShape(part.Piece.Outline, seen)
            ? new PlacedMat(part, panel, shape.Flattened(Flatness))
            : null;
    }

    private static bool HangsSideways(Panel panel, Piece piece)
    {
        // A gusset also meets its other half on a slant, which says nothing.
        var hinge = piece.Folds
            .Where(fold => fold.Child == panel.Name && (IsSame(fold.From.X, fold.To.X) || IsSame(fold.From.Y, fold.To.Y)))
            .MaxBy(fold => fold.From.DistanceTo(fold.To));
        return hinge is not null && IsSame(hinge.From.X, hinge.To.X);

        static bool IsSame(double a, double b) => Math.Abs(a - b) < Close;
    }

    // In the middle of the panel, the way its border is most even; null if it does not go in.
    private static (PlacedMat Mat, double Even)? Lay(Part part, Panel panel, int[] turns)
    {
        var room = Shape.Of(panel.Outline, Placing.None);
        var mat = Shape.Of(part.Piece.Outline, Placing.None);

        // What is glued on the back is seen through the sheet.
        var seen = part.Side == SheetSide.Away ? new Shape([.. mat.Corners.Select(corner => new Point(-corner.X, corner.Y))]) : mat;
        (PlacedMat Mat, double Even)? best = null;
        foreach (var quarters in turns)
        {
            var turned = new Shape([.. seen.Corners.Select(corner => Turn(corner, quarters))]);
            var (dx, dy) = (room.Bounds.Width - turned.Bounds.Width, room.Bounds.Height - turned.Bounds.Height);
            var move = new Point(room.Bounds.CentreX - turned.Bounds.CentreX, room.Bounds.CentreY - turned.Bounds.CentreY);
            Point[] corners = [.. turned.Corners.Select(corner => corner + move)];
            var even = Math.Abs(dx - dy);
            if (dx < -Close || dy < -Close || even >= (best?.Even ?? double.MaxValue) || !corners.All(corner => Inside(room, corner)))
                continue;
            best = (new PlacedMat(part, panel, corners), even);
        }

        return best;
    }

    private static bool Inside(Shape shape, Point point) =>
        shape.Holds(point) || shape.Sides.Any(side => side.DistanceTo(point) < Close);

    private static Point Turn(Point p, int quarters) => quarters switch
    {
        0 => p,
        1 => new Point(-p.Y, p.X),
        2 => new Point(-p.X, -p.Y),
        _ => new Point(p.Y, -p.X),
    };
}
