using Pattern.Press.Nets;

namespace Pattern.Press.Plans.Tiling;

/// <summary>Decides which templates have pages of their own and which share, and how often each is there.</summary>
/// <remarks>
/// A template shares pages when it is flat (has no folds) and, with its label, takes no more than half a page's drawing
/// area; everything else has pages of its own. For several kits a template is there once for each of them where that takes
/// fewer pages than printing all of them that often; the others are there once and say how many to cut.
/// </remarks>
public static class TemplatePlanner
{
    /// <summary>The pages of one kit.</summary>
    /// <param name="kit">The parts.</param>
    /// <param name="page">The page.</param>
    /// <param name="lap">What neighbouring tiles share, in millimetres; 0 or more.</param>
    /// <exception cref="TilePlanException">The page leaves no usable tile, or the lap is too wide for its tiles.</exception>
    public static TemplatePlan Plan(Kit kit, TemplatePage page, double lap) => Plan(kit, page, new TemplateOptions { Lap = lap });

    /// <summary>The pages of one or several kits.</summary>
    /// <param name="kit">The parts.</param>
    /// <param name="page">The page.</param>
    /// <param name="options">How templates are laid over pages.</param>
    /// <exception cref="TilePlanException">The page leaves no usable tile, or the lap is too wide for its tiles.</exception>
    public static TemplatePlan Plan(Kit kit, TemplatePage page, TemplateOptions options)
    {
        ArgumentNullException.ThrowIfNull(kit);
        ArgumentNullException.ThrowIfNull(page);
        ArgumentNullException.ThrowIfNull(options);
        ArgumentOutOfRangeException.ThrowIfLessThan(options.Copies, 1, nameof(options));
        var areas = DrawingArea.Of(page, options.Lap);
        var half = areas.Max(area => area.Width * area.Height) / 2;
        bool Shares(Part part) =>
            part.Piece.Folds.Count == 0
            && part.Piece.Sheet.SquareMillimetres <= half
            && SharedPagePlanner.Fits(part, page, options);

        var own = kit.Parts.Where(part => !Shares(part)).Select(part => TilePlanner.Plan(part, page, options.Lap)).ToList();
        var small = kit.Parts.Where(Shares).ToList();
        if (options.Copies == 1)
            return new TemplatePlan(own, SharedPagePlanner.Plan(small, page, options).Pages);
        return new Copying(page, options).Plan(own, small);
    }

    // For several kits.
    private sealed class Copying(TemplatePage page, TemplateOptions options)
    {
        public TemplatePlan Plan(IReadOnlyList<TilePlan> own, IReadOnlyList<Part> small)
        {
            var repeated = own.Where(plan => plan.Tiles.Count == 1 && SharedPagePlanner.Fits(plan.Part, page, options) && Pages(Copies([plan.Part])).Count < options.Copies).Select(plan => plan.Part).ToList();
            var pages = new List<SharedPage>();
            foreach (var stock in small.Concat(repeated).Select(part => part.Stock).Distinct(StringComparer.Ordinal))
            {
                var (flat, pieces) = (Of(small, stock), Of(repeated, stock));
                var once = Pages(flat);
                var repeatedFlat = Pages(Copies(flat));
                if (repeatedFlat.Count >= once.Count * options.Copies)
                {
                    pages.AddRange(once.Select(sheet => sheet with { Places = [.. sheet.Places.Select(place => place with { Cut = place.Part.Quantity * options.Copies })] }));
                }
                else
                {
                    pages.AddRange(repeatedFlat);
                }

                // What folds shows another side of the stock than what is flat, so the two do not share pages.
                pages.AddRange(Pages(Copies(pieces)));
            }

            return new TemplatePlan(
                [.. own.Where(plan => !repeated.Contains(plan.Part)).Select(plan => plan with { Cut = plan.Part.Quantity * options.Copies })],
                pages)
            {
                Kits = options.Copies,
            };
        }

        private static List<Part> Of(IEnumerable<Part> parts, string stock) => [.. parts.Where(part => part.Stock == stock)];

        private IReadOnlyList<SharedPage> Pages(IReadOnlyList<Part> parts) => SharedPagePlanner.Plan(parts, page, options).Pages;

        private List<Part> Copies(IReadOnlyList<Part> parts) =>
            [.. Enumerable.Range(0, options.Copies).SelectMany(_ => parts)];
    }
}
