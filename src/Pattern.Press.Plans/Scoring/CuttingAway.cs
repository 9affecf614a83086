using Pattern.Press.Measure;
using Pattern.Press.Nets;

namespace Pattern.Press.Plans.Scoring;

/// <summary>Everything that is cut away from a sheet or cut into it. Together it is all the piece's waste, once.</summary>
/// <param name="Rectangles">Upright rectangles, in reading order.</param>
/// <param name="Trims">Everything else that is cut away: slivers beside tabs, reliefs, slanted or round pieces.</param>
/// <param name="Slits">Straight cuts with card on both sides.</param>
public sealed record CuttingAway(
    IReadOnlyList<WasteRectangle> Rectangles,
    IReadOnlyList<Trim> Trims,
    IReadOnlyList<Slit> Slits)
{
    /// <summary>
    /// When the rectangles are four alike in the sheet's four corners, how they are marked out together; else null.
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

/// <summary>Something small or slanted that is cut off.</summary>
/// <param name="Outline">Its edge, in the sheet's millimetres.</param>
/// <param name="Panels">The panels it is cut from, by name, in the piece's order.</param>
/// <param name="IsStrip">Whether it is a narrow upright strip, as beside a panel that must fold in freely.</param>
public sealed record Trim(Outline Outline, IReadOnlyList<string> Panels, bool IsStrip);

/// <summary>A straight cut with card on both sides.</summary>
/// <param name="From">Its upper or left end, in the sheet's millimetres.</param>
/// <param name="To">Its other end.</param>
/// <param name="Panels">The two panels it parts, by name, in the piece's order.</param>
public sealed record Slit(Point From, Point To, IReadOnlyList<string> Panels);
