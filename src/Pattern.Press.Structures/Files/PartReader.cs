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
        var words = map.Need("for", "Say which face it is for: for: the floor.")?.AsText();
        var goes = map.Need("goes", "Name the piece it is glued on.")?.AsChoice(pieceIds);
        var shapes = MatShapes.All;
        var shapeName = map.Find("shape") is { } shapeItem ? shapeItem.AsChoice([.. shapes.Select(s => s.Name)]) : shapes[0].Name;
        var shape = shapes.FirstOrDefault(s => s.Name == shapeName);
        var form = shape?.Read(map, reading);
        var hand = map.Find("hand") is { } handItem ? handItem.AsChoice(["left", "right"]) : null;
        if (shape is { HasHand: true } && hand is null)
            reading.Problems.Error(map.Place, $"A {shape.Name} is either a left or a right one.", "Write hand: left, and a second mat with hand: right.");
        if (shape is { HasHand: false } && hand is not null)
            reading.Problems.Error(map.Place, $"A {shape.Name} has no hand.", "Take “hand” out.");
        var when = Optional(map, "when", Kind.YesNo, reading);
        var quantity = Quantity(map, shape, reading);
        var onItem = shape is { NeedsPanels: true } ? map.Need("on", "Name the panels whose shape it has: on: wall.") : map.Find("on");
        var on = On(onItem, pieces.FirstOrDefault(piece => piece.Id == goes), reading);
        var side = map.Find("side")?.AsChoice(["inside", "outside"]) == "outside" ? SheetSide.Away : SheetSide.Facing;

        // Of a shape that is not known nobody can say what it needs.
        if (shape is null)
            map.RefuseSlips("width", "height", "top", "sides", "border");
        else
            map.RefuseTheRest();
        if (name is null || stock is null || form is null || words is null || goes is null || (shape is { NeedsPanels: true } && on.Count == 0))
            return null;
        return new MatDefinition(id, name, stock, place, when, quantity, form, hand switch
        {
            "left" => Hand.Left,
            "right" => Hand.Right,
            _ => Hand.Either,
        }, words, goes, on, side);
    }

    private static Formula? Quantity(YamlMap map, IMatShape? shape, FileReading reading)
    {
        if (shape is not { IsCounted: false })
            return Optional(map, "quantity", Kind.Number, reading);
        if (map.Find("quantity") is { } told)
            reading.Problems.Error(told.Place, $"As many mats with shape: {shape.Name} are made as there are panels for them.", "Take “quantity” out.");
        return null;
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
}
