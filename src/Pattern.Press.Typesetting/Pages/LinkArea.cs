using Pattern.Press.Typesetting.Structure;

namespace Pattern.Press.Typesetting.Pages;

/// <summary>A rectangle of a page that leads somewhere, in millimetres.</summary>
/// <param name="Target">The name of a destination in the document, or a web address.</param>
/// <param name="IsAddress">Whether the target is a web address.</param>
/// <param name="Description">What a screen reader says of it.</param>
/// <param name="Element">The structure element with the role <see cref="Role.Link"/> that it belongs to.</param>
public sealed record LinkArea(
    double X,
    double Y,
    double Width,
    double Height,
    string Target,
    bool IsAddress,
    string Description,
    StructureElement Element);
