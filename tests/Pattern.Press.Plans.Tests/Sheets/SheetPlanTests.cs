using System.Globalization;
using CsCheck;
using Pattern.Press.Measure;
using Pattern.Press.Plans.Sheets;
using static Pattern.Press.Nets.Tests.Sheets;
using Size = Pattern.Press.Measure.Size;

namespace Pattern.Press.Plans.Tests.Sheets;

public class SheetPlanTests
{
    private static readonly Size A4 = PaperSize.A4.Size;

    private static readonly Gen<(IReadOnlyList<WantedRectangle> Wanted, Size Sheet, SheetOptions Options)> Orders =
        from wanted in Gen.Select(Gen.Int[5, 320], Gen.Int[5, 320], Gen.Int[1, 6]).List[1, 9]
        from paper in Pick.From([.. PaperSize.All])
        from turn in Gen.Bool
        from trim in Gen.Int[0, 6]
        select (
            (IReadOnlyList<WantedRectangle>)[.. wanted.Select((w, i) => new WantedRectangle($"item {i}", new Size(Mm(w.Item1), Mm(w.Item2)), w.Item3))],
            paper.Size,
            new SheetOptions { MayTurn = turn, Trim = Mm(trim) });

    [Fact]
    public void Rectangles_lie_inside_the_trimmed_sheet_apart_from_each_other_in_the_number_wanted() =>
        Orders.Sample((wanted, sheet, options) =>
        {
            var plan = SheetPlan.Make(wanted, sheet, options);
            foreach (var rectangle in wanted.Where(w => plan.TooLarge.All(misfit => misfit.Wanted != w)))
                Assert.Equal(rectangle.Quantity, plan.Sheets.Sum(s => s.Rectangles.Count(r => r.Wanted == rectangle)));
            foreach (var planned in plan.Sheets)
            {
                Assert.NotEmpty(planned.Rectangles);
                foreach (var r in planned.Rectangles)
                {
                    Assert.True(options.MayTurn || !r.Turned);
                    Assert.True(r.Left >= options.Trim && r.Top >= options.Trim);
                    Assert.True(r.Left + r.Size.Width <= sheet.Width - options.Trim && r.Top + r.Size.Height <= sheet.Height - options.Trim);
                }

                for (var i = 0; i < planned.Rectangles.Count; i++)
                {
                    for (var j = 0; j < i; j++)
                    {
                        var (a, b) = (planned.Rectangles[i], planned.Rectangles[j]);
                        Assert.True(a.Left + a.Size.Width <= b.Left || b.Left + b.Size.Width <= a.Left || a.Top + a.Size.Height <= b.Top || b.Top + b.Size.Height <= a.Top);
                    }
                }
            }
        }, iter: 60);

    [Fact]
    public void Edge_to_edge_cuts_alone_part_all_rectangles() =>
        Orders.Sample((wanted, sheet, options) =>
        {
            // Found anew from where the rectangles lie, without the plan's own cuts.
            foreach (var planned in SheetPlan.Make(wanted, sheet, options).Sheets)
                Assert.True(CanBeParted([.. planned.Rectangles]));
        }, iter: 60);

    [Fact]
    public void A_trimmer_that_follows_the_numbers_ends_with_the_rectangles_and_the_offcuts() =>
        Orders.Sample((wanted, sheet, options) =>
        {
            foreach (var planned in SheetPlan.Make(wanted, sheet, options).Sheets)
            {
                var parts = new List<SheetArea> { new(Length.Zero, Length.Zero, sheet) };
                var cuts = planned.InOrder;
                Assert.Equal(Enumerable.Range(1, cuts.Count), cuts.Select(cut => cut.Number));
                foreach (var cut in cuts)
                {
                    // The part must be on the table already, and the cut must go through it.
                    Assert.True(parts.Remove(cut.Area));
                    var (w, h) = (cut.Area.Size.Width, cut.Area.Size.Height);
                    var near = cut.At - (cut.Down ? cut.Area.Left : cut.Area.Top);
                    Assert.True(near > Length.Zero && near < (cut.Down ? w : h));
                    parts.Add(cut.Area with { Size = cut.Down ? new Size(near, h) : new Size(w, near) });
                    parts.Add(cut.Down
                        ? new SheetArea(cut.At, cut.Area.Top, new Size(w - near, h))
                        : new SheetArea(cut.Area.Left, cut.At, new Size(w, h - near)));
                }

                foreach (var r in planned.Rectangles)
                    Assert.True(parts.Remove(new SheetArea(r.Left, r.Top, r.Size)));
                var offcuts = planned.Offcuts.ToList();
                Assert.All(offcuts, offcut => Assert.True(parts.Remove(offcut)));
                Assert.Equal(options.Trim == Length.Zero ? 0 : 4, parts.Count);
            }
        }, iter: 60);

