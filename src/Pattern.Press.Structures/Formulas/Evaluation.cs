using Pattern.Press.Measure;

namespace Pattern.Press.Structures.Formulas;

/// <summary>The values that formulas are worked out with: one per name, and the ruler of the fit.</summary>
internal sealed class Evaluation(Names names, Ruler ruler)
{
    private readonly Quantity?[] _values = new Quantity?[names.Count];

    /// <summary>The ruler that <c>up</c>, <c>down</c> and <c>near</c> round to.</summary>
    public Ruler Ruler { get; } = ruler;

    /// <summary>The names.</summary>
    public Names Names { get; } = names;

    /// <summary>The value in a slot; null while it is unknown, such as an item's width when there is no item.</summary>
    public Quantity? this[int slot]
    {
        get => _values[slot];
        set => _values[slot] = value;
    }

    /// <summary>Sets a value by its name, if the structure knows the name.</summary>
    public void Set(string name, Quantity value)
    {
        var slot = Names.Find(name);
        if (slot >= 0)
            _values[slot] = value;
    }

    /// <summary>The value of a name, or null.</summary>
    public Quantity? Find(string name) => Names.Find(name) is >= 0 and var slot ? _values[slot] : null;
}
