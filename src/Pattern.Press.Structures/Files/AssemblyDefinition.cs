using Pattern.Press.Nets;
using Pattern.Press.Structures.Formulas;

namespace Pattern.Press.Structures.Files;

/// <summary>How the pieces come together, with formulas in place of sizes.</summary>
internal sealed record AssemblyDefinition(IReadOnlyList<AssembledDefinition> Parts, IReadOnlyList<Seam> Seams);

/// <summary>One piece or the item in it.</summary>
/// <param name="Part">Everything but its places and its turn.</param>
/// <param name="Turned">Its turn in degrees, if any.</param>
/// <param name="OnItsSide">When the item lies on its side, if ever.</param>
/// <param name="At">Where it is, seen from the middle.</param>
/// <param name="Repeats">Rows that it is repeated in.</param>
internal sealed record AssembledDefinition(AssembledPart Part, Formula? Turned, Formula? OnItsSide, ShiftDefinition At, IReadOnlyList<RepeatDefinition> Repeats);

/// <summary>A shift; what is null is nothing.</summary>
internal sealed record ShiftDefinition(Formula? Right, Formula? Back, Formula? Up)
{
    public PlaceShift At(Evaluation values) => new(Of(Right, values), Of(Back, values), Of(Up, values));

    private static double Of(Formula? formula, Evaluation values) =>
        formula is null ? 0 : (double)formula.Evaluate(values).Amount / 1_000_000;
}

/// <summary>A row of copies with a shift from each to the next, its middle where the single one would be.</summary>
internal sealed record RepeatDefinition(Formula Times, ShiftDefinition Step);
