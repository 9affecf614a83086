using System.Runtime.InteropServices;

namespace Pattern.Press.Typesetting.Layout.Text;

/// <summary>
/// A paragraph whose words are shaped: it can be broken to any width. It has no place in the structure, so one serves every
/// place where layout tries the paragraph, and every paper. Safe to use from several threads.
/// </summary>
internal sealed class ShapedParagraph
{
    private const double HyphenPenalty = 50;
    private const double DashPenalty = 10;
    private const double SlashPenalty = 100;
    private const char SoftHyphen = '\u00AD';

    // A glue of Knuth and Plass: a space may grow by a half and shrink by a third.
    private const double Stretch = 1.0 / 2;
    private const double Shrink = 1.0 / 3;

    private readonly InlineText _text;
    private readonly List<Segment> _segments = [];
    private readonly List<(int First, int Count, Piece Hyphen, bool Space)> _content = [];
    private readonly List<Piece> _pieces = [];
    private readonly List<(double Width, bool Justified, int[] Ends)> _breaks = [];
    private readonly double _em;

    public ShapedParagraph(InlineText text, double em)
    {
        (_text, _em) = (text, em);
        Cut();
        foreach (var segment in _segments)
            MinWidth = Math.Max(MinWidth, segment.Width);
        HasMissingGlyphs = _pieces.Exists(piece => piece.Word.Glyphs.Any(glyph => glyph.Id == 0));
    }

    public bool IsEmpty => _segments.Count == 0;

    /// <summary>The stretches of it that are elements of the structure, without their elements.</summary>
    public IReadOnlyList<InlinePart> Parts => _text.Parts;

    /// <summary>The width of the widest part that cannot be broken, in millimetres.</summary>
    public double MinWidth { get; }

    /// <summary>Whether there are characters that the face has no glyph for.</summary>
    public bool HasMissingGlyphs { get; }

    /// <summary>The width of the longest line when only forced breaks are taken, in millimetres.</summary>
    public double MaxWidth
    {
        get
        {
            double widest = 0, line = 0;
            for (var i = 0; i < _segments.Count; i++)
            {
                line += _segments[i].Width;
                widest = Math.Max(widest, line);
                line = _segments[i].MustBreak ? 0 : line + _segments[i].Space;
            }

            return widest;
        }
    }

    /// <summary>All its words as they are shaped.</summary>
    public IEnumerable<(ShapedWord Word, TextStyle Style)> Words => _pieces.Select(piece => (piece.Word, piece.Style));

    /// <summary>The words of the widest part that cannot be broken, for messages.</summary>
    public string WidestWords
    {
        get
        {
            var widest = 0;
            for (var i = 1; i < _segments.Count; i++)
            {
                if (_segments[i].Width > _segments[widest].Width)
                    widest = i;
            }

            var (first, count, _, _) = _content[widest];
            return string.Concat(_pieces.GetRange(first, count).Select(piece => piece.Word.Text));
        }
    }

    /// <summary>Where its lines end in a measure: the index of the last segment of each.</summary>
    /// <param name="width">The measure in millimetres.</param>
    /// <param name="justified">Whether lines fill it.</param>
    public IReadOnlyList<int> Ends(double width, bool justified)
    {
        lock (_breaks)
        {
            foreach (var known in _breaks)
            {
                if (known.Width == width && known.Justified == justified)
                    return known.Ends;
            }

            var ends = LineBreaker.Break(CollectionsMarshal.AsSpan(_segments), MeasureOf(width, justified));
            _breaks.Add((width, justified, ends));
            return ends;
        }
    }

    /// <summary>Sets the lines of a measure.</summary>
    /// <param name="width">The measure in millimetres.</param>
    /// <param name="justified">Whether lines fill it.</param>
    /// <param name="parts">Its <see cref="Parts"/>, in their places in the structure.</param>
    public IReadOnlyList<SetLine> SetLines(double width, bool justified, IReadOnlyList<InlinePart> parts)
    {
        var measure = MeasureOf(width, justified);
        var ends = Ends(width, justified);
        var lines = new SetLine[ends.Count];
        var composer = LineComposer.ForParagraph();
        var start = 0;
        for (var i = 0; i < ends.Count; i++)
        {
            lines[i] = Compose(composer, start, ends[i], measure, parts);
            start = ends[i] + 1;
        }

        return lines;
    }

    // A rag of three ems is lively; in narrow columns it must be less.
    private LineMeasure MeasureOf(double width, bool justified) =>
        new(width, justified, Math.Max(Math.Min(3 * _em, width / 4), 0.1), Math.Min(4 * _em, width / 3));

    private SetLine Compose(LineComposer composer, int start, int end, LineMeasure measure, IReadOnlyList<InlinePart> parts)
    {
        var last = end == _segments.Count - 1 || _segments[end].MustBreak;
        double width = _segments[end].Width + _segments[end].Hyphen, stretch = 0, shrink = 0;
        for (var i = start; i < end; i++)
        {
            width += _segments[i].Width + _segments[i].Space;
            stretch += _segments[i].Stretch;
            shrink += _segments[i].Shrink;
        }

        var ratio = Math.Max(-1, LineBreaker.Ratio(width, stretch, shrink, last, measure));
        for (var i = start; i <= end; i++)
        {
            var (first, count, hyphen, space) = _content[i];
            for (var p = first; p < first + count; p++)
                composer.Add(_pieces[p].Word, _pieces[p].Style, parts[_pieces[p].Part], _pieces[p].Destination);
            var segment = _segments[i];
            if (i == end && segment.Hyphen > 0)
                composer.Add(hyphen.Word, hyphen.Style, parts[hyphen.Part]);
            if (!space)
                continue;
            if (i < end)
                composer.AddSpace(segment.Space + (ratio * (ratio >= 0 ? segment.Stretch : segment.Shrink)), hyphen.Style, parts[hyphen.Part]);
            else if (i < _segments.Count - 1)
                composer.AddLineEnd(hyphen.Style, parts[hyphen.Part]);
        }

        return composer.Finish();
    }

