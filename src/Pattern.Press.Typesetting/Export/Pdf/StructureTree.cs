using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Structure;

namespace Pattern.Press.Typesetting.Export.Pdf;

/// <summary>
/// The logical structure of a document (ISO 32000-1, 14.7 and 14.8): pages report which marked content and which link
/// belongs to which element, then the tree is written with the way back from content to elements.
/// </summary>
internal sealed class StructureTree
{
    private readonly PdfFile _file;
    private readonly List<Node> _nodes;
    private readonly Dictionary<StructureElement, Node> _byElement;
    private readonly List<List<Node>> _pages = [];
    private readonly List<Node> _links = [];
    private readonly List<Node> _notes = [];
    private int _pageCount;

    public StructureTree(PdfFile file, StructureElement root)
    {
        if (root.Role != Role.Document)
            throw new ArgumentException("The root of the structure tree must have the role Document.");
        _file = file;
        Id = file.Reserve();
        var count = CountOf(root);
        _nodes = new List<Node>(count);
        _byElement = new Dictionary<StructureElement, Node>(count, ReferenceEqualityComparer.Instance);
        Collect(root, null);
    }

    /// <summary>The number of the root's object.</summary>
    public int Id { get; }

    /// <summary>Starts a page; returns its key in the parent tree.</summary>
    public int StartPage(Page page, int pageId, int pageCount)
    {
        _pageCount = pageCount;
        _pages.Add([]);
        CurrentPage = (page, pageId);
        return _pages.Count - 1;
    }

    private (Page Page, int Id) CurrentPage { get; set; }

    /// <summary>Notes that the next marked content of the page belongs to an element; returns its identifier on the page.</summary>
    public int Mark(StructureElement element)
    {
        var node = Find(element);
        var marks = _pages[^1];
        node.AddContent(new Content(CurrentPage.Id, marks.Count), CurrentPage.Page);
        marks.Add(node);
        return marks.Count - 1;
    }

    /// <summary>Notes that a link of the page belongs to an element; returns its key in the parent tree.</summary>
    public int Link(StructureElement element, int annotation)
    {
        if (element.Role != Role.Link)
            throw new ArgumentException("The structure element of a link must have the role Link.");
        var node = Find(element);
        node.AddLink(annotation, CurrentPage.Id, CurrentPage.Page);
        _links.Add(node);
        return _pageCount + _links.Count - 1;
    }

    public void Write()
    {
        foreach (var node in _nodes)
            WriteElement(node);
        var parents = _file.Reserve();
        var to = _file.Object(Id).Raw("<</Type/StructTreeRoot/K "u8).Ref(_nodes[0].Id)
            .Raw("/ParentTree "u8).Ref(parents).Raw("/ParentTreeNextKey "u8).Int(_pageCount + _links.Count);
        if (_notes.Count > 0)
        {
            to.Raw("/IDTree<</Names["u8);
            foreach (var note in _notes)
                to.Text(note.Name).Ref(note.Id);
            to.Raw("]>>"u8);
        }

        to.Raw(">>"u8);
        WriteParents(parents);
    }

    private static void WriteAttributes(PdfBuffer to, Node node)
    {
        var element = node.Element;
        switch (element.Role)
        {
            case Role.TH or Role.TD when element.Scope is not null || element.ColumnSpan > 1:
                to.Raw("/A<</O/Table"u8);
                if (element.Scope is { } scope)
                    to.Raw(scope == HeaderScope.Column ? "/Scope/Column"u8 : "/Scope/Row"u8);
                if (element.ColumnSpan > 1)
                    to.Raw("/ColSpan "u8).Int(element.ColumnSpan);
                to.Raw(">>"u8);
                break;
            case Role.L when element.Numbering is { } numbering:
                to.Raw("/A<</O/List/ListNumbering"u8).Raw(numbering switch
                {
                    ListNumbering.Decimal => "/Decimal"u8,
                    ListNumbering.Disc => "/Disc"u8,

                    // Labels need a kind of numbering (ISO 14289-1, 7.6), and boxes to tick are squares.
                    _ => element.Children.Any(item => item.Children.Any(part => part.Role == Role.Lbl)) ? "/Square"u8 : "/None"u8,
                }).Raw(">>"u8);
                break;
            case Role.Figure when element.Box is { } box && node.FirstPage() is { } page:
                to.Raw("/A<</O/Layout/BBox["u8)
                    .Number(PageSpace.Points(box.X)).Byte((byte)' ').Number(PageSpace.Points(page.Height - box.Y - box.Height)).Byte((byte)' ')
                    .Number(PageSpace.Points(box.X + box.Width)).Byte((byte)' ').Number(PageSpace.Points(page.Height - box.Y)).Raw("]>>"u8);
                break;
            default:
                break;
        }
    }

    private static int CountOf(StructureElement element)
    {
        var count = 1;
        for (var i = 0; i < element.Children.Count; i++)
            count += CountOf(element.Children[i]);
        return count;
    }

