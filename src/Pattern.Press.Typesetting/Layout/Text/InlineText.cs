using System.Text;
using Pattern.Press.Typesetting.Blocks;

namespace Pattern.Press.Typesetting.Layout.Text;

/// <summary>What is special about a stretch of text.</summary>
internal enum SpanKind
{
    Words,
    Measurement,
    PageNumber,
}

/// <summary>A stretch of a paragraph's text in one style.</summary>
/// <param name="Start">Its first character.</param>
/// <param name="End">The one after its last.</param>
/// <param name="Style">How it is set.</param>
/// <param name="Part">Which of the paragraph's parts it belongs to.</param>
/// <param name="Kind">What is special about it.</param>
/// <param name="Destination">For a page number: of which destination.</param>
internal readonly record struct TextSpan(int Start, int End, TextStyle Style, int Part, SpanKind Kind, string Destination);

/// <summary>A paragraph's inlines as one text, so that breaks can be found across their borders.</summary>
internal sealed class InlineText
{
    private readonly StringBuilder _text = new();
    private readonly List<TextSpan> _spans = [];
    private readonly List<InlinePart> _parts = [];
    private readonly TextLook _look;
    private readonly LayoutSession _session;

    public InlineText(IReadOnlyList<Inline> inlines, TextLook look, LayoutSession session)
    {
        (_look, _session) = (look, session);
        foreach (var inline in inlines)
            Add(inline, null);
        TrimEnd();
        Text = _text.ToString();
    }

    public string Text { get; }

    public IReadOnlyList<TextSpan> Spans => _spans;

    /// <summary>What its spans belong to.</summary>
    public IReadOnlyList<InlinePart> Parts => _parts;

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

        var collapsed = new StringBuilder(words.Length);
        foreach (var c in words)
        {
            var blank = c is ' ' or '\t' or '\n' or '\r';
            if (!blank)
            {
                collapsed.Append(c);
                continue;
            }

            var last = collapsed.Length > 0 ? collapsed[^1] : _text.Length > 0 ? _text[^1] : ' ';
            if (last is not (' ' or '\n'))
                collapsed.Append(' ');
        }

        Append(collapsed.ToString(), emphasis, link, kind, "");
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
