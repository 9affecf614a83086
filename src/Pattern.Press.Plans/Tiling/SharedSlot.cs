using Pattern.Press.Nets;

namespace Pattern.Press.Plans.Tiling;

/// <summary>A template with its label below it, turned or not, as it takes room on a shared page.</summary>
/// <param name="Part">What is drawn.</param>
/// <param name="Turned">Whether it is turned clockwise by a quarter.</param>
/// <param name="PartWidth">The template's width as it lies, in millimetres.</param>
/// <param name="PartHeight">The template's height as it lies.</param>
/// <param name="Label">The room for the label.</param>
internal sealed record SharedSlot(Part Part, bool Turned, double PartWidth, double PartHeight, LabelRoom Label)
{
    public double Width => Math.Max(PartWidth, Label.Width);

    public double Height => PartHeight + Label.Height;

    public bool Fits(DrawingArea area) => Width <= area.Width + 1e-9 && Height <= area.Height + 1e-9;

    /// <summary>The ways a template may lie: as drawn, and turned where that makes a difference and its stock allows it.</summary>
    public static IReadOnlyList<SharedSlot> Ways(Part part, TemplateOptions options)
    {
        var (width, height) = (part.Piece.Sheet.Width.Millimetres, part.Piece.Sheet.Height.Millimetres);
        var drawn = new SharedSlot(part, false, width, height, options.Label);
        return width == height || options.OneWay.Contains(part.Stock)
            ? [drawn]
            : [drawn, new SharedSlot(part, true, height, width, options.Label)];
    }
}

/// <summary>One template, or a mirrored pair that stays together.</summary>
/// <param name="Slots">What is in it and where, from its top-left corner.</param>
internal sealed record SharedBlock(IReadOnlyList<(SharedSlot Slot, double X, double Y)> Slots)
{
    public double Width { get; } = Slots.Max(s => s.X + s.Slot.Width);

    public double Height { get; } = Slots.Max(s => s.Y + s.Slot.Height);

    public bool Fits(DrawingArea area) => Width <= area.Width + 1e-9 && Height <= area.Height + 1e-9;

    /// <summary>The places of its templates when its top-left corner is at a point of the page.</summary>
    public IEnumerable<SharedPlace> At(double x, double y) => Slots.Select(s => new SharedPlace(s.Slot.Part, s.Slot.Turned, x + s.X, y + s.Y)
    {
        Label = new LabelPlace(x + s.X, y + s.Y + s.Slot.PartHeight, s.Slot.Width, s.Slot.Label.Height),
    });
}
