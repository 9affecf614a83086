using Pattern.Press.Measure;

namespace Pattern.Press.Nets.Building;

/// <summary>
/// A piece unfolded from its faces: one panel to start from, and others hung on it and on each other edge to edge. This is
/// how prisms, pyramids and solids are laid out.
/// </summary>
/// <remarks>
/// Each panel is given as an outline in coordinates of its own, in millimetres, and is moved (never mirrored or stretched) so
/// that one of its sides lies on a side of the panel it hangs from. Panels that come to lie side by side without hanging
/// from each other are cut apart. The first panel keeps the way it is turned.
/// </remarks>
public sealed record PanelTree
{
    /// <summary>The piece's id.</summary>
    public required string Id { get; init; }

    /// <summary>The piece's name.</summary>
    public required string Name { get; init; }

    /// <summary>The panel that stays still while the rest folds.</summary>
    public required TreePanel Root { get; init; }

    /// <summary>The other panels; in any order.</summary>
    public IReadOnlyList<HangingPanel> Hanging { get; init; } = [];

    /// <summary>Folds between panels that come to lie side by side.</summary>
    public IReadOnlyList<TreeJoin> Joins { get; init; } = [];

    /// <summary>The ruler that the sides of the sheet lie on; they are rounded up to it.</summary>
    public required Ruler Ruler { get; init; }

    /// <summary>Room left around the piece on all four sides of the sheet; 0 or more.</summary>
    public Length Margin { get; init; }

    /// <summary>Builds the piece and checks it.</summary>
    /// <exception cref="NetException">The description does not make a piece; every reason is listed.</exception>
    public Piece Build()
    {
        var reasons = new List<string>(Problems());
        Refuse(reasons);
        var placed = Placed(reasons);
        Refuse(reasons);

        TreePanel[] panels = [Root, .. Hanging.Select(hanging => hanging.Panel)];
        var bounds = panels.Select(panel => placed[panel.Name].Apply(panel.Outline).Bounds).Aggregate((all, next) => all.With(next));
        var shift = Motion.By(new Point(Margin.Millimetres - bounds.Left, Margin.Millimetres - bounds.Top));
        var outlines = panels.ToDictionary(
            panel => panel.Name, panel => LineWork.Tidied(Put(panel, panel.Outline).Edges), StringComparer.Ordinal);
        var folds = Hanging.Select(hanging => FoldOf(hanging, shift.Apply(
            placed[hanging.On].Apply(panels.First(panel => panel.Name == hanging.On).Outline).Edges[hanging.OnEdge]))).ToList();
        folds.AddRange(Joins.SelectMany(join => Joined(join, panels, outlines, folds, reasons)));
        Refuse(reasons);
        return new PieceAssembly
        {
            Id = Id,
            Name = Name,
            Sheet = new Size(Side(bounds.Width), Side(bounds.Height)),
            Root = Root.Name,
            Panels = [.. panels.Select(panel => new Panel(
                panel.Name, panel.Kind ?? panel.Name, panel.Role, outlines[panel.Name], panel.Note)
            {
                Holes = [.. panel.Holes.Select(hole => LineWork.Tidied(Put(panel, hole).Edges))],
                Bend = panel.Bend is null ? null : PutBend(panel, panel.Bend),
            })],
            Folds = folds,
            GlueAreas = [.. panels.Where(panel => panel.Glue is not null).Select(panel => new GlueArea(
                panel.Name, panel.GlueOutline is null ? outlines[panel.Name] : LineWork.Tidied(Put(panel, panel.GlueOutline).Edges), panel.Glue!.Value))],
        }.Build();

        Outline Put(TreePanel panel, Outline outline) => shift.Apply(placed[panel.Name].Apply(outline));

        Bend PutBend(TreePanel panel, Bend bend) => new([.. bend.Rulings.Select(ruling => Bent(panel, ruling))])
        {
            RulingsIn = bend.RulingsIn is not { } rulings ? null : times => [.. rulings(times).Select(ruling => Bent(panel, ruling))],
        };

        Ruling Bent(TreePanel panel, Ruling ruling) => new(
            shift.Apply(placed[panel.Name].Apply(ruling.From)), shift.Apply(placed[panel.Name].Apply(ruling.To)), ruling.Angle);
    }

    private static IEnumerable<Fold> Joined(
        TreeJoin join, TreePanel[] panels, Dictionary<string, Outline> outlines, List<Fold> folds, List<string> reasons)
    {
        var joined = new List<Fold>();
        foreach (var one in panels.Where(panel => (panel.Kind ?? panel.Name) == join.Kind))
        {
            foreach (var other in panels.Where(panel => panel != one && (panel.Kind ?? panel.Name) == join.OtherKind))
            {
                foreach (var line in SharedEdges.Between(outlines[one.Name], outlines[other.Name]))
                {
                    if (folds.Concat(joined).Any(fold => fold.Line.Middle.DistanceTo(line.Middle) < LineWork.Tolerance))
                        continue;
                    joined.Add(new Fold(one.Name, other.Name, line.From, line.To, join.Fold.Direction, join.Fold.Angle) { Bulge = line.Bulge });
                }
            }
        }

        if (joined.Count == 0)
            reasons.Add($"“{join.Kind}” and “{join.OtherKind}” are to be joined, but nowhere lie side by side.");
        return joined;
    }

