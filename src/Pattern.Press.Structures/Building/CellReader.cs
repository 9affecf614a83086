using Pattern.Press.Nets;
using Pattern.Press.Nets.Building;
using Pattern.Press.Structures.Files;
using Pattern.Press.Structures.Formulas;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Structures.Building;

/// <summary>Reads what a letter of a map is: <c>w: {panel: wall, fold: valley 90}</c>.</summary>
internal static class CellReader
{
    private static readonly string[] What = ["panel", "tab", "gusset", "diagonal"];

    /// <summary>Reads a cell; null after noting problems.</summary>
    public static CellForm? Read(YamlMap entry, Place place, FileReading reading)
    {
        var before = reading.Problems.All.Count;
        var given = What.Select(word => (word, item: entry.Find(word))).Where(pair => pair.item is not null).ToList();
        if (given.Count != 1)
        {
            reading.Problems.Error(place, given.Count == 0 ? "This does not say what the cell is." : $"A cell cannot be a {given[0].word} and a {given[1].word}.", "Write one of panel, tab, gusset or diagonal, such as {panel: floor}.");
            entry.RefuseSlips();
            return null;
        }

        var (what, value) = given[0];
        var words = value!.AsText() ?? "";
        var fold = Fold(entry.Find("fold"), reading);
        var cell = new CellForm
        {
            Place = place,
            Kind = what switch
            {
                "panel" => words,
                _ => entry.Find("called")?.AsText() ?? (what == "tab" ? "glue tab" : what),
            },
            Role = what switch
            {
                "tab" => PanelRole.Tab,
                "gusset" => PanelRole.Gusset,
                _ => PanelRole.Panel,
            },
            Note = what is "tab" or "gusset" ? words : null,
            Fold = fold,
        };
        if (what == "diagonal")
            cell = Diagonal(cell, words, value, entry, reading);
        else
            cell = Hanging(cell, entry, reading);
        entry.RefuseTheRest();
        return reading.Problems.All.Count == before ? cell : null;
    }

    private static CellForm Hanging(CellForm cell, YamlMap entry, FileReading reading) => cell with
    {
        HangsFrom = entry.Find("hangs")?.AsChoice(["inward", "beside", "above or below"]) switch
        {
            "beside" => HangsFrom.Beside,
            "above or below" => HangsFrom.AboveOrBelow,
            _ => HangsFrom.Inward,
        },
        Taper = entry.Find("taper") is { } taper ? reading.Formula(taper, Kind.Number) : null,
        Relief = entry.Find("relief") is { } relief ? reading.Formula(relief, Kind.Length) : null,
        Glue = Glue(entry),
        Shape = PanelShapeForm.Read(entry, reading),
    };

    /// <summary>Reads the side of the sheet that takes glue.</summary>
    internal static SheetSide? Glue(YamlMap entry) => entry.Find("glue")?.AsChoice(["facing", "away"]) switch
    {
        "facing" => SheetSide.Facing,
        "away" => SheetSide.Away,
        _ => null,
    };

    private static CellForm Diagonal(CellForm cell, string words, YamlItem value, YamlMap entry, FileReading reading)
    {
        var joins = words.Split(' ') is ["joins", [var letter]] ? letter : (char?)null;
        if (joins is null)
            reading.Problems.Error(value.Place, $"“{words}” does not say which cells the diagonal’s halves go to.", "Write diagonal: joins g, with the letter of those cells.");
        if (cell.Fold is null)
            reading.Problems.Error(cell.Place, "A diagonal needs its fold.", "Write fold: mountain 180, or as it should be.");
        return cell with
        {
            Joins = joins,
            Direction = entry.Find("runs")?.AsChoice(["falling", "rising"]) switch
            {
                "falling" => DiagonalDirection.Falling,
                "rising" => DiagonalDirection.Rising,
                _ => null,
            },
        };
    }

    /// <summary>Reads a fold such as <c>valley 90</c>.</summary>
    internal static FoldForm? Fold(YamlItem? item, FileReading reading)
    {
        if (item is null)
            return null;
        var text = item.Scalar ?? "";
        var space = text.IndexOf(' ', StringComparison.Ordinal);
        FoldDirection? direction = (space < 0 ? text : text[..space]) switch
        {
            "valley" => FoldDirection.Valley,
            "mountain" => FoldDirection.Mountain,
            _ => null,
        };
        if (direction is null || space < 0)
        {
            reading.Problems.Error(item.Place, $"“{text}” is not a fold.", "Write valley or mountain and the angle it turns through, such as valley 90.");
            return null;
        }

        var place = item.TextPlace;
        if (place.Column > 0)
            place = place with { Column = place.Column + space + 1 };
        return reading.Formula(text[(space + 1)..], place, Kind.Number) is { } angle ? new FoldForm(direction.Value, angle) : null;
    }
}
