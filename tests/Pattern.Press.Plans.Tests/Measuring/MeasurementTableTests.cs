using CsCheck;
using Pattern.Press.Measure;
using Pattern.Press.Nets;
using Pattern.Press.Plans.Measuring;
using static Pattern.Press.Nets.Tests.Sheets;

namespace Pattern.Press.Plans.Tests.Measuring;

public class MeasurementTableTests
{
    private static Kit Metric(params Part[] parts) => new(Ruler.WholeMillimetres, parts);

    private static Kit Imperial(params Part[] parts) => new(Ruler.SixteenthInches, parts);

    [Fact]
    public void The_known_base_has_its_known_figures_in_the_inch_column()
    {
        // Inches: common practice, no source. The metric fit beside it is another box, as fits of their own are.
        var rows = MeasurementTable.Make(
            Metric(Grids.Part(GussetBox(Mm(51), Mm(38), Mm(89), Mm(13)).Build())),
            Imperial(Grids.Part(Boxes.Base)));
        Assert.Equal(
            [
                "SheetSize  ×1: 229 216 | 9 8 1/2",
                "ScoresFromLeft  ×1: 89 140 | 3 1/2 5 1/2",
                "ScoresFromTop  ×1: 89 127 | 3 1/2 5",
                "PanelSize floor ×1: 51 38 | 2 1 1/2",
                "PanelSize long wall ×2: 51 89 | 2 3 1/2",
                "PanelSize short wall ×2: 38 89 | 1 1/2 3 1/2",
            ],
            rows.Select(Text));
    }

    [Fact]
    public void Panels_alike_in_one_column_only_have_rows_of_their_own()
    {
        // Square on the metric ruler, not square on the inch ruler.
        var rows = MeasurementTable.Make(
            Metric(Grids.Part(DoubleLid(Mm(60), Mm(60), Mm(20), 10, Mm(1)).Build())),
            Imperial(Grids.Part(DoubleLid(In("2 3/8"), In("2 5/16"), In("3/4"), 10, In("1/16")).Build())));
        Assert.Equal(
            ["PanelSize wall ×2: 60 20 | 2 3/8 3/4", "PanelSize wall ×2: 60 20 | 2 5/16 3/4"],
            rows.Where(row => row.PanelKind == "wall").Select(Text));
    }

    [Fact]
    public void A_mat_has_its_cut_size_and_its_number()
    {
        var row = Assert.Single(MeasurementTable.Make(Metric(Grids.Mat("strip", 6, 83, 4, hand: Hand.Left)), Imperial(Grids.Mat("strip", 6, 82, 4, hand: Hand.Left))));
        Assert.Equal((MeasurementKind.CutSize, 4, Hand.Left), (row.Kind, row.Count, row.Part.Hand));
    }

    [Fact]
    public void Two_different_kits_are_refused()
    {
        Part first = Grids.Part(Boxes.Base), second = Grids.Part(Boxes.Lid);
        Assert.Throws<ArgumentException>(() => MeasurementTable.Make(Metric(first), Imperial(first, second)));
        Assert.Throws<ArgumentException>(() => MeasurementTable.Make(Metric(first), Imperial(second)));
        Assert.Throws<ArgumentException>(() => MeasurementTable.Make(Metric(first), Imperial(first with { Quantity = 2 })));
        Assert.Throws<ArgumentException>(() => MeasurementTable.Make(Metric(first), Imperial(Grids.Part(Boxes.Raised with { Id = "base" }))));
        Assert.Throws<ArgumentException>(() => MeasurementTable.Make(Metric(first), Metric(first)));
    }

    [Fact]
    public void In_each_column_walls_and_floor_add_up_to_the_sheet_and_to_the_marks_exactly() =>
        Gen.Select(Gen.Int[20, 150], Gen.Int[20, 150], Gen.Int[15, 90], Gen.Int[2, 14]).Sample((length, width, height, gusset) =>
        {
            var sixteenth = Length.Inch / 16;
            var rows = MeasurementTable.Make(
                Metric(Grids.Part(GussetBox(Mm(length), Mm(width), Mm(height), Mm(gusset)).Build())),
                Imperial(Grids.Part(GussetBox(sixteenth * length, sixteenth * width, sixteenth * height, sixteenth * gusset).Build())));
            foreach (var column in new Func<MeasurementRow, IReadOnlyList<Length>>[] { row => row.Metric, row => row.Imperial })
            {
                var sheet = column(rows.Single(row => row.Kind == MeasurementKind.SheetSize));
                var floor = column(rows.Single(row => row.PanelKind == "floor"));
                foreach (var (side, kind, wall) in new[] { (0, MeasurementKind.ScoresFromLeft, "short wall"), (1, MeasurementKind.ScoresFromTop, "long wall") })
                {
                    var marks = column(rows.Single(row => row.Kind == kind));
                    var deep = column(rows.First(row => row.PanelKind == wall))[1];
                    Assert.Equal([deep, deep + floor[side]], marks);
                    Assert.Equal(sheet[side], deep + floor[side] + deep);
                }
            }
        }, iter: 60);

    private static string Text(MeasurementRow row) =>
        $"{row.Kind} {row.PanelKind} ×{row.Count}: {string.Join(' ', row.Metric.Select(l => LengthFormat.Number(l, Ruler.WholeMillimetres)))} | {string.Join(' ', row.Imperial.Select(LengthFormat.MixedInches))}";
}
