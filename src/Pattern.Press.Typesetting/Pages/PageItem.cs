using Pattern.Press.Typesetting.Fonts;
using Pattern.Press.Typesetting.Structure;

namespace Pattern.Press.Typesetting.Pages;

/// <summary>Something on a page. Items are drawn in order, later ones over earlier ones.</summary>
public abstract record PageItem;

/// <summary>Lines and areas.</summary>
/// <param name="Path">Their shape.</param>
/// <param name="Fill">The colour of the inside (even–odd), or null for none.</param>
/// <param name="Stroke">The line, or null for none.</param>
public sealed record PathItem(VectorPath Path, Colour? Fill, Stroke? Stroke) : PageItem;

/// <summary>A run of shaped text on one baseline.</summary>
/// <param name="Run">The glyphs, with the text they stand for.</param>
/// <param name="X">Where the run starts, in millimetres.</param>
/// <param name="Y">Its baseline, in millimetres.</param>
/// <param name="Colour">Its colour.</param>
public sealed record TextItem(ShapedRun Run, double X, double Y, Colour Colour) : PageItem;

/// <summary>A picture stretched over a rectangle, in millimetres.</summary>
public sealed record ImageItem(ImageData Image, double X, double Y, double Width, double Height) : PageItem;

/// <summary>Items in coordinates of their own.</summary>
/// <param name="Transform">From the group's coordinates to the page's (or the surrounding group's).</param>
/// <param name="Clip">In the group's coordinates; nothing outside it is drawn. Null for no limit.</param>
/// <param name="Items">What is in the group.</param>
public sealed record GroupItem(Transform Transform, VectorPath? Clip, IReadOnlyList<PageItem> Items) : PageItem;

/// <summary>
/// Items that are content of a structure element. Never nested. Text inside is read in the order of the structure tree,
/// not of the page.
/// </summary>
public sealed record TaggedItem(StructureElement Element, IReadOnlyList<PageItem> Items) : PageItem;

/// <summary>Items that are no content: decoration, running heads, page numbers. Never inside a tagged item, nor around one.</summary>
public sealed record ArtifactItem(ArtifactKind Kind, IReadOnlyList<PageItem> Items) : PageItem;

/// <summary>What an artifact is (ISO 32000-1, 14.8.2.2.2).</summary>
public enum ArtifactKind
{
    /// <summary>Rules, tints and other decoration.</summary>
    Layout,

    /// <summary>A running head.</summary>
    Header,

    /// <summary>A running foot, mostly the page number.</summary>
    Footer,

    /// <summary>Something of the page's making, such as trim marks.</summary>
    Page,
}
