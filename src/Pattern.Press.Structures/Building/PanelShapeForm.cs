using Pattern.Press.Nets.Building;
using Pattern.Press.Structures.Files;
using Pattern.Press.Structures.Formulas;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Structures.Building;

/// <summary>Rounded corners, thumb notches and holes, with formulas in place of sizes.</summary>
internal sealed record PanelShapeForm(
    Formula? Rounded,
    IReadOnlyList<(SheetEdge Side, Formula Width, Formula Depth, Formula? When)> Notches,
    IReadOnlyList<(Formula Width, Formula Height, Formula? Up, Formula? When)> Holes)
{
    private static readonly string[] Sides = ["top", "right", "bottom", "left"];

    /// <summary>The shape for one fit.</summary>
    public PanelShape At(Evaluation values) => Rounded is null && Notches.Count == 0 && Holes.Count == 0
        ? PanelShape.Plain
        : new PanelShape
        {
            Rounded = Rounded is null ? default : Rounded.Evaluate(values).Length,
            Notches = [.. Notches.Where(notch => Applies(notch.When, values))
                .Select(notch => new CellNotch(notch.Side, notch.Width.Evaluate(values).Length, notch.Depth.Evaluate(values).Length))],
            Holes = [.. Holes.Where(hole => Applies(hole.When, values))
                .Select(hole => new CellHole(hole.Width.Evaluate(values).Length, hole.Height.Evaluate(values).Length, hole.Up?.Evaluate(values).Length ?? default))],
        };

    /// <summary>Reads <c>rounded</c>, <c>notch</c> and <c>hole</c>.</summary>
    public static PanelShapeForm Read(YamlMap entry, FileReading reading)
    {
        var rounded = entry.Find("rounded") is { } radius ? reading.Formula(radius, Kind.Length) : null;
        var notches = new List<(SheetEdge, Formula, Formula, Formula?)>();
        foreach (var item in entry.Find("notch")?.AsList() ?? [])
        {
            if (item.AsMap() is not { } notch)
                continue;
            var side = notch.Need("in", "Say which side it is cut into: in: bottom.")?.AsChoice(Sides);
            var (width, depth) = (Needed(notch, "width", reading), Needed(notch, "depth", reading));
            var when = Condition(notch, reading);
            notch.RefuseTheRest();
            if (side is not null && width is not null && depth is not null)
                notches.Add(((SheetEdge)Array.IndexOf(Sides, side), width, depth, when));
        }

        var holes = new List<(Formula, Formula, Formula?, Formula?)>();
        foreach (var item in entry.Find("hole")?.AsList() ?? [])
        {
            if (item.AsMap() is not { } hole)
                continue;
            var (width, height) = (Needed(hole, "width", reading), Needed(hole, "height", reading));
            var up = hole.Find("up") is { } above ? reading.Formula(above, Kind.Length) : null;
            var when = Condition(hole, reading);
            hole.RefuseTheRest();
            if (width is not null && height is not null)
                holes.Add((width, height, up, when));
        }

        return new PanelShapeForm(rounded, notches, holes);
    }

    private static bool Applies(Formula? when, Evaluation values) => when is null || when.Evaluate(values).Flag;

    private static Formula? Condition(YamlMap map, FileReading reading) =>
        map.Find("when") is { } item ? reading.Formula(item, Kind.YesNo) : null;

    private static Formula? Needed(YamlMap map, string key, FileReading reading) =>
        map.Need(key, "Write a formula that gives a length.") is { } item ? reading.Formula(item, Kind.Length) : null;
}
