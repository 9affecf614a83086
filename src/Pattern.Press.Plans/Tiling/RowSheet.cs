namespace Pattern.Press.Plans.Tiling;

/// <summary>
/// A shared page while it is being filled: rows below each other, each a line of columns in which blocks stand below each
/// other. Tidy to look at and quick to cut.
/// </summary>
internal sealed class RowSheet(DrawingArea area, double gap) : ISharedSheet
{
    private readonly List<Row> _rows = [];
    private double _height = -gap;

    /// <inheritdoc/>
    public double Height => _height;

    /// <summary>Takes a block below another in its row, or at the end of a row.</summary>
    public bool TakeAmong(SharedBlock block)
    {
        foreach (var row in _rows)
        {
            if (block.Height > row.Height + 1e-9)
                continue;
            foreach (var column in row.Columns)
            {
                if (block.Width > column.Width + 1e-9 || column.Height + gap + block.Height > row.Height + 1e-9)
                    continue;
                column.Blocks.Add((block, column.Height + gap));
                column.Height += gap + block.Height;
                return true;
            }

            if (row.Width + gap + block.Width > area.Width + 1e-9)
                continue;
            row.Add(block, gap);
            return true;
        }

        return false;
    }

    /// <summary>Takes a block as the first of a new row.</summary>
    public bool Take(SharedBlock block)
    {
        if (block.Width > area.Width + 1e-9 || _height + gap + block.Height > area.Height + 1e-9)
            return false;
        _height += gap + block.Height;
        _rows.Add(new Row(block));
        return true;
    }

    /// <inheritdoc/>
    public SharedPage Set()
    {
        var places = new List<SharedPlace>();
        var left = area.Corner.X + ((area.Width - _rows.Max(row => row.Width)) / 2);
        var y = area.Corner.Y + ((area.Height - Height) / 2);
        foreach (var row in _rows)
        {
            var x = left;
            foreach (var column in row.Columns)
            {
                foreach (var (block, down) in column.Blocks)
                    places.AddRange(block.At(x, y + down));
                x += column.Width + gap;
            }

            y += row.Height + gap;
        }

        return new SharedPage(area.Lying, places);
    }

    private sealed class Row
    {
        public Row(SharedBlock first)
        {
            Height = first.Height;
            Width = first.Width;
            Columns = [new Column(first)];
        }

        public double Height { get; }

        public double Width { get; private set; }

        public List<Column> Columns { get; }

        public void Add(SharedBlock block, double gap)
        {
            Columns.Add(new Column(block));
            Width += gap + block.Width;
        }
    }

    private sealed class Column(SharedBlock first)
    {
        public double Width { get; } = first.Width;

        public double Height { get; set; } = first.Height;

        public List<(SharedBlock Block, double Down)> Blocks { get; } = [(first, 0)];
    }
}
