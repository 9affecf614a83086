using Pattern.Press.Measure;
using Pattern.Press.Nets.Building;

namespace Pattern.Press.Plans.Scoring;

/// <summary>Gathers what is cut alike in mirrored places of a sheet, so that it is said once.</summary>
internal static class MirroredOnSheet
{
    /// <summary>The first of each group in the order given, with where the others are.</summary>
    /// <param name="items">The cuts.</param>
    /// <param name="across">The mirror image of one in the line down the middle of the sheet.</param>
    /// <param name="down">Its mirror image in the line across the middle.</param>
    /// <param name="again">Says of one where it is done once more.</param>
    public static IReadOnlyList<T> Gathered<T>(IEnumerable<T> items, Func<T, T> across, Func<T, T> down, Func<T, Mirrored, T> again)
        where T : class
    {
        var left = items.ToList();
        var gathered = new List<T>();
        while (left.Count > 0)
        {
            var first = left[0];
            left.RemoveAt(0);
            var (beside, below, aslant) = (Index(across(first)), Index(down(first)), Index(across(down(first))));
            var where = (beside >= 0, below >= 0, aslant >= 0) switch
            {
                (true, true, true) when beside != below => Mirrored.AllQuarters,
                (true, _, _) => Mirrored.LeftToRight,
                (_, true, _) => Mirrored.TopToBottom,
                _ => Mirrored.Nowhere,
            };
            int[] taken = where switch
            {
                Mirrored.AllQuarters => [beside, below, aslant],
                Mirrored.LeftToRight => [beside],
                Mirrored.TopToBottom => [below],
                _ => [],
            };
            foreach (var index in taken.Distinct().OrderDescending())
                left.RemoveAt(index);
            gathered.Add(again(first, where));

            int Index(T image) => left.IndexOf(image);
        }

        return gathered;
    }

    /// <summary>A box seen in a mirror down the middle of the sheet.</summary>
    public static SheetBox Across(SheetBox box, Size sheet) => box with { Left = sheet.Width - box.Right, Right = sheet.Width - box.Left };

    /// <summary>A box seen in a mirror across the middle of the sheet.</summary>
    public static SheetBox Down(SheetBox box, Size sheet) => box with { Top = sheet.Height - box.Bottom, Bottom = sheet.Height - box.Top };

    /// <summary>The edge that the mirror down the middle shows.</summary>
    public static SheetEdge Across(SheetEdge edge) => edge switch
    {
        SheetEdge.Left => SheetEdge.Right,
        SheetEdge.Right => SheetEdge.Left,
        _ => edge,
    };

    /// <summary>The edge that the mirror across the middle shows.</summary>
    public static SheetEdge Down(SheetEdge edge) => edge switch
    {
        SheetEdge.Top => SheetEdge.Bottom,
        SheetEdge.Bottom => SheetEdge.Top,
        _ => edge,
    };

    /// <summary>Whether an edge runs across the sheet.</summary>
    public static bool IsLevel(SheetEdge edge) => edge is SheetEdge.Top or SheetEdge.Bottom;
}
