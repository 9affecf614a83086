using Pattern.Press.Measure;
using Pattern.Press.Nets.Building;

namespace Pattern.Press.Nets.Tests;

/// <summary>Scored sheets in the manner of boxes that makers know, with free sizes.</summary>
internal static class Sheets
{
    public static Length In(string inches) => LengthParser.Parse(inches + " in");

    public static Length Mm(decimal millimetres) => Length.FromMillimetres(millimetres);

    public static CellFold Valley(double angle) => new(FoldDirection.Valley, angle);

    public static CellFold Mountain(double angle) => new(FoldDirection.Mountain, angle);

    public static Cell Wall(string kind = "wall") => new() { Kind = kind, Fold = Valley(90) };

    public static Cell Floor => new() { Kind = "floor" };

    /// <summary>A floor, four walls, and in each corner two gusset panels that meet on a mitre.</summary>
    public static ScoredSheet GussetBox(Length length, Length width, Length height, Length gusset) => new()
    {
        Id = "base",
        Name = "Base",
        Across = [height - gusset, gusset, length, gusset, height - gusset],
        Down = [height - gusset, gusset, width, gusset, height - gusset],
        Map = [".gng.", "gdndg", "ssFss", "gdndg", ".gng."],
        Cells = new Dictionary<char, Cell>
        {
            ['F'] = Floor,
            ['n'] = Wall("long wall"),
            ['s'] = Wall("short wall"),
            ['g'] = new() { Kind = "gusset", Role = PanelRole.Gusset, Fold = Valley(135), Note = "folds in between two walls" },
            ['d'] = new() { Kind = "mitre", Diagonal = new('g', Mountain(180)) },
        },
        Root = 'F',
    };

    /// <summary>A lid with walls that fold back down inside, glue tabs between them.</summary>
    public static ScoredSheet DoubleLid(Length length, Length width, Length depth, double taper, Length relief) => new()
    {
        Id = "lid",
        Name = "Lid",
        Across = [depth, depth, length, depth, depth],
        Down = [depth, depth, width, depth, depth],
        Map = ["..i..", ".twt.", "iwFwi", ".twt.", "..i.."],
        Cells = new Dictionary<char, Cell>
        {
            ['F'] = new() { Kind = "top" },
            ['w'] = Wall(),
            ['i'] = new() { Kind = "inner wall", Fold = Valley(180), Relief = relief, Glue = SheetSide.Facing },
            ['t'] = new()
            {
                Kind = "glue tab",
                Role = PanelRole.Tab,
                Fold = Valley(90),
                HangsFrom = HangsFrom.Beside,
                Taper = taper,
                Glue = SheetSide.Away,
                Note = "glued under the neighbouring wall",
            },
        },
        Root = 'F',
    };

    /// <summary>A raised floor with walls that end in a lip turned inwards.</summary>
    public static ScoredSheet Platform(Length length, Length width, Length height, Length lip) => new()
    {
        Id = "platform",
        Name = "Platform",
        Across = [lip, height, length, height, lip],
        Down = [lip, height, width, height, lip],
        Map = ["..l..", "..w..", "lwFwl", "..w..", "..l.."],
        Cells = new Dictionary<char, Cell>
        {
            ['F'] = Floor,
            ['w'] = Wall(),
            ['l'] = new() { Kind = "lip", Role = PanelRole.Tab, Fold = Valley(90), Glue = SheetSide.Away },
        },
        Root = 'F',
    };
}
