using CsCheck;
using Pattern.Press.Measure;
using Pattern.Press.Nets.Building;
using Pattern.Press.Nets.Checks;
using static Pattern.Press.Nets.Tests.Sheets;

namespace Pattern.Press.Nets.Tests.Building;

public sealed class ScoredSheetTests
{
    [Fact]
    public void Two_panels_that_lie_side_by_side_without_hanging_from_each_other_are_cut_apart_once()
    {
        var piece = Sheet([20, 30], [10, 40], ["ab", "Fc"], new()
        {
            ['F'] = Floor,
            ['a'] = Wall("flap"),
            ['c'] = Wall("side"),
            ['b'] = Wall("ear") with { HangsFrom = HangsFrom.AboveOrBelow },
        }).Build();
        Assert.Empty(piece.Waste);
        Assert.Equal(
            [("F", "a"), ("F", "c"), ("c", "b")],
            piece.Folds.Select(fold => (Letter(fold.Parent), Letter(fold.Child))));

        // Four sides of the sheet and one slit.
        Assert.Equal(5, piece.Cuts.Count);
        Assert.Contains(new Edge(new(20, 0), new(20, 10)), piece.Cuts);
        Assert.Equal(4, piece.Outline.Edges.Count);

        static string Letter(string name) => name switch { "floor" => "F", "flap" => "a", "side" => "c", _ => "b" };
    }

    [Fact]
    public void A_window_between_panels_is_waste_and_its_sides_are_cut_but_the_outline_goes_round_the_outside()
    {
        var piece = Sheet([10, 10, 10], [10, 10, 10], ["aFc", "d.e", "ffh"], new()
        {
            ['F'] = Floor,
            ['a'] = Wall("a"),
            ['c'] = Wall("c"),
            ['d'] = Wall("d"),
            ['e'] = Wall("e"),
            ['f'] = Wall("f"),
            ['h'] = Wall("h"),
        }).Build();
        var window = Assert.Single(piece.Waste);
        Assert.Equal(100, window.Outline.Area, 9);
        Assert.Equal(900, piece.Outline.Area, 9);

        // The sheet's sides, three sides of the window, and the slit between f and h that runs on in the fourth.
        Assert.Equal(8, piece.Cuts.Count);
        Assert.Contains(new Edge(new(20, 10), new(20, 30)), piece.Cuts);
        Assert.Equal(120 + 40 + 10, piece.Cuts.Sum(cut => cut.Length), 9);
    }

    [Fact]
    public void Corners_of_cells_on_a_straight_side_are_not_corners_of_the_panel()
    {
        var piece = Sheet([10, 20, 30], [5, 5], ["FFF", "FF."], new() { ['F'] = Floor }).Build();
        Assert.Equal(6, piece.Panel("floor").Outline.Edges.Count);
        Assert.Equal((10 * 60) - (5 * 30), piece.Panel("floor").Outline.Area);
        Assert.Equal(6, piece.Cuts.Count);
    }

    [Fact]
    public void Waste_that_meets_only_at_a_corner_stays_in_two_regions()
    {
        var piece = Sheet([10, 10, 10], [10, 10, 10], ["aF.", "a.b", "acc"], new()
        {
            ['F'] = Floor,
            ['a'] = Wall("back"),
            ['c'] = Wall("front"),
            ['b'] = Wall("ear"),
        }).Build();
        Assert.Equal(2, piece.Waste.Count);
        Assert.All(piece.Waste, waste => Assert.Equal(100, waste.Outline.Area, 9));
        Assert.Empty(PieceChecks.Problems(piece));
    }

    [Fact]
    public void Panels_in_a_row_are_numbered_from_the_root_outwards()
    {
        var piece = Sheet([10, 10, 10, 10], [30], ["Fabc"], new()
        {
            ['F'] = new() { Kind = "side" },
            ['a'] = Wall("side"),
            ['b'] = Wall("side"),
            ['c'] = Wall("seam"),
        }).Build();
        Assert.Equal(["middle side", "right side 1", "right side 2", "seam"], piece.Panels.Select(panel => panel.Name));
    }

    [Theory]
    [InlineData(DiagonalDirection.Falling)]
    [InlineData(DiagonalDirection.Rising)]
    public void A_diagonal_runs_the_way_it_is_told_and_joins_each_half_to_the_panel_beside_it(DiagonalDirection direction)
    {
        // A cell between four panels of one letter would be ambiguous; here each half has one.
        string[] map = direction == DiagonalDirection.Falling ? ["Fgg", "gdg", "gg."] : ["ggF", "gdg", ".gg"];
        var sheet = Sheet([10, 10, 10], [10, 10, 10], map, new()
        {
            ['F'] = Floor,
            ['g'] = Wall("web"),
            ['d'] = new() { Kind = "mitre", Diagonal = new('g', Mountain(180), direction) },
        });
        var piece = sheet.Build();
        Assert.Equal(3, piece.Panels.Count);
        Assert.All(piece.Panels.Where(panel => panel.Kind == "web"), panel => Assert.Equal(350, panel.Outline.Area, 9));
        var mitre = Assert.Single(piece.Folds, fold => fold.Direction == FoldDirection.Mountain);
        Assert.Equal(Math.Sqrt(200), mitre.From.DistanceTo(mitre.To), 9);
        Assert.Equal(direction == DiagonalDirection.Falling ? new Point(10, 10) : new Point(20, 10), mitre.From);
    }

