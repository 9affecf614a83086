using System.Globalization;

namespace Pattern.Press.Measure;

/// <summary>A size of paper for a printer, upright: the width is the shorter side.</summary>
/// <param name="Id">The word for it in commands and file names, in lower case: <c>a4</c>, <c>330x483mm</c>.</param>
/// <param name="Name">The name people read: <c>A4</c>, <c>330 × 483 mm</c>.</param>
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

    /// <summary>The least sides of a paper of any other size, about those of A5 and of half a Letter sheet: less has no room for a table.</summary>
    public static Size Least { get; } = new(Length.FromInches(5.5m), Length.FromInches(8));

    /// <summary>The greatest side of a paper of any other size, wider than the rolls of large plotters (from memory).</summary>
    public static Length Most { get; } = Length.FromMillimetres(2000);

    /// <summary>Reads a paper: a name, or two sides such as <c>330 x 483 mm</c> in either order.</summary>
    /// <param name="text">What was written.</param>
    /// <param name="paper">The paper, upright; one known by name if it has that size.</param>
    /// <param name="problem">
    /// What is wrong with a size, as a sentence with what to write instead; empty when it could be read, or when it is
    /// neither a name known here nor two sides.
    /// </param>
    /// <returns>Whether it could be read.</returns>
    public static bool TryParse(string text, out PaperSize paper, out string problem)
    {
        ArgumentNullException.ThrowIfNull(text);
        problem = "";
        if (Find(text) is { } known)
        {
            paper = known;
            return true;
        }

        paper = A4;
        if (!SizeParser.TryParse(text, out var size, out problem))
            return false;
        if (size.Shorter < Least.Shorter || size.Longer < Least.Longer || size.Longer > Most)
        {
            problem = $"A paper of {text.Trim()} is of no use for a booklet; the sides are from {InBoth(Least.Shorter)} and {InBoth(Least.Longer)} up to 2 m.";
            return false;
        }

        var system = text.TrimEnd() is [.., 'm' or 'M'] ? UnitSystem.Metric : UnitSystem.Imperial;
        paper = Custom(new Size(size.Shorter, size.Longer), system);
        return true;
    }

    private static PaperSize Custom(Size upright, UnitSystem system)
    {
        if (All.FirstOrDefault(known => known.Size == upright) is { } found)
            return found;
        var (unit, ruler) = system == UnitSystem.Metric ? ("mm", Ruler.WholeMillimetres) : ("in", Ruler.SixteenthInches);
        string Plain(Length side) =>
            ((decimal)side.Nanometres / (system == UnitSystem.Metric ? Length.Millimetre : Length.Inch).Nanometres).ToString("0.###", CultureInfo.InvariantCulture);
        return new PaperSize(
            $"{Plain(upright.Width)}x{Plain(upright.Height)}{unit}",
            $"{LengthFormat.Number(upright.Width, ruler)} × {LengthFormat.Number(upright.Height, ruler)} {unit}",
            upright);
    }

    private static string InBoth(Length inches) =>
        $"{LengthFormat.Format(inches, Ruler.SixteenthInches)} ({LengthFormat.Format(inches, Ruler.WholeMillimetres)})";

    private static PaperSize Metric(string id, string name, int width, int height) =>
        new(id, name, new Size(Length.FromMillimetres(width), Length.FromMillimetres(height)));

    private static PaperSize Imperial(string id, string name, decimal width, decimal height) =>
        new(id, name, new Size(Length.FromInches(width), Length.FromInches(height)));
}
