namespace Pattern.Press.Structures.Formulas;

/// <summary>The names that the formulas of one structure may use, each with a slot for its value.</summary>
internal sealed class Names
{
    private readonly Dictionary<string, int> _slots = new(StringComparer.Ordinal);
    private readonly List<Entry> _entries = [];

    /// <summary>A name, what it stands for, and for a choice the words it can be.</summary>
    public sealed record Entry(string Name, Kind? Kind, IReadOnlyList<string>? Choices);

    /// <summary>How many there are.</summary>
    public int Count => _entries.Count;

    /// <summary>All names, in the order they were added.</summary>
    public IReadOnlyCollection<string> All => [.. _entries.Select(entry => entry.Name)];

    public Entry this[int slot] => _entries[slot];

    /// <summary>Adds a name; the kind of a value is set once its formula was looked at.</summary>
    /// <returns>Its slot, or -1 when the name is taken.</returns>
    public int Add(string name, Kind? kind, IReadOnlyList<string>? choices = null)
    {
        if (!_slots.TryAdd(name, _entries.Count))
            return -1;
        _entries.Add(new Entry(name, kind, choices));
        return _entries.Count - 1;
    }

    /// <summary>Says what a name stands for.</summary>
    public void SetKind(int slot, Kind? kind) => _entries[slot] = _entries[slot] with { Kind = kind };

    /// <summary>The slot of a name, or -1.</summary>
    public int Find(string name) => _slots.GetValueOrDefault(name, -1);
}
