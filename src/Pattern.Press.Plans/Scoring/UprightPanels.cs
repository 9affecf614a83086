using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Nets.Building;

namespace Pattern.Press.Plans.Scoring;

/// <summary>
/// The panels of a piece as upright regions that do not overlap: panels that are folded to each other along slanted lines as
/// one, every other panel by itself. A region has level and upright sides only, or it is the box around a panel that fills it
/// but for its end. Notches and holes are told apart.
/// </summary>
internal sealed record UprightPanels(IReadOnlyList<Bounds> Around, IReadOnlyList<NarrowedEnd> Ends, IReadOnlyList<EdgeNotch> Notches, IReadOnlyList<RoundHole> Holes)
{
    private const double Near = 1e-5;

    /// <summary>
    /// The regions of a piece, as the rectangles around them that are no card; null when it runs aslant or has a shape that
    /// words have no simple way to say.
    /// </summary>
    public static UprightPanels? Of(Piece piece)
    {
        var regions = new List<IReadOnlyList<Outline>>();
        var ends = new List<NarrowedEnd>();
        var notches = new List<EdgeNotch>();
        var holes = new List<RoundHole>();
        foreach (var group in Groups(piece))
        {
            foreach (var hole in group.SelectMany(panel => panel.Holes.Select(hole => (panel.Kind, Hole: hole))))
            {
                if (!HasRoundEnds(hole.Hole))
                    return null;
                holes.Add(new RoundHole(hole.Kind, Exact(hole.Hole.Bounds), Mirrored.Nowhere));
            }

            var outlines = new List<Outline>();
            foreach (var panel in group)
            {
                if (WithoutNotches(panel, piece.Sheet, notches) is not { } outline)
                    return null;
                outlines.Add(outline);
            }

            if (!IsUpright(outlines))
            {
                var box = outlines[0].Bounds;
                if (outlines.Count > 1 || End(group[0].Kind, outlines[0], box) is not { } end)
                    return null;
                ends.Add(end);
                outlines = [Nets.Outline.Rectangle(box.Left, box.Top, box.Right, box.Bottom)];
            }

            regions.Add(outlines);
        }

        return FreeCells.Around(piece.Sheet, regions) is { } around ? new UprightPanels(around, ends, notches, holes) : null;
    }

    // Whether all sides are level or upright, but for those that panels of the region share.
    private static bool IsUpright(List<Outline> outlines)
    {
        foreach (var side in outlines.SelectMany(outline => outline.Edges))
        {
            if (!side.IsArc && (Math.Abs(side.From.X - side.To.X) < Near || Math.Abs(side.From.Y - side.To.Y) < Near))
                continue;
            if (side.IsArc || !outlines.Exists(other => other.Edges.Any(edge => edge.From.DistanceTo(side.To) < Near && edge.To.DistanceTo(side.From) < Near)))
                return false;
        }

        return true;
    }

    /// <summary>The outline that the words about a narrowed end ask for.</summary>
    public static Outline Outline(NarrowedEnd end)
    {
        var (left, top, right, bottom) = (end.Box.Left.Millimetres, end.Box.Top.Millimetres, end.Box.Right.Millimetres, end.Box.Bottom.Millimetres);
        var (from, to) = (end.From.Millimetres, end.To.Millimetres);
        var (sharp, fold) = end.End switch
        {
            SheetEdge.Top => (Nets.Outline.Through(new(from, top), new(to, top), new(right, bottom), new(left, bottom)), new Edge(new(right, bottom), new(left, bottom))),
            SheetEdge.Right => (Nets.Outline.Through(new(left, top), new(right, from), new(right, to), new(left, bottom)), new Edge(new(left, bottom), new(left, top))),
            SheetEdge.Bottom => (Nets.Outline.Through(new(left, top), new(right, top), new(to, bottom), new(from, bottom)), new Edge(new(left, top), new(right, top))),
            _ => (Nets.Outline.Through(new(left, from), new(right, top), new(right, bottom), new(left, to)), new Edge(new(right, top), new(right, bottom))),
        };
        return end.Radius > Length.Zero ? Shaping.Rounded(sharp, fold, end.Radius.Millimetres) : sharp;
    }

    // Panels in the piece's order, those that hang together by slanted or curved folds in one group.
    private static List<List<Panel>> Groups(Piece piece)
    {
        var groups = piece.Panels.Select(panel => new List<Panel> { panel }).ToList();
        foreach (var fold in piece.Folds.Where(fold => fold.Line.IsArc || SlantedScores.IsSlanted(fold)))
        {
            var (one, other) = (groups.Find(group => group.Exists(panel => panel.Name == fold.Parent))!, groups.Find(group => group.Exists(panel => panel.Name == fold.Child))!);
            if (one == other)
                continue;
            one.AddRange(other);
            groups.Remove(other);
        }

        return groups;
    }

    private static SheetBox Exact(Bounds bounds) => new(Exact(bounds.Left), Exact(bounds.Top), Exact(bounds.Right), Exact(bounds.Bottom));

    private static Length Exact(double millimetres) => Length.FromMillimetres(millimetres);

