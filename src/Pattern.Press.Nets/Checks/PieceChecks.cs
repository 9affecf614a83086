namespace Pattern.Press.Nets.Checks;

/// <summary>
/// What must hold of every piece, whichever way it was made. The builders apply it; it can be asked of any piece.
/// </summary>
public static class PieceChecks
{
    /// <summary>Areas may differ by this part of the sheet.</summary>
    private const double AreaTolerance = 1e-6;

    private const double Tolerance = LineWork.Tolerance;

    // Arcs of holes are looked at in points this close to them, in millimetres.
    private const double Flatness = 0.05;

    /// <summary>
    /// Everything that is wrong with a piece, each a sentence a maker can follow; empty when it is sound. Checked are: names
    /// unique; outlines simple and clockwise; nothing outside the sheet; nothing overlapping; panels and waste together as
    /// large as the sheet; every fold the whole stretch that its two panels share there; folds joining every panel to the
    /// root; adhesive inside its panel.
    /// </summary>
    public static IReadOnlyList<string> Problems(Piece piece) => Problems(piece, false);

    /// <summary>The same for a piece whose panels are known to be simple and not to overlap each other.</summary>
    internal static IReadOnlyList<string> Problems(Piece piece, bool panelsAreApart)
    {
        var problems = new List<string>();
        problems.AddRange(Names(piece));
        problems.AddRange(Shapes(piece));

        // What follows measures areas and walks edges, which means nothing for a line that crosses itself.
        if (problems.Count > 0)
            return problems;
        problems.AddRange(HolesInside(piece));
        problems.AddRange(Overlaps(piece, panelsAreApart));
        problems.AddRange(Tiling(piece));
        problems.AddRange(Folds(piece));
        problems.AddRange(Joining(piece));
        problems.AddRange(Glue(piece));
        return problems;
    }

    private static IEnumerable<string> Names(Piece piece)
    {
        foreach (var twice in piece.Panels.GroupBy(panel => panel.Name, StringComparer.Ordinal).Where(group => group.Count() > 1))
            yield return $"{twice.Count()} panels are called “{twice.Key}”; each needs a name of its own.";
        if (piece.Panels.Any(panel => string.IsNullOrWhiteSpace(panel.Name)))
            yield return "A panel has no name.";
        var names = piece.Panels.Select(panel => panel.Name).ToHashSet(StringComparer.Ordinal);
        if (!names.Contains(piece.Root))
            yield return $"The root is called “{piece.Root}”, but no panel is.";
        foreach (var fold in piece.Folds)
        {
            foreach (var name in new[] { fold.Parent, fold.Child }.Where(name => !names.Contains(name)))
                yield return $"A fold names “{name}”, but no panel is called that.";
        }

        foreach (var glue in piece.GlueAreas.Where(glue => !names.Contains(glue.Panel)))
            yield return $"Adhesive goes on “{glue.Panel}”, but no panel is called that.";
    }

    private static IEnumerable<string> Shapes(Piece piece)
    {
        var sheet = new Bounds(0, 0, piece.Sheet.Width.Millimetres, piece.Sheet.Height.Millimetres);
        foreach (var (what, outline) in Outlines(piece))
        {
            if (SimpleOutline.Problem(outline) is { } problem)
                yield return $"{what} {problem}";
            else if (!sheet.Contains(outline.Bounds, Tolerance))
                yield return $"{what} reaches over the edge of the sheet.";
        }
    }

    private static IEnumerable<(string What, Outline Outline)> Outlines(Piece piece)
    {
        foreach (var panel in piece.Panels)
        {
            yield return ($"The panel “{panel.Name}”", panel.Outline);
            foreach (var hole in panel.Holes)
                yield return ($"The hole in “{panel.Name}”", hole);
        }

        foreach (var waste in piece.Waste)
        {
            yield return ("A region of waste", waste.Outline);
            foreach (var hole in waste.Holes)
                yield return ("A hole in the waste", hole);
        }

        foreach (var glue in piece.GlueAreas)
            yield return ($"The adhesive on “{glue.Panel}”", glue.Outline);
        yield return ("The outline", piece.Outline);
    }

