namespace Pattern.Press.Plans.Tiling;

/// <summary>All the template pages of a kit, or of several.</summary>
/// <param name="Tiled">Templates with pages of their own, in making order.</param>
/// <param name="Shared">Pages of small templates, and of those that are there once for each kit.</param>
public sealed record TemplatePlan(IReadOnlyList<TilePlan> Tiled, IReadOnlyList<SharedPage> Shared)
{
    /// <summary>For how many kits.</summary>
    public int Kits { get; init; } = 1;

    /// <summary>How many pages that makes.</summary>
    public int Pages => Tiled.Sum(plan => plan.Tiles.Count) + Shared.Count;
}

/// <summary>How templates are laid over pages.</summary>
public sealed record TemplateOptions
{
    /// <summary>What neighbouring tiles share for gluing, in millimetres; 0 or more.</summary>
    public double Lap { get; init; } = 10;

    /// <summary>Between templates on a shared page, in millimetres.</summary>
    public double Gap { get; init; } = SharedPagePlanner.LeastGap;

    /// <summary>The room for each small template's label.</summary>
    public LabelRoom Label { get; init; } = new(44, 9);

    /// <summary>For how many kits; 1 or more.</summary>
    public int Copies { get; init; } = 1;

    /// <summary>Stocks with a right way up, by id: on shared pages their templates are not turned.</summary>
    public IReadOnlySet<string> OneWay { get; init; } = new HashSet<string>();
}