    private static bool HasRoundEnds(Outline hole)
    {
        var shorter = Math.Min(hole.Bounds.Width, hole.Bounds.Height);
        return hole.Edges.Count(edge => edge.IsArc && Math.Abs(Math.Abs(edge.Bulge) - 1) < 1e-6 && Math.Abs(edge.Chord - shorter) < Near) == 2
            && hole.Edges.All(edge => edge.IsArc || Math.Abs(edge.From.X - edge.To.X) < Near || Math.Abs(edge.From.Y - edge.To.Y) < Near);
    }

    // Bows into edges are taken out of the outline and noted; null for one that is aslant.
    private static Outline? WithoutNotches(Panel panel, Size sheet, List<EdgeNotch> notches)
    {
        var edges = panel.Outline.Edges.ToList();
        for (var i = 0; i < edges.Count; i++)
        {
            var notch = edges[i];
            if (!notch.IsArc || notch.Bulge > 0)
                continue;
            var (before, after) = (edges[(i + edges.Count - 1) % edges.Count], edges[(i + 1) % edges.Count]);
            var within = EdgeAt(notch, sheet);
            if (before.IsArc || after.IsArc || (within ?? SideOf(notch)) is not { } side)
                return null;
            var level = MirroredOnSheet.IsLevel(side);
            var (a, b) = (Exact(level ? notch.From.X : notch.From.Y), Exact(level ? notch.To.X : notch.To.Y));
            notches.Add(new EdgeNotch(panel.Kind, side, Length.Min(a, b), Length.Max(a, b), Exact(-notch.Bulge * notch.Chord / 2), Mirrored.Nowhere)
            {
                At = within is null ? Exact(level ? notch.From.Y : notch.From.X) : null,
            });
            edges[i] = notch with { Bulge = 0 };
        }

        return new Outline(edges);
    }

    // An outline runs clockwise: along its upper side to the right.
    private static SheetEdge? SideOf(Edge edge)
    {
        var (across, down) = (edge.To.X - edge.From.X, edge.To.Y - edge.From.Y);
        return Math.Abs(down) < Near ? across > 0 ? SheetEdge.Top : SheetEdge.Bottom
            : Math.Abs(across) < Near ? down > 0 ? SheetEdge.Right : SheetEdge.Left
            : null;
    }

    private static SheetEdge? EdgeAt(Edge edge, Size sheet)
    {
        bool At(double a, double b, Length where) => Math.Abs(a - where.Millimetres) < Near && Math.Abs(b - where.Millimetres) < Near;
        return At(edge.From.Y, edge.To.Y, Length.Zero) ? SheetEdge.Top
            : At(edge.From.X, edge.To.X, sheet.Width) ? SheetEdge.Right
            : At(edge.From.Y, edge.To.Y, sheet.Height) ? SheetEdge.Bottom
            : At(edge.From.X, edge.To.X, Length.Zero) ? SheetEdge.Left
            : null;
    }

    // Rounded corners are made sharp again; of what is left two corners have to lie on the side where it hangs, as far apart
    // as that side is long, and two on the side across from it.
    private static NarrowedEnd? End(string kind, Outline outline, Bounds box)
    {
        var arcs = outline.Edges.Where(edge => edge.IsArc).ToList();
        var radius = arcs.Count > 0 ? arcs[0].Radius : 0;
        if (arcs.Exists(arc => Math.Abs(arc.Radius - radius) > Near) || arcs.Count is not (0 or 2))
            return null;
        var corners = Sharp(outline);
        foreach (var side in Enum.GetValues<SheetEdge>())
        {
            var level = MirroredOnSheet.IsLevel(side);
            var at = side switch { SheetEdge.Top => box.Top, SheetEdge.Right => box.Right, SheetEdge.Bottom => box.Bottom, _ => box.Left };
            var there = corners.Where(corner => Math.Abs((level ? corner.Y : corner.X) - at) < Near).Select(corner => level ? corner.X : corner.Y).Order().ToList();
            if (there.Count < 2)
                continue;
            var end = new NarrowedEnd(kind, Exact(box), side, Exact(there[0]), Exact(there[^1]), Exact(radius), Mirrored.Nowhere);
            if (end.From < end.To && IsSame(Outline(end), outline))
                return end;
        }

        return null;
    }

    private static List<Point> Sharp(Outline outline)
    {
        var corners = new List<Point>();
        for (var i = 0; i < outline.Edges.Count; i++)
        {
            var edge = outline.Edges[i];
            if (!edge.IsArc)
            {
                corners.Add(edge.From);
                corners.Add(edge.To);
                continue;
            }

            // Where the two sides beside it meet when they run on.
            var (before, after) = (outline.Edges[(i + outline.Edges.Count - 1) % outline.Edges.Count], outline.Edges[(i + 1) % outline.Edges.Count]);
            var (a, b) = (before.To - before.From, after.To - after.From);
            if (Math.Abs(a.Cross(b)) > 1e-12)
                corners.Add(before.From + (a * ((after.From - before.From).Cross(b) / a.Cross(b))));
        }

        return corners;
    }

    private static bool IsSame(Outline one, Outline other) =>
        Math.Abs(one.Area - other.Area) < 1e-3
        && one.Edges.All(edge => other.DistanceTo(edge.From) < 1e-4 && other.DistanceTo(edge.Middle) < 1e-4);
}
