using CsCheck;
using Pattern.Press.Measure;
using Pattern.Press.Nets.Building;
using Pattern.Press.Nets.Checks;
using static Pattern.Press.Nets.Tests.Sheets;
using Size = Pattern.Press.Measure.Size;

namespace Pattern.Press.Nets.Tests.Building;

public sealed class PanelTreeTests
{
    // The eleven nets of the cube (their number: Hippenmeyer 1979, Buekenhout and Parker 1998, from memory; the shapes drawn
    // from memory). A point is empty, any other sign a square.
    public static TheoryData<string> CubeNets =>
    [
        "#.../####/#...", "#.../####/.#..", "#.../####/..#.", "#.../####/...#", ".#../####/.#..", ".#../####/..#.",
        "##.../.###/...#", "##../.###/..#.", "##../.###/.#..", "###../..###", "##../.##./..##",
    ];

    [Theory]
    [MemberData(nameof(CubeNets))]
    public void A_net_of_the_cube_comes_out_the_same_from_a_tree_of_squares_and_from_a_scored_sheet(string drawing)
    {
        var squares = Squares(drawing);
        Assert.Equal(6, squares.Count);
        var tree = TreeOf(squares, 30).Build();
        var sheet = SheetOf(squares, 30).Build();
        Assert.Equal(5, tree.Folds.Count);
        Assert.Equal(6 * 900, tree.Panels.Sum(panel => panel.Outline.Area), 9);

        // Each of five folds takes two of the 24 sides.
        Assert.Equal(14 * 30, tree.Outline.Perimeter, 9);
        Assert.Equal(14 * 30, tree.Cuts.Sum(cut => cut.Length), 9);
        Assert.Equal(sheet.Sheet, tree.Sheet);
        Assert.Equal(sheet.Outline.Edges.Count, tree.Outline.Edges.Count);
        Assert.Equal(sheet.Waste.Sum(waste => waste.Outline.Area), tree.Waste.Sum(waste => waste.Outline.Area), 9);
        Assert.Equal(sheet.Waste.Count, tree.Waste.Count);
        Assert.Equal(sheet.Cuts.Count, tree.Cuts.Count);
    }

    [Fact]
    public void All_nets_of_the_cube_fit_three_squares_by_four_but_one_that_is_two_by_five()
    {
        var sizes = CubeNets.Select(row => TreeOf(Squares(row.Data), 10).Build().Sheet).ToArray();
        Assert.Equal(11, sizes.Length);
        Assert.Equal(1, sizes.Count(size => (size.Shorter, size.Longer) == (Mm(20), Mm(50))));
        Assert.Equal(10, sizes.Count(size => (size.Shorter, size.Longer) == (Mm(30), Mm(40))));
    }

    [Fact]
    public void The_sheet_is_rounded_up_to_the_ruler_and_the_rest_is_waste()
    {
        var piece = new PanelTree { Id = "a", Name = "A", Root = new("face", Outline.Rectangle(5, 5, 15.2, 14.7)), Ruler = Ruler.WholeMillimetres }.Build();
        Assert.Equal(new Size(Mm(11), Mm(10)), piece.Sheet);
        Assert.Equal((0.0, 0.0), (piece.Outline.Bounds.Left, piece.Outline.Bounds.Top));
        Assert.Equal(110 - (10.2 * 9.7), Assert.Single(piece.Waste).Outline.Area, 9);
        Assert.Equal(6, piece.Waste[0].Outline.Edges.Count);
    }

    [Fact]
    public void A_length_that_lies_on_the_ruler_is_not_rounded_up_further()
    {
        // A square turned by an eighth, then back: its sides come out a hair off.
        var turned = Motion.Turn(45, new(3, 4)).Apply(Outline.Rectangle(0, 0, 63.5, 50.8));
        var back = Motion.Turn(-45, new(17, 1)).Apply(turned);
        var piece = new PanelTree { Id = "a", Name = "A", Root = new("face", back), Ruler = Ruler.SixteenthInches }.Build();
        Assert.Equal(new Size(In("2 1/2"), In("2")), piece.Sheet);
        Assert.Empty(piece.Waste);
    }

