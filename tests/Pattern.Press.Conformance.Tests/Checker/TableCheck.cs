using UglyToad.PdfPig.Tokens;

namespace Pattern.Press.Conformance;

/// <summary>Checks that a table is a grid, and that every cell has a header (ISO 14289-1, 7.5).</summary>
internal static class TableCheck
{
    public static void Run(PdfObjects objects, DictionaryToken table, Findings findings)
    {
        var parts = objects.Elements(table).ToList();
        var rows = parts.SelectMany(part => Type(part) == "TR" ? [part] : objects.Elements(part).Where(row => Type(row) == "TR")).ToList();
        if (parts.FindIndex(part => Type(part) == "Caption") is > 0 and var caption && caption < parts.Count - 1)
            findings.Report("09-004", "The caption of a table is neither first nor last in it.");
        var grid = new Dictionary<(int Row, int Column), DictionaryToken>();
        for (var row = 0; row < rows.Count; row++)
        {
            var column = 0;
            foreach (var cell in objects.Elements(rows[row]))
            {
                while (grid.ContainsKey((row, column)))
                    column++;
                for (var r = 0; r < Span(cell, "RowSpan"); r++)
                {
                    for (var c = 0; c < Span(cell, "ColSpan"); c++)
                        grid[(row + r, column + c)] = cell;
                }
            }
        }

        var widths = Enumerable.Range(0, rows.Count).Select(row => grid.Keys.Count(place => place.Row == row)).Distinct().ToList();
        if (widths.Count > 1 || grid.Keys.Any(place => place.Row >= rows.Count))
            findings.Report("UA 7.2", $"The rows of a table cover {string.Join(", ", widths)} columns.");

        // A header heads its row or column from where it stands (ISO 32000-1, 14.8.5.7).
        foreach (var (place, cell) in grid.Where(entry => Type(entry.Value) == "TD"))
        {
            var headed = grid.Any(other => Type(other.Value) == "TH" &&
                ((other.Key.Column == place.Column && other.Key.Row < place.Row && Scope(other.Value) is "Column" or "Both") ||
                (other.Key.Row == place.Row && other.Key.Column < place.Column && Scope(other.Value) is "Row" or "Both")));
            if (!headed)
                findings.Report("15-005", $"The cell in row {place.Row + 1} and column {place.Column + 1} of a table has no header.");
        }

        string? Type(DictionaryToken element) => objects.Name(element, "S");
        string? Scope(DictionaryToken cell) => objects.Name(objects.Dictionary(cell, "A"), "Scope");
        int Span(DictionaryToken cell, string way) => (int)(objects.Number(objects.Dictionary(cell, "A"), way) ?? 1);
    }
}
