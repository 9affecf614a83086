using Pattern.Press.Measure;
using Pattern.Press.Nets.Checks;

namespace Pattern.Press.Nets.Building;

/// <summary>Makes a piece of panels and folds that lie in place on a sheet: finds its outline, cuts and waste, and checks it.</summary>
internal sealed record PieceAssembly
{
    public required string Id { get; init; }

    public required string Name { get; init; }

    public required Size Sheet { get; init; }

    public required string Root { get; init; }

    public required IReadOnlyList<Panel> Panels { get; init; }

    public required IReadOnlyList<Fold> Folds { get; init; }

    public required IReadOnlyList<GlueArea> GlueAreas { get; init; }

    /// <summary>The piece.</summary>
    /// <exception cref="NetException">It is not sound.</exception>
    public Piece Build()
    {
        Refuse(Panels.Select(panel => (panel.Name, Problem: SimpleOutline.Problem(panel.Outline)))
            .Where(found => found.Problem is not null)
            .Select(found => $"The panel “{found.Name}” {found.Problem}"));
        Refuse(Panels.SelectMany(panel => panel.Holes.Select(hole => (panel.Name, Problem: SimpleOutline.Problem(hole))))
            .Where(found => found.Problem is not null)
            .Select(found => $"The hole in “{found.Name}” {found.Problem}"));
        Refuse(OverlappingRegions.Problems(
            [.. Panels.Select(panel => new OverlappingRegions.Region($"“{panel.Name}”", panel.Loops))]));

        var sides = Panels.SelectMany(panel => panel.Loops).SelectMany(loop => loop.Edges).ToArray();
        var piece = new Piece
        {
            Id = Id,
            Name = Name,
            Sheet = Sheet,
            Root = Root,
            Panels = [.. Panels.OrderBy(panel => Math.Round(panel.Outline.Centroid.Y, 4)).ThenBy(panel => panel.Outline.Centroid.X)],
            Folds = Folds,
            Waste = WasteAround(sides),
            GlueAreas = GlueAreas,
            Cuts = CutLines.Of(Panels, Folds),
            Outline = LineWork.Border(sides).MaxBy(loop => loop.Area)!,
        };
        Refuse(PieceChecks.Problems(piece, panelsAreApart: true));
        return piece;
    }

    // Walked the other way, the panels' sides are the border of what lies between them and the edge of the sheet.
    private IReadOnlyList<Waste> WasteAround(IReadOnlyList<Edge> sides)
    {
        var sheet = Outline.Rectangle(0, 0, Sheet.Width.Millimetres, Sheet.Height.Millimetres);

        // Where an arc touches the edge of the sheet the waste on both sides of it must part.
        var touching = sides.SelectMany(side => side.Turns).Where(turn => sheet.DistanceTo(turn) < LineWork.Tolerance);
        var loops = LineWork.Border(sheet.Edges.Concat(sides.Select(side => side.Reversed)), touching);
        var outer = loops.Where(loop => loop.Area > 0)
            .OrderBy(loop => loop.Bounds.Top).ThenBy(loop => loop.Bounds.Left).ToArray();
        var holes = loops.Where(loop => loop.Area < 0).ToLookup(hole =>
            outer.Where(loop => loop.Bounds.Contains(hole.Bounds, LineWork.Tolerance) && loop.Contains(InsideOf(hole)))
                .MinBy(loop => loop.Area));
        return [.. outer.Select(loop => new Waste(loop, [.. holes[loop].Select(hole => LineWork.Tidied(hole.Reversed.Edges))]))];
    }

    // A point just inside a hole's first side: no corner, because holes may touch the line around them at one.
    private static Point InsideOf(Outline hole)
    {
        var side = hole.Edges[0];
        var along = (side.To - side.From) * (1 / side.Chord);
        return side.Middle + (new Point(along.Y, -along.X) * (100 * LineWork.Tolerance));
    }

    private void Refuse(IEnumerable<string> problems)
    {
        var reasons = problems.ToArray();
        if (reasons.Length > 0)
            throw new NetException(Id, reasons);
    }
}
