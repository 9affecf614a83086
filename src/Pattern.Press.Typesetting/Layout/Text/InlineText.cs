using System.Text;
using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Structure;

namespace Pattern.Press.Typesetting.Layout.Text;

/// <summary>A stretch of a paragraph that is one element of the structure: plain words, a link, or literal text.</summary>
internal sealed class InlinePart(LinkInline? link, bool literal)
{
    private StructureElement? _element;

    public LinkInline? Link { get; } = link;

    public bool Literal { get; } = literal;

    /// <summary>What a link says.</summary>
    public string Words { get; set; } = "";

    /// <summary>The element that its content belongs to.</summary>
    public StructureElement Element
    {
        get => _element ?? throw new InvalidOperationException("The paragraph has no place in the structure yet.");
        set => _element = value;
    }

    public bool IsPlain => Link is null && !Literal;

    public bool IsSameAs(LinkInline? link, bool literal) => ReferenceEquals(Link, link) && Literal == literal;
}

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
/// <param name="Part">Which element it belongs to.</param>
/// <param name="Kind">What is special about it.</param>
/// <param name="Destination">For a page number: of which destination.</param>
internal readonly record struct TextSpan(int Start, int End, TextStyle Style, InlinePart Part, SpanKind Kind, string Destination);

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

    /// <summary>
    /// Gives the paragraph its place in the structure: its words belong to an element, and when there are links or literal
    /// texts among them, to parts of it.
    /// </summary>
    public void AttachTo(StructureElement element)
    {
        if (_parts is [{ IsPlain: true } only])
        {
            only.Element = element;
            return;
        }

        foreach (var part in _parts)
            part.Element = element.Add(part.Link is not null ? Role.Link : part.Literal ? Role.Code : Role.Span);
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
        _spans.Add(new TextSpan(start, _text.Length, _session.Texts.Get(_look, emphasis), _parts[^1], kind, destination));
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
            else if (_parts.Count > 0 && !_spans.Exists(span => ReferenceEquals(span.Part, last.Part)))
                _parts.Remove(last.Part);
        }
    }
}
