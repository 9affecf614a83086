using Pattern.Press.Acceptance.Printed;

namespace Pattern.Press.Acceptance.Measurements;

/// <summary>
/// A table read from printed pages by where its words stand: each column by the edge at which its head is aligned. The
/// table goes on wherever its heads are repeated, and ends with the first words that stand in none of its columns.
/// </summary>
public static class PrintedTable
{
    private const double Aligned = 0.3;

    /// <summary>Reads the rows; a cell that is empty is an empty text.</summary>
    /// <param name="pages">The pages, in order.</param>
    /// <param name="heads">What stands at the head of each column.</param>
    /// <param name="leftAligned">How many of the columns are aligned at their left edge; the rest at their right.</param>
    public static IReadOnlyList<string[]> Read(IEnumerable<PrintedPage> pages, IReadOnlyList<string> heads, int leftAligned)
    {
        ArgumentNullException.ThrowIfNull(pages);
        ArgumentNullException.ThrowIfNull(heads);
        var rows = new List<(string[] Cells, bool Bold)>();
        foreach (var page in pages)
        {
            PrintedRun[] pieces = [.. page.Pieces()];
            for (var i = 0; i + heads.Count <= pieces.Length; i++)
            {
                var columns = pieces[i..(i + heads.Count)];
                if (columns.Select(head => head.Text.Trim()).SequenceEqual(heads, StringComparer.Ordinal))
                    ReadRows(pieces.Skip(i + heads.Count), columns, leftAligned, rows);
            }
        }

        return [.. rows.Select(row => row.Cells)];
    }

    private static void ReadRows(IEnumerable<PrintedRun> pieces, PrintedRun[] columns, int leftAligned, List<(string[] Cells, bool Bold)> rows)
    {
        var open = false;
        foreach (var piece in pieces)
        {
            var column = Array.FindIndex(columns, head => Array.IndexOf(columns, head) < leftAligned
                ? Math.Abs(piece.From.X - head.From.X) < Aligned
                : Math.Abs(piece.To.X - head.To.X) < Aligned);
            if (column < 0)
                return;

            // The cells of a row follow each other; a second line in the first column belongs to the row above it only
            // while nothing else is in that row. A row in bold is one by itself.
            var goesOn = open && !piece.IsBold && !rows[^1].Bold && (column > 0 || rows[^1].Cells.Skip(1).All(cell => cell.Length == 0));
            if (!goesOn)
                rows.Add(([.. Enumerable.Repeat("", columns.Length)], piece.IsBold));
            open = true;
            var cells = rows[^1].Cells;
            cells[column] = (cells[column].Trim() + " " + piece.Text.Trim()).Trim();
        }
    }
}
