using Pattern.Press.Nets;

namespace Pattern.Press.Plans.Tiling;

/// <summary>All the template pages of a kit.</summary>
/// <param name="Tiled">Templates with pages of their own, in making order.</param>
/// <param name="Shared">Pages of small templates.</param>
public sealed record TemplatePlan(IReadOnlyList<TilePlan> Tiled, IReadOnlyList<SharedPage> Shared)
{
    /// <summary>How many pages that makes.</summary>
    public int Pages => Tiled.Sum(plan => plan.Tiles.Count) + Shared.Count;
}

/// <summary>How templates share pages.</summary>
public sealed record TemplateOptions
{
    /// <summary>What neighbouring tiles share for gluing, in millimetres; 0 or more.</summary>
    public double Lap { get; init; } = 10;

    /// <summary>Between templates on a shared page, in millimetres.</summary>
    public double Gap { get; init; } = SharedPagePlanner.LeastGap;

    /// <summary>The room for each small template's label.</summary>
    public LabelRoom Label { get; init; } = new(44, 9);
}

/// <summary>Decides which templates have pages of their own and which share.</summary>
public static class TemplatePlanner
{
    /// <summary>
    /// A template shares pages when it is flat (has no folds) and, with its label, takes no more than half a page's
    /// drawing area; everything else has pages of its own.
    /// </summary>
    /// <param name="kit">The parts.</param>
    /// <param name="page">The page.</param>
    /// <param name="lap">What neighbouring tiles share, in millimetres; 0 or more.</param>
    /// <exception cref="TilePlanException">The page leaves no usable tile, or the lap is too wide for its tiles.</exception>
    public static TemplatePlan Plan(Kit kit, TemplatePage page, double lap) => Plan(kit, page, new TemplateOptions { Lap = lap });

    /// <inheritdoc cref="Plan(Kit, TemplatePage, double)"/>
    public static TemplatePlan Plan(Kit kit, TemplatePage page, TemplateOptions options)
    {
        ArgumentNullException.ThrowIfNull(kit);
        ArgumentNullException.ThrowIfNull(page);
        ArgumentNullException.ThrowIfNull(options);
        var areas = DrawingArea.Of(page, options.Lap);
        var half = areas.Max(area => area.Width * area.Height) / 2;
        bool Shares(Part part) =>
            part.Piece.Folds.Count == 0
            && part.Piece.Sheet.SquareMillimetres <= half
            && SharedPagePlanner.Fits(part, page, options.Label);

        return new TemplatePlan(
            [.. kit.Parts.Where(part => !Shares(part)).Select(part => TilePlanner.Plan(part, page, options.Lap))],
            SharedPagePlanner.Plan([.. kit.Parts.Where(Shares)], page, options.Gap, options.Label).Pages);
    }
}
