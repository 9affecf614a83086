using System.Globalization;
using Pattern.Press.Measure;

namespace Pattern.Press.Nets.Building;

/// <summary>What can be wrong with a scored sheet as it is written down, before anything is drawn.</summary>
internal static class SheetReading
{
    /// <summary>The character in a map for what is cut away.</summary>
    public const char Waste = '.';

    public static IReadOnlyList<string> Problems(ScoredSheet sheet) =>
    [
        .. Bands(sheet.Across, "across"),
        .. Bands(sheet.Down, "down"),
        .. Rows(sheet),
        .. Letters(sheet),
        .. sheet.Cells.OrderBy(cell => cell.Key).SelectMany(cell => Meaning(cell.Key, cell.Value, sheet)),
        .. Root(sheet),
    ];

    private static IEnumerable<string> Bands(IReadOnlyList<Length> bands, string way)
    {
        if (bands.Count == 0)
            yield return $"There are no bands {way}; a sheet needs at least one.";
        for (var i = 0; i < bands.Count; i++)
        {
            if (bands[i] <= Length.Zero)
                yield return $"Band {i + 1} {way} is {LengthFormat.Format(bands[i], Ruler.WholeMillimetres)} wide; every band must be wider than nothing.";
        }
    }

    private static IEnumerable<string> Rows(ScoredSheet sheet)
    {
        if (sheet.Map.Count != sheet.Down.Count)
            yield return $"The map has {Count(sheet.Map.Count, "row")}, but there {Are(sheet.Down.Count, "band")} down; each band down takes one row.";
        for (var row = 0; row < sheet.Map.Count; row++)
        {
            if (sheet.Map[row].Length != sheet.Across.Count)
                yield return $"Row {row + 1} of the map, “{sheet.Map[row]}”, has {Count(sheet.Map[row].Length, "letter")}, but there {Are(sheet.Across.Count, "band")} across; each band across takes one letter.";
        }
    }

    private static IEnumerable<string> Letters(ScoredSheet sheet)
    {
        var used = new SortedSet<char>();
        for (var row = 0; row < sheet.Map.Count; row++)
        {
            foreach (var letter in sheet.Map[row].Distinct())
            {
                used.Add(letter);
                if (letter != Waste && !sheet.Cells.ContainsKey(letter))
                    yield return $"Row {row + 1} of the map uses “{letter}”, but the cells do not say what that is.";
            }
        }

        foreach (var letter in sheet.Cells.Keys.Order())
        {
            if (letter == Waste)
                yield return "The cells describe “.”, but a point always stands for waste; use a letter.";
            else if (!used.Contains(letter))
                yield return $"The cells describe “{letter}”, but no row of the map uses it.";
        }
    }

    private static IEnumerable<string> Meaning(char letter, Cell cell, ScoredSheet sheet)
    {
        if (string.IsNullOrWhiteSpace(cell.Kind))
            yield return $"“{letter}” has no kind; say what such panels are called.";
        if (cell.Fold is { } fold)
        {
            foreach (var problem in Angle(letter, fold))
                yield return problem;
        }
        else if (cell.Diagonal is null && letter != sheet.Root)
        {
            yield return $"“{letter}” has no fold; say which way it folds and how far, such as valley 90.";
        }

        if (cell.Taper is not (>= 0 and < 90))
            yield return $"“{letter}” has a taper of {Degrees(cell.Taper)}; a taper is at least 0° and less than 90°.";
        if (cell.Relief.IsNegative)
            yield return $"“{letter}” has a relief of {LengthFormat.Format(cell.Relief, Ruler.WholeMillimetres)}; a relief cannot be less than nothing.";
        if (letter == sheet.Root && (cell.Taper > 0 || cell.Relief > Length.Zero))
            yield return $"“{letter}” is the root, which hangs from no fold, so it can have neither taper nor relief.";
        if (cell.Diagonal is not { } diagonal)
            yield break;

        foreach (var problem in Angle(letter, diagonal.Fold))
            yield return problem;
        if (letter == sheet.Root)
            yield return $"“{letter}” is the root and cannot be split along a diagonal.";
        if (diagonal.Joins == letter || (sheet.Cells.TryGetValue(diagonal.Joins, out var joined) && joined.Diagonal is not null))
            yield return $"The halves of “{letter}” are to join “{diagonal.Joins}”, which is split along a diagonal itself; they can only join a whole panel.";
        else if (!sheet.Cells.ContainsKey(diagonal.Joins))
            yield return $"The halves of “{letter}” are to join “{diagonal.Joins}”, but the cells do not say what that is.";
        if (cell.Taper > 0 || cell.Relief > Length.Zero || cell.Glue is not null)
            yield return $"“{letter}” is split along a diagonal and becomes part of “{diagonal.Joins}”; taper, relief and glue belong there.";
    }

    private static IEnumerable<string> Angle(char letter, CellFold fold)
    {
        if (fold.Angle is not (> 0 and <= 180))
            yield return $"“{letter}” folds by {Degrees(fold.Angle)}; a fold turns by more than 0° and at most 180°.";
    }

    private static IEnumerable<string> Root(ScoredSheet sheet)
    {
        if (!sheet.Cells.ContainsKey(sheet.Root))
            yield return $"The root is “{sheet.Root}”, but the cells do not say what that is.";
        else if (!sheet.Map.Any(row => row.Contains(sheet.Root, StringComparison.Ordinal)))
            yield return $"The root “{sheet.Root}” is nowhere in the map.";
    }

    private static string Count(int count, string what) => count == 1 ? $"1 {what}" : $"{count} {what}s";

    private static string Are(int count, string what) => (count == 1 ? "is " : "are ") + Count(count, what);

    private static string Degrees(double angle) => angle.ToString("0.##", CultureInfo.InvariantCulture) + "°";
}
