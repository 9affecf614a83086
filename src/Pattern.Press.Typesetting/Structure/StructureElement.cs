namespace Pattern.Press.Typesetting.Structure;

/// <summary>
/// An element of the document's logical structure, in reading order. Leaves get their content from the pages' tagged
/// items; an element may have both content and children only when it is inline (a link in a paragraph), in which case
/// <see cref="Children"/> holds them in order and the content around them is tagged with <see cref="Role.Span"/> children.
/// </summary>
public sealed class StructureElement
{
    // Most elements have none of either, and a long book has very many elements.
    private List<StructureElement>? _children;
    private Particulars? _particulars;

    /// <summary>An element of a role.</summary>
    public StructureElement(Role role) => Role = role;

    /// <summary>What it is.</summary>
    public Role Role { get; }

    /// <summary>Its parts, in reading order.</summary>
    public IReadOnlyList<StructureElement> Children => _children is null ? [] : _children;

    /// <summary>What a figure or formula shows, in words; null for other roles.</summary>
    public string? AlternativeText
    {
        get => _particulars?.AlternativeText;
        set => Particular.AlternativeText = value;
    }

    /// <summary>What the content says where its glyphs do not tell; null mostly.</summary>
    public string? ActualText
    {
        get => _particulars?.ActualText;
        set => Particular.ActualText = value;
    }

    /// <summary>A title for sections in navigation panes; null mostly.</summary>
    public string? Title
    {
        get => _particulars?.Title;
        set => Particular.Title = value;
    }

    /// <summary>The language of its content as a BCP 47 tag, where it differs from the document's; null mostly.</summary>
    public string? Language
    {
        get => _particulars?.Language;
        set => Particular.Language = value;
    }

    /// <summary>For a header cell, what it heads.</summary>
    public HeaderScope? Scope { get; set; }

    /// <summary>How many columns a table cell spans.</summary>
    public int ColumnSpan { get; set; } = 1;

    /// <summary>How a list is numbered; only for lists.</summary>
    public ListNumbering? Numbering
    {
        get => _particulars?.Numbering;
        set => Particular.Numbering = value;
    }

    /// <summary>For a figure: its bounding box in millimetres on its page (x, y, width, height).</summary>
    public (double X, double Y, double Width, double Height)? Box
    {
        get => _particulars?.Box;
        set => Particular.Box = value;
    }

    private Particulars Particular => _particulars ??= new Particulars();

    /// <summary>Adds a new part of a role at the end and returns it.</summary>
    public StructureElement Add(Role role)
    {
        var child = new StructureElement(role);
        Add(child);
        return child;
    }

    /// <summary>Adds an existing element at the end.</summary>
    public void Add(StructureElement child) => (_children ??= []).Add(child);

    /// <summary>What only few elements have.</summary>
    private sealed class Particulars
    {
        public string? AlternativeText { get; set; }

        public string? ActualText { get; set; }

        public string? Title { get; set; }

        public string? Language { get; set; }

        public ListNumbering? Numbering { get; set; }

        public (double X, double Y, double Width, double Height)? Box { get; set; }
    }
}

/// <summary>What a header cell heads.</summary>
public enum HeaderScope
{
    /// <summary>The cells below it.</summary>
    Column,

    /// <summary>The cells beside it.</summary>
    Row,
}

/// <summary>How a list's items are labelled.</summary>
public enum ListNumbering
{
    /// <summary>1, 2, 3.</summary>
    Decimal,

    /// <summary>Bullets.</summary>
    Disc,

    /// <summary>Boxes to tick or nothing at all.</summary>
    None,
}
