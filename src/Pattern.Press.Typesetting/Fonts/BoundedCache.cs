using System.Collections.Concurrent;

namespace Pattern.Press.Typesetting.Fonts;

/// <summary>
/// Keeps results that are the same for the same key. When it is full it starts afresh, which costs a little work and keeps
/// reading without locks. Safe to use from several threads.
/// </summary>
/// <param name="capacity">How many values are kept at most.</param>
public sealed class BoundedCache<TKey, TValue>(int capacity)
    where TKey : notnull
{
    private readonly ConcurrentDictionary<TKey, TValue> _values = new();
    private int _count;

    /// <summary>The value kept for a key, if there is one.</summary>
    public bool TryGet(TKey key, out TValue value) => _values.TryGetValue(key, out value!);

    /// <summary>Keeps a value.</summary>
    public void Add(TKey key, TValue value)
    {
        // Counting aside, because asking a concurrent dictionary for its count locks all of it.
        if (Interlocked.Increment(ref _count) > capacity)
        {
            _values.Clear();
            Interlocked.Exchange(ref _count, 1);
        }

        _values[key] = value;
    }
}
