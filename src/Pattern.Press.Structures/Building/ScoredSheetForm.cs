using System.Globalization;
using System.Text.RegularExpressions;
using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Nets.Building;
using Pattern.Press.Structures.Formulas;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Structures.Building;

/// <summary>A scored sheet with formulas in place of sizes.</summary>
internal sealed partial class ScoredSheetForm(
    BandsForm across,
    BandsForm down,
    IReadOnlyList<string> map,
    IReadOnlyList<YamlItem> written,
    SortedDictionary<char, CellForm> cells,
    char root) : IPieceForm
{
    public IReadOnlyCollection<string> PanelKinds { get; } =
        [.. cells.Values.Where(cell => cell.Joins is null).Select(cell => cell.Kind).Distinct(StringComparer.Ordinal)];

    public IEnumerable<Formula> Formulas => across.Formulas.Concat(down.Formulas);

    // A cell that is left out with its band takes its notches and holes with it, so only the bands are looked at.
    public IEnumerable<(Formula Size, Formula? When)> Sizes => Formulas.Select(width => (width, (Formula?)null));

    // Reasons count rows and bands from 1, without those that are left out.
    public Place? PlaceOf(string reason, Evaluation values)
    {
        if (Cell().Match(reason) is not { Success: true } cell)
            return null;
        var (rows, columns) = (down.At("down", values, []), across.At("across", values, []));
        var (row, column) = (Number(cell.Groups["row"]) - 1, Number(cell.Groups["band"]) - 1);
        if (row >= rows.Count || column >= columns.Count)
            return null;
        var item = written[rows[row].Index];
        var letter = (item.Scalar ?? "").Select((c, at) => (c, at)).Where(pair => pair.c != ' ').ElementAtOrDefault(columns[column].Index).at;
        return item.TextPlace.Column == 0 ? item.Place : item.TextPlace with { Column = item.TextPlace.Column + letter };

        static int Number(Group group) => int.Parse(group.ValueSpan, CultureInfo.InvariantCulture);
    }

    [GeneratedRegex(@"in row (?<row>\d+), band (?<band>\d+) across", RegexOptions.CultureInvariant)]
    private static partial Regex Cell();

    public Piece Build(string id, string name, Evaluation values)
    {
        var reasons = new List<string>();
        var columns = across.At("across", values, reasons);
        var rows = down.At("down", values, reasons);
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
}