    [Fact]
    public void The_settings_of_the_trimmer_are_all_cuts_each_on_a_part_that_lies_on_the_table() =>
        Orders.Sample((wanted, sheet, options) =>
        {
            foreach (var planned in SheetPlan.Make(wanted, sheet, options).Sheets)
            {
                var parts = new List<SheetArea> { new(Length.Zero, Length.Zero, sheet) };
                Assert.Equal(Enumerable.Range(1, planned.Operations.Count), planned.Operations.Select(operation => operation.Number));
                foreach (var operation in planned.Operations)
                {
                    Assert.Equal(operation.Cuts.Count, operation.Parts * operation.Repeats);
                    foreach (var cut in operation.Cuts)
                    {
                        // Set once: as far in and the same way for every cut.
                        Assert.Equal((operation.Down, operation.Distance), (cut.Down, cut.At - (cut.Down ? cut.Area.Left : cut.Area.Top)));
                        Assert.True(parts.Remove(cut.Area));
                        parts.Add(cut.First.Area);
                        parts.Add(cut.Second.Area);
                    }
                }

                Assert.Equal(planned.InOrder.Count, planned.Operations.Sum(operation => operation.Cuts.Count));
                foreach (var r in planned.Rectangles)
                    Assert.True(parts.Remove(new SheetArea(r.Left, r.Top, r.Size)));
            }
        }, iter: 60);

    [Fact]
    public void Strips_that_are_alike_are_cut_with_one_setting()
    {
        // Five strips of 200 × 20 from A4: across every 20 mm, then the five 10 mm off their ends together.
        var plan = SheetPlan.Make([new WantedRectangle("strip", new Size(Mm(200), Mm(20)), 5)], A4, new SheetOptions { MayTurn = false });
        var operations = Assert.Single(plan.Sheets).Operations;
        Assert.Equal(2, operations.Count);
        Assert.Equal(new[] { Mm(20), Mm(200) }.Order(), operations.Select(operation => operation.Distance).Order());
    }

    [Fact]
    public void The_other_column_is_cut_the_same_way_where_its_rectangles_go_on_the_sheet()
    {
        var wanted = new[] { new WantedRectangle("lid", new Size(Mm(156), Mm(156)), 1), new WantedRectangle("platform", new Size(Mm(109), Mm(109)), 1) };
        var planned = Assert.Single(SheetPlan.Make(wanted, new Size(In("12"), In("12")), new SheetOptions()).Sheets);
        Size Inches(WantedRectangle one) => one.Name == "lid" ? new Size(In("6 3/16"), In("6 3/16")) : new Size(In("4 7/16"), In("4 7/16"));
        var there = OtherColumn.Of(planned, Inches)?.Distances;
        Assert.NotNull(there);
        foreach (var (operation, distance) in planned.Operations.Zip(there))
            Assert.Equal(operation.Distance == Mm(156) ? In("6 3/16") : In("4 7/16"), distance);

        // 8 in and 4 7/16 in do not go beside each other on 12 in.
        Assert.Null(OtherColumn.Of(planned, one => one.Name == "lid" ? new Size(In("8"), In("8")) : Inches(one)));
    }

    [Fact]
    public void The_number_of_sheets_is_at_least_the_bound_and_the_bound_at_least_the_area() =>
        Orders.Sample((wanted, sheet, options) =>
        {
            var plan = SheetPlan.Make(wanted, sheet, options);
            Assert.True(plan.Sheets.Count >= plan.LeastSheets);
            var room = (sheet.Width - (options.Trim * 2)).Millimetres * (sheet.Height - (options.Trim * 2)).Millimetres;
            var area = plan.Sheets.SelectMany(s => s.Rectangles).Sum(r => r.Size.SquareMillimetres);
            Assert.True(plan.LeastSheets >= (int)Math.Ceiling((area / room) - 1e-9));
        }, iter: 60);

