using System.Buffers;

namespace Pattern.Press.Typesetting.Layout.Text;

/// <summary>
/// A paragraph whose words are shaped: it can be broken to any width. It has no place in the structure, so one serves every
/// place where layout tries the paragraph, and every paper. Safe to use from several threads.
/// </summary>
internal sealed class ShapedParagraph
{
    private const float HyphenPenalty = 50;
    private const float DashPenalty = 10;
    private const float SlashPenalty = 100;
    private const char SoftHyphen = '\u00AD';

    // A long book has hundreds of thousands of words, all of them kept until its pages are drawn: what is kept of each is
    // small, and lies in arrays of the right length.
    private readonly InlineText _text;
    private readonly Segment[] _segments = [];
    private readonly Content[] _content = [];
    private readonly Piece[] _pieces = [];
    private readonly Lock _breaking = new();
    private readonly double _em;

    // Paragraphs are cut one after the other, so one list serves all of a thread; it is empty between two.
    [ThreadStatic]
    private static List<Piece>? _spare;

    private (double Width, bool Justified, int[] Ends)[] _breaks = [];

    public ShapedParagraph(InlineText text, double em)
    {
        (_text, _em) = (text, em);
        if (text.Text.Length > 0)
            (_segments, _content, _pieces) = Cut();
        foreach (var segment in _segments)
            MinWidth = Math.Max(MinWidth, segment.Width);
        foreach (var piece in _pieces)
            HasMissingGlyphs |= piece.Word.HasMissingGlyphs;
    }

    public bool IsEmpty => _segments.Length == 0;

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
            for (var i = 0; i < _segments.Length; i++)
            {
                line += _segments[i].Width;
                widest = Math.Max(widest, line);
                line = _segments[i].MustBreak ? 0 : line + _segments[i].Space;
            }

