using System.Runtime.CompilerServices;

namespace Pattern.Press.Nets.Folding;

/// <summary>
/// A piece made ready for folding: every panel that bends is cut along its rulings into strips that stay flat and turn
/// against each other, and folds along arcs into one straight stretch for each strip. Fine enough rulings make a smooth
/// surface of it.
/// </summary>
/// <param name="Piece">
/// The piece of flat panels. Of the strips of a panel one keeps the panel's name, the one where the fold to its parent is;
/// the others are called the same with a number after it.
/// </param>
/// <param name="Rulings">The folds between strips of a panel: where a smooth surface goes on.</param>
/// <param name="Closing">Stretches of folds along arcs whose angles follow from the others; they close loops.</param>
public sealed record StripPiece(Piece Piece, IReadOnlySet<Fold> Rulings, IReadOnlySet<Fold> Closing)
{
    private static readonly HashSet<Fold> None = [];

    // Proofs and drawings fold a piece many times.
    private static readonly ConditionalWeakTable<Piece, StripPiece> Known = [];

    /// <summary>The strips of a panel, or the panel itself where it does not bend.</summary>
    /// <param name="panel">The panel of the piece as it was, by name.</param>
    public IEnumerable<Panel> StripsOf(string panel)
    {
        ArgumentNullException.ThrowIfNull(panel);
        return Piece.Panels.Where(strip => strip.Name == panel
            || (strip.Name.StartsWith(panel + " ", StringComparison.Ordinal) && strip.Name.AsSpan(panel.Length + 1).Contains('/')));
    }

    /// <summary>Cuts the panels of a piece that bend; a piece without any is taken as it is.</summary>
    public static StripPiece Of(Piece piece)
    {
        ArgumentNullException.ThrowIfNull(piece);
        return Known.GetValue(piece, Make);
    }

    private static StripPiece Make(Piece piece)
    {
        if (piece.Panels.All(panel => panel.Bend is null))
            return new StripPiece(piece, None, None);
        return new Cutting(piece).Make();
    }

    private sealed class Cutting(Piece piece)
    {
        private readonly Dictionary<string, List<Panel>> strips = new(StringComparer.Ordinal);
        private readonly List<Fold> folds = [];
        private readonly HashSet<Fold> rulings = [];
        private readonly HashSet<Fold> closing = [];

        public StripPiece Make()
        {
            foreach (var panel in piece.Panels)
                strips[panel.Name] = panel.Bend is null ? [panel] : Cut(panel, panel.Bend);
            foreach (var fold in piece.Folds)
            {
                if (Math.Abs(fold.Bulge) > 1e-9)
                    Stretches(fold);
                else
                    folds.Add(fold with { Parent = At(fold.Parent, fold), Child = At(fold.Child, fold) });
            }

            foreach (var panel in piece.Panels.Where(panel => panel.Bend is not null))
                Between(panel, panel.Bend!);
            var refined = piece with
            {
                Panels = [.. piece.Panels.SelectMany(panel => strips[panel.Name])],
                Folds = folds,
                GlueAreas = [.. piece.GlueAreas.SelectMany(glue => strips[glue.Panel].Count == 1
                    ? [glue]
                    : strips[glue.Panel].Where(strip => Overlap.Area(strip.Outline, glue.Outline) > strip.Outline.Area / 2).Select(strip => new GlueArea(strip.Name, strip.Outline, glue.Side)))],
            };
            return new StripPiece(refined, rulings, closing);
        }

        // The strip along which a straight fold runs farthest.
        private string At(string panel, Fold fold)
        {
            var own = strips[panel];
            if (own.Count == 1)
                return own[0].Name;
            var middle = fold.From.MidwayTo(fold.To);
            return own.MinBy(strip => strip.Outline.DistanceTo(middle))!.Name;
        }

        private void Stretches(Fold fold)
        {
            var middle = fold.Line.Middle;
            var found = new List<Fold>();
            foreach (var here in strips[fold.Parent])
            {
                foreach (var there in strips[fold.Child])
                {
                    foreach (var edge in SharedEdges.Between(here.Outline, there.Outline).Where(edge => fold.Line.DistanceTo(edge.From) < 1e-3 && fold.Line.DistanceTo(edge.To) < 1e-3))
                        found.Add(new Fold(here.Name, there.Name, edge.From, edge.To, fold.Direction, fold.Angle));
                }
            }

            // The stretch in the middle folds as the file says; what the others have to do follows from the rulings.
            var first = found.MinBy(one => one.From.MidwayTo(one.To).DistanceTo(middle));
            folds.AddRange(found);
            closing.UnionWith(found.Where(one => one != first));
        }

