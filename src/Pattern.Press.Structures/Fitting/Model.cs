using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Structures.Fitting;

/// <summary>A structure fitted on one ruler: exact sizes, pieces and mats.</summary>
public sealed record Model
{
    /// <summary>The structure's id: <c>explosion-box</c>.</summary>
    public required string Structure { get; init; }

    /// <summary>Everything that is cut, on the ruler of the fit.</summary>
    public required Kit Kit { get; init; }

    /// <summary>
    /// Every named value by its dotted name: <c>size.wall_height</c> (parameters that apply, and derived values),
    /// <c>item.height</c>, and for each part <c>base.sheet</c>, <c>base.width</c>, <c>base.height</c>,
    /// <c>base.quantity</c>; for a piece with scores also <c>base.scores_across</c>, the marks of the scores that run
    /// down the sheet, measured from its left side, and <c>base.scores_down</c>, of those that run across, from its top;
    /// and the marks that the structure's file names, such as <c>base.corner_marks_across</c>.
    /// </summary>
    public required IReadOnlyDictionary<string, Fitting.Value> Values { get; init; }

    /// <summary>
    /// Every parameter in the file's order, with what it is in this fit and between what it may be here; those that do not
    /// matter in this fit too.
    /// </summary>
    public IReadOnlyList<FittedParameter> Parameters { get; init; } = [];

    /// <summary>What was checked about the fit, each with the number it found.</summary>
    public required IReadOnlyList<FitCheck> Checks { get; init; }

    /// <summary>What the structure says itself about how hands make it.</summary>
    public StepWords Words { get; init; } = StepWords.None;

    /// <summary>
    /// The sizes the maker gave that do not lie on the ruler of this fit and were brought to one of its marks. In the fit
    /// on the maker's own ruler that deserves a word; in the other one it is expected.
    /// </summary>
    public IReadOnlyList<RoundedSize> Rounded { get; init; } = [];
}

/// <summary>Something that must hold for the thing to work.</summary>
/// <param name="Name">What was checked, in words: <c>The lid goes over the box</c>.</param>
/// <param name="Found">What there is, such as a clearance.</param>
/// <param name="Least">The least there must be.</param>
/// <param name="Holds">Whether it holds.</param>
/// <param name="Advice">What to change when it does not, as a sentence.</param>
public sealed record FitCheck(string Name, Length Found, Length Least, bool Holds, string Advice = "");

/// <summary>A size that was given off the ruler.</summary>
/// <param name="Name">The parameter.</param>
/// <param name="Place">Where it was given.</param>
/// <param name="Given">As it was given.</param>
/// <param name="Used">The mark of the ruler that is used.</param>
public sealed record RoundedSize(string Name, Place Place, Length Given, Length Used);

/// <summary>A parameter in a fit.</summary>
/// <param name="Parameter">The parameter.</param>
/// <param name="Value">What it is; null when nothing says.</param>
/// <param name="Least">For a length or a number: the least it may be here, on the ruler; null where its file sets none.</param>
/// <param name="Most">The most, likewise.</param>
/// <param name="Matters">Whether it changes anything here.</param>
public sealed record FittedParameter(Parameter Parameter, Value? Value, Value? Least, Value? Most, bool Matters);