    [Fact]
    public void The_published_instances_take_hardly_more_sheets_than_the_best_known()
    {
        // J. O. Berkey and P. Y. Wang, class 1; best known numbers of the University of Bologna: see Data/README.md. Those
        // may cut freely, these cut from edge to edge.
        var folder = Path.Combine(AppContext.BaseDirectory, "Sheets", "Data");
        var items = File.ReadLines(Path.Combine(folder, "class01.csv")).Skip(1)
            .Select(line => line.Split(',')).ToLookup(f => f[0], f => new WantedRectangle(f[3], new Size(Mm(Number(f[4])), Mm(Number(f[5]))), 1));
        var best = File.ReadLines(Path.Combine(folder, "class01-best.csv")).Skip(1).Select(line => line.Split(',')).ToList();
        Assert.Equal(50, best.Count);
        var (used, known) = (0, 0);
        foreach (var instance in best)
        {
            var plan = SheetPlan.Make([.. items[instance[0]]], new Size(Mm(10), Mm(10)), new SheetOptions { MayTurn = false });
            Assert.Equal(Number(instance[1]), plan.Sheets.Sum(sheet => sheet.Rectangles.Count));
            Assert.True(plan.Sheets.Count >= Number(instance[2]), instance[0]);
            Assert.True(plan.LeastSheets <= Number(instance[3]), instance[0]);
            used += plan.Sheets.Count;
            known += Number(instance[3]);
        }

        TestContext.Current.TestOutputHelper?.WriteLine($"{used} sheets, best known {known}.");
        Assert.True(used <= known * 1.02, $"{used} sheets, best known {known}");
    }

    [Fact]
    public void No_plan_for_a_few_rectangles_needs_fewer_sheets() =>
        Gen.Select(Gen.Select(Gen.Int[1, 6], Gen.Int[1, 6]).List[1, 5], Gen.Int[6, 8], Gen.Bool).Sample((sides, height, turn) =>
        {
            var wanted = sides.Select((side, i) => new WantedRectangle($"item {i}", new Size(Mm(side.Item1), Mm(side.Item2)), 1)).ToList();
            var plan = SheetPlan.Make(wanted, new Size(Mm(6), Mm(height)), new SheetOptions { MayTurn = turn });
            Assert.Equal(new ExhaustiveSheets(sides, 6, height, turn).Fewest(), plan.Sheets.Count);
            Assert.Equal(plan.Sheets.Count, plan.LeastSheets);
        }, iter: 200);

    [Fact]
    public void Many_kits_are_cut_from_sheets_that_are_all_alike_when_that_takes_no_more_of_them()
    {
        // One base of 225 mm fills a sheet of 12 in; a lid of 156 mm and a platform of 109 mm go on another.
        var wanted = new[]
        {
            new WantedRectangle("base", new Size(Mm(225), Mm(225)), 14),
            new WantedRectangle("lid", new Size(Mm(156), Mm(156)), 14),
            new WantedRectangle("platform", new Size(Mm(109), Mm(109)), 14),
        };
        var plan = SheetPlan.Make(wanted, new Size(In("12"), In("12")), new SheetOptions());
        Assert.Equal(28, plan.Sheets.Count);
        Assert.Equal([14, 14], plan.Layouts.Select(layout => layout.Count));
        Assert.Equal(["base"], plan.Layouts[0].Sheet.Rectangles.Select(r => r.Wanted.Name));
        Assert.Equal(["lid", "platform"], plan.Layouts[1].Sheet.Rectangles.Select(r => r.Wanted.Name).Order(StringComparer.Ordinal));
    }

