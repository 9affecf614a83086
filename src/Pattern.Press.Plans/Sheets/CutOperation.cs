using Pattern.Press.Measure;

namespace Pattern.Press.Plans.Sheets;

/// <summary>
/// Cuts that are made with the stop of the trimmer set once: one cut, a row of equal ones, or the same on several parts
/// that are alike.
/// </summary>
/// <param name="Number">Which operation this is, from 1.</param>
/// <param name="Down">Whether the cuts run down rather than across.</param>
/// <param name="Distance">How far from the left or the top of what is being cut.</param>
/// <param name="Parts">On how many parts that are alike; 1 or more.</param>
/// <param name="Cuts">The cuts, in their order, part after part.</param>
public sealed record CutOperation(int Number, bool Down, Length Distance, int Parts, IReadOnlyList<CutNode> Cuts)
{
    /// <summary>How many cuts one part takes.</summary>
    public int Repeats => Cuts.Count / Parts;

    /// <summary>
    /// The operations of a sheet, in an order a trimmer can follow: what is cut by one lies on the table when its turn
    /// comes.
    /// </summary>
    public static IReadOnlyList<CutOperation> Of(PlannedSheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        var operations = new List<CutOperation>();
        Add(operations, [sheet.Cuts]);
        return operations;
    }

    // The parts are alike but for where they lie.
    private static void Add(List<CutOperation> operations, IReadOnlyList<SheetNode> parts)
    {
        if (parts[0] is not CutNode first)
            return;

        // How often the same cut follows on what is left over, each time parting off the same.
        var repeats = 1;
        for (SheetNode rest = first.Second; rest is CutNode cut && cut.Down == first.Down && cut.Distance == first.Distance && IsAlike(cut.First, first.First); rest = cut.Second)
            repeats++;

        var cuts = new List<CutNode>();
        var (offcuts, rests) = (new List<SheetNode>(), new List<SheetNode>());
        foreach (var part in parts)
        {
            var rest = part;
            for (var i = 0; i < repeats; i++)
            {
                var cut = (CutNode)rest;
                cuts.Add(cut);
                offcuts.Add(cut.First);
                rest = cut.Second;
            }

            rests.Add(rest);
        }

        operations.Add(new CutOperation(operations.Count + 1, first.Down, first.Distance, parts.Count, cuts));

        // What remains at the end may be one more of the same.
        if (IsAlike(rests[0], first.First))
        {
            Add(operations, [.. offcuts, .. rests]);
            return;
        }

        Add(operations, offcuts);
        Add(operations, rests);
    }

    // Whether parts have one size and are cut alike; what they are cut for does not count.
    private static bool IsAlike(SheetNode one, SheetNode other) =>
        one.Area.Size == other.Area.Size
        && (one, other) switch
        {
            (CutNode a, CutNode b) => a.Down == b.Down && a.Distance == b.Distance && IsAlike(a.First, b.First) && IsAlike(a.Second, b.Second),
            (RectangleNode, RectangleNode) or (OffcutNode, OffcutNode) => true,
            _ => false,
        };
}
