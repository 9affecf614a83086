using Pattern.Press.Typesetting.Structure;

namespace Pattern.Press.Typesetting.Pages;

/// <summary>Finished pages with what a reader needs to know about them.</summary>
public sealed record PressDocument
{
    /// <summary>The pages in order; at least one.</summary>
    public required IReadOnlyList<Page> Pages { get; init; }

    /// <summary>The root of the structure tree; its role is <see cref="Role.Document"/>.</summary>
    public required StructureElement Structure { get; init; }

    /// <summary>The outline of the document, top level.</summary>
    public IReadOnlyList<Bookmark> Bookmarks { get; init; } = [];

    /// <summary>The title.</summary>
    public required string Title { get; init; }

    /// <summary>Who made the content; empty if nobody is named.</summary>
    public string Author { get; init; } = "";

    /// <summary>One sentence on what it is; may be empty.</summary>
    public string Subject { get; init; } = "";

    /// <summary>The language of the text as a BCP 47 tag: <c>en-GB</c>.</summary>
    public required string Language { get; init; }

    /// <summary>The date that the content gives, or null: no clock is ever asked.</summary>
    public DateOnly? Date { get; init; }
}

/// <summary>An entry of the document's outline.</summary>
/// <param name="Title">What it says.</param>
/// <param name="Destination">The name of the destination it leads to.</param>
/// <param name="Children">Entries below it.</param>
public sealed record Bookmark(string Title, string Destination, IReadOnlyList<Bookmark> Children);