    [Fact]
    public void A_lip_on_a_relieved_wall_folds_along_what_is_left_of_it()
    {
        var piece = Sheet([60], [10, 20, 40], ["l", "i", "F"], new()
        {
            ['F'] = Floor,
            ['i'] = Wall("inner wall") with { Relief = Mm(2) },
            ['l'] = Wall("lip"),
        }).Build();
        var fold = Assert.Single(piece.Folds, fold => fold.Child == "lip");
        Assert.Equal((new Point(2, 10), new Point(58, 10)), (fold.From, fold.To));
        Assert.Equal(60 * 10, piece.Panel("lip").Outline.Area, 9);
        Assert.Equal(2, piece.Waste.Count);
        Assert.Empty(PieceChecks.Problems(piece));
    }

    [Fact]
    public void A_panel_hangs_from_what_is_left_of_a_trimmed_one_or_not_at_all()
    {
        // The ear beside the tab has nothing to hang from once the tab's end leans away from it.
        var error = Assert.Throws<NetException>(Sheet([30, 20], [10, 40], ["te", "F."], new()
        {
            ['F'] = Floor,
            ['t'] = Wall("tab") with { Taper = 10 },
            ['e'] = Wall("ear"),
        }).Build);
        Assert.Contains("The ear “e” in row 1, band 2 across, is cut off from the rest", Assert.Single(error.Reasons), StringComparison.Ordinal);
    }

    [Fact]
    public void A_sheet_drawn_as_in_a_mirror_makes_the_piece_in_the_mirror() =>
        RandomSheets.Sample(sheet =>
        {
            var piece = sheet.Build();
            var mirrored = (sheet with
            {
                Across = [.. sheet.Across.Reverse()],
                Map = [.. sheet.Map.Select(row => new string([.. row.Reverse()]))],
            }).Build();
            var middle = piece.Sheet.Width.Millimetres / 2;
            Assert.Equal(piece.Sheet, mirrored.Sheet);
            AssertSame(piece.Panels.Select(panel => panel.Outline.MirroredAt(middle)), mirrored.Panels.Select(panel => panel.Outline));
            AssertSame(piece.Waste.Select(waste => waste.Outline.MirroredAt(middle)), mirrored.Waste.Select(waste => waste.Outline));
            Assert.Equal(piece.Cuts.Sum(cut => cut.Length), mirrored.Cuts.Sum(cut => cut.Length), 6);
            Assert.Equal(piece.Folds.Count, mirrored.Folds.Count);
        }, iter: 100);

    [Fact]
    public void Any_sheet_with_arms_flaps_and_tabs_is_sound_and_its_parts_fill_it() =>
        RandomSheets.Sample(sheet =>
        {
            var piece = sheet.Build();
            Assert.Empty(PieceChecks.Problems(piece));
            Assert.Equal(piece.Panels.Count - 1, piece.Folds.Count);
            var kept = piece.Panels.Sum(panel => panel.Outline.Area);
            var waste = piece.Waste.Sum(region => region.Outline.Area - region.Holes.Sum(hole => hole.Area));
            Assert.Equal(piece.Sheet.SquareMillimetres, kept + waste, piece.Sheet.SquareMillimetres * 1e-9);
            Assert.Equal(ExpectedArea(sheet), kept, piece.Sheet.SquareMillimetres * 1e-9);

            // Every side of a panel is a fold, seen from both panels, or a cut; slits are sides of two panels but one cut.
            var sides = piece.Panels.Sum(panel => panel.Outline.Perimeter);
            var folds = piece.Folds.Sum(fold => fold.From.DistanceTo(fold.To));
            var cuts = piece.Cuts.Sum(cut => cut.Length);
            var slits = sides - (2 * folds) - cuts;
            Assert.Equal(piece.Outline.Perimeter, cuts - slits, 1e-6);
        }, iter: 150);

    [Fact]
    public void Building_twice_gives_the_same_piece() =>
        RandomSheets.Sample(sheet =>
        {
            var (a, b) = (sheet.Build(), sheet.Build());
            Assert.Equal(a.Panels.Select(panel => panel.Name), b.Panels.Select(panel => panel.Name));
            Assert.Equal(a.Cuts, b.Cuts);
            Assert.Equal(a.Folds, b.Folds);
            Assert.Equal(a.Outline.Edges, b.Outline.Edges);
        }, iter: 20);

