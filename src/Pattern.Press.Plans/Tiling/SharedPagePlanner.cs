using Pattern.Press.Nets;

namespace Pattern.Press.Plans.Tiling;

/// <summary>
/// Sets small templates side by side in rows on as few pages as it can, each stock on pages of its own so that a page can
/// also be printed on the stock itself.
/// </summary>
/// <remarks>
/// A mirrored pair stays together. Rows are filled first fit, and what is short may stand below another in the same row.
/// Several orders and turnings are tried with pages upright and lying. Where none of them reaches the bound, pages are filled
/// without rows too, in those orders and then in orders by lot, always the same ones.
/// </remarks>
public static class SharedPagePlanner
{
    /// <summary>The least room between two templates that scissors can pass through, in millimetres (common practice, no source).</summary>
    public const double LeastGap = 6;

    // More find little and take time.
    private const int MostTries = 120;
    private const int MostBlocksTried = 6000;
    private const int MostBlocksDense = 150;

    private static readonly Func<SharedBlock, double>[] Orders =
    [
        block => block.Height,
        block => block.Width,
        block => block.Width * block.Height,
    ];

    private enum Turning
    {
        AsDrawn,
        Flat,
        Tall,
        ByLot,
    }

    /// <summary>The pages.</summary>
    /// <param name="parts">What is drawn, each as often as it is in the list.</param>
    /// <param name="page">The page.</param>
    /// <param name="options">The gap, at least <see cref="LeastGap"/>, the room for labels, and which stocks have a right way up.</param>
    /// <exception cref="TilePlanException">The page leaves no usable area.</exception>
    public static SharedPages Plan(IReadOnlyList<Part> parts, TemplatePage page, TemplateOptions options)
    {
        ArgumentNullException.ThrowIfNull(parts);
        ArgumentNullException.ThrowIfNull(page);
        ArgumentNullException.ThrowIfNull(options);
        ArgumentOutOfRangeException.ThrowIfLessThan(options.Gap, LeastGap, nameof(options));
        ArgumentOutOfRangeException.ThrowIfNegative(options.Label.Width, nameof(options));
        ArgumentOutOfRangeException.ThrowIfNegative(options.Label.Height, nameof(options));
        var areas = DrawingArea.Of(page, lap: 0);
        var (fitting, tooLarge) = (new List<Part>(), new List<Part>());
        foreach (var part in parts)
            (Fits(part, areas, options) ? fitting : tooLarge).Add(part);
        var pages = new List<SharedPage>();
        var least = 0;
        foreach (var stock in fitting.GroupBy(part => part.Stock, StringComparer.Ordinal))
        {
            var ofStock = new OneStock([.. stock], areas, options);
            pages.AddRange(ofStock.Plan());
            least += ofStock.Bound;
        }

        return new SharedPages(pages, least, tooLarge);
    }

    /// <summary>Whether a template with its label goes on a page at all.</summary>
    internal static bool Fits(Part part, TemplatePage page, TemplateOptions options) =>
        Fits(part, DrawingArea.Of(page, lap: 0), options);

    private static bool Fits(Part part, IReadOnlyList<DrawingArea> areas, TemplateOptions options) =>
        areas.Any(area => SharedSlot.Ways(part, options).Any(slot => slot.Fits(area)));

    private sealed class OneStock
    {
        private readonly List<(Part Part, IReadOnlyList<SharedSlot> Ways)> _templates;
        private readonly IReadOnlyList<DrawingArea> _areas;
        private readonly double _gap;
        private readonly Random _lot = new(1);

        public OneStock(IReadOnlyList<Part> parts, IReadOnlyList<DrawingArea> areas, TemplateOptions options)
        {
            _areas = areas;
            _gap = options.Gap;
            _templates =
            [
                .. parts.Select(part => (part, (IReadOnlyList<SharedSlot>)
                    [.. SharedSlot.Ways(part, options).Where(slot => areas.Any(slot.Fits))])),
            ];
            Bound = SharedBound.Of([.. _templates.Select(template => template.Ways)], areas, _gap);
        }

        public int Bound { get; }

        public IReadOnlyList<SharedPage> Plan()
        {
            List<ISharedSheet>? best = null;
            foreach (var dense in new[] { false, true })
            {
                foreach (var areas in _areas.Count > 1 ? new[] { _areas, [.. _areas.Reverse()] } : [_areas])
                {
                    foreach (var turning in new[] { Turning.AsDrawn, Turning.Flat, Turning.Tall })
                    {
                        foreach (var order in Orders)
                            best = Better(best, Fill(Blocks(areas, turning).OrderByDescending(order), areas, dense));
                    }
                }

                if (best!.Count == Bound || _templates.Count > MostBlocksDense)
                    break;
            }

            var tries = Math.Min(MostTries, MostBlocksTried / _templates.Count);
            for (var i = 0; i < tries && best!.Count > Bound; i++)
            {
                IReadOnlyList<DrawingArea> areas = _lot.Next(2) == 0 ? _areas : [.. _areas.Reverse()];

                // Large ones still come early, or they find no place.
                best = Better(best, Fill(Blocks(areas, Turning.ByLot).OrderByDescending(block => block.Width * block.Height * (0.4 + _lot.NextDouble())), areas, dense: _templates.Count <= MostBlocksDense && i % 3 > 0));
            }

            return [.. best!.Select(sheet => sheet.Set())];
        }

