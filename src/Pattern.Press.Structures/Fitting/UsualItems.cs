using Pattern.Press.Measure;

namespace Pattern.Press.Structures.Fitting;

/// <summary>What a structure is tried with when its file names no example: a bar, a cube, something round, something flat.</summary>
internal static class UsualItems
{
    private static readonly IReadOnlyList<Item> All = [Block(80, 55, 25), Round(60, 70), Block(60, 60, 60), Round(30, 20), Block(148, 105, 2)];

    /// <summary>Those of the shapes that a structure takes.</summary>
    public static IReadOnlyList<Item> For(IReadOnlyList<ItemShape> shapes) => [.. All.Where(item => shapes.Contains(item.Shape))];

    private static Item Block(int width, int depth, int height) =>
        new("gift", ItemShape.Rectangular, Length.FromMillimetres(width), Length.FromMillimetres(depth), Length.FromMillimetres(height));

    private static Item Round(int across, int height) =>
        new("gift", ItemShape.Round, Length.FromMillimetres(across), Length.FromMillimetres(across), Length.FromMillimetres(height));
}