        private void Between(Panel panel, Bend bend)
        {
            var own = strips[panel.Name];
            var still = own.FindIndex(strip => strip.Name == panel.Name);
            for (var i = 0; i + 1 < own.Count; i++)
            {
                var (ruling, angle) = (bend.Rulings[i], bend.Rulings[i].Angle);
                var (parent, child) = i >= still ? (own[i], own[i + 1]) : (own[i + 1], own[i]);
                var fold = new Fold(parent.Name, child.Name, ruling.From, ruling.To, angle >= 0 ? FoldDirection.Valley : FoldDirection.Mountain, Math.Abs(angle));
                folds.Add(fold);
                rulings.Add(fold);
            }
        }

        private List<Panel> Cut(Panel panel, Bend bend)
        {
            var rest = Straight(panel.Outline, bend);
            var parts = new List<List<Point>>();
            for (var i = 0; i < bend.Rulings.Count; i++)
            {
                var ruling = bend.Rulings[i];
                if (Split(rest, ruling) is not var (one, other))
                    continue;

                // What the next ruling still cuts goes on; of the last cut, what the one before does not bound.
                var goesOn = i + 1 < bend.Rulings.Count ? Holds(other, bend.Rulings[i + 1]) : i == 0 || !Bounds(other, bend.Rulings[i - 1]);
                parts.Add(goesOn ? one : other);
                rest = goesOn ? other : one;
            }

            parts.Add(rest);
            var still = Still(panel, parts);
            var made = new List<Panel>();
            for (var i = 0; i < parts.Count; i++)
            {
                var outline = Outline.Through([.. parts[i]]);
                var name = i == still ? panel.Name : FormattableString.Invariant($"{panel.Name} {i + 1}/{parts.Count}");
                made.Add(panel with { Name = name, Outline = outline, Bend = null, Holes = [.. panel.Holes.Where(hole => outline.Contains(hole.Centroid))] });
            }

            return made;
        }

        // The strip at the fold to the panel's parent; of the root, the one in the middle.
        private int Still(Panel panel, List<List<Point>> parts)
        {
            var hinge = piece.Folds.FirstOrDefault(fold => fold.Child == panel.Name);
            var at = hinge is null || panel.Name == piece.Root ? panel.Outline.Centroid : hinge.Line.Middle;
            var outlines = parts.Select(part => Outline.Through([.. part])).ToList();
            var inside = hinge is null ? outlines.FindIndex(outline => outline.Contains(at)) : -1;
            return inside >= 0 ? inside : outlines.IndexOf(outlines.MinBy(outline => outline.DistanceTo(at))!);
        }

        // The corners of the outline and the ends of the rulings on it; arcs become the chords between them.
        private static List<Point> Straight(Outline outline, Bend bend)
        {
            var ends = bend.Rulings.SelectMany(ruling => new[] { ruling.From, ruling.To }).ToList();
            var corners = new List<Point>();
            foreach (var edge in outline.Edges)
            {
                var on = ends.Where(end => edge.DistanceTo(end) < LineWork.Tolerance && !Same(end, edge.From) && !Same(end, edge.To))
                    .OrderBy(end => Along(edge, end));
                corners.Add(edge.From);
                foreach (var end in on)
                {
                    if (!Same(corners[^1], end))
                        corners.Add(end);
                }
            }

            return corners;
        }

        // How far along an edge a point on it is: by the angle at the centre of an arc.
        private static double Along(Edge edge, Point point)
        {
            if (!edge.IsArc)
                return edge.From.DistanceTo(point);
            var (start, here) = (edge.From - edge.Centre, point - edge.Centre);
            var angle = Math.Atan2(start.Cross(here), start.Dot(here)) * Math.Sign(edge.Sweep);
            return angle < -1e-9 ? angle + (2 * Math.PI) : angle;
        }

        private static (List<Point> One, List<Point> Other)? Split(List<Point> corners, Ruling ruling)
        {
            var (from, to) = (corners.FindIndex(corner => Same(corner, ruling.From)), corners.FindIndex(corner => Same(corner, ruling.To)));
            if (from < 0 || to < 0 || from == to)
                return null;
            var (first, second) = (Walk(corners, from, to), Walk(corners, to, from));
            return first.Count < 3 || second.Count < 3 ? null : (first, second);
        }

        private static List<Point> Walk(List<Point> corners, int from, int to)
        {
            var walked = new List<Point> { corners[from] };
            for (var i = from; i != to;)
            {
                i = (i + 1) % corners.Count;
                walked.Add(corners[i]);
            }

            return walked;
        }

        private static bool Holds(List<Point> corners, Ruling ruling) =>
            corners.Any(corner => Same(corner, ruling.From)) && corners.Any(corner => Same(corner, ruling.To));

        private static bool Bounds(List<Point> corners, Ruling ruling) => Holds(corners, ruling);

        private static bool Same(Point a, Point b) => a.DistanceTo(b) < 2 * LineWork.Tolerance;
    }
}