    private static IEnumerable<string> HolesInside(Piece piece)
    {
        foreach (var panel in piece.Panels)
        {
            foreach (var hole in panel.Holes.Where(hole => !InsideWithRoom(panel.Outline, hole)))
                yield return $"The hole in “{panel.Name}” does not lie inside it with card all round.";
        }
    }

    private static bool InsideWithRoom(Outline outline, Outline hole) =>
        hole.Edges.All(edge => edge.Flattened(Flatness).All(point => outline.Contains(point) && outline.DistanceTo(point) > Tolerance));

    private static IEnumerable<string> Overlaps(Piece piece, bool panelsAreApart) => OverlappingRegions.Problems(
        [
            .. piece.Panels.Select(panel => new OverlappingRegions.Region($"“{panel.Name}”", panel.Loops)),
            .. piece.Waste.Select(waste => new OverlappingRegions.Region(
                "a region of waste", [waste.Outline, .. waste.Holes.Select(hole => hole.Reversed)])),
        ],
        panelsAreApart ? piece.Panels.Count : 0);

    private static IEnumerable<string> Tiling(Piece piece)
    {
        var sheet = piece.Sheet.SquareMillimetres;
        var used = piece.Panels.Sum(panel => panel.Area)
            + piece.Waste.Sum(waste => waste.Outline.Area - waste.Holes.Sum(hole => hole.Area));
        if (Math.Abs(sheet - used) > AreaTolerance * sheet)
            yield return $"Panels and waste cover {Area(used)} mm², but the sheet is {Area(sheet)} mm².";
    }

    private static IEnumerable<string> Folds(Piece piece)
    {
        foreach (var fold in piece.Folds)
        {
            var name = $"The fold between “{fold.Parent}” and “{fold.Child}”";
            if (fold.Angle is not (> 0 and <= 180))
                yield return $"{name} turns by {Area(fold.Angle)}°; a fold turns by more than 0° and at most 180°.";
            var shared = SharedEdges.Between(piece.Panel(fold.Parent).Outline, piece.Panel(fold.Child).Outline);
            var whole = shared.Any(edge =>
                edge.Middle.DistanceTo(fold.Line.Middle) < 2 * Tolerance
                && ((Near(edge.From, fold.From) && Near(edge.To, fold.To)) || (Near(edge.From, fold.To) && Near(edge.To, fold.From))));
            if (!whole)
                yield return $"{name} is not the whole of an edge that they share.";
        }
    }

    private static IEnumerable<string> Joining(Piece piece)
    {
        var reached = new HashSet<string>(StringComparer.Ordinal) { piece.Root };
        for (var before = 0; before < reached.Count;)
        {
            before = reached.Count;
            foreach (var fold in piece.Folds)
            {
                if (reached.Contains(fold.Parent))
                    reached.Add(fold.Child);
                else if (reached.Contains(fold.Child))
                    reached.Add(fold.Parent);
            }
        }

        foreach (var panel in piece.Panels.Where(panel => !reached.Contains(panel.Name)))
            yield return $"No fold joins “{panel.Name}” to the rest.";
    }

    private static IEnumerable<string> Glue(Piece piece)
    {
        foreach (var glue in piece.GlueAreas)
        {
            IReadOnlyList<Outline> panel = [piece.Panel(glue.Panel).Outline];
            IReadOnlyList<Outline> area = [glue.Outline];
            if (glue.Outline.Area - Overlap.Area(panel, area) > Overlap.Slack(panel, area))
                yield return $"The adhesive on “{glue.Panel}” reaches beyond that panel.";
        }
    }

    private static bool Near(Point a, Point b) => a.DistanceTo(b) < 2 * Tolerance;

    private static string Area(double value) => value.ToString("0.##", System.Globalization.CultureInfo.InvariantCulture);
}
