namespace Pattern.Press.Measure;

/// <summary>A size of paper for a printer, upright: the width is the shorter side.</summary>
/// <param name="Id">The word for it in commands and file names, in lower case: <c>a4</c>.</param>
/// <param name="Name">The name people read: <c>A4</c>.</param>
/// <param name="Size">Its sides, upright.</param>
public sealed record PaperSize(string Id, string Name, Size Size)
{
    /// <summary>ISO 216:2007.</summary>
    public static PaperSize A3 { get; } = Metric("a3", "A3", 297, 420);

    /// <summary>ISO 216:2007.</summary>
    public static PaperSize A4 { get; } = Metric("a4", "A4", 210, 297);

    /// <summary>ISO 216:2007.</summary>
    public static PaperSize A5 { get; } = Metric("a5", "A5", 148, 210);

    /// <summary>ASME Y14.1, size A.</summary>
    public static PaperSize Letter { get; } = Imperial("letter", "Letter", 8.5m, 11);

    /// <summary>8.5 × 14 in (from memory).</summary>
    public static PaperSize Legal { get; } = Imperial("legal", "Legal", 8.5m, 14);

    /// <summary>ASME Y14.1, size B.</summary>
    public static PaperSize Tabloid { get; } = Imperial("tabloid", "Tabloid", 11, 17);

    /// <summary>Every size known by name, in the order they are offered.</summary>
    public static IReadOnlyList<PaperSize> All { get; } = [A4, Letter, A3, A5, Tabloid, Legal];

    /// <summary>The size of that name, in any case, or null if there is none.</summary>
    public static PaperSize? Find(string id) =>
        All.FirstOrDefault(size => size.Id.Equals(id.Trim(), StringComparison.OrdinalIgnoreCase));

    private static PaperSize Metric(string id, string name, int width, int height) =>
        new(id, name, new Size(Length.FromMillimetres(width), Length.FromMillimetres(height)));

    private static PaperSize Imperial(string id, string name, decimal width, decimal height) =>
        new(id, name, new Size(Length.FromInches(width), Length.FromInches(height)));
}