            return widest;
        }
    }

    /// <summary>All its words as they are shaped.</summary>
    public IEnumerable<(ShapedWord Word, TextStyle Style)> Words => _pieces.Select(piece => (piece.Word, _text.Spans[piece.Span].Style));

    /// <summary>The words of the widest part that cannot be broken, for messages.</summary>
    public string WidestWords
    {
        get
        {
            var widest = 0;
            for (var i = 1; i < _segments.Length; i++)
            {
                if (_segments[i].Width > _segments[widest].Width)
                    widest = i;
            }

            return string.Concat(_pieces[_content[widest].First..EndOfPieces(widest)].Select(piece => piece.Word.Text));
        }
    }

    /// <summary>Where its lines end in a measure: the index of the last segment of each.</summary>
    /// <param name="width">The measure in millimetres.</param>
    /// <param name="justified">Whether lines fill it.</param>
    public IReadOnlyList<int> Ends(double width, bool justified)
    {
        lock (_breaking)
        {
            foreach (var known in _breaks)
            {
                if (known.Width == width && known.Justified == justified)
                    return known.Ends;
            }

            var ends = LineBreaker.Break(_segments, MeasureOf(width, justified));
            _breaks = [.. _breaks, (width, justified, ends)];
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
        var last = end == _segments.Length - 1 || _segments[end].MustBreak;
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
            var content = _content[i];
            for (var p = content.First; p < EndOfPieces(i); p++)
            {
                var span = _text.Spans[_pieces[p].Span];
                composer.Add(_pieces[p].Word, span.Style, parts[span.Part], span.Destination);
            }

            var segment = _segments[i];
            var after = _text.Spans[content.Span];
            if (i == end && segment.Hyphen > 0)
                composer.Add(HyphenOf(after.Style), after.Style, parts[after.Part]);
            if (!content.HasSpace)
                continue;
            if (i < end)
                composer.AddSpace(segment.Space + (ratio * (ratio >= 0 ? segment.Stretch : segment.Shrink)), after.Style, parts[after.Part]);
            else if (i < _segments.Length - 1)
                composer.AddLineEnd(after.Style, parts[after.Part]);
        }

        return composer.Finish();
    }

    private int EndOfPieces(int segment) => segment + 1 < _content.Length ? _content[segment + 1].First : _pieces.Length;

    /// <summary>Cuts the text at every place where a line may end.</summary>
    private (Segment[] Segments, Content[] Content, Piece[] Pieces) Cut()
    {
        var text = _text.Text;
        var rented = ArrayPool<bool>.Shared.Rent(text.Length);
        var breaks = rented.AsSpan(0, text.Length);
        LineBreaks.Find(text, breaks);
        foreach (var span in _text.Spans)
        {
            if (span.Kind != SpanKind.Words)
                breaks[(span.Start + 1)..span.End].Clear();
        }

        var segments = new Segment[breaks.Count(true) + 1];
        var content = new Content[segments.Length];
        var pieces = _spare ??= [];
        var (start, spanIndex, at) = (0, 0, 0);
        for (var i = 1; i <= text.Length; i++)
        {
            if (i < text.Length && !breaks[i])
                continue;
            (segments[at], content[at]) = SegmentOf(start, i, pieces, ref spanIndex);
            (start, at) = (i, at + 1);
        }

        var cut = (segments, content, pieces.ToArray());
        pieces.Clear();
        ArrayPool<bool>.Shared.Return(rented);
        return cut;
    }

    private (Segment Segment, Content Content) SegmentOf(int start, int end, List<Piece> pieces, ref int spanIndex)
    {
        var text = _text.Text;
        var forced = text[end - 1] == '\n';
        var wordEnd = end - (forced ? 1 : 0);
        while (wordEnd > start && text[wordEnd - 1] == ' ')
            wordEnd--;
        var spaces = end - wordEnd > 0;
        var soft = wordEnd > start && text[wordEnd - 1] == SoftHyphen && end < text.Length;

        var first = pieces.Count;
        var width = 0.0;
        while (_text.Spans[spanIndex].End <= start)
            spanIndex++;
        for (var s = spanIndex; s < _text.Spans.Length && _text.Spans[s].Start < wordEnd; s++)
        {
            var from = Math.Max(start, _text.Spans[s].Start);
            var to = Math.Min(wordEnd, _text.Spans[s].End);
            if (to > from)
                width += AddPieces(text.AsSpan(from, to - from), s, pieces);
        }

        while (_text.Spans[spanIndex].End < end)
            spanIndex++;
        var style = _text.Spans[spanIndex].Style;
        var space = spaces && !forced ? style.SpaceWidth : 0;
        var hyphen = soft ? style.WidthOf(HyphenOf(style)) : 0;
        return (new Segment(width, space, hyphen, PenaltyAfter(text, wordEnd, spaces, soft), forced), new Content(first, spanIndex, spaces));
    }

    private static float PenaltyAfter(string text, int wordEnd, bool spaces, bool soft)
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

    private double AddPieces(ReadOnlySpan<char> text, int at, List<Piece> pieces)
    {
        var span = _text.Spans[at];
        if (span.Kind == SpanKind.PageNumber)
            return AddPiece(span.Style.Shape(text), at, pieces);
        if (span.Kind == SpanKind.Words)
            return AddPiece(span.Style.Shape(Visible(text)), at, pieces);
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
                at,
                pieces);
        }

        return width;
    }

    private double AddPiece(ShapedWord word, int span, List<Piece> pieces)
    {
        if (word.Glyphs.Length == 0)
            return 0;
        pieces.Add(new Piece(word, span));
        return _text.Spans[span].Style.WidthOf(word);
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

    /// <summary>A word, and which of the text's spans it belongs to.</summary>
    private readonly record struct Piece(ShapedWord Word, int Span);

    /// <summary>What a segment holds: its pieces from the first on, and which span the space or the hyphen after it belongs to.</summary>
    private readonly record struct Content(int First, int Span, bool HasSpace);
}
