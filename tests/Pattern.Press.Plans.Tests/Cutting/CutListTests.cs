using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Plans.Cutting;
using static Pattern.Press.Nets.Tests.Sheets;

namespace Pattern.Press.Plans.Tests.Cutting;

public class CutListTests
{
    private static readonly Kit Kit = new(
        Ruler.WholeMillimetres,
        [
            Grids.Part(Boxes.Base),
            Grids.Mat("strip, left", 6, 83, quantity: 4, hand: Hand.Left),
            Grids.Part(Boxes.Lid),
            Grids.Mat("strip, right", 6, 83, quantity: 4, hand: Hand.Right),
            Grids.Mat("wall mat", 45, 83, quantity: 2),
        ]);

    [Fact]
    public void Rectangles_are_grouped_by_stock_and_counted_for_all_kits()
    {
        var list = CutList.Make(Kit, 14);
        Assert.Equal(["card", "patterned"], list.Groups.Select(group => group.Stock));
        Assert.Equal([("base", 14), ("lid", 14)], list.Groups[0].Items.Select(item => (item.Part.Piece.Id, item.Quantity)));
        Assert.Equal([56, 56, 28], list.Groups[1].Items.Select(item => item.Quantity));
        Assert.Equal((In("9"), In("8 1/2")), (list.Groups[0].Items[0].Size.Width, list.Groups[0].Items[0].Size.Height));
    }

    [Fact]
    public void The_two_hands_of_a_pair_are_cut_face_to_face_and_nothing_else_is()
    {
        var items = CutList.Make(Kit, 1).Groups[1].Items;
        Assert.Equal("strip, right", items[0].FaceToFaceWith?.Piece.Id);
        Assert.Equal("strip, left", items[1].FaceToFaceWith?.Piece.Id);
        Assert.Null(items[2].FaceToFaceWith);
    }

    [Fact]
    public void No_kits_are_refused() => Assert.Throws<ArgumentOutOfRangeException>(() => CutList.Make(Kit, 0));
}