    [Theory]
    [InlineData(14)]
    [InlineData(97)]
    [InlineData(100)]
    [InlineData(1000)]
    public void The_sheets_of_a_class_are_hardly_more_than_the_bound(int kits)
    {
        // The mats of a box, 25 rectangles of eight sizes.
        (int Width, int Height, int Quantity)[] sizes = [(59, 74, 4), (74, 6, 8), (62, 62, 1), (62, 16, 4), (58, 58, 1), (58, 6, 4), (40, 30, 2), (81, 12, 1)];
        var wanted = sizes.Select(size => new WantedRectangle($"{size.Width} × {size.Height}", new Size(Mm(size.Width), Mm(size.Height)), size.Quantity * kits)).ToList();
        var plan = SheetPlan.Make(wanted, new Size(In("12"), In("12")), new SheetOptions());
        Assert.InRange(plan.Sheets.Count, plan.LeastSheets, (int)Math.Ceiling(plan.LeastSheets * 1.03));
        var cut = plan.Sheets.SelectMany(sheet => sheet.Rectangles).GroupBy(rectangle => rectangle.Wanted).ToDictionary(group => group.Key, group => group.Count());
        Assert.All(wanted, rectangle => Assert.Equal(rectangle.Quantity, cut[rectangle]));
        Assert.InRange(plan.Layouts.Count, 1, 20);
    }

    [Fact]
    public void Turning_can_save_a_sheet_and_a_stock_with_one_way_up_is_never_turned()
    {
        // 210 × 297 holds two of 200 × 140 as drawn, and two of 140 × 200 only when they are turned.
        var wanted = new[] { new WantedRectangle("card", new Size(Mm(140), Mm(200)), 2) };
        var stock = new Stock("paper", "Paper", Mm(0.1m), null, A4);
        Assert.Single(SheetPlan.Make(wanted, stock).Sheets);
        Assert.Equal(2, SheetPlan.Make(wanted, stock with { OneWay = true }).Sheets.Count);
    }

    [Fact]
    public void What_is_too_large_is_named_with_how_much_it_is_too_large()
    {
        var wanted = new[] { new WantedRectangle("base", new Size(Mm(300), Mm(200)), 1), new WantedRectangle("lid", new Size(Mm(100), Mm(100)), 1) };
        var plan = SheetPlan.Make(wanted, A4, new SheetOptions());

        // Turned it is 3 mm too high; as drawn it would be 90 mm too wide.
        Assert.Equal(new Misfit(wanted[0], true, A4, Length.Zero, Mm(3)), Assert.Single(plan.TooLarge));
        Assert.Equal("lid", Assert.Single(Assert.Single(plan.Sheets).Rectangles).Wanted.Name);
        Assert.Equal((false, Mm(90)), (SheetPlan.Make(wanted, A4, new SheetOptions { MayTurn = false }).TooLarge[0].Turned, SheetPlan.Make(wanted, A4, new SheetOptions { MayTurn = false }).TooLarge[0].TooWide));
    }

    [Fact]
    public void Nothing_wanted_takes_no_sheet_and_a_rectangle_without_size_is_refused()
    {
        Assert.Empty(SheetPlan.Make([], A4, new SheetOptions()).Sheets);
        Assert.Throws<ArgumentException>(() => SheetPlan.Make([new WantedRectangle("line", new Size(Mm(10), Length.Zero), 1)], A4, new SheetOptions()));
        Assert.Throws<ArgumentException>(() => SheetPlan.Make([], A4, new SheetOptions { Trim = Mm(105) }));
    }

    private static int Number(string text) => int.Parse(text, CultureInfo.InvariantCulture);

    private static bool CanBeParted(List<PlacedRectangle> rectangles)
    {
        if (rectangles.Count <= 1)
            return true;
        foreach (var down in new[] { true, false })
        {
            (Length From, Length To) Reach(PlacedRectangle r) => down ? (r.Left, r.Left + r.Size.Width) : (r.Top, r.Top + r.Size.Height);
            foreach (var at in rectangles.Select(r => Reach(r).To).Distinct())
            {
                var before = rectangles.Where(r => Reach(r).To <= at).ToList();
                var after = rectangles.Where(r => Reach(r).From >= at).ToList();

                // If any cut parts them without harm, it can be made first: what it parts can still be parted.
                if (before.Count + after.Count == rectangles.Count && after.Count > 0)
                    return CanBeParted(before) && CanBeParted(after);
            }
        }

        return false;
    }
}
