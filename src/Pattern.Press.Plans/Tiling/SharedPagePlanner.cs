using Pattern.Press.Nets;

namespace Pattern.Press.Plans.Tiling;

/// <summary>
/// Sets small templates side by side in rows on as few pages as it can, each stock on pages of its own so that a page can
/// also be printed on the stock itself.
/// </summary>
/// <remarks>
/// Rows are filled first fit, tallest first: a mirrored pair stays together, and what is short may stand below another in
/// the same row. Several orders and turnings are tried with the page upright and lying, and each stock's last page may lie
/// the other way.
/// </remarks>
public static class SharedPagePlanner
{
    /// <summary>The least room between two templates that scissors can pass through, in millimetres (common practice, no source).</summary>
    public const double LeastGap = 6;

    /// <summary>The pages.</summary>
    /// <param name="parts">What is drawn, each once.</param>
    /// <param name="page">The page.</param>
    /// <param name="gap">Between templates, in millimetres; at least <see cref="LeastGap"/>.</param>
    /// <param name="label">The room for each template's label.</param>
    /// <exception cref="TilePlanException">The page leaves no usable area.</exception>
    public static SharedPages Plan(IReadOnlyList<Part> parts, TemplatePage page, double gap = LeastGap, LabelRoom label = default)
    {
        ArgumentNullException.ThrowIfNull(parts);
        ArgumentNullException.ThrowIfNull(page);
        ArgumentOutOfRangeException.ThrowIfLessThan(gap, LeastGap);
        ArgumentOutOfRangeException.ThrowIfNegative(label.Width);
        ArgumentOutOfRangeException.ThrowIfNegative(label.Height);
        var areas = DrawingArea.Of(page, lap: 0);
        var tooLarge = parts.Where(part => !areas.Any(area => Slot.Ways(part, label).Any(slot => slot.Fits(area)))).ToList();
        var pages = new List<SharedPage>();
        var least = 0;
        foreach (var stock in parts.Except(tooLarge).GroupBy(part => part.Stock, StringComparer.Ordinal))
        {
            var ofStock = stock.ToList();
            pages.AddRange(OneStock(ofStock, areas, gap, label));
            least += Bound(ofStock, areas, gap, label);
        }

        return new SharedPages(pages, least, tooLarge);
    }

    /// <summary>Whether a template with its label goes on a page at all.</summary>
    internal static bool Fits(Part part, TemplatePage page, LabelRoom label) =>
        DrawingArea.Of(page, lap: 0).Any(area => Slot.Ways(part, label).Any(slot => slot.Fits(area)));

    private static List<SharedPage> OneStock(List<Part> parts, IReadOnlyList<DrawingArea> areas, double gap, LabelRoom label)
    {
        var best = new List<SharedPage>();
        var used = double.PositiveInfinity;
        foreach (var area in areas)
        {
            foreach (var turning in Enum.GetValues<Turning>())
            {
                foreach (var order in Orders)
                {
                    var blocks = Blocks(parts, area, turning, gap, label);
                    if (blocks is null)
                        continue;
                    var sheets = Fill([.. blocks.OrderByDescending(order)], area, gap);
                    if (best.Count > 0 && (sheets.Count > best.Count || (sheets.Count == best.Count && sheets[^1].Height(gap) >= used - 1e-6)))
                        continue;
                    used = sheets[^1].Height(gap);
                    best = [.. sheets.Select(sheet => sheet.Set(area, gap))];
                }
            }
        }

        return best.Count > 0 ? best : OnePageEach(parts, areas, gap, label);
    }

    // Some fit only an upright page and some only a lying one.
    private static List<SharedPage> OnePageEach(List<Part> parts, IReadOnlyList<DrawingArea> areas, double gap, LabelRoom label)
    {
        var pages = new List<SharedPage>();
        var rest = parts;
        foreach (var area in areas)
        {
            var here = rest.Where(part => Slot.Ways(part, label).Any(slot => slot.Fits(area))).ToList();
            rest = [.. rest.Except(here)];
            if (here.Count > 0)
                pages.AddRange(OneStock(here, [area], gap, label));
        }

        return pages;
    }

    private static readonly Func<Block, double>[] Orders =
    [
        block => block.Height,
        block => block.Width,
        block => block.Width * block.Height,
    ];

    // Mirrored pairs are blocks of two, side by side or, where the page is too narrow, one below the other.
    private static List<Block>? Blocks(List<Part> parts, DrawingArea area, Turning turning, double gap, LabelRoom label)
    {
        var blocks = new List<Block>();
        var done = new HashSet<Part>();
        foreach (var part in parts)
        {
            if (!done.Add(part))
                continue;
            var other = part.Hand == Hand.Either
                ? null
                : parts.FirstOrDefault(p => !done.Contains(p) && p.Hand != Hand.Either && p.Hand != part.Hand && p.Piece.Sheet == part.Piece.Sheet && p.For == part.For);
            if (other is not null)
                done.Add(other);
            var fitting = Slot.Ways(part, label).Where(slot => slot.Fits(area)).ToList();
            if (fitting.Count == 0)
                return null;
            IReadOnlyList<Slot> preferred = turning switch
            {
                Turning.AsDrawn => fitting,
                Turning.Flat => [.. fitting.OrderBy(s => s.Height)],
                _ => [.. fitting.OrderByDescending(s => s.Height)],
            };
            if (other is null)
                blocks.Add(new Block([(preferred[0], 0, 0)]));
            else
                blocks.AddRange(Pair(preferred, other, area, gap));
        }

        return blocks;
    }

