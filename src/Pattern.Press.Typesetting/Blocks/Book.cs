using Pattern.Press.Typesetting.Pages;
using Pattern.Press.Typesetting.Structure;

namespace Pattern.Press.Typesetting.Blocks;

/// <summary>What is to be laid out.</summary>
public sealed record Book
{
    /// <summary>The title.</summary>
    public required string Title { get; init; }

    /// <summary>Who made it.</summary>
    public string Author { get; init; } = "";

    /// <summary>One sentence on what it is.</summary>
    public string Subject { get; init; } = "";

    /// <summary>A BCP 47 tag.</summary>
    public required string Language { get; init; }

    /// <summary>The date the content gives, or null.</summary>
    public DateOnly? Date { get; init; }

    /// <summary>What stands at the head of body pages.</summary>
    public string RunningTitle { get; init; } = "";

    /// <summary>The page, upright, in millimetres.</summary>
    public required (double Width, double Height) Paper { get; init; }

    /// <summary>The parts in order.</summary>
    public required IReadOnlyList<BookPart> Parts { get; init; }
}

/// <summary>A part of a book. Each starts on a new page, unless it flows on from the one before.</summary>
public abstract record BookPart
{
    /// <summary>The title in the structure tree.</summary>
    public string Title { get; init; } = "";
}

/// <summary>Text that flows over pages.</summary>
/// <param name="Blocks">The text.</param>
/// <param name="FlowsOn">Whether it goes on under the last text part rather than on a new page.</param>
public sealed record FlowPart(IReadOnlyList<Block> Blocks, bool FlowsOn = false) : BookPart;

/// <summary>Pages whose every item has its place already: covers and templates.</summary>
/// <param name="Pages">The pages.</param>
/// <param name="LabelPrefix">
/// Before the page numbers of these pages, which are counted by themselves: <c>T</c> gives T1, T2 …; null leaves the pages
/// without a number.
/// </param>
public sealed record FixedPart(IReadOnlyList<FixedPage> Pages, string? LabelPrefix) : BookPart;

/// <summary>A page whose every item has its place.</summary>
public sealed record FixedPage
{
    /// <summary>The width in millimetres.</summary>
    public required double Width { get; init; }

    /// <summary>The height in millimetres.</summary>
    public required double Height { get; init; }

    /// <summary>What is on the page, in reading order.</summary>
    public required IReadOnlyList<FixedContent> Contents { get; init; }

    /// <summary>Where its words came from, if a maker wrote them.</summary>
    public BlockSource? Source { get; init; }

    /// <summary>The destination name of the page's top; null for none.</summary>
    public string? Destination { get; init; }

    /// <summary>What the document's outline says for the page; null leaves it out.</summary>
    public string? Bookmark { get; init; }

    /// <summary>The level of the bookmark, 1 to 3.</summary>
    public int BookmarkLevel { get; init; } = 1;
}

/// <summary>One thing on a fixed page.</summary>
/// <param name="Role">What it is; null for decoration.</param>
/// <param name="Items">What is drawn.</param>
/// <param name="AlternativeText">For a figure, what it shows.</param>
public sealed record FixedContent(Role? Role, IReadOnlyList<PageItem> Items, string? AlternativeText = null)
{
    /// <summary>For a figure: its bounding box on the page in millimetres (x, y, width, height).</summary>
    public (double X, double Y, double Width, double Height)? Box { get; init; }
}
