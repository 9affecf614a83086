namespace Pattern.Press.Plans.Sheets;

/// <summary>
/// Rectangles in rows as high as the highest in them, the way a maker cuts when there is much to cut: rows first, then
/// each row into its pieces. It wastes a little and is quick to follow.
/// </summary>
internal sealed class ShelfPacking(long width, long height, Packing.SpareParts parts)
{
    private readonly List<Shelf> _shelves = [];
    private readonly List<long> _filled = [];

    /// <summary>Which way rectangles lie that may be turned.</summary>
    public enum Lie
    {
        AsDrawn,
        LongSideAcross,
        LongSideDown,
    }

    /// <summary>Sheets of rows, or null when a rectangle does not fit lying that way.</summary>
    /// <param name="items">The rectangles.</param>
    /// <param name="width">The width of a sheet.</param>
    /// <param name="height">Its height.</param>
    /// <param name="lie">Which way they lie.</param>
    /// <param name="mixed">Whether lower rectangles may go in a row; else every row has one height.</param>
    /// <param name="columns">Whether the rows run down the sheet instead.</param>
    /// <param name="parts">Where parts come from.</param>
    public static List<Packing.Part>? Fill(IReadOnlyList<(long Width, long Height)> items, long width, long height, Lie lie, bool mixed, bool columns, Packing.SpareParts parts)
    {
        // Rows that run down are rows across on a sheet laid on its side.
        var laid = items.Select((item, i) =>
        {
            var turned = lie switch
            {
                Lie.LongSideAcross => item.Width < item.Height,
                Lie.LongSideDown => item.Width > item.Height,
                _ => false,
            };
            var (w, h) = turned ? (item.Height, item.Width) : item;
            return (Item: i, Turned: turned, Width: columns ? h : w, Height: columns ? w : h);
        }).OrderByDescending(item => item.Height).ThenByDescending(item => item.Width).ToList();
        var (across, down) = columns ? (height, width) : (width, height);
        if (laid.Exists(item => item.Width > across || item.Height > down))
            return null;
        var packing = new ShelfPacking(across, down, parts);
        for (var i = 0; i < laid.Count;)
        {
            var (from, w, h) = (i, laid[i].Width, laid[i].Height);
            while (i < laid.Count && laid[i].Width == w && laid[i].Height == h)
                i++;
            packing.Take(laid[from..i], w, h, mixed);
        }

        return packing.Sheets(columns);
    }

    // Equal rectangles: into rows of their height, then, if they may, into higher ones, then into new ones.
    private void Take(List<(int Item, bool Turned, long Width, long Height)> alike, long w, long h, bool mixed)
    {
        var next = 0;
        foreach (var shelf in _shelves)
        {
            if (shelf.Height == h)
                FillUp(shelf);
        }

        foreach (var shelf in mixed ? _shelves : [])
        {
            if (shelf.Height > h)
                FillUp(shelf);
        }

        while (next < alike.Count)
            FillUp(NewShelf(h));

        void FillUp(Shelf shelf)
        {
            for (; next < alike.Count && shelf.Filled + w <= width; shelf.Filled += w)
                shelf.Items.Add(alike[next++]);
        }
    }

    private Shelf NewShelf(long shelfHeight)
    {
        var sheet = _filled.FindIndex(filled => filled + shelfHeight <= height);
        if (sheet < 0)
        {
            _filled.Add(0);
            sheet = _filled.Count - 1;
        }

        _filled[sheet] += shelfHeight;
        var shelf = new Shelf(sheet, shelfHeight);
        _shelves.Add(shelf);
        return shelf;
    }

    private List<Packing.Part> Sheets(bool columns)
    {
        var sheets = new List<Packing.Part>();
        var shelves = _shelves.ToLookup(shelf => shelf.Sheet);
        for (var i = 0; i < _filled.Count; i++)
        {
            var sheet = columns ? parts.Take(0, 0, height, width) : parts.Take(0, 0, width, height);
            sheets.Add(sheet);
            var rest = sheet;
            foreach (var shelf in shelves[i])
            {
                var row = Packing.Cut(rest, columns, shelf.Height, parts);
                rest = rest.Second ?? rest;
                foreach (var item in shelf.Items)
                {
                    var piece = Packing.Cut(row, !columns, item.Width, parts);
                    row = row.Second ?? row;
                    piece = Packing.Cut(piece, columns, item.Height, parts);
                    (piece.Item, piece.Turned) = (item.Item, item.Turned);
                }
            }
        }

        return sheets;
    }

    private sealed class Shelf(int sheet, long height)
    {
        public int Sheet => sheet;

        public long Height => height;

        public long Filled { get; set; }

        public List<(int Item, bool Turned, long Width, long Height)> Items { get; } = [];
    }
}
