using Pattern.Press.Nets;
using Pattern.Press.Structures.Building;
using Pattern.Press.Structures.Formulas;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Structures.Files;

/// <summary>Reads the pieces and mats of a structure's file.</summary>
internal static class PartReader
{
    /// <summary>Reads one piece; null after noting problems.</summary>
    public static PieceDefinition? Piece(string id, Place place, YamlItem value, IReadOnlyCollection<string> stocks, FileReading reading)
    {
        if (!reading.NameIsSound(id, place) || value.AsMap() is not { } map)
            return null;
        var name = map.Need("name", "Say what the maker calls it: name: Base.")?.AsText();
        var stock = map.Need("stock", "Name one of the stocks.")?.AsChoice(stocks);
        var when = Optional(map, "when", Kind.YesNo, reading);
        var quantity = Optional(map, "quantity", Kind.Number, reading);
        var marks = new List<(string, IReadOnlyList<Formula>)>();
        foreach (var (key, keyPlace, list) in reading.Section(map, "marks", 20))
        {
            if (reading.NameIsSound(key, keyPlace) && reading.FormulaList(list, Kind.Length) is { } lengths)
                marks.Add((key, lengths));
        }

        var builders = PieceBuilders.All;
        var build = map.Need("build", $"Write how it is described: {string.Join(" or ", builders.Select(b => b.Name))}.")?.AsChoice([.. builders.Select(b => b.Name)]);
        if (build is null)
        {
            map.RefuseSlips();
            return null;
        }

        var form = builders.First(builder => builder.Name == build).Read(map, reading);
        map.RefuseTheRest();
        return name is null || stock is null || form is null ? null : new PieceDefinition(id, name, stock, place, when, quantity, form, marks);
    }

    /// <summary>
    /// Reads one mat; null after noting problems. The ids are those of all pieces in the file, sound or not, so that a broken
    /// piece is told of once.
    /// </summary>
    public static MatDefinition? Mat(string id, Place place, YamlItem value, IReadOnlyCollection<string> stocks, IReadOnlyCollection<string> pieceIds, IReadOnlyList<PieceDefinition> pieces, FileReading reading)
    {
        if (!reading.NameIsSound(id, place) || value.AsMap() is not { } map)
            return null;
        var name = map.Need("name", "Say what the maker calls it: name: Floor mat.")?.AsText();
        var stock = map.Need("stock", "Name one of the stocks.")?.AsChoice(stocks);
        var width = Needed(map, "width", reading);
        var words = map.Need("for", "Say which face it is for: for: the floor.")?.AsText();
        var goes = map.Need("goes", "Name the piece it is glued on.")?.AsChoice(pieceIds);
        var shapes = MatShapes.All;
        var shapeName = map.Find("shape") is { } shapeItem ? shapeItem.AsChoice([.. shapes.Select(s => s.Name)]) : shapes[0].Name;
        var shape = shapes.FirstOrDefault(s => s.Name == shapeName);
        var sides = shape is { HasSides: true }
            ? map.Need("sides", "Say how many sides it has: sides: 6.") is { } count ? reading.Formula(count, Kind.Number) : null
            : null;
        var top = shape is { HasTop: true } ? Needed(map, "top", reading) : null;
        var height = shape is { HasSides: true } ? width : Needed(map, "height", reading);
        var hand = map.Find("hand") is { } handItem ? handItem.AsChoice(["left", "right"]) : null;
        if (shape is { HasHand: true } && hand is null)
            reading.Problems.Error(map.Place, $"A {shape.Name} is either a left or a right one.", "Write hand: left, and a second mat with hand: right.");
        if (shape is { HasHand: false } && hand is not null)
            reading.Problems.Error(map.Place, $"A {shape.Name} has no hand.", "Take “hand” out.");
        var when = Optional(map, "when", Kind.YesNo, reading);
        var quantity = Optional(map, "quantity", Kind.Number, reading);
        var on = On(map.Find("on"), pieces.FirstOrDefault(piece => piece.Id == goes), reading);
        var side = map.Find("side")?.AsChoice(["inside", "outside"]) == "outside" ? SheetSide.Away : SheetSide.Facing;
        map.RefuseTheRest();
        if (name is null || stock is null || width is null || height is null || (shape is { HasSides: true } && sides is null) || (shape is { HasTop: true } && top is null) || words is null || goes is null || shape is null)
            return null;
        return new MatDefinition(id, name, stock, place, when, quantity, shape, width, height, sides, hand switch
        {
            "left" => Hand.Left,
            "right" => Hand.Right,
            _ => Hand.Either,
        }, words, goes, on, side)
        { Top = top };
    }

    private static List<string> On(YamlItem? item, PieceDefinition? piece, FileReading reading)
    {
        var on = new List<string>();
        foreach (var one in item?.AsList() ?? [])
        {
            if (piece is not null && one.AsChoice(piece.Form.PanelKinds) is { } kind)
                on.Add(kind);
        }

        return on;
    }

    private static Formula? Optional(YamlMap map, string key, Kind kind, FileReading reading) =>
        map.Find(key) is { } item ? reading.Formula(item, kind) : null;

    private static Formula? Needed(YamlMap map, string key, FileReading reading) =>
        map.Need(key, "Write a formula that gives a length.") is { } item ? reading.Formula(item, Kind.Length) : null;
}
