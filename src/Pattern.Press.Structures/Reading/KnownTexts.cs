using System.Collections.Concurrent;

namespace Pattern.Press.Structures.Reading;

/// <summary>
/// What was made of texts that were read before, for programs that make more than one booklet: a structure or a book of phrases
/// is the same as long as its text is. Only what had nothing wrong with it is kept, so that problems are said every time.
/// </summary>
/// <typeparam name="TKey">What tells texts apart: the text, and whatever else goes into what is made of it.</typeparam>
/// <typeparam name="TMade">What is made of a text; it has to be safe to share between threads.</typeparam>
public sealed class KnownTexts<TKey, TMade>
    where TKey : notnull
    where TMade : class
{
    // More than all structures there are; beyond it everything is forgotten, rather than kept for ever.
    private const int Most = 64;

    private readonly ConcurrentDictionary<TKey, TMade> known = new();

    /// <summary>What is known of a text, or what is made of it now.</summary>
    /// <param name="key">The text.</param>
    /// <param name="make">Makes something of it, and notes what is wrong; null where too much is.</param>
    /// <param name="problems">Where what is wrong goes.</param>
    public TMade? Get(TKey key, Func<Problems, TMade?> make, Problems problems)
    {
        ArgumentNullException.ThrowIfNull(make);
        ArgumentNullException.ThrowIfNull(problems);
        if (known.TryGetValue(key, out var before))
            return before;
        var found = new Problems();
        var made = make(found);
        problems.AddRange(found.All);
        if (made is null || found.All.Count > 0)
            return made;
        if (known.Count >= Most)
            known.Clear();
        known[key] = made;
        return made;
    }
}
