using Markdig.Helpers;
using Markdig.Parsers;
using Markdig.Syntax;

namespace Pattern.Press.Booklets.Markdown;

/// <summary>Reads <c>{{dotted.name}}</c> before anything else sees the underscores in it.</summary>
internal sealed class ValueInlineParser : InlineParser
{
    public ValueInlineParser() => OpeningCharacters = ['{'];

    public override bool Match(InlineProcessor processor, ref StringSlice slice)
    {
        if (slice.PeekChar() != '{')
            return false;
        var text = slice.Text;
        var (start, end) = (slice.Start, slice.End);
        var position = start + 2;
        while (position <= end && text[position] is not ('{' or '}' or '\n' or '\r'))
            position++;
        var hasEnd = position < end && text[position] == '}' && text[position + 1] == '}';
        var name = text[(start + 2)..position].Trim();
        var length = hasEnd ? position + 2 - start : 2;
        var from = processor.GetSourcePosition(start, out var line, out var column);
        processor.Inline = new ValueInline(name, hasEnd)
        {
            Line = line,
            Column = column,
            Span = new SourceSpan(from, from + length - 1),
        };
        slice.Start = start + length;
        return true;
    }
}
