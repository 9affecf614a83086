using Pattern.Press.Measure;

namespace Pattern.Press.Nets.Building;

/// <summary>Mats in the shape of the faces they go on, smaller by the same border along every side.</summary>
public static class InsetMat
{
    private const double Grain = 1e-5;

    private const double Near = 1e-4;

    // Two ways of laying it take as much room if they differ by less.
    private const double Alike = 1e-3;

    // More would be seen, in millimetres.
    private const double MostGrowth = 0.6;

    /// <summary>A mat, and how many faces it is for.</summary>
    /// <param name="Piece">The mat as it is cut, its good side up.</param>
    /// <param name="Faces">The panels it goes on, by name.</param>
    /// <param name="Border">How far inside them its edge lies, in millimetres.</param>
    /// <param name="IsMirror">Whether it is the mirror image of the first.</param>
    public sealed record Made(Piece Piece, IReadOnlyList<string> Faces, double Border, bool IsMirror);

    /// <summary>
    /// The mats for a piece's panels of some kinds, one of each shape, that of the panel drawn farthest up and to the left first;
    /// two where panels mirror each other.
    /// </summary>
    /// <param name="id">The mat's id.</param>
    /// <param name="name">The mat's name.</param>
    /// <param name="piece">The piece it goes on.</param>
    /// <param name="kinds">The kinds of its panels that it goes on.</param>
    /// <param name="side">The side of the piece's sheet.</param>
    /// <param name="border">How much of the card shows around it; 0 or more.</param>
    /// <param name="ruler">The ruler that the sheet it is cut from lies on.</param>
    /// <remarks>
    /// The border grows by a hair where that brings the side that lies level at the bottom to a mark of the ruler. Where the face takes glue on the mat's own side, as at the end of a band that another end covers, the mat
    /// keeps clear of it.
    /// </remarks>
    /// <exception cref="NetException">Nothing is left of it, or there is no panel for it, or one with a hole.</exception>
    public static IReadOnlyList<Made> For(string id, string name, Piece piece, IReadOnlyList<string> kinds, SheetSide side, Length border, Ruler ruler)
    {
        ArgumentNullException.ThrowIfNull(piece);
        ArgumentNullException.ThrowIfNull(kinds);
        if (border < Length.Zero)
            throw new NetException(id, ["Its border is less than nothing."]);
        var panels = piece.Panels.Where(panel => kinds.Contains(panel.Kind, StringComparer.OrdinalIgnoreCase)).ToList();
        if (panels.Count == 0)
            throw new NetException(id, ["No panel of the piece is there for it to go on."]);
        if (panels.Find(panel => panel.Holes.Count > 0) is { } holed)
            throw new NetException(id, [$"The {holed.Kind} has a hole, which a mat in its shape would cover. Give the mat a shape and a size of its own."]);

        var first = Level(piece, panels[0], side, border.Millimetres, ruler) ?? throw Nothing(panels[0]);
        var made = new List<(Outline Shape, double Border, List<string> Faces)> { (first.Shape, first.Border, [panels[0].Name]) };
        foreach (var panel in panels.Skip(1))
        {
            var shape = On(piece, panel, side, first.Border) ?? throw Nothing(panel);
            var seen = side == SheetSide.Away ? LineWork.Tidied(shape.MirroredAt(0).Edges) : shape;
            var same = made.FindIndex(one => Inset.IsSameShape(one.Shape, seen));
            if (same >= 0)
                made[same].Faces.Add(panel.Name);
            else if (Inset.IsSameShape(Mirrored(first.Shape), seen))
                made.Add((Mirrored(first.Shape), first.Border, [panel.Name]));
            else
                made.Add((seen, first.Border, [panel.Name]));
        }

        return [.. made.Select(one => new Made(Cut(id, name, one.Shape, ruler), one.Faces, one.Border, one.Shape != first.Shape && Inset.IsSameShape(one.Shape, Mirrored(first.Shape))))];

        NetException Nothing(Panel panel) => new(id, [$"The border leaves nothing of a mat for the {panel.Kind}. Make it narrower."]);
    }

    /// <summary>Where such a mat lies on a panel; null if nothing of it is left.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="panel">One of its panels.</param>
    /// <param name="side">The side of its sheet.</param>
    /// <param name="border">How far inside the panel its edge lies, in millimetres.</param>
    public static Outline? On(Piece piece, Panel panel, SheetSide side, double border)
    {
        ArgumentNullException.ThrowIfNull(piece);
        ArgumentNullException.ThrowIfNull(panel);
        var bare = panel.Outline;
        foreach (var glue in piece.GlueAreas.Where(glue => glue.Panel == panel.Name && glue.Side == side))
        {
            if (Without(bare, glue.Outline) is not { } rest)
                return null;
            bare = rest;
        }

        return Inset.Of(bare, border);
    }