    // A floor with up to four arms, each with an outer flap or none, and in the inner corners a tab that hangs from the arm
    // beside it or from the arm above or below it, or nothing; every size by chance.
    private static Gen<ScoredSheet> RandomSheets { get; } =
        from across in Gen.Int[40, 900].Array[5]
        from down in Gen.Int[40, 900].Array[5]
        from arms in Gen.Int[0, 2].Array[4]
        from tabs in Gen.Int[0, 2].Array[4]
        from taper in Gen.OneOf(Gen.Const(0.0), Gen.Int[1, 100].Select(tenths => tenths / 10.0))
        from relief in Gen.Int[0, 15]
        select Random(across, down, arms, tabs, taper, relief);

    private static ScoredSheet Random(int[] across, int[] down, int[] arms, int[] tabs, double taper, int relief)
    {
        // Bands of tabs are kept narrower than three times the others, so that no taper takes all of one.
        char[][] map = [.. Enumerable.Range(0, 5).Select(_ => ".....".ToCharArray())];
        map[2][2] = 'F';
        (int Row, int Column)[] ways = [(-1, 0), (0, 1), (1, 0), (0, -1)];
        for (var i = 0; i < 4; i++)
        {
            if (arms[i] > 0)
                map[2 + ways[i].Row][2 + ways[i].Column] = "nesw"[i];
            if (arms[i] > 1)
                map[2 + (2 * ways[i].Row)][2 + (2 * ways[i].Column)] = "NESW"[i];
        }

        (int Row, int Column)[] corners = [(1, 1), (1, 3), (3, 3), (3, 1)];
        for (var i = 0; i < 4; i++)
        {
            var (row, column) = corners[i];
            var held = tabs[i] == 1 ? map[row][2] : tabs[i] == 2 ? map[2][column] : '.';
            if (held != '.')
                map[row][column] = tabs[i] == 1 ? 'b' : 'v';
        }

        var cells = new Dictionary<char, Cell>
        {
            ['F'] = Floor,
            ['n'] = Wall(),
            ['e'] = Wall(),
            ['s'] = Wall(),
            ['w'] = Wall(),
            ['N'] = Wall("flap") with { Relief = Mm(relief / 10m) },
            ['E'] = Wall("flap"),
            ['S'] = Wall("flap"),
            ['W'] = Wall("flap") with { Relief = Mm(relief / 10m) },
            ['b'] = Wall("tab") with { Role = PanelRole.Tab, HangsFrom = HangsFrom.Beside, Taper = taper },
            ['v'] = Wall("tab") with { Role = PanelRole.Tab, HangsFrom = HangsFrom.AboveOrBelow, Taper = taper },
        };
        string[] rows = [.. map.Select(row => new string(row))];
        var used = string.Concat(rows);
        return new ScoredSheet
        {
            Id = "chance",
            Name = "Chance",
            Across = [.. across.Select((width, i) => Mm((i is 1 or 3 ? 40 + (width / 10) : 100 + width) / 10m))],
            Down = [.. down.Select((width, i) => Mm((i is 1 or 3 ? 40 + (width / 10) : 100 + width) / 10m))],
            Map = rows,
            Cells = cells.Where(cell => used.Contains(cell.Key, StringComparison.Ordinal)).ToDictionary(),
            Root = 'F',
        };
    }

    // Cell by cell, less what tapers and reliefs take.
    private static double ExpectedArea(ScoredSheet sheet)
    {
        var area = 0.0;
        for (var row = 0; row < sheet.Down.Count; row++)
        {
            for (var column = 0; column < sheet.Across.Count; column++)
            {
                if (!sheet.Cells.TryGetValue(sheet.Map[row][column], out var cell))
                    continue;
                var (wide, high) = (sheet.Across[column].Millimetres, sheet.Down[row].Millimetres);
                var depth = cell.HangsFrom == HangsFrom.Beside || column is 0 or 4 ? wide : high;
                area += (wide * high) - (depth * depth * Math.Tan(cell.Taper * Math.PI / 180)) - (2 * depth * cell.Relief.Millimetres);
            }
        }

        return area;
    }

    private static void AssertSame(IEnumerable<Outline> expected, IEnumerable<Outline> actual)
    {
        static string[] Written(IEnumerable<Outline> outlines) =>
            [.. outlines.Select(outline => string.Join(' ', outline.Corners
                .Select(corner => FormattableString.Invariant($"({corner.X + 1e-7:F5};{corner.Y + 1e-7:F5})")).Order(StringComparer.Ordinal)))
                .Order(StringComparer.Ordinal)];
        Assert.Equal(Written(expected), Written(actual));
    }

    private static ScoredSheet Sheet(int[] across, int[] down, string[] map, Dictionary<char, Cell> cells) => new()
    {
        Id = "test",
        Name = "Test",
        Across = [.. across.Select(Length.FromMillimetres)],
        Down = [.. down.Select(Length.FromMillimetres)],
        Map = map,
        Cells = cells,
        Root = 'F',
    };
}
