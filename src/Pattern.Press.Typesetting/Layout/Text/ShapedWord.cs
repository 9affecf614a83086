using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using Pattern.Press.Typesetting.Fonts;

namespace Pattern.Press.Typesetting.Layout.Text;

/// <summary>A word in a face, shaped. Glyphs are in font units, so one word serves every size.</summary>
/// <param name="Text">What it says.</param>
/// <param name="Glyphs">Its glyphs.</param>
/// <param name="Units">The sum of their advances.</param>
internal sealed record ShapedWord(string Text, ShapedGlyph[] Glyphs, int Units)
{
    /// <summary>Whether the face lacks a glyph for some of it.</summary>
    public bool HasMissingGlyphs { get; } = Array.Exists(Glyphs, glyph => glyph.Id == 0);
}

/// <summary>
/// The words that were shaped before in a face. A booklet uses few different words, and each is shaped once for all its
/// papers; the store belongs to the face and goes with it.
/// </summary>
internal sealed class ShapedWords
{
    // Far more than a booklet needs; only keeps a process that sets books all day from growing without end.
    private const int MostWords = 50_000;

    private static readonly ConditionalWeakTable<FontFace, ConcurrentDictionary<(FontFeatures, string), ShapedWords>> Stores = [];

    private readonly FontFace _face;
    private readonly FontFeatures _features;
    private readonly string _language;
    private readonly ConcurrentDictionary<string, ShapedWord> _words = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<string, ShapedWord>.AlternateLookup<ReadOnlySpan<char>> _bySpan;
    private int _count;

    private ShapedWords(FontFace face, FontFeatures features, string language)
    {
        (_face, _features, _language) = (face, features, language);
        _bySpan = _words.GetAlternateLookup<ReadOnlySpan<char>>();
    }

    /// <summary>The store of a face with the features and the language asked for.</summary>
    public static ShapedWords Of(FontFace face, FontFeatures features, string language) =>
        Stores.GetValue(face, static _ => new()).GetOrAdd((features, language), key => new ShapedWords(face, key.Item1, key.Item2));

    /// <summary>The word, shaped.</summary>
    public ShapedWord Get(ReadOnlySpan<char> text)
    {
        if (_bySpan.TryGetValue(text, out var word))
            return word;
        if (Interlocked.Increment(ref _count) > MostWords)
        {
            _words.Clear();
            Interlocked.Exchange(ref _count, 0);
        }

        var written = text.ToString();
        ShapedGlyph[] glyphs = [.. Shaper.Shape(written, _face, 10, _features, _language).Glyphs];
        var units = 0;
        foreach (var glyph in glyphs)
            units += glyph.Advance;
        return _words.GetOrAdd(written, new ShapedWord(written, glyphs, units));
    }
}
