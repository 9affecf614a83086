using Pattern.Press.Nets;
using Pattern.Press.Nets.Building;
using Pattern.Press.Structures.Formulas;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Structures.Building;

/// <summary>A fold whose angle is a formula.</summary>
internal sealed record FoldForm(FoldDirection Direction, Formula Angle)
{
    public CellFold At(Evaluation values) => new(Direction, (double)Angle.Evaluate(values).Amount);
}

/// <summary>What the cells of one letter are, with formulas in place of sizes.</summary>
internal sealed record CellForm
{
    public required Place Place { get; init; }

    public required string Kind { get; init; }

    public required PanelRole Role { get; init; }

    public string? Note { get; init; }

    public FoldForm? Fold { get; init; }

    public HangsFrom HangsFrom { get; init; } = HangsFrom.Inward;

    public Formula? Taper { get; init; }

    public Formula? Relief { get; init; }

    public SheetSide? Glue { get; init; }

    public PanelShapeForm? Shape { get; init; }

    /// <summary>For a diagonal: the letter that its two halves go to; else null.</summary>
    public char? Joins { get; init; }

    public DiagonalDirection? Direction { get; init; }

    /// <summary>The cell for one fit.</summary>
    public Cell At(Evaluation values) => new()
    {
        Kind = Kind,
        Role = Role,
        Note = Note,
        Fold = Joins is null ? Fold?.At(values) : null,
        HangsFrom = HangsFrom,
        Taper = Taper is null ? 0 : (double)Taper.Evaluate(values).Amount,
        TaperRuler = values.Ruler,
        Relief = Relief is null ? default : Relief.Evaluate(values).Length,
        Diagonal = Joins is { } joins ? new CellDiagonal(joins, Fold!.At(values), Direction) : null,
        Glue = Glue,
        Shape = Shape?.At(values) ?? Nets.Building.PanelShape.Plain,
    };
}