    /// <summary>Cuts the text at every place where a line may end.</summary>
    private void Cut()
    {
        var text = _text.Text;
        if (text.Length == 0)
            return;
        var breaks = LineBreaks.Find(text);
        foreach (var span in _text.Spans)
        {
            if (span.Kind != SpanKind.Words)
                breaks.AsSpan(span.Start + 1, span.End - span.Start - 1).Clear();
        }

        var segments = breaks.AsSpan(0, text.Length).Count(true) + 1;
        _segments.EnsureCapacity(segments);
        _content.EnsureCapacity(segments);
        _pieces.EnsureCapacity(segments);
        var start = 0;
        var spanIndex = 0;
        for (var i = 1; i <= text.Length; i++)
        {
            if (i < text.Length && !breaks[i])
                continue;
            AddSegment(start, i, ref spanIndex);
            start = i;
        }
    }

    private void AddSegment(int start, int end, ref int spanIndex)
    {
        var text = _text.Text;
        var forced = text[end - 1] == '\n';
        var wordEnd = end - (forced ? 1 : 0);
        while (wordEnd > start && text[wordEnd - 1] == ' ')
            wordEnd--;
        var spaces = end - wordEnd > 0;
        var soft = wordEnd > start && text[wordEnd - 1] == SoftHyphen && end < text.Length;

        var first = _pieces.Count;
        var width = 0.0;
        while (_text.Spans[spanIndex].End <= start)
            spanIndex++;
        for (var s = spanIndex; s < _text.Spans.Count && _text.Spans[s].Start < wordEnd; s++)
        {
            var span = _text.Spans[s];
            var from = Math.Max(start, span.Start);
            var to = Math.Min(wordEnd, span.End);
            if (to > from)
                width += AddPieces(text.AsSpan(from, to - from), span);
        }

        while (_text.Spans[spanIndex].End < end)
            spanIndex++;
        var spaceSpan = _text.Spans[spanIndex];
        var space = spaces && !forced ? spaceSpan.Style.SpaceWidth : 0;
        var hyphen = soft ? spaceSpan.Style.WidthOf(HyphenOf(spaceSpan.Style)) : 0;
        _content.Add((first, _pieces.Count - first, new Piece(soft ? HyphenOf(spaceSpan.Style) : spaceSpan.Style.Space, spaceSpan.Style, spaceSpan.Part, ""), spaces));
        _segments.Add(new Segment(width, space, space * Stretch, space * Shrink, hyphen, PenaltyAfter(text, wordEnd, spaces, soft), forced));
    }

    private static double PenaltyAfter(string text, int wordEnd, bool spaces, bool soft)
    {
        if (spaces || wordEnd == 0)
            return 0;
        return soft ? HyphenPenalty : text[wordEnd - 1] is '/' ? SlashPenalty : DashPenalty;
    }

    /// <summary>A hyphen that reads as a soft one, so that the word is whole again when it is copied or read out.</summary>
    private static ShapedWord HyphenOf(TextStyle style)
    {
        var hyphen = style.Shape("-");
        return hyphen with { Text = SoftHyphen.ToString() };
    }

    private double AddPieces(ReadOnlySpan<char> text, in TextSpan span)
    {
        if (span.Kind == SpanKind.PageNumber)
            return AddPiece(span.Style.Shape(text), span);
        if (span.Kind == SpanKind.Words)
            return AddPiece(span.Style.Shape(Visible(text)), span);
        var width = 0.0;
        foreach (var part in MeasureParts.Of(text))
        {
            var words = text[part.Start..part.End];
            width += AddPiece(
                part.Kind switch
                {
                    MeasurePartKind.Fraction => span.Style.ShapeFraction(words),
                    MeasurePartKind.FractionSpace => span.Style.FractionSpace,
                    _ => span.Style.Shape(words),
                },
                span);
        }

        return width;
    }

    private double AddPiece(ShapedWord word, in TextSpan span)
    {
        if (word.Glyphs.Count == 0)
            return 0;
        _pieces.Add(new Piece(word, span.Style, span.Part, span.Destination));
        return span.Style.WidthOf(word);
    }

    /// <summary>The text without the characters that only say where lines may break.</summary>
    private static ReadOnlySpan<char> Visible(ReadOnlySpan<char> text)
    {
        const string invisible = "\u00AD\u200B\u2060\uFEFF";
        if (text.IndexOfAny(invisible) < 0)
            return text;
        var kept = new char[text.Length];
        var count = 0;
        foreach (var c in text)
        {
            if (!invisible.Contains(c, StringComparison.Ordinal))
                kept[count++] = c;
        }

        return kept.AsSpan(0, count);
    }

    private readonly record struct Piece(ShapedWord Word, TextStyle Style, int Part, string Destination);
}
