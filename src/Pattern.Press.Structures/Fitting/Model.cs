using Pattern.Press.Nets;

namespace Pattern.Press.Structures.Fitting;

/// <summary>A structure fitted on one ruler: exact sizes, pieces and mats.</summary>
public sealed record Model
{
    /// <summary>The structure's id: <c>explosion-box</c>.</summary>
    public required string Structure { get; init; }

    /// <summary>Everything that is cut, on the ruler of the fit.</summary>
    public required Kit Kit { get; init; }

    /// <summary>
    /// Every named value by its dotted name: <c>size.wall_height</c> (parameters and derived values),
    /// <c>item.height</c>, and for each part <c>base.sheet</c>, <c>base.width</c>, <c>base.height</c>,
    /// <c>base.quantity</c>.
    /// </summary>
    public required IReadOnlyDictionary<string, Fitting.Value> Values { get; init; }

    /// <summary>What was checked about the fit, each with the number it found.</summary>
    public required IReadOnlyList<FitCheck> Checks { get; init; }
}

/// <summary>Something that must hold for the thing to work.</summary>
/// <param name="Name">What was checked, in words: <c>The lid goes over the box</c>.</param>
/// <param name="Found">What there is, such as a clearance.</param>
/// <param name="Least">The least there must be.</param>
/// <param name="Holds">Whether it holds.</param>
public sealed record FitCheck(string Name, Pattern.Press.Measure.Length Found, Pattern.Press.Measure.Length Least, bool Holds);
