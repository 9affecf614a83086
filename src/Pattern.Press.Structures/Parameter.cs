using Pattern.Press.Measure;
using Pattern.Press.Structures.Formulas;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Structures;

/// <summary>What sort of value a parameter takes.</summary>
public enum ParameterKind
{
    /// <summary>A length with its unit.</summary>
    Length,

    /// <summary>A plain number.</summary>
    Number,

    /// <summary>Yes or no.</summary>
    YesNo,

    /// <summary>One of a few words.</summary>
    Choice,
}

/// <summary>Something a maker can set about a structure.</summary>
public sealed record Parameter
{
    /// <summary>Its name in booklets: <c>wall_height</c>.</summary>
    public required string Name { get; init; }

    /// <summary>What it means, a sentence.</summary>
    public required string Means { get; init; }

    /// <summary>What sort of value it takes.</summary>
    public required ParameterKind Kind { get; init; }

    /// <summary>The words to choose from; empty when it is no choice.</summary>
    public IReadOnlyList<string> Choices { get; init; } = [];

    /// <summary>What it is when nobody sets it, as the structure's file has it: a value or a formula. Null when it has to be set.</summary>
    public string? Default { get; init; }

    /// <summary>What it comes to when nobody sets it, in a maker's words; empty when the default says it by itself.</summary>
    public string Usual { get; init; } = "";

    /// <summary>The least it may be, as the file has it; null for none but the general one.</summary>
    public string? Least { get; init; }

    /// <summary>The most it may be, as the file has it; null for none but the general one.</summary>
    public string? Most { get; init; }

    /// <summary>Why it is limited so, a sentence; empty for none.</summary>
    public string Limits { get; init; } = "";

    /// <summary>The condition under which it matters, as the file has it; null when it always does.</summary>
    public string? When { get; init; }

    /// <summary>For a length: which way it goes to the ruler's marks.</summary>
    public Rounding Round { get; init; } = Rounding.Nearest;

    /// <summary>Where it is described.</summary>
    public Place Place { get; init; }

    internal Formula? DefaultFormula { get; init; }

    internal Formula? LeastFormula { get; init; }

    internal Formula? MostFormula { get; init; }

    internal Formula? WhenFormula { get; init; }
}
