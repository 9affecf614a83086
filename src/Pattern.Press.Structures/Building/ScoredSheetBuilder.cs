using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Nets.Building;
using Pattern.Press.Structures.Files;
using Pattern.Press.Structures.Formulas;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Structures.Building;

/// <summary>
/// Reads a scored sheet as it looks: widths of bands across and down, and a map with one letter for each cell where two
/// bands cross.
/// </summary>
internal sealed class ScoredSheetBuilder : IPieceBuilder
{
    public string Name => "scored sheet";

    public IPieceForm? Read(YamlMap piece, FileReading reading)
    {
        var across = BandsForm.Read(piece, "across", reading);
        var down = BandsForm.Read(piece, "down", reading);
        var rows = piece.Need("map", "Draw the sheet with one letter per cell, a row per line.")?.AsList();
        var cells = Cells(piece, reading);
        var root = piece.Find("root");
        if (across is null || down is null || rows is null || cells is null)
            return null;
        if (Map(rows, across.Count, down.Count, cells, reading) is not { } map || Root(root, cells, piece, reading) is not { } still)
            return null;
        return new ScoredSheetForm(across, down, map, rows, cells, still);
    }

    private static SortedDictionary<char, CellForm>? Cells(YamlMap piece, FileReading reading)
    {
        if (piece.Need("cells", "Say what each letter of the map is: F: {panel: floor}.")?.AsMap() is not { } map)
            return null;
        var cells = new SortedDictionary<char, CellForm>();
        var sound = true;
        foreach (var (key, place, value) in map.Entries)
        {
            if (key.Length != 1 || !char.IsAsciiLetter(key[0]))
            {
                reading.Problems.Error(place, $"“{key}” should be a single letter.");
                sound = false;
            }
            else if (value.AsMap() is { } entry && CellReader.Read(entry, place, reading) is { } cell)
            {
                cells[key[0]] = cell;
            }
            else
            {
                sound = false;
            }
        }

        if (!sound)
            return null;
        foreach (var (letter, cell) in cells)
        {
            if (cell.Joins is not { } joins || (cells.TryGetValue(joins, out var joined) && joined.Joins is null))
                continue;
            reading.Problems.Error(cell.Place, $"The diagonal “{letter}” joins “{joins}”, which is no panel, tab or gusset here.", $"Known here: {string.Join(", ", cells.Where(c => c.Value.Joins is null).Select(c => c.Key))}.");
            return null;
        }

        return cells;
    }

    private static List<string>? Map(IReadOnlyList<YamlItem> rows, int across, int down, SortedDictionary<char, CellForm> cells, FileReading reading)
    {
        var sound = true;
        if (rows.Count != down)
        {
            reading.Problems.Error(rows[0].Place, $"The map has {rows.Count} rows, but “down” has {down} bands.", "Each band down needs one row.");
            sound = false;
        }

        var map = new List<string>();
        var used = new HashSet<char>();
        foreach (var row in rows)
        {
            var text = row.Scalar ?? "";
            var letters = text.Replace(" ", "", StringComparison.Ordinal);
            map.Add(letters);
            if (letters.Length != across)
            {
                reading.Problems.Error(row.Place, $"This row of the map has {letters.Length} letters, but “across” has {across} bands.", "Each band across needs one letter; a dot is waste.");
                sound = false;
            }

            for (var i = 0; i < text.Length; i++)
            {
                used.Add(text[i]);
                if (text[i] is ' ' or '.' || cells.ContainsKey(text[i]))
                    continue;
                var place = row.TextPlace.Column == 0 ? row.Place : row.TextPlace with { Column = row.TextPlace.Column + i };
                reading.Problems.Error(place, $"“{text[i]}” is not among the cells.", $"Known here: {string.Join(", ", cells.Keys)}, and a dot for waste.");
                sound = false;
            }
        }

        foreach (var (letter, cell) in cells)
        {
            if (used.Contains(letter))
                continue;
            reading.Problems.Error(cell.Place, $"“{letter}” is not on the map.", "Put it there, or take it out of the cells.");
            sound = false;
        }

        return sound ? map : null;
    }

    private static char? Root(YamlItem? root, SortedDictionary<char, CellForm> cells, YamlMap piece, FileReading reading)
    {
        if (root is not null)
        {
            if (root.Scalar is { Length: 1 } letter && cells.TryGetValue(letter[0], out var chosen) && chosen.Joins is null)
                return letter[0];
            reading.Problems.Error(root.Place, $"“{root.Scalar}” is not the letter of a panel here.", $"Known here: {string.Join(", ", cells.Keys)}.");
            return null;
        }

        var still = cells.Where(cell => cell.Value is { Fold: null, Joins: null }).ToList();
        if (still.Count == 1)
            return still[0].Key;
        reading.Problems.Error(
            still.Count == 0 ? piece.Place : still[1].Value.Place,
            still.Count == 0 ? "Every panel folds, so none lies still." : $"“{string.Join("” and “", still.Select(cell => cell.Key))}” have no fold, but only one panel lies still.",
            "Leave out the fold of the one panel that lies on the table while the rest folds.");
        return null;
    }
}