    private Node Collect(StructureElement element, Node? parent)
    {
        if (element.Role == Role.Figure && string.IsNullOrWhiteSpace(element.AlternativeText))
            throw new ArgumentException("A figure has no alternative text.");
        var node = new Node(element, _file.Reserve(), parent);
        if (!_byElement.TryAdd(element, node))
            throw new ArgumentException($"A structure element ({element.Role}) stands in the tree twice.");
        _nodes.Add(node);
        if (element.Role == Role.Note)
        {
            node.Name = FormattableString.Invariant($"note{_notes.Count + 1:0000}");
            _notes.Add(node);
        }

        for (var i = 0; i < node.Children.Length; i++)
            node.Children[i] = Collect(element.Children[i], node);
        return node;
    }

    private Node Find(StructureElement element) => _byElement.TryGetValue(element, out var node)
        ? node
        : throw new ArgumentException($"Content is tagged with an element ({element.Role}) that is not in the document's structure.");

    private void WriteElement(Node node)
    {
        var element = node.Element;
        var to = _file.Object(node.Id).Raw("<</Type/StructElem/S"u8).Name(element.Role.ToString())
            .Raw("/P "u8).Ref(node.Parent?.Id ?? Id);
        if (node.PageId > 0)
            to.Raw("/Pg "u8).Ref(node.PageId);
        if (element.Role == Role.Note)
            to.Raw("/ID"u8).Text(node.Name);
        if (element.Title is { } title)
            to.Raw("/T"u8).Text(title);
        if (element.Language is { } language)
            to.Raw("/Lang"u8).Text(language);
        if (element.AlternativeText is { } alternative)
            to.Raw("/Alt"u8).Text(alternative);
        if (element.ActualText is { } actual)
            to.Raw("/ActualText"u8).Text(actual);
        WriteAttributes(to, node);
        to.Raw("/K["u8);
        for (var i = 0; i < node.Contents.Count; i++)
        {
            var content = node.Contents[i];
            if (content.PageId == node.PageId)
                to.Byte((byte)' ').Int(content.Mark);
            else
                to.Raw("<</Type/MCR/Pg "u8).Ref(content.PageId).Raw("/MCID "u8).Int(content.Mark).Raw(">>"u8);
        }

        foreach (var child in node.Children)
            to.Byte((byte)' ').Ref(child.Id);
        foreach (var (annotation, page) in node.Links)
        {
            to.Raw("<</Type/OBJR/Obj "u8).Ref(annotation);
            if (page != node.PageId)
                to.Raw("/Pg "u8).Ref(page);
            to.Raw(">>"u8);
        }

        to.Raw("]>>"u8);
    }

    private void WriteParents(int id)
    {
        var pages = _pages.Select(_ => _file.Reserve()).ToList();
        for (var i = 0; i < pages.Count; i++)
        {
            var array = _file.Object(pages[i]).Byte((byte)'[');
            foreach (var node in _pages[i])
                array.Ref(node.Id).Byte((byte)' ');
            array.Byte((byte)']');
        }

        var to = _file.Object(id).Raw("<</Nums["u8);
        for (var i = 0; i < pages.Count; i++)
            to.Int(i).Byte((byte)' ').Ref(pages[i]).Byte((byte)' ');
        for (var i = 0; i < _links.Count; i++)
            to.Int(_pageCount + i).Byte((byte)' ').Ref(_links[i].Id).Byte((byte)' ');
        to.Raw("]>>"u8);
    }

    /// <summary>Marked content on a page.</summary>
    private readonly record struct Content(int PageId, int Mark);

    /// <summary>An element with what the pages reported for it.</summary>
    private sealed class Node(StructureElement element, int id, Node? parent)
    {
        // Most elements have either parts or one piece of content, and few have links.
        private List<Content>? _contents;
        private List<(int Annotation, int PageId)>? _links;
        private Page? _page;

        public StructureElement Element { get; } = element;

        public int Id { get; } = id;

        public Node? Parent { get; } = parent;

        /// <summary>Its name in the file; only for notes.</summary>
        public string Name { get; set; } = "";

        public Node[] Children { get; } = element.Children.Count == 0 ? [] : new Node[element.Children.Count];

        public IReadOnlyList<Content> Contents => _contents is null ? [] : _contents;

        public IReadOnlyList<(int Annotation, int PageId)> Links => _links is null ? [] : _links;

        /// <summary>The page of the first content of its own; 0 if there is none.</summary>
        public int PageId { get; private set; }

        public void AddContent(Content content, Page page)
        {
            (_contents ??= new List<Content>(1)).Add(content);
            Touch(content.PageId, page);
        }

        public void AddLink(int annotation, int pageId, Page page)
        {
            (_links ??= []).Add((annotation, pageId));
            Touch(pageId, page);
        }

        /// <summary>The first page that holds content of the element or of one inside it.</summary>
        public Page? FirstPage() => _page ?? Children.Select(child => child.FirstPage()).FirstOrDefault(page => page is not null);

        private void Touch(int pageId, Page page)
        {
            if (PageId != 0)
                return;
            PageId = pageId;
            _page = page;
        }
    }
}
