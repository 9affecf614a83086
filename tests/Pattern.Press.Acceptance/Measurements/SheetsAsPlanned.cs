using Pattern.Press.Acceptance.Booklets;
using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Plans.Materials;
using Pattern.Press.Plans.Sheets;

namespace Pattern.Press.Acceptance.Measurements;

/// <summary>The plan that a booklet prints, cut up by a trimmer who knows the sheet and the numbered cuts alone.</summary>
public sealed class SheetsAsPlanned
{
    [Theory]
    [MemberData(nameof(Workshop.Booklets), MemberType = typeof(Workshop))]
    public void Every_rectangle_of_all_kits_is_cut_once_inside_the_trim_by_cuts_from_edge_to_edge(string name)
    {
        var booklet = Workshop.Of(name);
        foreach (var kit in new[] { booklet.Metric.Kit, booklet.Imperial.Kit })
        {
            var list = MaterialsList.Make(kit, booklet.Source.Kits, [.. booklet.Source.Stocks.Values]);
            Assert.Equal(kit.Parts.Select(part => part.Stock).Distinct().Order(StringComparer.Ordinal), list.Stocks.Select(need => need.Stock.Id).Order(StringComparer.Ordinal));
            foreach (var need in list.Stocks)
            {
                Assert.Empty(need.Plan.TooLarge);
                var cut = need.Plan.Sheets.SelectMany(sheet => CutUp(sheet, need.Stock)).ToList();
                var parts = kit.Parts.Where(part => part.Stock == need.Stock.Id).ToList();
                Assert.Equal(parts.Sum(part => part.Quantity) * booklet.Source.Kits, cut.Count);
                foreach (var part in parts)
                    Assert.Equal(part.Quantity * booklet.Source.Kits, cut.Count(one => one.Part == part));
                Assert.All(cut, one => Assert.True(
                    one.Size == one.Part.Piece.Sheet || (need.Stock.MayTurn && one.Size == one.Part.Piece.Sheet.Turned),
                    $"{one.Part.Piece.Name} is cut to {one.Size}."));
            }
        }
    }

    // Only parts that lie on the table are cut, each right through; so nothing that is left can overlap.
    private static IEnumerable<(Part Part, Size Size)> CutUp(PlannedSheet planned, Stock stock)
    {
        var sheet = stock.SheetAsCut;
        var table = new List<SheetArea> { new(Length.Zero, Length.Zero, sheet) };
        foreach (var cut in planned.Operations.SelectMany(operation => operation.Cuts))
        {
            Assert.True(table.Remove(cut.Area), "A part is cut that does not lie on the table.");
            var (width, height) = (cut.Area.Size.Width, cut.Area.Size.Height);
            var near = cut.At - (cut.Down ? cut.Area.Left : cut.Area.Top);
            Assert.True(near > Length.Zero && near < (cut.Down ? width : height), "A cut misses its part.");
            table.Add(cut.Area with { Size = cut.Down ? new Size(near, height) : new Size(width, near) });
            table.Add(cut.Down
                ? new SheetArea(cut.At, cut.Area.Top, new Size(width - near, height))
                : new SheetArea(cut.Area.Left, cut.At, new Size(width, height - near)));
        }

        foreach (var rectangle in planned.Rectangles)
        {
            var area = new SheetArea(rectangle.Left, rectangle.Top, rectangle.Size);
            Assert.True(table.Remove(area), $"{rectangle.Wanted.Name} is not cut out.");
            Assert.True(area.Left >= stock.Trim && area.Top >= stock.Trim && area.Right <= sheet.Width - stock.Trim && area.Bottom <= sheet.Height - stock.Trim);
            yield return (rectangle.Wanted.Part!, area.Size);
        }
    }
}
