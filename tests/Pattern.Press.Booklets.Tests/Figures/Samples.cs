using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Nets.Building;
using Pattern.Press.Nets.Tests;
using Pattern.Press.Typesetting.Fonts;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Styles;

namespace Pattern.Press.Booklets.Tests.Figures;

/// <summary>Pieces in the manner of boxes that makers know, and a plain style to draw them in.</summary>
internal static class Samples
{
    private static readonly Lazy<StyleSheet> PlainStyle = new(MakeStyles);

    public static StyleSheet Styles => PlainStyle.Value;

    public static Length Mm(double millimetres) => Length.FromMillimetres(millimetres);

    public static Length In(string inches) => Sheets.In(inches);

    /// <summary>A floor, four walls, and in each corner two gusset panels that meet on a mitre.</summary>
    public static Piece GussetBox(Length length, Length width, Length height, Length gusset) =>
        Sheets.GussetBox(length, width, height, gusset).Build();

    /// <summary>A lid with walls that fold back down inside, glue tabs between them.</summary>
    public static Piece DoubleLid(Length length, Length width, Length depth, double taper, Length relief) =>
        Sheets.DoubleLid(length, width, depth, taper, relief).Build();

    /// <summary>A raised floor with walls that end in a lip turned inwards.</summary>
    public static Piece Platform(Length length, Length width, Length height, Length lip) =>
        Sheets.Platform(length, width, height, lip).Build();

    /// <summary>A plain rectangle.</summary>
    public static Piece Mat(string id, string name, Length width, Length height) => new ScoredSheet
    {
        Id = id,
        Name = name,
        Across = [width],
        Down = [height],
        Map = ["m"],
        Cells = new Dictionary<char, Cell> { ['m'] = new() { Kind = "mat" } },
        Root = 'm',
    }.Build();

    /// <summary>A box with lid, platform and mats; sizes in millimetres on the ruler's marks.</summary>
    public static Kit Box(double length, double width, double height, double gusset, double depth, double taper = 10) => new(
        Ruler.WholeMillimetres,
        [
            new(GussetBox(Mm(length), Mm(width), Mm(height), Mm(gusset)), PartKind.Piece, "card", 1),
            new(DoubleLid(Mm(length + 4), Mm(width + 4), Mm(depth), taper, Mm(0.5)), PartKind.Piece, "card", 1),
            new(Platform(Mm(length - 2), Mm(width - 2), Mm(12), Mm(12)), PartKind.Piece, "card", 1),
            new(Mat("mat-long", "Long wall mat", Mm(length - 6), Mm(height - 6)), PartKind.Mat, "patterned", 2, "the two long walls", Hand.Either, "base"),
            new(Mat("mat-short", "Short wall mat", Mm(height - 6), Mm(width - 6)), PartKind.Mat, "patterned", 2, "the two short walls", Hand.Either, "base"),
            new(Mat("mat-top", "Lid mat", Mm(length - 2), Mm(width - 2)), PartKind.Mat, "patterned", 1, "the top of the lid", Hand.Either, "lid", ["top"], SheetSide.Away),
        ])
    {
        Assembly = new Assembly(
            [
                new AssembledPart("base") { OpensWholly = true },
                new AssembledPart("platform") { Goes = GoesWhere.Inside, To = "base", Stands = Stance.UpsideDown },
                new AssembledPart(Assembly.Item) { Goes = GoesWhere.Inside, To = "base" },
                new AssembledPart("lid") { Goes = GoesWhere.Over, To = "base", Stands = Stance.UpsideDown },
            ],
            []),
    };

    private static StyleSheet MakeStyles()
    {
        var folder = AppContext.BaseDirectory;
        while (!Directory.Exists(Path.Combine(folder, "themes")))
            folder = Path.GetDirectoryName(folder) ?? throw new DirectoryNotFoundException("themes");
        FontFace Face(string style) => new(
            File.ReadAllBytes(Path.Combine(folder, "themes", "fonts", "alegreya-sans", $"AlegreyaSans-{style}.ttf")), style);
        var family = new FontFamily(Face("Regular"), Face("Italic"), Face("Bold"), Face("BoldItalic"));
        return new StyleSheet
        {
            Name = "plain",
            Text = family,
            Display = family,
            Scale = new TypeScale(10.5, 14, 12.5, 8.5, 9, 20, 14, 11.5, 34, 7),
            Palette = new Palette(
                new(0x22, 0x22, 0x22), new(0x1f, 0x4f, 0x46), new(0x1f, 0x6f, 0x5c), new(0x5f, 0x5f, 0x5f), new(0xb8, 0xb8, 0xb0), new(0xee, 0xf3, 0xef), new(0x9c, 0x2f, 0x1f), new(0x1f, 0x4f, 0x46), Colour.White),
            Spacing = new Spacing(20, 20, 20, 20, 2, 4, 6),
            Lines = new LineStyles(
                0.5, 0.3, 0.15, new(0x18, 0x18, 0x18), new(0x1d, 0x5c, 0x8c), new(0x9a, 0x3b, 0x2a), new(0x6b, 0x6b, 0x2d), new(0xb0, 0xb0, 0xa8), new(0x33, 0x33, 0x33), new(0x8c, 0x8c, 0x8c), new(0xf6, 0xf1, 0xe4), new(0xe3, 0xea, 0xe2)),
            Language = "en-GB",
        };
    }
}
