using System.Text;
using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Typesetting.Layout.Text;

/// <summary>Joins inlines to one text: blanks in a row become one space, and none is left at the end.</summary>
internal sealed class InlineJoiner
{
    // Paragraphs are joined one after the other, so one joiner serves all of a thread; it is empty between two.
    [ThreadStatic]
    private static InlineJoiner? _spare;

    private readonly StringBuilder _text = new();
    private readonly StringBuilder _collapsed = new();
    private readonly List<TextSpan> _spans = [];
    private readonly List<InlinePart> _parts = [];
    private TextLook _look = null!;
    private LayoutSession _session = null!;

    /// <summary>The text of a paragraph.</summary>
    /// <param name="inlines">What it says.</param>
    /// <param name="look">How it is set.</param>
    /// <param name="session">Where the numbers of pages come from.</param>
    public static InlineText Join(IReadOnlyList<Inline> inlines, TextLook look, LayoutSession session)
    {
        var joiner = _spare ?? new InlineJoiner();
        _spare = null;
        (joiner._look, joiner._session) = (look, session);
        for (var i = 0; i < inlines.Count; i++)
            joiner.Add(inlines[i], null);
        joiner.TrimEnd();
        var joined = new InlineText(joiner._text.ToString(), [.. joiner._spans], [.. joiner._parts]);
        joiner.Clear();
        _spare = joiner;
        return joined;
    }

    private void Clear()
    {
        _text.Clear();
        _spans.Clear();
        _parts.Clear();
        (_look, _session) = (null!, null!);
    }

    private void Add(Inline inline, LinkInline? link)
    {
        switch (inline)
        {
            case TextInline text:
                AddWords(text.Text, text.Emphasis, link, SpanKind.Words);
                break;
            case MeasureInline measure:
                AddWords(measure.Text, measure.Emphasis, link, SpanKind.Measurement);
                break;
            case BreakInline:
                TrimEnd();
                AddWords("\n", Emphasis.None, link, SpanKind.Words);
                break;
            case LinkInline inner:
                foreach (var part in inner.Content)
                    Add(part, link ?? inner);
                break;
            case PageNumberInline number:
                var label = _session.LabelFor(number.Destination);
                Append(label, Emphasis.None, link, SpanKind.PageNumber, number.Destination);
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(inline), inline.GetType().Name, "This kind of inline has no layout.");
        }
    }

    private void AddWords(string words, Emphasis emphasis, LinkInline? link, SpanKind kind)
    {
        if (words == "\n")
        {
            Append(words, emphasis, link, kind, "");
            return;
        }

        var last = _text.Length > 0 ? _text[^1] : ' ';
        _collapsed.Clear();
        foreach (var c in words)
        {
            var set = c is '\t' or '\n' or '\r' ? ' ' : c;
            if (set != ' ' || last is not (' ' or '\n'))
                _collapsed.Append(last = set);
        }

        Append(_collapsed.Length == words.Length ? words : _collapsed.ToString(), emphasis, link, kind, "");
    }

    private void Append(string words, Emphasis emphasis, LinkInline? link, SpanKind kind, string destination)
    {
        if (words.Length == 0)
            return;
        var literal = (emphasis & Emphasis.Literal) != 0 && link is null;
        if (_parts.Count == 0 || !_parts[^1].IsSameAs(link, literal))
            _parts.Add(new InlinePart(link, literal));
        if (link is not null)
            _parts[^1].Words += words;
        var start = _text.Length;
        _text.Append(words);
        _spans.Add(new TextSpan(start, _text.Length, _session.Texts.Get(_look, emphasis), _parts.Count - 1, kind, destination));
    }

    private void TrimEnd()
    {
        while (_text.Length > 0 && _text[^1] == ' ')
        {
            _text.Length--;
            var last = _spans[^1] with { End = _text.Length };
            _spans.RemoveAt(_spans.Count - 1);
            if (last.End > last.Start)
                _spans.Add(last);
            else if (!_spans.Exists(span => span.Part == last.Part))
                _parts.RemoveAt(last.Part);
        }
    }
}