    // Turned so that it takes the least room; the side that lies level at the bottom then is as long as a mark of the ruler says.
    private static (Outline Shape, double Border)? Level(Piece piece, Panel panel, SheetSide side, double border, Ruler ruler)
    {
        if (On(piece, panel, side, border) is not { } shape)
            return null;
        var wide = border;
        var bottom = Bottom(piece, panel, shape, border);
        if (bottom is { } plain && On(piece, panel, side, border + Grain) is { } less && Like(less, plain, border + Grain - border) is { } shorter)
        {
            var (lost, over) = ((plain.Chord - shorter.Chord) / Grain, plain.Chord - ruler.Round(Length.FromMillimetres(plain.Chord + Grain), Rounding.Down).Millimetres);
            if (lost > 0 && over > Grain && over / lost < MostGrowth && plain.Chord - over > Grain
                && On(piece, panel, side, border + (over / lost)) is { } smaller && Like(smaller, plain, over / lost) is { } marked)
            {
                (shape, wide, bottom) = (smaller, border + (over / lost), marked);
            }
        }

        if (bottom is { } level)
            shape = Levelled(shape, level);
        return (LineWork.Tidied(side == SheetSide.Away ? shape.MirroredAt(0).Edges : shape.Edges), wide);
    }

    // Its inside above it, a side at the bottom runs to the left.
    private static Outline Levelled(Outline shape, Edge level)
    {
        var along = (level.To - level.From) * (1 / level.Chord);
        return new Motion(-along.X, along.Y, default).Apply(shape);
    }

    // Of several that take as little room, the side along the fold that the panel hangs on, or the lowest as it is drawn; null
    // where it takes the least as it is.
    private static Edge? Bottom(Piece piece, Panel panel, Outline shape, double border)
    {
        var hinge = piece.Folds.FirstOrDefault(fold => fold.Child == panel.Name && Math.Abs(fold.Bulge) < 1e-9 && panel.Outline.DistanceTo(fold.Line.Middle) < Near)?.Line;
        (Edge? Side, double Room) best = (null, Room(shape) * (hinge is null ? 1 : 1 + Alike));
        foreach (var edge in shape.Edges.Where(edge => !edge.IsArc).OrderByDescending(edge => hinge is { } fold ? -Math.Abs(Off(edge, fold.Middle) + border) : edge.Middle.Y))
        {
            if (Room(Levelled(shape, edge)) is var room && room < best.Room * (1 - Alike))
                best = (edge, room);
            else if (best.Side is null && room < best.Room * (1 + Alike))
                best = (edge, Math.Min(room, best.Room));
        }

        return best.Side;

        static double Room(Outline outline) => outline.Bounds.Width * outline.Bounds.Height;
    }

    // The same side when all of them have moved inwards by so much more.
    private static Edge? Like(Outline shape, Edge side, double moved)
    {
        foreach (var edge in shape.Edges)
        {
            if (!edge.IsArc && (edge.To - edge.From).Dot(side.To - side.From) > 0 && Math.Abs(Off(side, edge.From) - moved) < Near / 10 && Math.Abs(Off(side, edge.To) - moved) < Near / 10)
                return edge;
        }

        return null;
    }

    // How far to the right of a side a point lies, where the inside of an outline is.
    private static double Off(Edge side, Point point) => (side.To - side.From).Cross(point - side.From) / side.Chord;

    private static Outline Mirrored(Outline shape) => LineWork.Tidied(shape.MirroredAt(0).Edges);

    // A panel without a part of it along one of its sides, up to the one straight line between the two.
    private static Outline? Without(Outline panel, Outline part)
    {
        if (panel.Area - part.Area < Grain)
            return null;
        var inner = part.Edges.Where(edge => !edge.IsArc && panel.DistanceTo(edge.Middle) > Near).ToList();
        if (inner.Count != 1)
            return panel;
        var (from, to) = (inner[0].From, inner[0].To);
        var rest = new List<Edge>();
        foreach (var edge in panel.Edges)
        {
            var cuts = new[] { from, to }.Where(cut => edge.DistanceTo(cut) < Near).Select(edge.PartNearest).Where(share => share is > 1e-9 and < 1 - 1e-9).Order().ToList();
            var start = 0.0;
            foreach (var cut in cuts.Append(1))
            {
                var stretch = edge.Between(start, cut);
                if (part.DistanceTo(stretch.Middle) > Near)
                    rest.Add(stretch);
                start = cut;
            }
        }

        // Along the line between, the other way round than the part has it.
        var gap = rest.FindIndex(edge => edge.To.DistanceTo(rest[(rest.IndexOf(edge) + 1) % rest.Count].From) > Near);
        if (gap < 0)
            return panel;
        rest.Insert(gap + 1, new Edge(rest[gap].To, rest[(gap + 1) % rest.Count].From));
        return LineWork.Tidied(rest);
    }

    private static Piece Cut(string id, string name, Outline shape, Ruler ruler)
    {
        var bounds = shape.Bounds;
        var size = new Size(Up(bounds.Width), Up(bounds.Height));
        var move = new Point(-bounds.Left, size.Height.Millimetres - bounds.Bottom);
        return Mats.Of(id, name, size, LineWork.Tidied([.. shape.Edges.Select(edge => new Edge(Snapped(edge.From + move), Snapped(edge.To + move), edge.Bulge))]));

        Length Up(double extent) => ruler.Round(Length.FromMillimetres(extent - Grain), Rounding.Up);

        // What lies along the edge of the sheet needs no cut.
        Point Snapped(Point corner) => new(Snap(corner.X, size.Width.Millimetres), Snap(corner.Y, size.Height.Millimetres));
        static double Snap(double at, double far) => Math.Abs(at) < 2 * Grain ? 0 : Math.Abs(at - far) < 2 * Grain ? far : at;
    }
}
