using Pattern.Press.Typesetting.Blocks;
using Pattern.Press.Typesetting.Structure;

namespace Pattern.Press.Typesetting.Layout.Text;

/// <summary>A stretch of a paragraph that is one element of the structure: plain words, a link, or literal text.</summary>
internal sealed class InlinePart(LinkInline? link, bool literal)
{
    private readonly StructureElement? _element;

    public LinkInline? Link { get; } = link;

    public bool Literal { get; } = literal;

    /// <summary>What a link says.</summary>
    public string Words { get; set; } = "";

    /// <summary>The element that its content belongs to.</summary>
    public StructureElement Element
    {
        get => _element ?? throw new InvalidOperationException("The paragraph has no place in the structure yet.");
        private init => _element = value;
    }

    public bool IsPlain => Link is null && !Literal;

    public bool IsSameAs(LinkInline? link, bool literal) => ReferenceEquals(Link, link) && Literal == literal;

    /// <summary>The same part, in its place in the structure.</summary>
    public InlinePart In(StructureElement element) => new(Link, Literal) { Words = Words, Element = element };
}