    [Fact]
    public void A_margin_leaves_one_region_of_waste_with_a_hole()
    {
        var piece = new PanelTree
        {
            Id = "a",
            Name = "A",
            Root = new("face", Outline.Rectangle(0, 0, 20, 10)),
            Ruler = Ruler.WholeMillimetres,
            Margin = Mm(5),
        }.Build();
        Assert.Equal(new Size(Mm(30), Mm(20)), piece.Sheet);
        var waste = Assert.Single(piece.Waste);
        Assert.Equal(600, waste.Outline.Area, 9);
        Assert.Equal(200, Assert.Single(waste.Holes).Area, 9);
        Assert.Equal(new Bounds(5, 5, 25, 15), piece.Outline.Bounds);
    }

    [Fact]
    public void A_diamond_touches_its_sheet_at_four_corners_and_leaves_four_regions_of_waste()
    {
        var diamond = Outline.Through(new(10, 0), new(20, 10), new(10, 20), new(0, 10));
        var piece = new PanelTree { Id = "a", Name = "A", Root = new("face", diamond), Ruler = Ruler.WholeMillimetres }.Build();
        Assert.Equal(4, piece.Waste.Count);
        Assert.All(piece.Waste, waste => Assert.Equal(50, waste.Outline.Area, 9));
    }

    [Fact]
    public void A_round_piece_touches_its_sheet_at_four_points_and_leaves_four_corners()
    {
        var circle = new Outline([new(new(0, 10), new(20, 10), 1), new(new(20, 10), new(0, 10), 1)]);
        var piece = new PanelTree { Id = "a", Name = "A", Root = new("disc", circle), Ruler = Ruler.WholeMillimetres }.Build();
        Assert.Equal(new Size(Mm(20), Mm(20)), piece.Sheet);
        Assert.Equal(Math.PI * 100, piece.Outline.Area, 9);
        Assert.Equal(4, piece.Waste.Count);
        Assert.All(piece.Waste, waste => Assert.Equal(100 - (Math.PI * 25), waste.Outline.Area, 9));
        Assert.Equal(2 * Math.PI * 10, piece.Cuts.Sum(cut => cut.Length), 9);
    }

    [Fact]
    public void A_flap_with_a_round_end_hangs_by_its_straight_side()
    {
        var face = new TreePanel("face", Outline.Rectangle(0, 0, 30, 20));
        var piece = Tree(face, new HangingPanel(new("flap", HalfDisc(20)) { Role = PanelRole.Tab }, 0, "face", 3, Valley(180))).Build();
        Assert.Equal(600 + (Math.PI * 50), piece.Outline.Area, 9);
        Assert.Equal(new Size(Mm(40), Mm(20)), piece.Sheet);
        Assert.Equal((10, 10), (piece.Folds[0].From.X, piece.Folds[0].To.X), (a, b) => Math.Abs(a.Item1 - b.Item1) + Math.Abs(a.Item2 - b.Item2) < 1e-9);
        Assert.Equal(2, piece.Waste.Count);
        Assert.Equal(4, piece.Cuts.Count);
    }

    [Fact]
    public void Whatever_the_prism_its_net_is_sound_and_as_large_as_its_faces() =>
        Gen.Select(Gen.Int[3, 12], Gen.Double[5, 80], Gen.Double[5, 200], Gen.Double[0, 360], Gen.Int[0, 11]).Sample((n, side, height, turn, which) =>
        {
            var polygon = Motion.Turn(turn, default).Apply(Regular(n, side));
            var hanging = Enumerable.Range(0, n)
                .Select(i => new HangingPanel(new($"wall {i + 1}", Outline.Rectangle(0, 0, side, height)), 2, "floor", i, Valley(90)))
                .Append(new(new("lid", Regular(n, side)), 0, $"wall {(which % n) + 1}", 0, Valley(90)));
            var piece = Tree(new("floor", polygon), [.. hanging]).Build();
            Assert.Empty(PieceChecks.Problems(piece));
            var area = n * side * side / (4 * Math.Tan(Math.PI / n));
            Assert.Equal((2 * area) + (n * side * height), piece.Outline.Area, 1e-6);
            Assert.Equal(n + 1, piece.Folds.Count);
            Assert.Equal((((2 * n) - 2) * side) + (2 * n * height), piece.Outline.Perimeter, 1e-6);
        }, iter: 100);