    private static IEnumerable<Block> Pair(IReadOnlyList<Slot> preferred, Part other, DrawingArea area, double gap)
    {
        foreach (var slot in preferred)
        {
            var twin = slot with { Part = other };
            var beside = new Block([(slot, 0, 0), (twin, slot.Width + gap, 0)]);
            var below = new Block([(slot, 0, 0), (twin, 0, slot.Height + gap)]);
            if (beside.Fits(area) || below.Fits(area))
                return [beside.Fits(area) ? beside : below];
        }

        return [new Block([(preferred[0], 0, 0)]), new Block([(preferred[0] with { Part = other }, 0, 0)])];
    }

    private static List<SheetOfRows> Fill(List<Block> blocks, DrawingArea area, double gap)
    {
        var sheets = new List<SheetOfRows>();
        foreach (var block in blocks)
        {
            if (sheets.Any(sheet => sheet.TakeInRow(block, area, gap)) || sheets.Any(sheet => sheet.TakeNewRow(block, area, gap)))
                continue;
            var fresh = new SheetOfRows();
            fresh.TakeNewRow(block, area, gap);
            sheets.Add(fresh);
        }

        return sheets;
    }

    // Each template takes at least itself, its label and a gap to two sides, of an area that is a gap larger each way.
    private static int Bound(List<Part> parts, IReadOnlyList<DrawingArea> areas, double gap, LabelRoom label)
    {
        var page = areas.Max(area => (area.Width + gap) * (area.Height + gap));
        var all = parts.Sum(part => Slot.Ways(part, label).Min(slot => (slot.Width + gap) * (slot.Height + gap)));
        var byArea = (int)Math.Ceiling((all / page) - 1e-9);

        // No two of those that are longer than half a page both ways, however turned, can share a page.
        var longest = areas.Max(area => Math.Max(area.Width, area.Height));
        var large = parts.Count(part => Slot.Ways(part, label).All(slot => (2 * Math.Min(slot.Width, slot.Height)) + gap > longest));
        return Math.Max(1, Math.Max(byArea, large));
    }

    private enum Turning
    {
        AsDrawn,
        Flat,
        Tall,
    }

    private sealed record Slot(Part Part, bool Turned, double PartWidth, double PartHeight, LabelRoom Label)
    {
        public double Width => Math.Max(PartWidth, Label.Width);

        public double Height => PartHeight + Label.Height;

        public bool Fits(DrawingArea area) => Width <= area.Width + 1e-9 && Height <= area.Height + 1e-9;

        public static IReadOnlyList<Slot> Ways(Part part, LabelRoom label)
        {
            var (width, height) = (part.Piece.Sheet.Width.Millimetres, part.Piece.Sheet.Height.Millimetres);
            return width == height
                ? [new Slot(part, false, width, height, label)]
                : [new Slot(part, false, width, height, label), new Slot(part, true, height, width, label)];
        }
    }

    private sealed record Block(IReadOnlyList<(Slot Slot, double X, double Y)> Slots)
    {
        public double Width { get; } = Slots.Max(s => s.X + s.Slot.Width);

        public double Height { get; } = Slots.Max(s => s.Y + s.Slot.Height);

        public bool Fits(DrawingArea area) => Width <= area.Width + 1e-9 && Height <= area.Height + 1e-9;
    }

    // A row is a line of columns; blocks in a column stand below each other.
    private sealed class SheetOfRows
    {
        private readonly List<Row> _rows = [];

        public double Height(double gap) => _rows.Sum(row => row.Height) + ((_rows.Count - 1) * gap);

        public bool TakeInRow(Block block, DrawingArea area, double gap)
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

                if (row.Width(gap) + gap + block.Width > area.Width + 1e-9)
                    continue;
                row.Columns.Add(new Column(block));
                return true;
            }

            return false;
        }

        public bool TakeNewRow(Block block, DrawingArea area, double gap)
        {
            if ((_rows.Count > 0 ? Height(gap) + gap : 0) + block.Height > area.Height + 1e-9)
                return false;
            _rows.Add(new Row(block));
            return true;
        }

        // Centred as a whole, so that the page has even edges.
        public SharedPage Set(DrawingArea area, double gap)
        {
            var places = new List<SharedPlace>();
            var left = area.Corner.X + ((area.Width - _rows.Max(row => row.Width(gap))) / 2);
            var y = area.Corner.Y + ((area.Height - Height(gap)) / 2);
            foreach (var row in _rows)
            {
                var x = left;
                foreach (var column in row.Columns)
                {
                    foreach (var (block, down) in column.Blocks)
                    {
                        foreach (var (slot, dx, dy) in block.Slots)
                        {
                            var (px, py) = (x + dx, y + down + dy);
                            places.Add(new SharedPlace(slot.Part, slot.Turned, px, py)
                            {
                                Label = new LabelPlace(px, py + slot.PartHeight, slot.Width, slot.Label.Height),
                            });
                        }
                    }

                    x += column.Width + gap;
                }

                y += row.Height + gap;
            }

            return new SharedPage(area.Lying, places);
        }
    }

    private sealed class Row(Block first)
    {
        public double Height { get; } = first.Height;

        public List<Column> Columns { get; } = [new Column(first)];

        public double Width(double gap) => Columns.Sum(column => column.Width) + ((Columns.Count - 1) * gap);
    }

    private sealed class Column(Block first)
    {
        public double Width { get; } = first.Width;

        public double Height { get; set; } = first.Height;

        public List<(Block Block, double Down)> Blocks { get; } = [(first, 0)];
    }
}
