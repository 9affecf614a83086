namespace Pattern.Press.Typesetting.Pages;

/// <summary>A finished page: everything has its place, in millimetres from the top-left corner, y down.</summary>
public sealed record Page
{
    /// <summary>The width of the paper in millimetres.</summary>
    public required double Width { get; init; }

    /// <summary>The height of the paper in millimetres.</summary>
    public required double Height { get; init; }

    /// <summary>What is on it, in drawing order.</summary>
    public required IReadOnlyList<PageItem> Items { get; init; }

    /// <summary>The page number as printed, such as <c>7</c> or <c>T2</c>; empty for a page without one.</summary>
    public string Label { get; init; } = "";

    /// <summary>Areas that lead somewhere.</summary>
    public IReadOnlyList<LinkArea> Links { get; init; } = [];

    /// <summary>Named places that links and bookmarks lead to: the name, and how far down the page.</summary>
    public IReadOnlyList<(string Name, double Y)> Destinations { get; init; } = [];
}