    [Fact]
    public void Whatever_the_pyramid_its_net_is_sound() =>
        Gen.Select(Gen.Int[3, 9], Gen.Double[10, 80], Gen.Double[1.1, 3], Gen.Double[0, 360]).Sample((n, side, slope, turn) =>
        {
            // Faces higher than the floor's inner radius, so that they would meet at a point above it.
            var high = slope * side / (2 * Math.Tan(Math.PI / n));
            var face = Outline.Through(new(0, 0), new(side / 2, -high), new(side, 0));
            var root = Motion.Turn(turn, new(7, 7)).Apply(Regular(n, side));
            var piece = Tree(new("floor", root), [.. Enumerable.Range(0, n)
                .Select(i => new HangingPanel(new($"face {i + 1}", face) { Kind = "face" }, 2, "floor", i, Valley(100)))]).Build();
            Assert.Empty(PieceChecks.Problems(piece));
            Assert.Equal(n * side * high / 2, piece.Panels.Where(panel => panel.Kind == "face").Sum(panel => panel.Outline.Area), 1e-6);
            var edge = Math.Sqrt((high * high) + (side * side / 4));
            Assert.Equal(2 * n * edge, piece.Cuts.Sum(cut => cut.Length), 1e-6);
        }, iter: 60);

    [Fact]
    public void Faces_that_come_to_lie_side_by_side_are_cut_apart_once()
    {
        // Four squares round a point, in a row of three folds: the first and the last touch.
        var square = Outline.Rectangle(0, 0, 10, 10);
        var piece = Tree(
            new("one", square),
            new HangingPanel(new("two", square), 3, "one", 1, Valley(90)),
            new HangingPanel(new("three", square), 0, "two", 2, Valley(90)),
            new HangingPanel(new("four", square), 1, "three", 3, Valley(90))).Build();
        Assert.Equal(new Size(Mm(20), Mm(20)), piece.Sheet);
        Assert.Empty(piece.Waste);
        Assert.Equal(80 + 10, piece.Cuts.Sum(cut => cut.Length), 9);
        Assert.Equal(5, piece.Cuts.Count);
    }

    [Fact]
    public void Faces_that_would_overlap_are_refused_by_name()
    {
        var square = Outline.Rectangle(0, 0, 10, 10);
        var tree = Tree(
            new("one", square),
            new HangingPanel(new("two", square), 3, "one", 1, Valley(90)),
            new HangingPanel(new("three", square), 0, "two", 2, Valley(90)),
            new HangingPanel(new("four", square), 1, "three", 3, Valley(90)),
            new HangingPanel(new("five", square), 2, "four", 0, Valley(90)));
        Refused(tree, "On the flat sheet “one” and “five” overlap.");
    }

    [Fact]
    public void Panels_may_be_listed_in_any_order()
    {
        var square = Outline.Rectangle(0, 0, 10, 10);
        var piece = Tree(
            new("one", square),
            new HangingPanel(new("three", square), 3, "two", 1, Valley(90)),
            new HangingPanel(new("two", square), 3, "one", 1, Valley(90))).Build();
        Assert.Equal(["one", "two", "three"], piece.Panels.Select(panel => panel.Name));
    }

    [Fact]
    public void What_cannot_hang_is_refused_with_every_reason()
    {
        var square = Outline.Rectangle(0, 0, 10, 10);
        Refused(
            Tree(
                new("one", square),
                new HangingPanel(new("one", square), 0, "one", 1, Valley(90)),
                new HangingPanel(new("two", square), 4, "one", -1, Valley(0)),
                new HangingPanel(new(" ", square.Reversed), 0, "nine", 1, Valley(90)),
                new HangingPanel(new("four", square), 0, "one", 1, Valley(90))) with
            { Margin = Mm(-1) },
            "2 panels are called “one”",
            "“two” is to hang by its side 5, but it has 4 sides.",
            "“two” is to hang from side 0 of “one”, which has 4 sides.",
            "“two” folds by 0°",
            "A panel has no name.",
            "The panel “ ” does not run clockwise.",
            "“ ” is to hang from “nine”, but no panel is called that.",
            "“one” and “four” hang from the same side 2 of “one”.",
            "The margin around the piece is less than nothing.");
    }

    [Fact]
    public void A_fold_needs_equal_sides() =>
        Refused(
            Tree(new("one", Outline.Rectangle(0, 0, 10, 10)), new HangingPanel(new("two", Outline.Rectangle(0, 0, 10.00001, 10)), 0, "one", 0, Valley(90))),
            "A fold needs two equal sides, but side 1 of “two” and side 1 of “one” are 10.00001 mm and 10 mm long.");

