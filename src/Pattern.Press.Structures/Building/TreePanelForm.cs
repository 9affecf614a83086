using Pattern.Press.Nets;
using Pattern.Press.Structures.Formulas;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Structures.Building;

/// <summary>A panel of a panel tree, or a run of equal ones, with formulas in place of sizes.</summary>
internal sealed record TreePanelForm
{
    /// <summary>Its word in the file, which others hang from.</summary>
    public required string Id { get; init; }

    public required Place Place { get; init; }

    public required string Kind { get; init; }

    public required PanelRole Role { get; init; }

    public string? Note { get; init; }

    public FoldForm? Fold { get; init; }

    public required OutlineForm Outline { get; init; }

    public required PanelShapeForm Shape { get; init; }

    public SheetSide? Glue { get; init; }

    /// <summary>How wide the strip along its right side is that takes glue; null when all of it does.</summary>
    public Formula? GlueStrip { get; init; }

    /// <summary>How far it bends in all, in degrees, positive towards the maker; null when it stays flat.</summary>
    public Formula? Bends { get; init; }

    /// <summary>The panel it hangs from; null for the first.</summary>
    public string? On { get; init; }

    /// <summary>The sides of that one it hangs from: names, numbers, or <c>all</c>.</summary>
    public IReadOnlyList<YamlItem> OnSides { get; init; } = [];

    /// <summary>Which of several equal panels it hangs from.</summary>
    public Which Which { get; init; }

    /// <summary>The side of its own that it hangs by; null for the usual one.</summary>
    public YamlItem? By { get; init; }

    /// <summary>How many hang one from the other; null for one.</summary>
    public Formula? Times { get; init; }

    /// <summary>The side that the next one of the run hangs from.</summary>
    public YamlItem? Next { get; init; }

    public Formula? When { get; init; }
}

/// <summary>Which of several equal panels another hangs from.</summary>
internal enum Which
{
    /// <summary>Each of them.</summary>
    All,

    /// <summary>The first only.</summary>
    First,

    /// <summary>The last only.</summary>
    Last,

    /// <summary>Each but the first.</summary>
    AllButFirst,

    /// <summary>Each but the last.</summary>
    AllButLast,
}
