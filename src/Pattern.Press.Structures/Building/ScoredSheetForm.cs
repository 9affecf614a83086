using System.Globalization;
using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Nets.Building;
using Pattern.Press.Structures.Formulas;

namespace Pattern.Press.Structures.Building;

/// <summary>A scored sheet with formulas in place of sizes.</summary>
internal sealed class ScoredSheetForm(
    IReadOnlyList<Formula> across,
    IReadOnlyList<Formula> down,
    IReadOnlyList<string> map,
    SortedDictionary<char, CellForm> cells,
    char root) : IPieceForm
{
    public IReadOnlyCollection<string> PanelKinds { get; } =
        [.. cells.Values.Where(cell => cell.Joins is null).Select(cell => cell.Kind).Distinct(StringComparer.Ordinal)];

    public IEnumerable<Formula> Formulas => across.Concat(down);

    public Piece Build(string id, string name, Evaluation values)
    {
        var reasons = new List<string>();
        var columns = Bands(across, "across", values, reasons);
        var rows = Bands(down, "down", values, reasons);
        if (reasons.Count > 0)
            throw new NetException(id, reasons);
        var lines = rows.Select(row => string.Concat(columns.Select(column => map[row.Index][column.Index]))).ToList();
        var used = lines.SelectMany(line => line).ToHashSet();
        foreach (var joins in cells.Where(cell => used.Contains(cell.Key)).Select(cell => cell.Value.Joins))
        {
            if (joins is { } letter)
                used.Add(letter);
        }

        return new ScoredSheet
        {
            Id = id,
            Name = name,
            Across = [.. columns.Select(column => column.Width)],
            Down = [.. rows.Select(row => row.Width)],
            Map = lines,
            Cells = cells.Where(cell => used.Contains(cell.Key)).ToDictionary(cell => cell.Key, cell => cell.Value.At(values)),
            Root = root,
        }.Build();
    }

    // A band without width is left out with its cells: that is how a part of a piece becomes optional.
    private static List<(int Index, Length Width)> Bands(IReadOnlyList<Formula> formulas, string way, Evaluation values, List<string> reasons)
    {
        var bands = new List<(int, Length)>();
        for (var i = 0; i < formulas.Count; i++)
        {
            var width = formulas[i].Evaluate(values).Length;
            if (width > Length.Zero)
                bands.Add((i, width));
            else if (width.IsNegative)
                reasons.Add(string.Create(CultureInfo.InvariantCulture, $"The band “{formulas[i].Text}” {way} comes out at {LengthFormat.Format(width, values.Ruler)}, less than nothing."));
        }

        return bands;
    }
}
