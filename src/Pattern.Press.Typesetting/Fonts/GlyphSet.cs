namespace Pattern.Press.Typesetting.Fonts;

/// <summary>Which glyphs of a face are used: a key to find subsets by.</summary>
internal sealed class GlyphSet : IEquatable<GlyphSet>
{
    private readonly ulong[] _bits;
    private readonly int _hash;

    public GlyphSet(ulong[] bits)
    {
        _bits = bits;
        var hash = new HashCode();
        foreach (var word in bits)
            hash.Add(word);
        _hash = hash.ToHashCode();
    }

    /// <summary>One bit for each glyph.</summary>
    public ReadOnlySpan<ulong> Bits => _bits;

    public bool Equals(GlyphSet? other) => other is not null && _bits.AsSpan().SequenceEqual(other._bits);

    public override bool Equals(object? obj) => Equals(obj as GlyphSet);

    public override int GetHashCode() => _hash;
}
