using Pattern.Press.Measure;
using Pattern.Press.Nets;

namespace Pattern.Press.Booklets.Composing;

/// <summary>A piece whose lines across or down have been moved to other places, everything between them in proportion.</summary>
internal static class Stretched
{
    /// <summary>Moves lines of a piece.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="across">Whether places are counted from the left rather than from the top.</param>
    /// <param name="from">Where the lines are, rising, the two sides of the sheet among them.</param>
    /// <param name="to">Where they are to be, rising.</param>
    public static Piece Along(Piece piece, bool across, IReadOnlyList<Length> from, IReadOnlyList<Length> to)
    {
        double Moved(double at)
        {
            for (var i = 1; i < from.Count; i++)
            {
                if (at > from[i].Millimetres && i + 1 < from.Count)
                    continue;
                var part = (at - from[i - 1].Millimetres) / (from[i] - from[i - 1]).Millimetres;
                return to[i - 1].Millimetres + (part * (to[i] - to[i - 1]).Millimetres);
            }

            return at;
        }

        Point Put(Point point) => across ? new Point(Moved(point.X), point.Y) : new Point(point.X, Moved(point.Y));
        Edge Line(Edge edge) => edge with { From = Put(edge.From), To = Put(edge.To) };
        Outline Shape(Outline outline) => new([.. outline.Edges.Select(Line)]);
        return piece with
        {
            Panels = [.. piece.Panels.Select(panel => panel with { Outline = Shape(panel.Outline) })],
            Folds = [.. piece.Folds.Select(fold => fold with { From = Put(fold.From), To = Put(fold.To) })],
            Waste = [.. piece.Waste.Select(waste => new Waste(Shape(waste.Outline), [.. waste.Holes.Select(Shape)]))],
            GlueAreas = [.. piece.GlueAreas.Select(area => area with { Outline = Shape(area.Outline) })],
            Cuts = [.. piece.Cuts.Select(Line)],
            Outline = Shape(piece.Outline),
        };
    }
}
