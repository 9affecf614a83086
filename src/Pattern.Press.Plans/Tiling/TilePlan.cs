using Pattern.Press.Nets;

namespace Pattern.Press.Plans.Tiling;

/// <summary>One template spread over one or more pages.</summary>
public sealed record TilePlan
{
    /// <summary>What is drawn.</summary>
    public required Part Part { get; init; }

    /// <summary>How many are cut from this template: a kit's, or those of several kits.</summary>
    public required int Cut { get; init; }

    /// <summary>Whether the template is turned clockwise by a quarter before it is laid over the pages.</summary>
    public required bool Turned { get; init; }

    /// <summary>Whether the pages lie on their long side.</summary>
    public required bool Lying { get; init; }

    /// <summary>Where the drawing area starts on each page, in millimetres from its top-left corner.</summary>
    public required Point AreaCorner { get; init; }

    /// <summary>The size of the drawing area on each page.</summary>
    public required (double Width, double Height) Area { get; init; }

    /// <summary>How far neighbouring tiles show the same strip of the template, for gluing; 0 on a single page.</summary>
    public required double Lap { get; init; }

    /// <summary>The tiles, row by row. Tiles with nothing on them are left out.</summary>
    public required IReadOnlyList<Tile> Tiles { get; init; }

    /// <summary>Tiles down.</summary>
    public required int Rows { get; init; }

    /// <summary>Tiles across.</summary>
    public required int Columns { get; init; }
}

/// <summary>The part of a template on one page.</summary>
/// <param name="Row">From 0, top to bottom.</param>
/// <param name="Column">From 0, left to right.</param>
/// <param name="X">The left of what the page shows, in the (turned) template's millimetres, lap included.</param>
/// <param name="Y">The top of what the page shows.</param>
/// <param name="Width">The width of what the page shows.</param>
/// <param name="Height">The height of what the page shows.</param>
/// <param name="PageX">Where that left is on the page, in millimetres.</param>
/// <param name="PageY">Where that top is on the page, in millimetres.</param>
public sealed record Tile(int Row, int Column, double X, double Y, double Width, double Height, double PageX, double PageY);