    private static Fold FoldOf(HangingPanel hanging, Edge line) =>
        new(hanging.On, hanging.Panel.Name, line.From, line.To, hanging.Fold.Direction, hanging.Fold.Angle) { Bulge = line.Bulge };

    private Length Side(double extent) =>
        Ruler.Round(Length.FromMillimetres(extent) + (Margin * 2), Rounding.Up);

    private IEnumerable<string> Problems()
    {
        TreePanel[] panels = [Root, .. Hanging.Select(hanging => hanging.Panel)];
        if (Margin.IsNegative)
            yield return "The margin around the piece is less than nothing.";
        foreach (var twice in panels.GroupBy(panel => panel.Name, StringComparer.Ordinal).Where(group => group.Count() > 1))
            yield return $"{twice.Count()} panels are called “{twice.Key}”; each needs a name of its own.";
        foreach (var panel in panels)
        {
            if (string.IsNullOrWhiteSpace(panel.Name))
                yield return "A panel has no name.";
            if (Checks.SimpleOutline.Problem(panel.Outline) is { } problem)
                yield return $"The panel “{panel.Name}” {problem}";
        }

        foreach (var hanging in Hanging)
        {
            var name = $"“{hanging.Panel.Name}”";
            if (hanging.Fold.Angle is not (> 0 and <= 180))
                yield return $"{name} folds by {hanging.Fold.Angle.ToString("0.##", System.Globalization.CultureInfo.InvariantCulture)}°; a fold turns by more than 0° and at most 180°.";
            if (hanging.ByEdge < 0 || hanging.ByEdge >= hanging.Panel.Outline.Edges.Count)
                yield return $"{name} is to hang by its side {hanging.ByEdge + 1}, but it has {hanging.Panel.Outline.Edges.Count} sides.";
            if (panels.FirstOrDefault(panel => panel.Name == hanging.On) is not { } on)
                yield return $"{name} is to hang from “{hanging.On}”, but no panel is called that.";
            else if (hanging.OnEdge < 0 || hanging.OnEdge >= on.Outline.Edges.Count)
                yield return $"{name} is to hang from side {hanging.OnEdge + 1} of “{hanging.On}”, which has {on.Outline.Edges.Count} sides.";
        }

        foreach (var group in Hanging.GroupBy(hanging => (hanging.On, hanging.OnEdge)).Where(group => group.Count() > 1))
            yield return $"{string.Join(" and ", group.Select(hanging => $"“{hanging.Panel.Name}”"))} hang from the same side {group.Key.OnEdge + 1} of “{group.Key.On}”.";
    }

    private Dictionary<string, Motion> Placed(List<string> reasons)
    {
        var placed = new Dictionary<string, Motion>(StringComparer.Ordinal) { [Root.Name] = Motion.None };
        var shapes = Hanging.Select(hanging => hanging.Panel).Prepend(Root).ToDictionary(panel => panel.Name, panel => panel.Outline, StringComparer.Ordinal);
        var sides = new Dictionary<string, int>(StringComparer.Ordinal);
        var waiting = Hanging.ToList();
        for (var before = -1; before != waiting.Count;)
        {
            before = waiting.Count;
            foreach (var hanging in waiting.Where(hanging => placed.ContainsKey(hanging.On)).ToArray())
            {
                waiting.Remove(hanging);
                placed.Add(hanging.Panel.Name, Attached(hanging, placed[hanging.On].Apply(shapes[hanging.On].Edges[hanging.OnEdge]), reasons));
                if (sides.TryGetValue(hanging.On, out var taken) && taken == hanging.OnEdge)
                    reasons.Add($"“{hanging.Panel.Name}” is to hang from side {hanging.OnEdge + 1} of “{hanging.On}”, by which “{hanging.On}” hangs itself.");
                sides.Add(hanging.Panel.Name, hanging.ByEdge);
            }
        }

        foreach (var hanging in waiting)
            reasons.Add($"“{hanging.Panel.Name}” hangs from “{hanging.On}”, which does not lead back to “{Root.Name}”.");
        return placed;
    }

    private static Motion Attached(HangingPanel hanging, Edge on, List<string> reasons)
    {
        var by = hanging.Panel.Outline.Edges[hanging.ByEdge];
        var sides = $"side {hanging.ByEdge + 1} of “{hanging.Panel.Name}” and side {hanging.OnEdge + 1} of “{hanging.On}”";
        if (on.IsArc != by.IsArc || Math.Abs(on.Bulge + by.Bulge) > LineWork.Tolerance)
            reasons.Add($"A fold needs two sides that follow the same line, but of {sides} one curves otherwise.");
        else if (Math.Abs(on.Chord - by.Chord) > LineWork.Tolerance)
            reasons.Add($"A fold needs two equal sides, but {sides} are {Millimetres(by.Chord)} mm and {Millimetres(on.Chord)} mm long.");
        return Motion.Laying(by.To, by.From, on.From, on.To);
    }

    private static string Millimetres(double length) => length.ToString("0.######", System.Globalization.CultureInfo.InvariantCulture);

    private void Refuse(IReadOnlyList<string> reasons)
    {
        if (reasons.Count > 0)
            throw new NetException(Id, reasons);
    }
}
