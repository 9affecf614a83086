using System.Text;
using Markdig.Extensions.TaskLists;
using Markdig.Syntax.Inlines;
using Pattern.Press.Structures.Reading;
using Pattern.Press.Typesetting.Blocks;
using Inline = Pattern.Press.Typesetting.Blocks.Inline;
using LinkInline = Pattern.Press.Typesetting.Blocks.LinkInline;
using MarkdownInline = Markdig.Syntax.Inlines.Inline;

namespace Pattern.Press.Booklets.Markdown;

/// <summary>Turns the inside of paragraphs, headings and cells into inlines.</summary>
internal sealed class InlineConverter(ConversionContext context)
{
    private readonly List<LinkInline> _links = [];

    // A booklet has thousands of short texts; those of a thread come one after the other, or one within another.
    [ThreadStatic]
    private static (List<Letter> Written, List<Letter> Improved)? _spare;

    /// <summary>The inlines of a container. Pictures in it are a problem; see <see cref="Convert(IEnumerable{MarkdownInline})"/>.</summary>
    public IReadOnlyList<Inline> Convert(ContainerInline? container) => container is null ? [] : Convert((IEnumerable<MarkdownInline>)container);

    /// <summary>The inlines of some parts of a container.</summary>
    public IReadOnlyList<Inline> Convert(IEnumerable<MarkdownInline> parts)
    {
        _links.Clear();
        var lists = _spare ?? ([], []);
        _spare = null;
        var (letters, improved) = lists;
        foreach (var part in parts)
            Add(part, Emphasis.None, 0, letters);
        Trim(letters);
        Typography.Improve(letters, improved);
        var inlines = Group(Measurements.Gather(improved));
        letters.Clear();
        improved.Clear();
        _spare = lists;
        return inlines;
    }

    /// <summary>The words of inlines, for alternative texts and destinations.</summary>
    public static string Text(IEnumerable<Inline> inlines)
    {
        var text = new StringBuilder();
        foreach (var inline in inlines)
        {
            text.Append(inline switch
            {
                TextInline words => words.Text,
                MeasureInline measure => measure.Text,
                BreakInline => " ",
                LinkInline link => Text(link.Content),
                _ => "",
            });
        }

        return text.ToString();
    }

    private void Add(MarkdownInline part, Emphasis emphasis, int link, List<Letter> letters)
    {
        switch (part)
        {
            case ValueInline value:
                AddValue(value, emphasis, link, letters);
                break;
            case CodeInline code:
                letters.AddRange(code.Content.Select(c => new Letter(c, emphasis | Emphasis.Literal, IsFixed: true, link)));
                break;
            case LiteralInline literal:
                AddWords(literal.Content.ToString(), literal.IsFirstCharacterEscaped, emphasis, link, letters);
                break;
            case HtmlEntityInline entity:
                letters.AddRange(entity.Transcoded.ToString().Select(c => new Letter(c, emphasis, IsFixed: true, link)));
                break;
            case LineBreakInline { IsHard: true }:
                while (letters.Count > 0 && letters[^1].Char == ' ')
                    letters.RemoveAt(letters.Count - 1);
                letters.Add(new Letter(Letter.Atom, emphasis, Link: link, Whole: new BreakInline()));
                break;
            case LineBreakInline:
                letters.Add(new Letter(' ', emphasis, Link: link));
                break;
            case EmphasisInline emphasised:
                var more = emphasis | (emphasised.DelimiterCount == 2 ? Emphasis.Bold : Emphasis.Italic);
                foreach (var child in emphasised)
                    Add(child, more, link, letters);
                break;
            case Markdig.Syntax.Inlines.LinkInline { IsImage: true } image:
                context.Problems.Error(context.Places.At(image.Span.Start), "A picture cannot stand here.", "Give it a paragraph of its own, with an empty line above and below.");
                break;
            case Markdig.Syntax.Inlines.LinkInline found:
                AddLink(found, emphasis, link, letters);
                break;
            case AutolinkInline address:
                AddAddress(address, emphasis, link, letters);
                break;
            case HtmlInline html:
                context.RefuseHtml(html.Span.Start, html.Tag);
                break;
            case TaskList:
                // The box; the list draws it.
                break;
            case ContainerInline container:
                foreach (var child in container)
                    Add(child, emphasis, link, letters);
                break;
        }
    }

    private static void AddWords(string words, bool firstIsFixed, Emphasis emphasis, int link, List<Letter> letters)
    {
        for (var i = 0; i < words.Length; i++)
        {
            // Tabs and the like within words are spaces in print.
            var c = words[i] is '\t' or '\f' or '\v' or '\n' ? ' ' : words[i];
            letters.Add(new Letter(c, emphasis, firstIsFixed && i == 0, link));
        }
    }

