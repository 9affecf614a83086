using Pattern.Press.Structures.Reading;

namespace Pattern.Press.Structures.Formulas;

/// <summary>A formula that gives nothing for the values at hand.</summary>
internal sealed class FormulaException(Place place, string message, bool needsItem = false) : Exception(message)
{
    /// <summary>Where in the formula.</summary>
    public Place Place { get; } = place;

    /// <summary>Whether it failed only because no item was named.</summary>
    public bool NeedsItem { get; } = needsItem;
}
