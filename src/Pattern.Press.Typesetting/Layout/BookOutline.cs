using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Structure;

namespace Pattern.Press.Typesetting.Layout;

/// <summary>An entry of the document's outline and, if its page has a number, of the contents.</summary>
internal readonly record struct OutlineEntry(int Level, string Title, string Destination, bool HasNumber);

/// <summary>
/// What is known of a book's headings before any page is made: which are in the outline, by which names they are found,
/// and their levels in the structure, which must begin at 1 and never skip one (ISO 14289-1, 7.4.2).
/// </summary>
internal sealed class BookOutline
{
    private readonly Dictionary<HeadingBlock, (Role Role, string? Destination)> _headings = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<FixedContent, Role> _fixedHeadings = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<FixedPage, string> _pages = new(ReferenceEqualityComparer.Instance);
    private readonly HashSet<string> _names = new(StringComparer.Ordinal);
    private readonly List<OutlineEntry> _entries = [];
    private int _level;

    public BookOutline(Book book)
    {
        foreach (var part in book.Parts)
            ReserveNames(part);
        foreach (var part in book.Parts)
            Walk(part);
    }

    /// <summary>The entries in reading order.</summary>
    public IReadOnlyList<OutlineEntry> Entries => _entries;

    /// <summary>The role of a heading, and the name of the place where it is; null if nothing leads there.</summary>
    public (Role Role, string? Destination) Of(HeadingBlock heading) => _headings[heading];

    /// <summary>The role of something on a fixed page.</summary>
    public Role Of(FixedContent content) => _fixedHeadings.TryGetValue(content, out var role) ? role : content.Role ?? Role.P;

    /// <summary>The name of a fixed page, or null if nothing leads there.</summary>
    public string? Of(FixedPage page) => _pages.TryGetValue(page, out var name) ? name : page.Destination;

    /// <summary>The outline as a tree.</summary>
    public IReadOnlyList<Bookmark> Bookmarks()
    {
        var at = 0;
        return Children(0, ref at);
    }

    private List<Bookmark> Children(int above, ref int at)
    {
        var list = new List<Bookmark>();
        while (at < _entries.Count && _entries[at].Level > above)
        {
            var entry = _entries[at++];
            list.Add(new Bookmark(entry.Title, entry.Destination, Children(entry.Level, ref at)));
        }

        return list;
    }

    private void ReserveNames(BookPart part)
    {
        if (part is FlowPart flow)
        {
            foreach (var block in flow.Blocks)
                ReserveNames(block);
        }
        else if (part is FixedPart pages)
        {
            foreach (var page in pages.Pages)
            {
                if (page.Destination is not null)
                    _names.Add(page.Destination);
            }
        }
    }

    private void ReserveNames(Block block)
    {
        if (block.Destination is not null)
            _names.Add(block.Destination);
        foreach (var child in BlockTree.Children(block))
            ReserveNames(child);
    }

    private void Walk(BookPart part)
    {
        switch (part)
        {
            case FlowPart flow:
                foreach (var block in flow.Blocks)
                    Walk(block);
                break;
            case FixedPart pages:
                foreach (var page in pages.Pages)
                    Walk(page, pages.LabelPrefix is not null);
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(part), part.GetType().Name, "This kind of part has no layout.");
        }
    }

    private void Walk(FixedPage page, bool isNumbered)
    {
        if (page.Bookmark is not null)
        {
            var name = page.Destination ?? FreshName("page");
            _pages[page] = name;
            _entries.Add(new OutlineEntry(page.BookmarkLevel, page.Bookmark, name, isNumbered));
        }

        foreach (var content in page.Contents)
        {
            if (content.Role is { } role && role is >= Role.H1 and <= Role.H4)
                _fixedHeadings[content] = NextRole(role - Role.H1 + 1);
        }
    }

    private void Walk(Block block)
    {
        if (block is HeadingBlock heading)
        {
            var name = heading.Destination ?? (heading.Bookmark is null ? null : FreshName("heading"));
            _headings[heading] = (NextRole(heading.Level), name);
            if (heading.Bookmark is not null)
                _entries.Add(new OutlineEntry(heading.Level, heading.Bookmark, name!, true));
        }

        foreach (var child in BlockTree.Children(block))
            Walk(child);
    }

    private Role NextRole(int level)
    {
        _level = Math.Clamp(level, 1, Math.Min(_level + 1, 4));
        return Role.H1 + (_level - 1);
    }

    private string FreshName(string stem)
    {
        for (var number = _entries.Count + 1; ; number++)
        {
            var name = $"{stem}-{number}";
            if (_names.Add(name))
                return name;
        }
    }
}