    private void AddValue(ValueInline value, Emphasis emphasis, int link, List<Letter> letters)
    {
        var place = context.Places.At(value.Span.Start);
        if (!value.HasEnd)
        {
            context.Problems.Error(place, "The double braces that start here are never closed.", "Write a value as {{size.wall_height}}; for plain braces put \\ before each.");
            return;
        }

        if (value.Name is "page" or "number" && context.Bindings.Value(value.Name) is null)
        {
            AddNumber(value, emphasis, link, place, letters);
            return;
        }

        if (context.Bindings.Value(value.Name) is not { } inlines)
        {
            context.Problems.Error(place, $"There is no value “{value.Name}”.", Spelling.Advice(value.Name, context.Bindings.Names));
            return;
        }

        foreach (var inline in inlines)
        {
            var whole = inline switch
            {
                TextInline text => text with { Emphasis = text.Emphasis | emphasis },
                MeasureInline measure => measure with { Emphasis = measure.Emphasis | emphasis },
                _ => inline,
            };
            letters.Add(new Letter(Letter.Atom, emphasis, Link: link, Whole: whole));
        }
    }

    // In the words of a link, the number of the page that it leads to, or of the figure or step there.
    private void AddNumber(ValueInline value, Emphasis emphasis, int link, Place place, List<Letter> letters)
    {
        if (link == 0 || _links[link - 1].IsAddress)
        {
            context.Problems.Error(place, $"{{{{{value.Name}}}}} stands for the number of the place that a link leads to, but there is no such link around it.", "Write it in the words of one: [page {{page}}](#materials).");
            return;
        }

        var target = _links[link - 1].Target;
        letters.Add(new Letter(Letter.Atom, emphasis, Link: link, Whole: value.Name == "page"
            ? new PageNumberInline(target)
            : new ReferenceInline(target, ReferenceKind.Number, emphasis)));
    }

    private void AddLink(Markdig.Syntax.Inlines.LinkInline found, Emphasis emphasis, int link, List<Letter> letters)
    {
        var place = context.Places.At(found.Span.Start);
        var target = context.Target(found.Url ?? "", place);
        var number = target is null ? link : Register(target.Value);
        var before = letters.Count;
        foreach (var child in found)
            Add(child, emphasis, number, letters);
        if (letters.Count == before && target is { IsAddress: false } inside)
            letters.Add(new Letter(Letter.Atom, emphasis, Link: number, Whole: new ReferenceInline(inside.Target, ReferenceKind.Name, emphasis)));
        else if (letters.Count == before && target is not null)
            context.Problems.Error(place, "The link has no words.", "Write them between the brackets: [the lid](#lid).");
    }

    private void AddAddress(AutolinkInline address, Emphasis emphasis, int link, List<Letter> letters)
    {
        var place = context.Places.At(address.Span.Start);
        var target = context.Target(address.IsEmail ? "mailto:" + address.Url : address.Url, place);
        var number = target is null ? link : Register(target.Value);
        letters.AddRange(address.Url.Select(c => new Letter(c, emphasis, IsFixed: true, number)));
    }

    private int Register((string Target, bool IsAddress) target)
    {
        _links.Add(new LinkInline([], target.Target, target.IsAddress));
        return _links.Count;
    }

    private static void Trim(List<Letter> letters)
    {
        while (letters.Count > 0 && letters[^1] is { Char: ' ', IsFixed: false } or { Whole: BreakInline })
            letters.RemoveAt(letters.Count - 1);
        while (letters.Count > 0 && letters[0] is { Char: ' ', IsFixed: false })
            letters.RemoveAt(0);
    }

    // Letters of one setting become one text; those of one link become one link.
    private List<Inline> Group(List<Letter> letters)
    {
        var result = new List<Inline>();
        for (var start = 0; start < letters.Count;)
        {
            var link = letters[start].Link;
            var end = start;
            while (end < letters.Count && letters[end].Link == link)
                end++;
            var content = Runs(letters, start, end);
            if (link == 0)
                result.AddRange(content);
            else
                result.Add(_links[link - 1] with { Content = content });
            start = end;
        }

        return result;
    }

    private static List<Inline> Runs(List<Letter> letters, int start, int end)
    {
        var result = new List<Inline>();
        var text = new StringBuilder();
        var emphasis = Emphasis.None;
        for (var i = start; i < end; i++)
        {
            var letter = letters[i];
            if (text.Length > 0 && (letter.Whole is not null || letter.Emphasis != emphasis))
            {
                result.Add(new TextInline(text.ToString(), emphasis));
                text.Clear();
            }

            if (letter.Whole is not null)
                result.Add(letter.Whole);
            else
                text.Append(letter.Char);
            emphasis = letter.Emphasis;
        }

        if (text.Length > 0)
            result.Add(new TextInline(text.ToString(), emphasis));
        return result;
    }
}