    [Fact]
    public void A_straight_side_does_not_fold_to_a_curved_one() =>
        Refused(
            Tree(new("one", HalfDisc(10)), new HangingPanel(new("two", Outline.Rectangle(0, 0, 10, 10)), 0, "one", 1, Valley(90))),
            "A fold needs two sides that follow the same line, but of side 1 of “two” and side 2 of “one” one curves otherwise.");

    [Fact]
    public void A_panel_does_not_hang_from_the_side_by_which_the_other_hangs()
    {
        var square = Outline.Rectangle(0, 0, 10, 10);
        Refused(
            Tree(
                new("one", square),
                new HangingPanel(new("two", square), 3, "one", 1, Valley(90)),
                new HangingPanel(new("three", square), 0, "two", 3, Valley(90))),
            "“three” is to hang from side 4 of “two”, by which “two” hangs itself.");
    }

    [Fact]
    public void Panels_that_hang_from_each_other_only_are_refused()
    {
        var square = Outline.Rectangle(0, 0, 10, 10);
        Refused(
            Tree(
                new("one", square),
                new HangingPanel(new("two", square), 0, "three", 1, Valley(90)),
                new HangingPanel(new("three", square), 0, "two", 1, Valley(90))),
            "“two” hangs from “three”, which does not lead back to “one”.",
            "“three” hangs from “two”, which does not lead back to “one”.");
    }

    private static PanelTree Tree(TreePanel root, params HangingPanel[] hanging) =>
        new() { Id = "tree", Name = "Tree", Root = root, Hanging = hanging, Ruler = Ruler.WholeMillimetres };

    private static void Refused(PanelTree tree, params string[] reasons)
    {
        var error = Assert.Throws<NetException>(tree.Build);
        foreach (var reason in reasons)
            Assert.Contains(error.Reasons, given => given.Contains(reason, StringComparison.Ordinal));
        Assert.Equal(reasons.Length, error.Reasons.Count);
    }

    // Half a disc, its straight side first.
    private static Outline HalfDisc(double width) =>
        new([new(new(0, 0), new(0, width)), new(new(0, width), new(0, 0), 1)]);

    private static Outline Regular(int sides, double side)
    {
        var radius = side / (2 * Math.Sin(Math.PI / sides));
        return Outline.Through([.. Enumerable.Range(0, sides).Select(i =>
            new Point(radius * Math.Cos(2 * Math.PI * i / sides), radius * Math.Sin(2 * Math.PI * i / sides)))]);
    }

    private static List<(int Row, int Column)> Squares(string drawing) =>
        [.. drawing.Split('/').SelectMany((row, y) => row.Select((sign, x) => (sign, y, x)).Where(cell => cell.sign == '#').Select(cell => (cell.y, cell.x)))];

    private static PanelTree TreeOf(List<(int Row, int Column)> squares, double side)
    {
        var square = Outline.Rectangle(0, 0, side, side);
        List<int> reached = [0];
        var hanging = new List<HangingPanel>();
        (int Row, int Column)[] ways = [(-1, 0), (0, 1), (1, 0), (0, -1)];
        for (var i = 0; i < reached.Count; i++)
        {
            for (var way = 0; way < 4; way++)
            {
                var (row, column) = squares[reached[i]];
                var next = squares.IndexOf((row + ways[way].Row, column + ways[way].Column));
                if (next < 0 || reached.Contains(next))
                    continue;
                reached.Add(next);
                hanging.Add(new(new($"face {next + 1}", square), (way + 2) % 4, $"face {reached[i] + 1}", way, Mountain(90)));
            }
        }

        return Tree(new("face 1", square), [.. hanging]);
    }

    private static ScoredSheet SheetOf(List<(int Row, int Column)> squares, int side)
    {
        var (rows, columns) = (squares.Max(s => s.Row) + 1, squares.Max(s => s.Column) + 1);
        return new ScoredSheet
        {
            Id = "cube",
            Name = "Cube",
            Across = [.. Enumerable.Repeat(Mm(side), columns)],
            Down = [.. Enumerable.Repeat(Mm(side), rows)],
            Map = [.. Enumerable.Range(0, rows).Select(y => string.Concat(Enumerable.Range(0, columns)
                .Select(x => squares.IndexOf((y, x)) is var i and >= 0 ? (char)('a' + i) : '.')))],
            Cells = Enumerable.Range(0, 6).ToDictionary(i => (char)('a' + i), i => new Cell { Kind = $"face {i + 1}", Fold = Mountain(90) }),
            Root = 'a',
        };
    }
}
