using CsCheck;
using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Nets.Building;
using Pattern.Press.Nets.Tests;
using static Pattern.Press.Nets.Tests.Sheets;

namespace Pattern.Press.Plans.Tests;

/// <summary>The boxes of known figures, and boxes of any size.</summary>
internal static class Boxes
{
    // The sizes of these three are check values: common practice, no source.
    public static Piece Base { get; } = GussetBox(In("2"), In("1 1/2"), In("3 1/2"), In("1/2")).Build();

    public static Piece Lid { get; } = DoubleLid(In("2 1/8"), In("1 5/8"), In("3/4"), 10, In("1/32")).Build();

    public static Piece Raised { get; } = Platform(In("2"), In("1 1/2"), In("1/2"), In("1/2")).Build();

    /// <summary>A floor as wide as its sheet, two walls, and on each wall two tabs that are cut free of the floor.</summary>
    public static ScoredSheet Tray(Length length, Length width, Length side, Length end) => new()
    {
        Id = "tray",
        Name = "Tray",
        Across = [side, length, side],
        Down = [end, width, end],
        Map = ["twt", "FFF", "twt"],
        Cells = new Dictionary<char, Cell>
        {
            ['F'] = new() { Kind = "floor" },
            ['w'] = new() { Kind = "wall", Fold = Valley(90) },
            ['t'] = new() { Kind = "tab", Role = PanelRole.Tab, Fold = Valley(90), HangsFrom = HangsFrom.Beside },
        },
        Root = 'F',
    };

    /// <summary>Boxes of all four kinds, in tenths of a millimetre.</summary>
    public static Gen<Piece> Any { get; } =
        from kind in Gen.Int[0, 3]
        from length in Gen.Int[200, 1500]
        from width in Gen.Int[200, 1500]
        from height in Gen.Int[100, 900]
        from small in Gen.Int[20, 90]
        from taper in Gen.Int[0, 30]
        from relief in Gen.Int[0, 15]
        select (kind switch
        {
            0 => GussetBox(Mm(length / 10m), Mm(width / 10m), Mm(height / 10m), Mm(small / 10m)),
            1 => DoubleLid(Mm((length / 10m) + 100), Mm((width / 10m) + 100), Mm(height / 10m), taper / 2.0, Mm(relief / 10m)),
            2 => Platform(Mm(length / 10m), Mm(width / 10m), Mm(height / 10m), Mm(small / 10m)),
            _ => Tray(Mm(length / 10m), Mm(width / 10m), Mm(small / 10m), Mm(height / 10m)),
        }).Build();
}
