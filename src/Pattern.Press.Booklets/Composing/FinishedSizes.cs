using Pattern.Press.Measure;
using Pattern.Press.Structures.Fitting;

namespace Pattern.Press.Booklets.Composing;

/// <summary>How large the finished thing is outside, on the ruler of its fit.</summary>
internal static class FinishedSizes
{
    /// <summary>What is no thicker than this is flat: an envelope, a card, a band before it goes around anything.</summary>
    private static readonly Length Flat = Length.FromMillimetres(3);

    /// <summary>
    /// Across, deep and high, or the two sides of what lies flat: the sizes that the structure names, otherwise those of the
    /// folded thing to the nearest mark.
    /// </summary>
    public static IReadOnlyList<Length> Of(Model model, Item? item, IEnumerable<Stock> stocks)
    {
        var (across, deep, high) = (Named(model, "width"), Named(model, "depth"), Named(model, "height"));
        if (across is { } x && high is { } z)
            return deep is { } y ? [x, y, z] : [x, z];
        var (width, depth, height) = ModelProofs.Outside(model, item, stocks);
        var sizes = new[] { width, depth, height }.Select(size => Length.FromMillimetres(size)).ToList();
        var solid = sizes.Where(size => size > Flat).ToList();
        return [.. (solid.Count == 2 ? solid : sizes).Select(size => model.Kit.Ruler.Round(size, Rounding.Nearest))];
    }

    private static Length? Named(Model model, string name) =>
        model.Values.GetValueOrDefault($"size.outside_{name}") is LengthValue value ? value.Length : null;
}
