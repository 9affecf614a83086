using Pattern.Press.Measure;
using Pattern.Press.Nets;

namespace Pattern.Press.Plans.Scoring;

/// <summary>
/// Takes what is cut away from a piece's sheet apart into what a maker marks and cuts: upright rectangles around the regions of
/// its panels, then what lies beside a panel in its own box.
/// </summary>
internal static class CuttingAwayMaker
{
    // Narrower than this is said after the large ones, as it is snipped off along the panel. Common practice, no source.
    private static readonly Length Narrow = Length.FromMillimetres(5);

    /// <summary>What is cut away from an upright piece.</summary>
    public static CuttingAway Make(Piece piece, UprightPanels panels)
    {
        var rectangles = panels.Around
            .Select(bounds => Rectangle(piece.Sheet, bounds))
            .OrderBy(r => r.Size.Shorter < Narrow).ThenBy(r => r.Top).ThenBy(r => r.Left)
            .ToList();
        var sheet = piece.Sheet;
        return new CuttingAway
        {
            Rectangles = rectangles,
            Ends = MirroredOnSheet.Gathered(panels.Ends.OrderBy(end => end.Box.Top).ThenBy(end => end.Box.Left), end => Across(end, sheet), end => Down(end, sheet), (end, again) => end with { Again = again }),
            Notches = MirroredOnSheet.Gathered(panels.Notches.OrderBy(notch => notch.From), notch => Across(notch, sheet), notch => Down(notch, sheet), (notch, again) => notch with { Again = again }),
            Holes = MirroredOnSheet.Gathered(
                panels.Holes.OrderBy(hole => hole.Box.Top).ThenBy(hole => hole.Box.Left),
                hole => hole with { Box = MirroredOnSheet.Across(hole.Box, sheet) },
                hole => hole with { Box = MirroredOnSheet.Down(hole.Box, sheet) },
                (hole, again) => hole with { Again = again }),
            Slits = MirroredOnSheet.Gathered(
                SlitLines.Of(piece).Select(slit => new AlikeSlit(Box(slit.Line), string.Join('/', slit.Kinds), Mirrored.Nowhere)).OrderBy(slit => slit.Box.Top).ThenBy(slit => slit.Box.Left),
                slit => slit with { Box = MirroredOnSheet.Across(slit.Box, sheet) },
                slit => slit with { Box = MirroredOnSheet.Down(slit.Box, sheet) },
                (slit, again) => slit with { Again = again })
                .Select(slit => new Slit(slit.Box, slit.Kinds.Split('/'), slit.Again)).ToList(),
            FourCorners = FourCorners(sheet, rectangles),
        };
    }

    private static NarrowedEnd Across(NarrowedEnd end, Size sheet)
    {
        var level = MirroredOnSheet.IsLevel(end.End);
        return end with
        {
            Box = MirroredOnSheet.Across(end.Box, sheet),
            End = MirroredOnSheet.Across(end.End),
            From = level ? sheet.Width - end.To : end.From,
            To = level ? sheet.Width - end.From : end.To,
        };
    }

    private static NarrowedEnd Down(NarrowedEnd end, Size sheet)
    {
        var level = MirroredOnSheet.IsLevel(end.End);
        return end with
        {
            Box = MirroredOnSheet.Down(end.Box, sheet),
            End = MirroredOnSheet.Down(end.End),
            From = level ? end.From : sheet.Height - end.To,
            To = level ? end.To : sheet.Height - end.From,
        };
    }

    private static EdgeNotch Across(EdgeNotch notch, Size sheet) => MirroredOnSheet.IsLevel(notch.Edge)
        ? notch with { From = sheet.Width - notch.To, To = sheet.Width - notch.From }
        : notch with { Edge = MirroredOnSheet.Across(notch.Edge), At = sheet.Width - notch.At };

    private static EdgeNotch Down(EdgeNotch notch, Size sheet) => MirroredOnSheet.IsLevel(notch.Edge)
        ? notch with { Edge = MirroredOnSheet.Down(notch.Edge), At = sheet.Height - notch.At }
        : notch with { From = sheet.Height - notch.To, To = sheet.Height - notch.From };

    private static SheetBox Box(Edge line)
    {
        var bounds = line.Bounds;
        return new SheetBox(Length.FromMillimetres(bounds.Left), Length.FromMillimetres(bounds.Top), Length.FromMillimetres(bounds.Right), Length.FromMillimetres(bounds.Bottom));
    }

    private static CornerMarks? FourCorners(Size sheet, List<WasteRectangle> rectangles)
    {
        var corners = rectangles.Where(r => r.Corner is not null).ToList();
        if (corners.Count != 4 || corners.Exists(r => r.Size != corners[0].Size))
            return null;
        var (width, height) = (corners[0].Size.Width, corners[0].Size.Height);
        return new CornerMarks([width, sheet.Width - width], [height, sheet.Height - height], height, width);
    }

    private static WasteRectangle Rectangle(Size sheet, Bounds bounds)
    {
        var (left, top) = (Length.FromMillimetres(bounds.Left), Length.FromMillimetres(bounds.Top));
        var (right, bottom) = (Length.FromMillimetres(bounds.Right), Length.FromMillimetres(bounds.Bottom));
        SheetCorner? corner = (left == Length.Zero, right == sheet.Width, top == Length.Zero, bottom == sheet.Height) switch
        {
            (true, false, true, false) => SheetCorner.TopLeft,
            (false, true, true, false) => SheetCorner.TopRight,
            (true, false, false, true) => SheetCorner.BottomLeft,
            (false, true, false, true) => SheetCorner.BottomRight,
            _ => null,
        };
        return new WasteRectangle(left, top, new Size(right - left, bottom - top), corner);
    }

    // Kinds as one text, so that slits compare by what they part.
    private sealed record AlikeSlit(SheetBox Box, string Kinds, Mirrored Again);
}
