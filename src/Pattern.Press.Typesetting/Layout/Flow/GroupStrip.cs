namespace Pattern.Press.Typesetting.Layout.Flow;

/// <summary>Columns side by side, their tops level.</summary>
/// <param name="kind">What it is, for messages.</param>
internal sealed class GroupStrip(string kind) : Strip
{
    private readonly List<(IReadOnlyList<PlacedStrip> Strips, double Shift)> _columns = [];
    private double _height;

    public override string Kind { get; } = kind;

    public override double Height => _height;

    public override bool IsCrowded => _columns.Exists(column => column.Strips.Any(placed => placed.Strip.IsCrowded));

    public override double Crowding =>
        _columns.SelectMany(column => column.Strips).Select(placed => placed.Strip.Crowding).DefaultIfEmpty().Max();

    public override double Baseline => _columns is [([var first, ..], _), ..] ? first.Y + first.Strip.Baseline : Height;

    /// <summary>Makes it at least so high, in millimetres.</summary>
    public void Stretch(double height) => _height = Math.Max(_height, height);

    /// <summary>Adds a column. The strips in it know their own distance from the left.</summary>
    /// <param name="strips">Its strips.</param>
    /// <param name="drop">How far below the others' tops it starts, in millimetres.</param>
    /// <param name="shift">How far to the right of where they were laid out its strips stand, in millimetres.</param>
    public void AddColumn(IReadOnlyList<Strip> strips, double drop = 0, double shift = 0)
    {
        var (placed, height) = Stacking.Stack(strips);
        if (drop != 0)
            placed = [.. placed.Select(strip => strip with { Y = strip.Y + drop })];
        _columns.Add((placed, shift));
        _height = Math.Max(_height, height + drop);
    }

    public override void CollectDestinations(ICollection<string> names)
    {
        base.CollectDestinations(names);
        foreach (var (strips, _) in _columns)
        {
            foreach (var placed in strips)
                placed.Strip.CollectDestinations(names);
        }
    }

    protected override void Draw(PageCanvas canvas, double x, double y)
    {
        foreach (var (strips, shift) in _columns)
            Stacking.Draw(canvas, strips, x - X + shift, y, null);
    }
}
