using Pattern.Press.Measure;
using Pattern.Press.Nets.Building;

namespace Pattern.Press.Plans.Scoring;

/// <summary>
/// Everything that is cut away from a sheet or cut into it. Done in this order it leaves exactly the piece: upright
/// rectangles come off, ends of panels are narrowed, notches and holes are cut out, slits are made. A piece that runs aslant
/// is cut along paths from point to point instead.
/// </summary>
public sealed record CuttingAway
{
    /// <summary>Upright rectangles: large ones in reading order, then narrow ones beside panels that fold in freely.</summary>
    public IReadOnlyList<WasteRectangle> Rectangles { get; init; } = [];

    /// <summary>Ends of panels that are tapered or rounded.</summary>
    public IReadOnlyList<NarrowedEnd> Ends { get; init; } = [];

    /// <summary>Bows cut into an edge of the sheet.</summary>
    public IReadOnlyList<EdgeNotch> Notches { get; init; } = [];

    /// <summary>Holes with round ends.</summary>
    public IReadOnlyList<RoundHole> Holes { get; init; } = [];

    /// <summary>Straight cuts with card on both sides.</summary>
    public IReadOnlyList<Slit> Slits { get; init; } = [];

    /// <summary>Cuts from point to point, for a piece that runs aslant; then nothing else is listed.</summary>
    public IReadOnlyList<CutPath> Paths { get; init; } = [];

    /// <summary>
    /// When four rectangles alike lie in the sheet's four corners, how they are marked out together; else null.
    /// </summary>
    public CornerMarks? FourCorners { get; init; }
}

/// <summary>Four equal rectangles in the corners of a sheet.</summary>
/// <param name="Across">Two marks along the top and bottom edge, from the left.</param>
/// <param name="Down">Two marks along the left and right edge, from the top.</param>
/// <param name="InFromTopAndBottom">How far in from the top or bottom edge the cuts at the marks across stop.</param>
/// <param name="InFromLeftAndRight">How far in from the left or right edge the cuts at the marks down stop.</param>
public sealed record CornerMarks(
    IReadOnlyList<Length> Across,
    IReadOnlyList<Length> Down,
    Length InFromTopAndBottom,
    Length InFromLeftAndRight);

/// <summary>A corner of the sheet as drawn.</summary>
public enum SheetCorner
{
    /// <summary>Top left.</summary>
    TopLeft,

    /// <summary>Top right.</summary>
    TopRight,

    /// <summary>Bottom left.</summary>
    BottomLeft,

    /// <summary>Bottom right.</summary>
    BottomRight,
}

/// <summary>Where on the sheet the same is done once more, as its mirror image.</summary>
public enum Mirrored
{
    /// <summary>Nowhere.</summary>
    Nowhere,

    /// <summary>On the other side of the line down the middle of the sheet.</summary>
    LeftToRight,

    /// <summary>On the other side of the line across the middle of the sheet.</summary>
    TopToBottom,

    /// <summary>In the other three quarters of the sheet.</summary>
    AllQuarters,
}

/// <summary>An upright box on a sheet.</summary>
/// <param name="Left">Its left, from the left edge of the sheet.</param>
/// <param name="Top">Its top, from the top edge.</param>
/// <param name="Right">Its right, from the left edge.</param>
/// <param name="Bottom">Its bottom, from the top edge.</param>
public readonly record struct SheetBox(Length Left, Length Top, Length Right, Length Bottom);

/// <summary>An upright rectangle that is cut away.</summary>
/// <param name="Left">From the left edge of the sheet.</param>
/// <param name="Top">From its top edge.</param>
/// <param name="Size">Its size.</param>
/// <param name="Corner">The corner of the sheet it takes, if it does.</param>
public sealed record WasteRectangle(Length Left, Length Top, Size Size, SheetCorner? Corner)
{
    /// <summary>Its right, from the left edge of the sheet.</summary>
    public Length Right => Left + Size.Width;

    /// <summary>Its bottom, from the top edge of the sheet.</summary>
    public Length Bottom => Top + Size.Height;
}

/// <summary>A panel whose end is narrower than the fold at the other side of its box, or has round corners, or both.</summary>
/// <param name="Kind">What the panel is.</param>
/// <param name="Box">The box around it; what lies in it beside the panel is cut off.</param>
/// <param name="End">The side of the box at which it ends.</param>
/// <param name="From">Where its end begins, from the left edge of the sheet, or from the top edge when it ends at a side.</param>
/// <param name="To">Where its end ends, from the same edge.</param>
/// <param name="Radius">The radius of the two corners of its end; 0 for sharp ones.</param>
/// <param name="Again">Where the same is done once more.</param>
public sealed record NarrowedEnd(string Kind, SheetBox Box, SheetEdge End, Length From, Length To, Length Radius, Mirrored Again)
{
    /// <summary>Whether its end is narrower than its fold.</summary>
    public bool IsTapered => End is SheetEdge.Top or SheetEdge.Bottom
        ? From != Box.Left || To != Box.Right
        : From != Box.Top || To != Box.Bottom;
}

/// <summary>An even bow cut into an edge of the sheet or of a panel, to get hold of something with a thumb.</summary>
/// <param name="Kind">What the panel is.</param>
/// <param name="Edge">Which edge.</param>
/// <param name="From">Where it begins, from the left edge of the sheet, or from the top edge when it lies in a side.</param>
/// <param name="To">Where it ends.</param>
/// <param name="Depth">How deep it is in its middle.</param>
/// <param name="Again">Where the same is done once more.</param>
public sealed record EdgeNotch(string Kind, SheetEdge Edge, Length From, Length To, Length Depth, Mirrored Again)
{
    /// <summary>
    /// Where the edge of a panel lies within the sheet, from the sheet's top edge, or from its left edge when it is a side;
    /// null for the sheet's own edge.
    /// </summary>
    public Length? At { get; init; }
}

/// <summary>A hole with half circles for its two ends, or a circle.</summary>
/// <param name="Kind">The panel that it is cut into.</param>
/// <param name="Box">The box around it; the ends are at its shorter sides.</param>
/// <param name="Again">Where the same is done once more.</param>
public sealed record RoundHole(string Kind, SheetBox Box, Mirrored Again);

/// <summary>A straight cut with card on both sides, upright or level.</summary>
/// <param name="Box">Where it runs; the box has no width or no height.</param>
/// <param name="Kinds">What the two panels are that it parts, in the order of the alphabet.</param>
/// <param name="Again">Where the same is done once more.</param>
public sealed record Slit(SheetBox Box, IReadOnlyList<string> Kinds, Mirrored Again);

/// <summary>What a path cuts.</summary>
public enum CutPathKind
{
    /// <summary>The outline of the piece: what lies outside is cut away.</summary>
    Outline,

    /// <summary>A hole: what lies inside is cut away.</summary>
    Hole,

    /// <summary>A cut with card on both sides.</summary>
    Slit,
}

/// <summary>A cut from point to point.</summary>
/// <param name="Kind">What it cuts.</param>
/// <param name="From">The letter of the point it starts at; an outline or a hole ends there too.</param>
/// <param name="Steps">Where it goes.</param>
public sealed record CutPath(CutPathKind Kind, string From, IReadOnlyList<PathStep> Steps);

/// <summary>One stretch of a path.</summary>
/// <param name="To">The letter of the point it ends at.</param>
/// <param name="Through">For an even curve the letter of the point half way along it; null for a straight stretch.</param>
public sealed record PathStep(string To, string? Through);
