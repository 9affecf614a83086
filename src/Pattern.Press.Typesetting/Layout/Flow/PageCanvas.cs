using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Structure;

namespace Pattern.Press.Typesetting.Layout.Flow;

/// <summary>
/// A page in the making. Decoration goes behind the text; content goes to its element, and what one element gets in
/// succession becomes one tagged item.
/// </summary>
internal sealed class PageCanvas(Func<string, string> labels)
{
    private readonly List<PageItem> _ground = [];
    private readonly List<PageItem> _content = [];
    private readonly List<(StructureElement? Element, int First)> _runs = [];
    private readonly List<PageItem> _furniture = [];
    private readonly List<LinkArea> _links = [];
    private readonly List<(string, double)> _destinations = [];

    /// <summary>
    /// Whether what is drawn was on an earlier page already, such as a table's header: it is shown, but not read again.
    /// </summary>
    public bool IsRepeating { get; set; }

    /// <summary>The printed number of the page of a destination.</summary>
    public string LabelOf(string destination) => labels(destination);

    /// <summary>Draws content of an element.</summary>
    public void Tag(StructureElement element, PageItem item)
    {
        var owner = IsRepeating ? null : element;
        if (_runs.Count == 0 || !ReferenceEquals(_runs[^1].Element, owner))
            _runs.Add((owner, _content.Count));
        _content.Add(item);
    }

    /// <summary>Draws decoration behind the content.</summary>
    public void Decorate(PageItem item) => _ground.Add(item);

    /// <summary>Draws a running head or foot.</summary>
    public void Furnish(ArtifactKind kind, params IReadOnlyList<PageItem> items) => _furniture.Add(new ArtifactItem(kind, items));

    /// <summary>Makes an area lead somewhere.</summary>
    public void AddLink(LinkArea link)
    {
        if (!IsRepeating)
            _links.Add(link);
    }

    /// <summary>Names a height of the page.</summary>
    public void AddDestination(string name, double y)
    {
        if (!IsRepeating)
            _destinations.Add((name, y));
    }

    /// <summary>The finished page.</summary>
    public Page Finish(double width, double height, string label)
    {
        var items = new List<PageItem>(_runs.Count + _furniture.Count + 1);
        if (_ground.Count > 0)
            items.Add(new ArtifactItem(ArtifactKind.Layout, _ground.ToArray()));
        for (var i = 0; i < _runs.Count; i++)
        {
            var (element, first) = _runs[i];
            var content = new PageItem[(i + 1 < _runs.Count ? _runs[i + 1].First : _content.Count) - first];
            _content.CopyTo(first, content, 0, content.Length);
            items.Add(element is null ? new ArtifactItem(ArtifactKind.Layout, content) : new TaggedItem(element, content));
        }

        items.AddRange(_furniture);
        return new Page { Width = width, Height = height, Items = items, Label = label, Links = _links, Destinations = _destinations };
    }
}
