using Pattern.Press.Typesetting.Structure;

namespace Pattern.Press.Typesetting.Layout.Text;

/// <summary>A paragraph in one place of a book.</summary>
/// <param name="shaped">Its words.</param>
internal sealed class Paragraph(ShapedParagraph shaped)
{
    private IReadOnlyList<InlinePart> _parts = shaped.Parts;

    /// <summary>Its words, shaped.</summary>
    public ShapedParagraph Shaped => shaped;

    /// <summary>Whether it has no words.</summary>
    public bool IsEmpty => shaped.IsEmpty;

    /// <summary>
    /// Gives the paragraph its place in the structure: its words belong to an element, and when there are links or literal
    /// texts among them, to parts of it.
    /// </summary>
    public void AttachTo(StructureElement element)
    {
        if (shaped.Parts is [{ IsPlain: true } only])
        {
            _parts = [only.In(element)];
            return;
        }

        _parts = [.. shaped.Parts.Select(part => part.In(element.Add(part.Link is not null ? Role.Link : part.Literal ? Role.Code : Role.Span)))];
    }

    /// <summary>Breaks the paragraph into lines.</summary>
    /// <param name="width">The measure in millimetres.</param>
    /// <param name="justified">Whether lines fill it.</param>
    public BrokenLines Break(double width, bool justified) => new(shaped, width, justified, _parts);
}
