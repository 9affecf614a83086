using Pattern.Press.Measure;

namespace Pattern.Press.Plans.Sheets;

/// <summary>Writes a packed sheet as numbered cuts.</summary>
internal sealed class SheetTree(IReadOnlyList<WantedRectangle> items, Size sheet, Length trim)
{
    private readonly List<PlacedRectangle> _placed = [];
    private int _number;

    public PlannedSheet Planned(Packing.Part root)
    {
        var cuts = Trimmed(new SheetArea(Length.Zero, Length.Zero, sheet), 0, root);
        return new PlannedSheet([.. _placed.OrderBy(r => r.Top).ThenBy(r => r.Left)], cuts);
    }

    // The untrue edges come off first, one after the other: left, top, right, bottom.
    private SheetNode Trimmed(SheetArea area, int side, Packing.Part root)
    {
        if (side == 4 || trim == Length.Zero)
            return Node(root);
        var number = ++_number;
        var down = side % 2 == 0;
        var at = side switch
        {
            0 => trim,
            1 => trim,
            2 => sheet.Width - trim,
            _ => sheet.Height - trim,
        };
        var (first, second) = Halves(area, down, at);
        var rest = Trimmed(side < 2 ? second : first, side + 1, root);
        return side < 2
            ? new CutNode(area, number, down, at, new OffcutNode(first, IsTrim: true), rest)
            : new CutNode(area, number, down, at, rest, new OffcutNode(second, IsTrim: true));
    }

    private SheetNode Node(Packing.Part part)
    {
        Length Exact(long nanometres) => Length.FromNanometres(nanometres);
        var area = new SheetArea(trim + Exact(part.Left), trim + Exact(part.Top), new Size(Exact(part.Width), Exact(part.Height)));
        if (part.First is not null)
        {
            var number = ++_number;
            var at = part.Down ? trim + Exact(part.Second!.Left) : trim + Exact(part.Second!.Top);
            var first = Node(part.First);
            return new CutNode(area, number, part.Down, at, first, Node(part.Second));
        }

        if (part.Item < 0)
            return new OffcutNode(area, IsTrim: false);
        var placed = new PlacedRectangle(items[part.Item], area.Left, area.Top, part.Turned);
        _placed.Add(placed);
        return new RectangleNode(area, placed);
    }

    private static (SheetArea First, SheetArea Second) Halves(SheetArea area, bool down, Length at) => down
        ? (area with { Size = new Size(at - area.Left, area.Size.Height) },
           new SheetArea(at, area.Top, new Size(area.Right - at, area.Size.Height)))
        : (area with { Size = new Size(area.Size.Width, at - area.Top) },
           new SheetArea(area.Left, at, new Size(area.Size.Width, area.Bottom - at)));
}
