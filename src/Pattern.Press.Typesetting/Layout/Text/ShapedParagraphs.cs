using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Typesetting.Layout.Text;

/// <summary>
/// The paragraphs of a book that were shaped before: layout tries text beside figures at several widths, and goes over the
/// book again when page numbers are known, and on several papers. Safe to use from several threads.
/// </summary>
internal sealed class ShapedParagraphs
{
    private readonly ConcurrentDictionary<(IReadOnlyList<Inline> Inlines, TextLook Look), ShapedParagraph> _known = new(new SameWords());

    /// <summary>A paragraph, shaped.</summary>
    /// <param name="inlines">Its words.</param>
    /// <param name="look">How it is set.</param>
    /// <param name="session">Where the numbers of pages come from.</param>
    public ShapedParagraph Get(IReadOnlyList<Inline> inlines, TextLook look, LayoutSession session)
    {
        if (_known.TryGetValue((inlines, look), out var known))
            return known;
        var shaped = new ShapedParagraph(InlineJoiner.Join(inlines, look, session), look.Size * TextStyle.Point);

        // Numbers of pages change from pass to pass, and from paper to paper.
        return HasPageNumbers(inlines) ? shaped : _known.GetOrAdd((inlines, look), shaped);
    }

    /// <summary>Forgets everything; what is in use stays as it is.</summary>
    public void Clear() => _known.Clear();

    private static bool HasPageNumbers(IReadOnlyList<Inline> inlines)
    {
        foreach (var inline in inlines)
        {
            if (inline is PageNumberInline || (inline is LinkInline link && HasPageNumbers(link.Content)))
                return true;
        }

        return false;
    }

    private sealed class SameWords : IEqualityComparer<(IReadOnlyList<Inline> Inlines, TextLook Look)>
    {
        public bool Equals((IReadOnlyList<Inline> Inlines, TextLook Look) x, (IReadOnlyList<Inline> Inlines, TextLook Look) y) =>
            ReferenceEquals(x.Inlines, y.Inlines) && x.Look == y.Look;

        public int GetHashCode((IReadOnlyList<Inline> Inlines, TextLook Look) key) =>
            HashCode.Combine(RuntimeHelpers.GetHashCode(key.Inlines), key.Look.Size);
    }
}
