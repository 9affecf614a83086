using Pattern.Press.Measure;

namespace Pattern.Press.Plans.Sheets;

/// <summary>
/// The cuts of a planned sheet in the other column: the same cuts in the same order, each as far in as that column's
/// rectangles need. The two columns are fits of their own, so a plan made for one need not hold in the other.
/// </summary>
/// <param name="Distances">What the stop of the trimmer is set to for each operation, in the order of <see cref="PlannedSheet.Operations"/>.</param>
/// <param name="Offcuts">What is left over, in the order of <see cref="PlannedSheet.Offcuts"/>.</param>
public sealed record OtherColumn(IReadOnlyList<Length> Distances, IReadOnlyList<Size> Offcuts)
{
    /// <summary>The cuts of a planned sheet in the other column.</summary>
    /// <param name="sheet">A planned sheet.</param>
    /// <param name="sizeOf">The size of each wanted rectangle in the other column.</param>
    /// <returns>Null when the other column's rectangles do not go on the sheet that way.</returns>
    public static OtherColumn? Of(PlannedSheet sheet, Func<WantedRectangle, Size> sizeOf)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentNullException.ThrowIfNull(sizeOf);
        var distances = new SortedDictionary<int, Length>();
        var node = sheet.Cuts;
        while (node is CutNode { First: var first, Second: var second } trim && (IsTrim(first) || IsTrim(second)))
        {
            distances[trim.Number] = trim.Distance;
            node = IsTrim(first) ? second : first;
        }

        var needed = Needed(node, sizeOf, distances);
        if (needed.Width > node.Area.Size.Width || needed.Height > node.Area.Size.Height)
            return null;
        var settings = new List<Length>();
        foreach (var operation in sheet.Operations)
        {
            // What is of one size here may be of two in the other column; then one setting does not do for both.
            var set = operation.Cuts.Select(cut => distances[cut.Number]).Distinct().ToList();
            if (set.Count > 1)
                return null;
            settings.Add(set[0]);
        }

        var offcuts = new Dictionary<SheetArea, Size>();
        Lay(sheet.Cuts, sheet.Cuts.Area.Size, distances, offcuts);
        return new OtherColumn(settings, [.. sheet.Offcuts.Select(area => offcuts[area])]);
    }

    private static void Lay(SheetNode node, Size size, SortedDictionary<int, Length> distances, Dictionary<SheetArea, Size> offcuts)
    {
        if (node is OffcutNode)
            offcuts[node.Area] = size;
        if (node is not CutNode cut)
            return;
        var near = distances[cut.Number];
        Lay(cut.First, cut.Down ? new Size(near, size.Height) : new Size(size.Width, near), distances, offcuts);
        Lay(cut.Second, cut.Down ? new Size(size.Width - near, size.Height) : new Size(size.Width, size.Height - near), distances, offcuts);
    }

    private static bool IsTrim(SheetNode node) => node is OffcutNode { IsTrim: true };

    private static Size Needed(SheetNode node, Func<WantedRectangle, Size> sizeOf, SortedDictionary<int, Length> distances)
    {
        switch (node)
        {
            case RectangleNode { Rectangle: var rectangle }:
                return rectangle.Turned ? sizeOf(rectangle.Wanted).Turned : sizeOf(rectangle.Wanted);
            case CutNode cut:
                var (first, second) = (Needed(cut.First, sizeOf, distances), Needed(cut.Second, sizeOf, distances));
                distances[cut.Number] = cut.Down ? first.Width : first.Height;
                return cut.Down
                    ? new Size(first.Width + second.Width, Length.Max(first.Height, second.Height))
                    : new Size(Length.Max(first.Width, second.Width), first.Height + second.Height);
            default:
                return default;
        }
    }
}