        // Of as many pages in rows, those whose last one is emptiest; without rows only for fewer pages.
        private static List<ISharedSheet> Better(List<ISharedSheet>? best, List<ISharedSheet> next) =>
            best is null || next.Count < best.Count || (next.Count == best.Count && next[0] is RowSheet && next[^1].Height < best[^1].Height - 1e-6) ? next : best;

        private List<ISharedSheet> Fill(IEnumerable<SharedBlock> blocks, IReadOnlyList<DrawingArea> areas, bool dense)
        {
            var sheets = new List<ISharedSheet>();

            // Where a size found no place at all it never will, since pages only fill up.
            var open = new Dictionary<(double Width, double Height), int>();
            foreach (var block in blocks)
            {
                var size = (block.Width, block.Height);
                var first = open.GetValueOrDefault(size);
                if (sheets.FindIndex(first, sheet => sheet.TakeAmong(block)) >= 0)
                    continue;
                var taken = sheets.FindIndex(first, sheet => sheet.Take(block));
                if (taken < 0)
                {
                    var area = areas.First(block.Fits);
                    ISharedSheet fresh = dense ? new DenseSheet(area, _gap) : new RowSheet(area, _gap);
                    fresh.Take(block);
                    taken = sheets.Count;
                    sheets.Add(fresh);
                }

                open[size] = taken;
            }

            return sheets;
        }

        // Mirrored pairs are blocks of two, side by side or, where the page is too narrow, one below the other.
        private List<SharedBlock> Blocks(IReadOnlyList<DrawingArea> areas, Turning turning)
        {
            var blocks = new List<SharedBlock>();
            var done = new bool[_templates.Count];
            for (var i = 0; i < _templates.Count; i++)
            {
                if (done[i])
                    continue;
                var (part, ways) = _templates[i];
                var preferred = Preferred(ways, areas, turning);
                var other = part.Hand == Hand.Either ? -1 : Other(i, done);
                if (other < 0)
                {
                    blocks.Add(new SharedBlock([(preferred[0], 0, 0)]));
                    continue;
                }

                done[other] = true;
                blocks.AddRange(Pair(preferred, _templates[other].Part, areas));
            }

            return blocks;
        }

        private IReadOnlyList<SharedSlot> Preferred(IReadOnlyList<SharedSlot> ways, IReadOnlyList<DrawingArea> areas, Turning turning) => turning switch
        {
            Turning.Flat => [.. ways.OrderBy(slot => slot.Height)],
            Turning.Tall => [.. ways.OrderByDescending(slot => slot.Height)],
            Turning.ByLot => _lot.Next(2) == 0 ? ways : [.. ways.Reverse()],
            _ => [.. ways.OrderByDescending(slot => slot.Fits(areas[0]))],
        };

        // The next of the other hand and the same size; one for the same faces, if there is such a one.
        private int Other(int index, bool[] done)
        {
            var one = _templates[index].Part;
            var others = Enumerable.Range(index + 1, _templates.Count - index - 1)
                .Where(k => !done[k] && _templates[k].Part is { Hand: not Hand.Either } other && other.Hand != one.Hand && other.Piece.Sheet == one.Piece.Sheet)
                .ToList();
            var same = others.FindIndex(k => _templates[k].Part.For == one.For);
            return others.Count == 0 ? -1 : others[Math.Max(0, same)];
        }

        private IEnumerable<SharedBlock> Pair(IReadOnlyList<SharedSlot> preferred, Part other, IReadOnlyList<DrawingArea> areas)
        {
            foreach (var area in areas)
            {
                foreach (var slot in preferred)
                {
                    var twin = slot with { Part = other };
                    var beside = new SharedBlock([(slot, 0, 0), (twin, slot.Width + _gap, 0)]);
                    if (beside.Fits(area))
                        return [beside];
                    var below = new SharedBlock([(slot, 0, 0), (twin, 0, slot.Height + _gap)]);
                    if (below.Fits(area))
                        return [below];
                }
            }

            return [new SharedBlock([(preferred[0], 0, 0)]), new SharedBlock([(preferred[0] with { Part = other }, 0, 0)])];
        }
    }
}
